package compare

import (
	"context"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/parallel"
	"reelworth/internal/scenario"
)

// side is one of the two offers of a pair.
type side int

const (
	offerSide side = iota
	otherSide
)

// pair is an offer and the one it is compared with, the terms of both free to be changed.
type pair struct {
	names  [2]string
	terms  [2]terms
	rates  []scenario.Rate
	out    [2]*outlay
	saving exact.Fraction // with no rounding, today
}

// pair is one computed offer compared with another.
func (c *Comparison) pair(offer, other *Offer, outlays []*outlay) *pair {
	a, b := outlays[c.index(offer)], outlays[c.index(other)]
	return &pair{
		names: [2]string{offer.Name, other.Name}, terms: [2]terms{a.rounded, b.rounded}, rates: c.Scenario.Rates,
		out: [2]*outlay{a, b}, saving: b.cost.Sub(a.cost),
	}
}

// pairOf is two offers by name, nil when either was not computed. Its only error is ctx's.
func pairOf(ctx context.Context, c *Comparison, offer, other string) (*pair, error) {
	o, b := c.Find(offer), c.Find(other)
	if o == nil || b == nil || o == b {
		return nil, ctx.Err()
	}
	outlays, err := outlaysOf(ctx, c, o, b)
	if err != nil {
		return nil, err
	}
	return c.pair(o, b, outlays), nil
}

// outlaysOf is the outlay of each computed offer, or only of some, at every volume too.
func outlaysOf(ctx context.Context, c *Comparison, only ...*Offer) ([]*outlay, error) {
	g := newGatherer(&c.Scenario, nil)
	list := make([]*outlay, len(c.Offers))
	return list, parallel.Each(parallel.AllButOne(), len(list), func(i int) error {
		o := &c.Offers[i]
		if o.Fault != nil || len(only) > 0 && !slices.Contains(only, o) {
			return nil
		}
		t, _ := g.terms(i)
		list[i] = newOutlay(&t)
		return list[i].lookAtVolumes(ctx)
	})
}
