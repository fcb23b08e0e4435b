package money

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

// readings is written by hand from the stated forms: locales, text, what is read.
// In texts ⍽ is a no-break space, ⎵ a narrow one, ⋅ a thin one.
//
//	= 12.50          the number, with its places as written
//	= 12.50 EUR      and its currency
//	= 12.50 USD+     and several that share the sign, USD the likeliest
//	? 1234 1,234     unclear, with the spellings of what it can mean
//	? 1234 @ EUR     the same beside a currency
//	! obstacle       unreadable, because of it; groups have the ways to write it, … any
const readings = `
# Plain digits and the decimal sign, everywhere.
en de fr es pt pl sv de-CH ja | 0 | = 0
en de fr es pt pl sv de-CH ja | 7 | = 7
en de fr es pt pl sv de-CH ja | 007 | = 7
en de fr es pt pl sv de-CH ja | 1234 | = 1234
en de fr es pt pl sv de-CH ja |   36   | = 36
en de fr es pt pl sv de-CH ja | ⍽36⎵ | = 36
en de fr es pt pl sv de-CH ja | 999999999999 | = 999999999999
en de fr es pt pl sv de-CH ja | 000999999999999 | = 999999999999
en de fr es pt pl sv de-CH ja | 1000000000000 | ! too-long
en de fr es pt pl sv de-CH ja | -5 | = -5
en de fr es pt pl sv de-CH ja | −5 | = -5
en de fr es pt pl sv de-CH ja | - 5 | = -5
en de fr es pt pl sv de-CH ja | -0 | = 0
de fr es pt pl sv | 12,5 | = 12.5
de fr es pt pl sv | 118,00 | = 118.00
de fr es pt pl sv | 0,05 | = 0.05
de fr es pt pl sv | ,5 | = 0.5
de fr es pt pl sv | 118, | = 118
de fr es pt pl sv | 1234,50 | = 1234.50
de fr es pt pl sv | −12,50 | = -12.50
de fr es pt pl sv | 1,234 | = 1.234
de fr es pt pl sv | 0,8875 | = 0.8875
de fr es pt pl sv | 0,123456789012 | = 0.123456789012
de fr es pt pl sv | 0,1234567890123 | ! too-long
de fr es pt pl sv | 999999999999,999999999999 | = 999999999999.999999999999
en de-CH ja | 12.5 | = 12.5
en de-CH ja | 118.00 | = 118.00
en de-CH ja | 0.05 | = 0.05
en de-CH ja | .5 | = 0.5
en de-CH ja | -.5 | = -0.5
en de-CH ja | 118. | = 118
en de-CH ja | 1234.50 | = 1234.50
en de-CH ja | 1.234 | = 1.234
en de-CH ja | 0.8875 | = 0.8875
en de-CH ja | 0.1234567890123 | ! too-long

# Groups of three, in the locale's own signs.
de es pt | 1.234,50 | = 1234.50
de es pt | 12.345,6 | = 12345.6
de es pt | 123.456,78 | = 123456.78
de es pt | 1.234.567 | = 1234567
de es pt | 1.234.567,89 | = 1234567.89
de es pt | -1.234,50 | = -1234.50
de es pt | 999.999.999.999,00 | = 999999999999.00
de es pt | 1.234, | = 1234
en ja | 1,234.50 | = 1234.50
en ja | 12,345.6 | = 12345.6
en ja | 123,456.78 | = 123456.78
en ja | 1,234,567 | = 1234567
en ja | 1,234,567.89 | = 1234567.89
en ja | −1,234.50 | = -1234.50
en ja | 1,234. | = 1234
de fr es pt pl sv | 1 234,50 | = 1234.50
de fr es pt pl sv | 1⍽234,50 | = 1234.50
de fr es pt pl sv | 1⎵234,50 | = 1234.50
de fr es pt pl sv | 1⋅234,50 | = 1234.50
de fr es pt pl sv | 1⎵234⍽567,8 | = 1234567.8
en de-CH ja | 1 234.50 | = 1234.50
en de-CH ja | 1⎵234.50 | = 1234.50
en de fr es pt pl sv de-CH ja | 1 234 | = 1234
en de fr es pt pl sv de-CH ja | 12⍽345 | = 12345
en de fr es pt pl sv de-CH ja | 1⎵234⎵567 | = 1234567
de-CH | 1'234.50 | = 1234.50
de-CH | 1’234.50 | = 1234.50
de-CH | 1'234 | = 1234
de-CH | 1’234’567.05 | = 1234567.05
de-CH | -1'234.50 | = -1234.50

# What grouping says and many do not mean.
de es pt | 1.234 | ? 1234 1,234
de es pt | 12.345 | ? 12345 12,345
de es pt | 123.456 | ? 123456 123,456
de es pt | 1.000 | ? 1000 1,000
de es pt | -1.234 | ? −1234 −1,234
en ja | 1,234 | ? 1234 1.234
en ja | 12,345 | ? 12345 12.345
en ja | 999,999 | ? 999999 999.999
en ja | 1,000 | ? 1000 1.000
en ja | −1,234 | ? −1234 −1.234
de-CH | 1,234 | ? 1234 1.234
fr pl sv | 1.234 | ? 1,234 1234

# One meaning, but another country's form: to be confirmed.
de fr es pt pl sv | 12.5 | ? 12,5
de fr es pt pl sv | 118.00 | ? 118,00
de fr es pt pl sv | 1.23 | ? 1,23
de fr es pt pl sv | 0.125 | ? 0,125
de fr es pt pl sv | 0.8875 | ? 0,8875
de fr es pt pl sv | 1234.567 | ? 1234,567
de fr es pt pl sv | .5 | ? 0,5
de fr es pt pl sv | .234 | ? 0,234
de fr es pt pl sv | 1,234.50 | ? 1234,50
de fr es pt pl sv | 1,234,567 | ? 1234567
de fr es pt pl sv | 1'234.50 | ? 1234,50
de fr es pt pl sv | 1'234,50 | ? 1234,50
de fr es pt pl sv | 1'234 | ? 1234
de fr es pt pl sv | 1 234.50 | ? 1234,50
de fr es pt pl sv | -118.00 | ? −118,00
fr pl sv | 1.234,50 | ? 1234,50
fr pl sv | 1.234.567 | ? 1234567
en de-CH ja | 12,5 | ? 12.5
en de-CH ja | 1,5 | ? 1.5
en de-CH ja | 118,00 | ? 118.00
en de-CH ja | 0,125 | ? 0.125
en de-CH ja | 1234,567 | ? 1234.567
en de-CH ja | ,5 | ? 0.5
en de-CH ja | 1.234,50 | ? 1234.50
en de-CH ja | 1.234.567 | ? 1234567
en de-CH ja | 1 234,50 | ? 1234.50
en ja | 1'234.50 | ? 1234.50
de-CH | 1,234.50 | ? 1234.50
de-CH | 1,234,567 | ? 1234567

# Groups that are none.
en ja | 12,34,567 | ! groups 1234567 or 1,234,567
en ja | 1,23,456.7 | ! groups 123456.7 or 123,456.7
en ja | 1,2,3 | ! groups 123
en ja | 1234,567,890 | ! groups 1234567890 or 1,234,567,890
en ja | 0,123,456 | ! groups 123456 or 123,456
en ja | 1,,234 | ! groups 1234 or 1,234
de es pt | 12.34.567 | ! groups 1234567 or 1.234.567
de es pt | 1.23,4,5 | ! no-form
de | 1.23.4,5 | ! groups 1234,5 or 1.234,5
es | 1.23.4,5 | ! groups 1234,5
fr | 12 34 567 | ! groups 1234567 or 1⎵234⎵567
pl sv | 12 34 567 | ! groups 1234567 or 1⍽234⍽567
de-CH | 12'34'567 | ! groups 1234567 or 1'234'567
en de fr es pt pl sv de-CH ja | 1  234 | ! groups …
en de fr es pt pl sv de-CH ja | 1 23 | ! groups …
en de fr es pt pl sv de-CH ja | 12 3456 | ! groups …
en de fr es pt pl sv de-CH ja | 1 234'567 | !
en de fr es pt pl sv de-CH ja | 1.2.3,4,5 | ! no-form
en de fr es pt pl sv de-CH ja | 1..2 | !
en de fr es pt pl sv de-CH ja | 1,.2 | !
en de fr es pt pl sv de-CH ja | 0.123 456 | !
en de fr es pt pl sv de-CH ja | 1.234.56 | !
en de fr es pt pl sv de-CH ja | 1,234,56 | !
de fr es pt pl sv | 1. | !
en de-CH ja | 1, | !

# No number.
en de fr es pt pl sv de-CH ja |  | ! nothing
en de fr es pt pl sv de-CH ja | ⍽ | ! nothing
en de fr es pt pl sv de-CH ja | - | ! no-digits
en de fr es pt pl sv de-CH ja | , | ! no-digits
en de fr es pt pl sv de-CH ja | EUR | ! no-digits
en de fr es pt pl sv de-CH ja | none | ! no-digits
en de fr es pt pl sv de-CH ja | ½ | ! no-digits
en de fr es pt pl sv de-CH ja | ١٢ | ! no-digits
en de fr es pt pl sv de-CH ja | 1e5 | ! power-or-sum
en de fr es pt pl sv de-CH ja | 1E-5 | ! power-or-sum
en de fr es pt pl sv de-CH ja | 1.5e3 | ! power-or-sum
en de fr es pt pl sv de-CH ja | 1,5×10^3 | ! power-or-sum
en de fr es pt pl sv de-CH ja | 0x1F | ! power-or-sum
en de fr es pt pl sv de-CH ja | 2 x 118 | ! power-or-sum
en de fr es pt pl sv de-CH ja | 12-15 | ! several
en de fr es pt pl sv de-CH ja | 12 EUR 30 | ! several
en de fr es pt pl sv de-CH ja | 12/5 | ! several
en de fr es pt pl sv de-CH ja | 1_000 | ! several
en de fr es pt pl sv de-CH ja | --5 | ! dash
en de fr es pt pl sv de-CH ja | –5 | ! dash
en de fr es pt pl sv de-CH ja | 5- | ! dash
en de fr es pt pl sv de-CH ja | 5,- | ! dash
en de fr es pt pl sv de-CH ja | +5 | ! plus
en de fr es pt pl sv de-CH ja | 4 % | ! percent
en de fr es pt pl sv de-CH ja | 4% | ! percent
en de fr es pt pl sv de-CH ja | (5) | ! no-sign
en de fr es pt pl sv de-CH ja | '5 | ! mark
en de fr es pt pl sv de-CH ja | 5' | ! mark
en de fr es pt pl sv de-CH ja | ..5 | !
en de fr es pt pl sv de-CH ja | 5.. | !
en de fr es pt pl sv de-CH ja | NaN5 | ! no-code
en de fr es pt pl sv de-CH ja | 12 rolls | ! no-sign
en de fr es pt pl sv de-CH ja | 12 mm | ! no-sign

# Currency codes.
en de fr es pt pl sv de-CH ja | EUR 30 | = 30 EUR
en de fr es pt pl sv de-CH ja | 30 EUR | = 30 EUR
en de fr es pt pl sv de-CH ja | 30EUR | = 30 EUR
en de fr es pt pl sv de-CH ja | eur30 | = 30 EUR
en de fr es pt pl sv de-CH ja | -30 EUR | = -30 EUR
en de fr es pt pl sv de-CH ja | EUR -30 | = -30 EUR
en de fr es pt pl sv de-CH ja | −EUR⍽30 | = -30 EUR
en de fr es pt pl sv de-CH ja | EUR 1234567 | = 1234567 EUR
en de fr es pt pl sv de-CH ja | 30 DEM | ! no-code
en de fr es pt pl sv de-CH ja | XAU 1 | ! no-code
en de fr es pt pl sv de-CH ja | CLF 1 | ! no-code
en de fr es pt pl sv de-CH ja | XXX 1 | ! no-code
en de fr es pt pl sv de-CH ja | EUR 30 USD | ! two-currencies
en de fr es pt pl sv de-CH ja | € 30 $ | ! two-currencies
en de fr es pt pl sv de-CH ja | EUR 4 % | ! percent
de es pt | 1.062,10 EUR | = 1062.10 EUR
en ja | EUR⍽1,062.10 | = 1062.10 EUR
fr | 1⎵062,10⍽EUR | = 1062.10 EUR
pl sv | 1⍽062,10⍽EUR | = 1062.10 EUR
de-CH | CHF 1'062.10 | = 1062.10 CHF
de-CH | CHF−1'062.10 | = -1062.10 CHF
de-CH | Fr. 30 | = 30 CHF
de-CH | Fr.30.50 | = 30.50 CHF
de-CH | SFr. 1'234.- | ! dash

# Signs of one currency.
de fr es pt pl sv | 118,00 € | = 118.00 EUR
de fr es pt pl sv | 118,00⍽€ | = 118.00 EUR
de fr es pt pl sv | € 118,00 | = 118.00 EUR
de fr es pt pl sv | 118, € | = 118 EUR
en de-CH ja | €118.00 | = 118.00 EUR
en de-CH ja | US$118.00 | = 118.00 USD
en de-CH ja | US $118.00 | = 118.00 USD
en de-CH ja | us$ 118.00 | = 118.00 USD
en de-CH ja | $.50 | = 0.50 USD+
en de fr es pt pl sv de-CH ja | £12 | = 12 GBP
en de fr es pt pl sv de-CH ja | 12 ￡ | = 12 GBP
en de fr es pt pl sv de-CH ja | CA$ 45 | = 45 CAD
en de fr es pt pl sv de-CH ja | A$45 | = 45 AUD
en de fr es pt pl sv de-CH ja | NZ$45 | = 45 NZD
en de fr es pt pl sv de-CH ja | HK$45 | = 45 HKD
en de fr es pt pl sv de-CH ja | 45 $US | = 45 USD
en de fr es pt pl sv de-CH ja | 45 £GB | = 45 GBP
en de fr es pt pl sv de-CH ja | 45 zł | = 45 PLN
en de fr es pt pl sv de-CH ja | 45 Kč | = 45 CZK
en de fr es pt pl sv de-CH ja | R$ 45 | = 45 BRL
en de fr es pt pl sv de-CH ja | CN¥45 | = 45 CNY
en de fr es pt pl sv de-CH ja | 450円 | = 450 JPY
en de fr es pt pl sv de-CH ja | 45 euros | = 45 EUR
en de fr es pt pl sv de-CH ja | ₩45000 | = 45000 KRW+
en de fr es pt pl sv de-CH ja | ₪45 | = 45 ILS
en de fr es pt pl sv de-CH ja | ₹45 | = 45 INR

# Signs that several share, and a code that tells.
en de fr es pt pl sv de-CH ja | $45 | = 45 USD+
en de fr es pt pl sv de-CH ja | 45 $ | = 45 USD+
en de fr es pt pl sv de-CH ja | ＄45 | = 45 USD+
en de fr es pt pl sv de-CH ja | ¥45 | = 45 JPY+
en de fr es pt pl sv de-CH ja | ￥45 | = 45 JPY+
en de fr es pt pl sv de-CH ja | 45 kr | = 45 SEK+
en de fr es pt pl de-CH ja | 45 kr. | = 45 DKK+
sv | 45 kr. | = 45 SEK+
en de fr es pt pl sv de-CH ja | -$45 | = -45 USD+
en de fr es pt pl sv de-CH ja | $-45 | = -45 USD+
en de fr es pt pl sv de-CH ja | $45 CAD | = 45 CAD
en de fr es pt pl sv de-CH ja | AUD $45 | ! no-sign
en de fr es pt pl sv de-CH ja | kr 45 NOK | = 45 NOK
en de fr es pt pl sv de-CH ja | ¥45 USD | ! two-currencies

# An amount with a currency, in another country's form, where it can mean one number.
de fr es pt pl sv | US$118.00 | = 118.00 USD
de fr es pt pl sv | $1,234.50 | = 1234.50 USD+
de fr es pt pl sv | £12.5 | = 12.5 GBP
de fr es pt pl sv | CHF 1'234.50 | = 1234.50 CHF
de fr es pt pl sv | CHF 1’234.50 | = 1234.50 CHF
de fr es pt pl sv | ¥1,234,567 | = 1234567 JPY+
de fr es pt pl sv | $0.125 | = 0.125 USD+
en de-CH ja | 118,00 € | = 118.00 EUR
en de-CH ja | 1.234,50 € | = 1234.50 EUR
en de-CH ja | 1⎵234,50⍽€ | = 1234.50 EUR
en ja | CHF 1'234.50 | = 1234.50 CHF
de-CH | $1,234.50 | = 1234.50 USD+

# Three digits after one sign, beside a currency.
en ja | ¥14,800 | = 14800 JPY+
en ja | $1,234 | = 1234 USD+
en ja | EUR 12,345 | = 12345 EUR
en ja | KWD 1,234 | ? 1234 1.234 @ KWD
en ja | KWD 1.234 | = 1.234 KWD
en ja | KWD 1,234.567 | = 1234.567 KWD
en ja de-CH | EUR 1.234 | ? 1.234 1234 @ EUR
en ja de-CH | $0.125 | = 0.125 USD+
en ja de-CH | $1.234 | ? 1.234 1234 @ USD+
de es pt | 1.234 EUR | = 1234 EUR
de es pt | 14.800 ¥ | = 14800 JPY+
de es pt | 1.234 KWD | ? 1234 1,234 @ KWD
de es pt | 1,234 KWD | = 1.234 KWD
de fr es pt pl sv | $1,234 | ? 1,234 1234 @ USD+
de fr es pt pl sv | ¥14,800 | ? 14,800 14800 @ JPY+
de fr es pt pl sv | 0,125 € | = 0.125 EUR
fr pl sv | 1.234 EUR | ? 1,234 1234 @ EUR
de-CH | $1,234 | ? 1234 1.234 @ USD+
de-CH | CHF 1'234 | = 1234 CHF
fr pl sv | 1⍽234 EUR | = 1234 EUR

# Full width.
ja | １２３ | = 123
ja | １２．５ | = 12.5
ja | １，２３４．５０ | = 1234.50
ja | １，２３４ | ? 1234 1.234
ja | －５ | = -5
ja | ￥１４，８００ | = 14800 JPY+
ja | １４８００円 | = 14800 JPY
ja | 1４8００ 円 | = 14800 JPY
ja | ＪＰＹ　１４８００ | = 14800 JPY
ja | １２，５ | ? 12.5
en de fr es pt pl sv de-CH ja | １＇２５０ | ! several
en de fr es pt pl sv de-CH ja | ４％ | ! percent
en de-CH | １２．５ | ? 12.5
en de-CH | １２３ | ? 123
de fr es pt pl sv | １２．５ | ? 12,5
de fr es pt pl sv | １２３ | ? 123
en de fr es pt pl sv de-CH | ￥１４８００ | = 14800 JPY+
`

// example is one line of readings in one locale.
type example struct {
	locale     Locale
	text, want string
}

func examples(t testing.TB) (list []example) {
	spaces := strings.NewReplacer("⍽", "\u00a0", "⎵", "\u202f", "⋅", "\u2009")
	for _, line := range strings.Split(readings, "\n") {
		if line == "" || line[0] == '#' {
			continue
		}
		cells := strings.SplitN(line, "|", 3)
		if len(cells) != 3 {
			t.Fatalf("a line without three cells: %s", line)
		}
		for _, l := range strings.Fields(cells[0]) {
			if !slices.Contains(Locales(), Locale(l)) {
				t.Fatalf("no such locale: %s", line)
			}
			text := strings.TrimSuffix(strings.TrimPrefix(cells[1], " "), " ")
			list = append(list, example{Locale(l), spaces.Replace(text), spaces.Replace(strings.TrimSpace(cells[2]))})
		}
	}
	return list
}

// told is what Read says, in the words of readings.
func told(r Reading, err error) string {
	currency := func(code string, list []string) string {
		if len(list) > 0 {
			return list[0] + "+"
		}
		return code
	}
	var u *Unclear
	switch {
	case err == nil:
		n := r.Value.StringFixed(max(0, -r.Value.Exponent()))
		return strings.TrimSpace("= " + n + " " + currency(r.Currency, r.Candidates))
	case errors.As(err, &u):
		s := "?"
		for _, m := range u.Meanings {
			s += " " + m.Spelling
		}
		if c := currency(u.Currency, u.Candidates); c != "" {
			s += " @ " + c
		}
		return s
	}
	var no *Unreadable
	if !errors.As(err, &no) {
		return "! " + err.Error()
	}
	s := "! " + string(no.Because)
	if no.Because == WrongGroups {
		s += " " + strings.Join(no.About, " or ")
	}
	return s
}

func TestReadsNumbersAsPeopleWriteThem(t *testing.T) {
	list := examples(t)
	if len(list) < 800 {
		t.Errorf("only %d examples", len(list))
	}
	for _, e := range list {
		got := told(e.locale.Read(e.text))
		if begins, any := strings.CutSuffix(e.want, "…"); any && strings.HasPrefix(got, begins) || e.want == "!" && strings.HasPrefix(got, "!") {
			continue
		}
		unsure := strings.HasPrefix(e.want, "?") && strings.Contains(got, " @ ") && !strings.Contains(e.want, " @ ")
		if got != e.want || unsure {
			t.Errorf("%s %q: %s, want %s", e.locale, e.text, got, e.want)
		}
	}
}
