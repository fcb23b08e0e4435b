package words

import (
	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// A value at which an answer crosses over is said with the digits that can be paid, rounded
// away from today's, so that what is claimed beyond it holds: 248.2563 reads "more than
// 248.26", 6.0974 "less than 6.09". Every place that shows such a value shows this one.

// finest is the places of a threshold that its usual places would lose.
const finest = 12

// CrossingValue is where a flip crosses over on one side, with its unit, in a table; "" for
// nowhere.
func CrossingValue(c *compare.Comparison, p *compare.PairOutlook, f compare.Flip, up bool, l money.Locale) string {
	for _, x := range compare.Crossings([]compare.Flip{f}) {
		if x.Up == up {
			r := rivals{voiceOf(c, l), p.Offer, p.Other}
			return r.asTyped(x.Input, r.threshold(x))
		}
	}
	return ""
}

// threshold is what is said for where a crossing is.
func (r rivals) threshold(x compare.Crossing) exact.Fraction {
	at, _ := r.stretch(x)
	return at
}

// stretch is what is said for where a crossing is, and for where it crosses back, rounded
// towards today's; nil where it never does.
func (r rivals) stretch(x compare.Crossing) (at exact.Fraction, end *exact.Fraction) {
	for _, places := range []int{r.places(x.Input, x.At), 8, finest} {
		if at = x.At; !at.Equal(x.Today) {
			at = outward(x.At, places, x.Up)
		}
		if at.IsZero() && !x.At.IsZero() && (r.currency(x.Input) == "" || x.End != nil) {
			continue // less than nothing cannot be; less than can be paid is nothing
		}
		if x.End == nil {
			return at, nil
		}
		back := outward(*x.End, places, !x.Up)
		if !at.Equal(back) && at.Less(back) == x.Up {
			return at, &back
		}
	}
	return x.At, x.End
}

// outward is f to a number of places, rounded up or down.
func outward(f exact.Fraction, places int, up bool) exact.Fraction {
	scale := exact.Int(1)
	for range places {
		scale = scale.Mul(exact.Int(10))
	}
	if up {
		return f.Mul(scale).Ceil().Quo(scale)
	}
	return f.Mul(scale).Floor().Quo(scale)
}

// places is how many decimals an input is usually said with.
func (r rivals) places(input scenario.Input, x exact.Fraction) int {
	if currency := r.currency(input); currency != "" {
		return money.Places(currency)
	}
	if _, rate := input.Quote(); rate {
		return int(-significant(x).Exponent())
	}
	return 2
}

// asTyped is an input's value with its unit and all its decimals, at least the usual ones.
func (r rivals) asTyped(input scenario.Input, x exact.Fraction) string {
	if x.Equal(x.Round(r.places(input, x))) {
		return r.value(input, x)
	}
	number := r.plain(x, finest)
	if _, in := pairOfRate(input); in != "" {
		return number + noBreak + in
	}
	if r.unit(input) == "%" {
		return number + " %"
	}
	return joinUnit(r.currency(input), number)
}

// bareAsTyped is asTyped without the unit.
func (r rivals) bareAsTyped(input scenario.Input, x exact.Fraction) string {
	if x.Equal(x.Round(r.places(input, x))) {
		return r.bareValue(input, x)
	}
	return r.plain(x, finest)
}
