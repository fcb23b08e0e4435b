package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Standing is an offer held against another, and what would turn that.
type Standing struct {
	Offer, Other string // both "" where there is nothing to hold against each other
	Saving       exact.Fraction
	Flips        []Flip
	Swings       []Swing
}

// StandingOf is an offer's standing against the baseline, from c.Outlook, which must be
// of all offers. The baseline itself, and what is not held against one, is told by the
// verdict's pair; its swings are known where its boxed offer is the baseline.
func (c *Comparison) StandingOf(offer string) Standing {
	if o := c.Find(offer); o != nil && o.Against != nil {
		ahead := c.Outlook.Of(offer)
		return Standing{offer, c.Scenario.Baseline, o.Against.Saving, ahead.Flips, ahead.Swings}
	}
	p := c.Outlook.Pair
	if p == nil {
		return Standing{}
	}
	s := Standing{Offer: p.Offer, Other: p.Other, Saving: p.Saving, Flips: p.Flips}
	if p.Other == c.Scenario.Baseline {
		s.Swings = c.StandingOf(p.Offer).Swings
	}
	return s
}

// Of is the outlook of an offer; an empty one where there is none.
func (o *Outlook) Of(offer string) *OfferOutlook {
	for i := range o.Offers {
		if o.Offers[i].Name == offer {
			return &o.Offers[i]
		}
	}
	return &OfferOutlook{}
}

// PickTurn is the place of the turn of an input to one side; of that input to the other
// side where there is none; else the first. −1 for no turns.
func PickTurn(turns []Turn, input Input, up bool) int {
	pick := min(len(turns), 1) - 1
	for i := len(turns) - 1; i >= 0; i-- {
		if turns[i].Input == input && (turns[i].Up == up || pick <= 0 || turns[pick].Input != input) {
			pick = i
			if turns[i].Up == up {
				break
			}
		}
	}
	return pick
}

// curvePoints is how many places a curve is computed at where the costs go by pieces.
const curvePoints = 60

// CurveAt is the curve of a turn from one value to another, at every step of an input
// that goes in steps. Its only error is ctx's.
func (c *Comparison) CurveAt(ctx context.Context, s Standing, t Turn, from, to exact.Fraction) (*Curve, error) {
	points := curvePoints
	if t.Input == scenario.InputRollsAYear || t.Input == scenario.InputSpoiledPercent {
		points = mostRollsAYear + 1
	}
	return CurveOf(ctx, c, s.Offer, s.Other, t.Input, from, to, points)
}
