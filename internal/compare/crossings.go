package compare

import (
	"slices"

	"reelworth/internal/exact"
)

// Crossing is one side of a flip: where the answer crosses over.
type Crossing struct {
	Flip
	At exact.Fraction
	Up bool // it lies above today's value, or right after it
	// End is where the answer crosses back, nil where it never does. At At it has crossed
	// back at once: only that very value crosses. It is not told of inputs that go in steps.
	End *exact.Fraction
}

// Crossings are the sides of flips where the answer crosses over, the nearest to today's
// value first; of equals the first in the list. A crossing of what is nothing today is as
// far as doubling.
func Crossings(flips []Flip) (list []Crossing) {
	for _, f := range flips {
		if f.Below != nil {
			list = append(list, Crossing{f, *f.Below, false, f.BelowEnd})
		}
		if f.Above != nil {
			list = append(list, Crossing{f, *f.Above, true, f.AboveEnd})
		}
	}
	slices.SortStableFunc(list, func(a, b Crossing) int { return a.distance().Cmp(b.distance()) })
	return list
}

// distance is how far a crossing is from today's value, as a share of it.
func (x *Crossing) distance() exact.Fraction {
	way := x.At.Sub(x.Today).Abs()
	switch {
	case way.IsZero():
		return way
	case x.Today.IsZero():
		return exact.Int(1)
	}
	return way.Quo(x.Today)
}
