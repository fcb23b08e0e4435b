package money

import (
	"math/big"
	"strings"
	"testing"

	"github.com/bojanz/currency"
	"github.com/shopspring/decimal"
	"golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"
	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

// signs shows spaces that cannot be told apart: ⍽ no-break, ⎵ narrow no-break.
var signs = strings.NewReplacer("\u00a0", "⍽", "\u202f", "⎵")

func exactly(s string) exact.Fraction { return exact.FromDecimal(decimal.RequireFromString(s)) }

// The forms are those of CLDR 48, whose charts they were written down from.
func TestAmountsByLocale(t *testing.T) {
	for _, c := range []struct {
		locale                        Locale
		euros, below, yen, dinar, all string
	}{
		{"en", "EUR⍽1,062.10", "−EUR⍽30.00", "JPY⍽14,800", "KWD⍽1.235", "EUR⍽1,062"},
		{"de", "1.062,10⍽EUR", "−30,00⍽EUR", "14.800⍽JPY", "1,235⍽KWD", "1.062⍽EUR"},
		{"fr", "1⎵062,10⍽EUR", "−30,00⍽EUR", "14⎵800⍽JPY", "1,235⍽KWD", "1⎵062⍽EUR"},
		{"es", "1062,10⍽EUR", "−30,00⍽EUR", "14.800⍽JPY", "1,235⍽KWD", "1062⍽EUR"},
		{"pt", "EUR⍽1.062,10", "−EUR⍽30,00", "JPY⍽14.800", "KWD⍽1,235", "EUR⍽1.062"},
		{"pl", "1062,10⍽EUR", "−30,00⍽EUR", "14⍽800⍽JPY", "1,235⍽KWD", "1062⍽EUR"},
		{"sv", "1⍽062,10⍽EUR", "−30,00⍽EUR", "14⍽800⍽JPY", "1,235⍽KWD", "1⍽062⍽EUR"},
		{"de-CH", "EUR⍽1'062.10", "EUR−30.00", "JPY⍽14'800", "KWD⍽1.235", "EUR⍽1'062"},
		{"ja", "EUR⍽1,062.10", "−EUR⍽30.00", "JPY⍽14,800", "KWD⍽1.235", "EUR⍽1,062"},
		{"unheard of", "EUR⍽1,062.10", "−EUR⍽30.00", "JPY⍽14,800", "KWD⍽1.235", "EUR⍽1,062"},
	} {
		for _, x := range []struct{ got, want string }{
			{c.locale.Amount(exactly("1062.1"), "EUR"), c.euros}, {c.locale.Amount(exactly("-30"), "EUR"), c.below},
			{c.locale.Amount(exactly("14800"), "JPY"), c.yen}, {c.locale.Amount(exactly("1.2345"), "KWD"), c.dinar},
			{c.locale.Whole(exactly("1062.1"), "EUR"), c.all},
		} {
			if got := signs.Replace(x.got); got != x.want {
				t.Errorf("%s: %s, want %s", c.locale, got, x.want)
			}
		}
	}
}

func TestNumbersAreRoundedOnTheExactValue(t *testing.T) {
	third := exact.Ratio(1, 3)
	half := exactly("0.5")
	for _, c := range []struct{ got, want string }{
		{English.Number(exactly("57.675"), 2), "57.68"},
		{English.Number(exactly("-57.675"), 2), "−57.68"},
		{English.Number(exactly("1.005"), 2), "1.01"},
		{English.Number(exactly("0.49999999999999999999999999"), 0), "0"},
		{English.Number(half, 0), "1"}, {English.Number(half.Neg(), 0), "−1"},
		{English.Number(third, 16), "0.3333333333333333"},
		{English.Number(exactly("-0.004"), 2), "0.00"},
		{English.Amount(exactly("-0.004"), "EUR"), "EUR⍽0.00"}, {English.Whole(exactly("-0.4"), "EUR"), "EUR⍽0"},
		{English.Number(exactly("999.995"), 2), "1,000.00"},
		{English.Number(exactly("1250"), -2), "1,300"},
		{English.Number(exactly("123456789012345678901234567890123456789012345"), 1), "123,456,789,012,345,678,901,234,567,890,123,456,789,012,345.0"},
		{Locale("de").Number(third.Mul(exact.Int(1000000)), 3), "333.333,333"},
		{Locale("pl").Number(exact.Int(1234), 0), "1234"}, {Locale("pl").Number(exact.Int(12345), 0), "12⍽345"},
	} {
		if got := signs.Replace(c.got); got != c.want {
			t.Errorf("%s, want %s", got, c.want)
		}
	}
}

func TestFieldsKeepWhatWasTyped(t *testing.T) {
	for _, c := range []struct {
		locale   Locale
		in, want string
	}{
		{"en", "118.00", "118.00"}, {"de", "118.00", "118,00"}, {"ja", "14800", "14800"}, {"de-CH", "1234.5", "1234.5"},
		{"fr", "1234567.80", "1234567,80"}, {"sv", "-0.5", "−0,5"}, {"en", "0", "0"}, {"en", "0.00", "0.00"}, {"en", "1E+3", "1000"},
	} {
		if got := c.locale.Field(decimal.RequireFromString(c.in)); got != c.want {
			t.Errorf("%s %s: %s, want %s", c.locale, c.in, got, c.want)
		}
	}
}

// bojanz/currency writes amounts too, within 39 digits and with a hyphen for a minus.
func TestAmountsAgreeWithTheLibrary(t *testing.T) {
	minusSign := strings.NewReplacer("-", minus)
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.SampledFrom(Locales()).Draw(t, "locale")
		code := rapid.SampledFrom(Codes()).Draw(t, "code")
		d := anyDecimal(t)
		digits, _ := Digits(code)
		w := currency.NewFormatter(currency.NewLocale(string(l)))
		w.CurrencyDisplay, w.MaxDigits = currency.DisplayCode, uint8(digits)
		rounded, _ := new(big.Rat).SetString(d.Rat().FloatString(digits)) // half away from zero
		a, err := currency.NewAmount(rounded.FloatString(digits), code)
		if err != nil {
			t.Fatal(err)
		}
		if got, want := l.Amount(exact.FromDecimal(d), code), minusSign.Replace(w.Format(a)); got != want {
			t.Fatalf("%s %s %s: %q, the library writes %q", l, d, code, got, want)
		}
	})
}

// golang.org/x/text/message, with CLDR 32 of 2017, is a second opinion on numbers. Since
// then Swiss German went from ’ to ' in CLDR's grouping, French from a wide no-break
// space to a narrow one. It groups four digits in es and pl, where CLDR does not.
func TestNumbersAgreeWithASecondLibrary(t *testing.T) {
	alike := strings.NewReplacer("’", "'", "\u202f", "\u00a0", "-", minus)
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.SampledFrom(Locales()).Draw(t, "locale")
		places := rapid.IntRange(0, 3).Draw(t, "places")
		n := decimal.New(rapid.Int64Range(-999_999_999_999, 999_999_999_999).Draw(t, "coefficient"), int32(-places))
		if (l == "es" || l == "pl") && n.Abs().LessThan(decimal.New(1, 4)) {
			return
		}
		f, _ := n.Float64() // at most 12 digits: printed back without loss
		p := message.NewPrinter(language.MustParse(string(l)))
		want := alike.Replace(p.Sprint(number.Decimal(f, number.Scale(places))))
		if got := alike.Replace(l.Number(exact.FromDecimal(n), places)); got != want && !n.IsZero() {
			t.Fatalf("%s %s: %q, the other library writes %q", l, n, got, want)
		}
	})
}

func TestLocaleNearestToTheSystem(t *testing.T) {
	for tag, want := range map[string]Locale{
		"": "en", "C": "en", "C.UTF-8": "en", "POSIX": "en", "xx": "en", "!": "en", "en_US.UTF-8": "en", "en-GB": "en",
		"de": "de", "de_DE.UTF-8": "de", "de_AT.UTF-8": "de", "DE_de@euro": "de", "fr_FR": "fr", "fr_CH.UTF-8": "fr", "es_ES": "es",
		"pt_BR": "pt", "pt_PT.UTF-8": "pt", "pl_PL": "pl", "sv_SE": "sv", "sv_FI": "sv", "ja_JP.UTF-8": "ja",
		"de_CH.UTF-8": "de-CH", "de-LI": "de-CH", "it_CH": "de-CH",
		// By their numbers: 1.234,50 · 1,234.50 · 1 234,50.
		"it_IT.UTF-8": "de", "nl_NL": "de", "da_DK": "de", "es_MX.UTF-8": "en", "zh_CN": "en", "nb_NO": "fr", "cs_CZ": "fr", "fi_FI": "fr",
	} {
		if got := LocaleFor(tag); got != want {
			t.Errorf("%q is taken as %s, want %s", tag, got, want)
		}
	}
}
