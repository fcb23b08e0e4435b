package compare

import (
	"slices"

	"reelworth/internal/exact"
)

// Turn is one side of a flip.
type Turn struct {
	Flip
	At exact.Fraction
	Up bool // it lies above today's value, or right after it
}

// Turns are the sides of flips where the answer turns, the nearest to today's value
// first; of equals the first in the list. A turn of what is nothing today is as far as
// doubling.
func Turns(flips []Flip) (list []Turn) {
	for _, f := range flips {
		if f.Below != nil {
			list = append(list, Turn{f, *f.Below, false})
		}
		if f.Above != nil {
			list = append(list, Turn{f, *f.Above, true})
		}
	}
	slices.SortStableFunc(list, func(a, b Turn) int { return a.distance().Cmp(b.distance()) })
	return list
}

// distance is how far a turn is from today's value, as a share of it.
func (t *Turn) distance() exact.Fraction {
	way := t.At.Sub(t.Today).Abs()
	switch {
	case way.IsZero():
		return way
	case t.Today.IsZero():
		return exact.Int(1)
	}
	return way.Quo(t.Today)
}
