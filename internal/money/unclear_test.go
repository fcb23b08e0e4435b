package money

import (
	"errors"
	"slices"
	"testing"
)

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
