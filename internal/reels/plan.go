package reels

import (
	"reelworth/internal/exact"
	"reelworth/internal/film"
)

// Wish is a number of cassettes of some exposures.
type Wish struct {
	Exposures int
	Asked     int64 // 0 for as many as fit
}

// Bounds of a wish.
const (
	MostAsked     = 9999
	MostExposures = 100
)

// Sensible says whether it is a wish at all: within the bounds.
func (w Wish) Sensible() bool {
	return w.Asked >= 0 && w.Asked <= MostAsked && w.Exposures >= 1 && w.Exposures <= MostExposures
}

// PlannedWish is what becomes of a wish.
type PlannedWish struct {
	Wish
	Cassettes  int64          // for which there is film
	RollLength exact.Fraction // mm
	Wound      exact.Fraction // mm that a cassette takes: more than the roll by the counter's step
	// Counts is what to turn the counter to: Rounds of the dial, then Rest.
	Counts, Rounds, Rest int64
	Counted              bool // there is a counter
}

// Plan is how wishes divide what is left of a reel.
type Plan struct {
	Wishes  []PlannedWish
	Left    exact.Fraction // mm, before
	Used    exact.Fraction // mm, by the wishes
	Missing exact.Fraction // mm, for all that was asked with a number
	Rest    More
}

// CutPlan divides left millimetres of a reel among wishes, first come first served. It
// never uses more than left.
func CutPlan(h *film.InHand, left exact.Fraction, wishes []Wish) Plan {
	p := Plan{Left: left}
	rest, asked := left, exact.Fraction{}
	for _, w := range wishes {
		d := PlannedWish{Wish: w, RollLength: h.RollLength(w.Exposures), Wound: h.Wound(w.Exposures)}
		d.Counts, d.Counted = h.Counter.Counts(d.RollLength)
		d.Rounds, d.Rest = h.Counter.Rounds(d.Counts)
		d.Cassettes, _ = fill(rest, d.Wound)
		if w.Asked > 0 {
			d.Cassettes = min(d.Cassettes, w.Asked)
			asked = asked.Add(exact.Int(w.Asked).Mul(d.Wound))
		}
		rest = rest.Sub(exact.Int(d.Cassettes).Mul(d.Wound))
		p.Wishes = append(p.Wishes, d)
	}
	p.Used = left.Sub(rest)
	p.Missing = exact.Max(asked.Sub(left), exact.Fraction{})
	p.Rest = moreOf(h, rest)
	return p
}
