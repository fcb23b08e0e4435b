package money

import "github.com/shopspring/decimal"

// Nudge is d moved by steps of a size that suits it, never past zero: whole numbers and
// amounts from 10 go by 1, amounts from 1 by a tenth, smaller ones by a hundredth, or by
// their last place but one where that is finer. The places of d are kept.
func Nudge(d decimal.Decimal, steps int) decimal.Decimal {
	n := d.Add(stepOf(d).Mul(decimal.NewFromInt(int64(steps))))
	if d.Sign() >= 0 && n.Sign() < 0 {
		n = decimal.Zero
	}
	if places := -d.Exponent(); places > 0 {
		n, _ = decimal.NewFromString(n.StringFixed(places))
	}
	return n
}

func stepOf(d decimal.Decimal) decimal.Decimal {
	places := -d.Exponent()
	size := d.Abs()
	switch {
	case places <= 0 || size.GreaterThanOrEqual(decimal.New(10, 0)):
		return decimal.New(1, 0)
	case size.GreaterThanOrEqual(decimal.New(1, 0)) || places == 1:
		return decimal.New(1, -1)
	}
	return decimal.New(1, -max(2, places-1))
}
