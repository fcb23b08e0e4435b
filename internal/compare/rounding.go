package compare

import (
	"math"

	"reelworth/internal/exact"
)

// rounding is how amounts of one currency are rounded: to its minor unit, half away
// from zero, because somebody bills them. Every rounding of money in this package
// goes through one, so that switching it off gives the answer with no rounding
// anywhere.
type rounding struct {
	places int
	off    bool
}

func (r rounding) of(amount exact.Fraction) exact.Fraction {
	if r.off {
		return amount
	}
	return amount.Round(r.places)
}

// toInt64 is a whole number as a count, stopping at the largest there is. Only
// absurd inputs get there, and the money is computed from the exact number.
func toInt64(whole exact.Fraction) int64 {
	n, ok := whole.Int64()
	if !ok {
		return math.MaxInt64
	}
	return n
}

// minor is the smallest coin.
func (r rounding) minor() exact.Fraction {
	unit := exact.Int(1)
	for range r.places {
		unit = unit.Quo(exact.Int(10))
	}
	return unit
}
