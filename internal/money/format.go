package money

import (
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// minus is U+2212, as wide as a plus and never a place to break a line.
const minus = "\u2212"

// Number is f rounded to places decimals, half away from zero on the exact value, and
// grouped as the locale does: "1,234.50", "1.234,50", "1 234,50". A value that rounds
// to zero has no sign. Spaces that group are no-break spaces.
func (l Locale) Number(f exact.Fraction, places int) string {
	n := l.magnitude(f, places)
	if f.Round(places).Sign() < 0 {
		return minus + n
	}
	return n
}

// Amount is f as money, rounded to the currency's minor unit, with its ISO 4217 code
// where CLDR puts it: "EUR 1,062.10", "1.062,10 EUR", "JPY 14,800". The space is a
// no-break space (U+00A0).
func (l Locale) Amount(f exact.Fraction, currency string) string {
	return l.amount(f, currency, Places(currency))
}

// Whole is f as money without decimals: "EUR 211".
func (l Locale) Whole(f exact.Fraction, currency string) string { return l.amount(f, currency, 0) }

// Field is d as it stands in an input: the locale's decimal sign, no grouping, every
// place that d has ("118.00" keeps both). Read gives d back from it.
func (l Locale) Field(d decimal.Decimal) string {
	s := d.Abs().StringFixed(max(0, -d.Exponent()))
	s = strings.Replace(s, ".", l.form().decimal, 1)
	if d.Sign() < 0 {
		return minus + s
	}
	return s
}

func (l Locale) amount(f exact.Fraction, currency string, places int) string {
	pattern := l.form().amount
	if f.Round(places).Sign() < 0 {
		pattern = l.form().below
	}
	return strings.NewReplacer("0", l.magnitude(f, places), "¤", currency).Replace(pattern)
}

// magnitude is Number without a sign.
func (l Locale) magnitude(f exact.Fraction, places int) string {
	form := l.form()
	whole, part, _ := strings.Cut(f.Abs().Decimal(places).StringFixed(int32(max(0, places))), ".")
	s := form.grouped(whole)
	if part != "" {
		s += form.decimal + part
	}
	return s
}

// grouped puts the grouping sign between every three digits, from the right.
func (f form) grouped(digits string) string {
	if len(digits) < f.shortest {
		return digits
	}
	var b strings.Builder
	for i, d := range digits {
		if i > 0 && (len(digits)-i)%3 == 0 {
			b.WriteString(f.group)
		}
		b.WriteRune(d)
	}
	return b.String()
}
