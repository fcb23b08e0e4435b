package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Look is a pair seen at one of its crossings.
type Look struct {
	Pair      *PairOutlook // nil where there is nothing to compare
	Crossings []Crossing   // of the pair, the nearest first
	At        int          // the crossing looked at; −1 for none
	Curve     *Curve       // of it, around today's value; nil for none
}

// LookAt is an offer's pair, as PairOf, seen at the crossing of an input to one side; of
// that input to the other side where there is none; else at the nearest. c must have been
// looked ahead of. Its only error is ctx's.
func (c *Comparison) LookAt(ctx context.Context, offer string, input Input, up bool) (*Look, error) {
	l := &Look{Pair: c.Outlook.PairOf(offer), At: -1}
	if l.Pair == nil {
		return l, ctx.Err()
	}
	l.Crossings = Crossings(l.Pair.Flips)
	if l.At = pick(l.Crossings, input, up); l.At < 0 {
		return l, ctx.Err()
	}
	flip := &l.Crossings[l.At].Flip
	from, to := flip.Around()
	var err error
	l.Curve, err = CurveOf(ctx, c, l.Pair.Offer, l.Pair.Other, flip.Input, from, to, flip.points())
	return l, err
}

// pick is the place of the crossing that LookAt is seen at.
func pick(list []Crossing, input Input, up bool) int {
	at := min(len(list), 1) - 1
	for i := len(list) - 1; i >= 0; i-- {
		if list[i].Input == input && (list[i].Up == up || at <= 0 || list[at].Input != input) {
			at = i
			if list[i].Up == up {
				break
			}
		}
	}
	return at
}

// curvePoints is how many places a curve is computed at where the costs go by pieces.
const curvePoints = 60

// points is how many places its curve is computed at: every step of an input that goes in
// steps.
func (f *Flip) points() int {
	if f.Input == scenario.InputRollsAYear || f.Input == scenario.InputSpoiledPercent {
		return mostRollsAYear + 1
	}
	return curvePoints
}

// Around is a stretch of the input that shows today's value and the flips on both sides,
// with some room around them.
func (f *Flip) Around() (from, to exact.Fraction) {
	low, high := f.Today, f.Today
	if f.Below != nil {
		low = exact.Min(low, *f.Below)
	}
	if f.Above != nil {
		high = exact.Max(high, *f.Above)
	}
	room := high.Sub(low).Quo(exact.Int(3))
	if room.IsZero() {
		room = f.Today.Quo(exact.Int(2))
	}
	if room.IsZero() {
		room = exact.Int(10)
	}
	return exact.Max(low.Sub(room), exact.Fraction{}), high.Add(room)
}
