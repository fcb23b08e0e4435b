package money

import (
	"errors"
	"slices"
	"testing"
)

func TestWordsForWhatIsNotRead(t *testing.T) {
	for _, c := range []struct {
		locale     Locale
		text, want string
	}{
		{"de", "1.234", "“1.234” could mean 1234 or 1,234. Write the one that is meant."},
		{"en", " 12,5 ", "“12,5” is not how numbers are written here. If 12.5 is meant, write 12.5."},
		{"en", "", "Nothing is written. Write a number, such as 1,234.50."},
		{"pt", "abc", "“abc” has no digits. Write a number, such as 1.234,50."},
		{"en", "12,34,567", "The digits of “12,34,567” are not in groups of three. Write 1234567 or 1,234,567."},
		{"en", "4 %", "“4 %” has a percent sign. Leave it out: the unit stands beside the field."},
		{"en", "30 DEM", "DEM is not an ISO 4217 currency in use today. Write the code of one that is, such as EUR."},
		{"en", "30 Taler", "“Taler” is no currency known here. Write the number alone, or with an ISO 4217 code, such as EUR."},
		{"en", "1234567890123", "“1234567890123” is too long. Write at most 12 digits before the decimal sign and 12 after it."},
		{"en", "one hundred and eighteen euros and no more", "“one hundred and eighteen euro…” has no digits. Write a number, such as 1,234.50."},
		{"en", "a\xffb", "“a\ufffdb” has no digits. Write a number, such as 1,234.50."},
	} {
		_, err := c.locale.Read(c.text)
		if err == nil || err.Error() != c.want {
			t.Errorf("%s %q:\n got %v\nwant %s", c.locale, c.text, err, c.want)
		}
	}
}

func TestCurrenciesThatShareASign(t *testing.T) {
	for _, c := range []struct {
		locale Locale
		text   string
		want   []string
	}{
		{"en", "¥5", []string{"JPY", "CNY"}}, {"ja", "5元", []string{"CNY", "TWD", "HKD"}},
		{"en", "5 kr", []string{"SEK", "NOK", "DKK", "ISK"}}, {"sv", "5 kr.", []string{"SEK", "DKK", "ISK", "NOK"}},
		{"en", "C$5", []string{"CAD", "NIO"}}, {"en", "¥5 CNY", nil}, {"en", "€5", nil}, {"en", "5", nil},
	} {
		r, err := c.locale.Read(c.text)
		if err != nil || !slices.Equal(r.Candidates, c.want) || c.want != nil && r.Currency != "" {
			t.Errorf("%s %s: %v %q %v, want %v", c.locale, c.text, r.Candidates, r.Currency, err, c.want)
		}
		if len(r.Candidates) > 0 {
			r.Candidates[0] = "changed"
			if again, _ := c.locale.Read(c.text); again.Candidates[0] == "changed" {
				t.Errorf("%s hands out its own list", c.text)
			}
		}
	}
	r, err := English.Read("$5")
	if err != nil || len(r.Candidates) < 25 || r.Candidates[0] != "USD" {
		t.Errorf("$: %v, %v", r.Candidates, err)
	}
	var u *Unclear
	if _, err := Locale("de").Read("$1,234"); !errors.As(err, &u) || u.Currency != "" || len(u.Candidates) < 25 {
		t.Errorf("an unclear amount loses its currencies: %v", err)
	}
	if _, err := Locale("de").Read("1.234 KWD"); !errors.As(err, &u) || u.Currency != "KWD" || u.Candidates != nil {
		t.Errorf("an unclear amount loses its currency: %v", err)
	}
}

func BenchmarkReadingAndWriting(b *testing.B) {
	f := exactly("1234567.895")
	b.Run("amount", func(b *testing.B) {
		for b.Loop() {
			Locale("de").Amount(f, "EUR")
		}
	})
	b.Run("reading", func(b *testing.B) {
		for b.Loop() {
			Locale("de").Read("1.234.567,89 EUR")
		}
	})
}
