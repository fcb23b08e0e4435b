package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/parallel"
	"reelworth/internal/scenario"
)

// Outlook is what would change the answer of a comparison.
type Outlook struct {
	Offers []OfferOutlook // in the order of Comparison.Offers; nil where only the pair was looked at
	Pair   *PairOutlook   // the verdict's reel and its boxed offer; nil when the verdict is one-sided
}

// OfferOutlook is what would change one offer. All is nil on a Fault.
type OfferOutlook struct {
	Name       string
	Pair       *PairOutlook // the offer and the baseline; nil on the baseline, and where there is none
	Ceiling    *Ceiling     // reels only; nil where no price, or every price, saves as much
	OrderSizes []OrderSize
	CutSizes   []CutSize // reels only
}

// PairOutlook is what would change who of two offers is cheaper.
type PairOutlook struct {
	Offer, Other string         // the one, and the one it is compared with
	Saving       exact.Fraction // today's, with no rounding
	Flips        []Flip
	Volumes      []VolumeRange // nil where nothing is shot
	Swings       []Swing       // only of an offer and the baseline
}

// Volume is the flip of the rolls shot in a year, nil when there is none to tell.
func (p *PairOutlook) Volume() *Flip {
	for i := range p.Flips {
		if p.Flips[i].Input == scenario.InputRollsAYear {
			return &p.Flips[i]
		}
	}
	return nil
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

// PairOf is the offer and the baseline; the verdict's pair where the offer is the baseline
// itself, or there is none. nil for neither.
func (o *Outlook) PairOf(offer string) *PairOutlook {
	if p := o.Of(offer).Pair; p != nil {
		return p
	}
	return o.Pair
}

// LookAhead is the comparison with its outlook, price ceilings for the percent given. c
// stays as it is. The only error is ctx's, when that is done before the work is.
func LookAhead(ctx context.Context, c *Comparison, percent exact.Fraction) (*Comparison, error) {
	if c.home != nil {
		ahead, err := LookAhead(ctx, c.home, percent)
		return c.Shown.of(ahead), err
	}
	outlays, err := outlaysOf(ctx, c)
	if err != nil {
		return nil, err
	}
	n := len(c.Offers)
	o := &Outlook{Offers: make([]OfferOutlook, n)}
	reel, boxed := c.Find(c.Verdict.Reel), c.Find(c.Verdict.Boxed)
	known := reel != nil && reel.Against != nil && boxed == c.Baseline() // the pair is one of them
	err = parallel.Each(parallel.AllButOne(), n+1, func(i int) (err error) {
		switch {
		case i < n:
			o.Offers[i], err = outlookOf(ctx, c, i, outlays, percent)
		case !known && reel != nil && boxed != nil:
			o.Pair, err = c.pair(reel, boxed, outlays).outlook(ctx)
		}
		return err
	})
	if err != nil {
		return nil, err
	}
	if known {
		o.Pair = o.Offers[c.index(reel)].Pair
	}
	return c.with(o), nil
}

// LookAtPair is the comparison with the outlook of its verdict's pair alone, without
// swings: quick enough for every change of the scenario. c stays as it is. The only error
// is ctx's.
func LookAtPair(ctx context.Context, c *Comparison) (*Comparison, error) {
	if c.home != nil {
		ahead, err := LookAtPair(ctx, c.home)
		return c.Shown.of(ahead), err
	}
	o := &Outlook{}
	p, err := pairOf(ctx, c, c.Verdict.Reel, c.Verdict.Boxed)
	if err == nil && p != nil {
		o.Pair, err = p.outlook(ctx)
	}
	if err != nil {
		return nil, err
	}
	return c.with(o), nil
}

// with is a copy of the comparison that has an outlook.
func (c *Comparison) with(o *Outlook) *Comparison {
	ahead := *c
	ahead.Outlook = o
	return &ahead
}

// outlookOf is one offer's.
func outlookOf(ctx context.Context, c *Comparison, i int, outlays []*outlay, percent exact.Fraction) (o OfferOutlook, err error) {
	offer := &c.Offers[i]
	o.Name = offer.Name
	if offer.Fault != nil {
		return o, ctx.Err()
	}
	t := &outlays[i].rounded
	if o.OrderSizes, err = orderSizes(ctx, t); err != nil {
		return o, err
	}
	if t.reel {
		if o.CutSizes, err = cutSizes(ctx, t, c.Scenario.Offers[i].Reel); err != nil {
			return o, err
		}
	}
	if offer.Against == nil {
		return o, nil
	}
	baseline := c.Baseline()
	if t.reel {
		if o.Ceiling, err = ceiling(ctx, t, &baseline.PerRoll, percent, c.Scenario.Offers[i].Currency); err != nil {
			return o, err
		}
	}
	p := c.pair(offer, baseline, outlays)
	if o.Pair, err = p.outlook(ctx); err == nil {
		o.Pair.Swings, err = p.swings(ctx, c.Scenario.Ranges)
	}
	return o, err
}

// outlook is what would change who of the two is cheaper.
func (p *pair) outlook(ctx context.Context) (*PairOutlook, error) {
	flips, err := p.flips(ctx)
	if err != nil {
		return nil, err
	}
	volumes, err := p.volumeRanges(ctx)
	if err != nil {
		return nil, err
	}
	return &PairOutlook{Offer: p.names[offerSide], Other: p.names[otherSide], Saving: p.saving, Flips: flips, Volumes: volumes}, nil
}

// index is the place of an offer of c.
func (c *Comparison) index(o *Offer) int {
	for i := range c.Offers {
		if &c.Offers[i] == o {
			return i
		}
	}
	return -1
}
