package compare

import (
	"cmp"
	"context"
	"runtime"
	"slices"
	"sync"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Outlook is what would change the answer of a comparison.
type Outlook struct {
	Offers []OfferOutlook // in the order of Comparison.Offers; nil where only the pair was asked for
	Pair   *PairOutlook   // nil when the verdict is one-sided
}

// OfferOutlook is what would change one offer's standing against the baseline. Flips
// and Swings are nil where it is not held against one, all is nil on a Fault.
type OfferOutlook struct {
	Name       string
	Flips      []Flip
	Swings     []Swing
	Ceiling    *Ceiling // reels only; nil where no price, or every price, saves as much
	OrderSizes []OrderSize
	CutSizes   []CutSize     // reels only
	Volumes    []VolumeRange // nil where it is not held against the baseline, or nothing is shot

	unrounded exact.Fraction // what it saves against the baseline
}

// PairOutlook is what would change the verdict: its reel held against its boxed offer.
type PairOutlook struct {
	Offer, Other string         // the reel, and the boxed offer in the baseline's place
	Saving       exact.Fraction // today's, with no rounding
	Flips        []Flip
	Volumes      []VolumeRange // nil where nothing is shot
}

// Volume is the flip of the rolls shot in a year, nil when there is none to tell.
func (p *PairOutlook) Volume() *Flip { return flipOf(p.Flips, scenario.InputRollsAYear) }

// LookAhead finds what would change the answer of a comparison, price ceilings for the
// percent given. Its only error is ctx's, when that is done before it is.
func LookAhead(ctx context.Context, c *Comparison, percent exact.Fraction) (*Outlook, error) {
	if c.home != nil {
		o, err := LookAhead(ctx, c.home, percent)
		return c.Shown.outlook(o), err
	}
	o := &Outlook{Offers: make([]OfferOutlook, len(c.Offers))}
	outlays, err := outlaysOf(ctx, c)
	if err != nil {
		return nil, err
	}
	var jobs []func() error
	for i := range c.Offers {
		jobs = append(jobs, func() (err error) {
			o.Offers[i], err = outlookOf(ctx, c, i, outlays, percent)
			return err
		})
	}
	reel, boxed := c.Find(c.Verdict.Reel), c.Find(c.Verdict.Boxed)
	known := reel != nil && boxed != nil && reel.Against != nil && boxed == c.Baseline() // the pair is one of them
	if !known && reel != nil && boxed != nil {
		jobs = append(jobs, func() (err error) {
			r := c.rivals(reel, boxed, outlays)
			o.Pair, err = r.outlook(ctx)
			return err
		})
	}
	if err := sideBySide(jobs); err != nil {
		return nil, err
	}
	if known {
		ahead := &o.Offers[c.index(reel)]
		o.Pair = &PairOutlook{Offer: reel.Name, Other: boxed.Name, Saving: ahead.unrounded, Flips: ahead.Flips, Volumes: ahead.Volumes}
	}
	return o, nil
}

// outlaysOf is the outlay of each computed offer, at every volume too.
func outlaysOf(ctx context.Context, c *Comparison, only ...*Offer) ([]*outlay, error) {
	g := newGatherer(&c.Scenario, nil)
	list := make([]*outlay, len(c.Offers))
	var jobs []func() error
	for i := range c.Offers {
		o := &c.Offers[i]
		if o.Fault != nil || len(only) > 0 && !slices.Contains(only, o) {
			continue
		}
		jobs = append(jobs, func() error {
			t, _ := g.terms(i)
			list[i] = newOutlay(&t)
			return list[i].lookAtVolumes(ctx)
		})
	}
	return list, sideBySide(jobs)
}

// outlookOf is one offer's.
func outlookOf(ctx context.Context, c *Comparison, i int, outlays []*outlay, percent exact.Fraction) (OfferOutlook, error) {
	offer := &c.Offers[i]
	o := OfferOutlook{Name: offer.Name}
	if offer.Fault != nil {
		return o, ctx.Err()
	}
	t := &outlays[i].rounded
	var err error
	if o.OrderSizes, err = orderSizes(ctx, t); err != nil {
		return o, err
	}
	if t.reel {
		o.CutSizes = cutSizes(t, c.Scenario.Offers[i].Reel)
	}
	baseline := c.Baseline()
	if offer.Against == nil {
		return o, ctx.Err()
	}
	r := c.rivals(offer, baseline, outlays)
	if o.Swings, err = r.swings(ctx, c.Scenario.Ranges); err != nil {
		return o, err
	}
	if t.reel {
		if o.Ceiling, err = ceiling(ctx, t, &baseline.PerRoll, percent, c.Scenario.Offers[i].Currency); err != nil {
			return o, err
		}
	}
	pair, err := r.outlook(ctx)
	if err != nil {
		return o, err
	}
	o.unrounded, o.Flips, o.Volumes = pair.Saving, pair.Flips, pair.Volumes
	return o, nil
}

// outlook is what would change who of two is cheaper.
func (r *rivals) outlook(ctx context.Context) (*PairOutlook, error) {
	flips, err := r.flips(ctx)
	if err != nil {
		return nil, err
	}
	volumes, err := r.volumeRanges(ctx)
	if err != nil {
		return nil, err
	}
	return &PairOutlook{Offer: r.names[offerSide], Other: r.names[otherSide], Saving: r.saving, Flips: flips, Volumes: volumes}, nil
}

// PairFlips is what would change the verdict, nil when that is one-sided. It is quick
// enough for every change of the scenario; its only error is ctx's.
func PairFlips(ctx context.Context, c *Comparison) (*PairOutlook, error) {
	if c.home != nil {
		p, err := PairFlips(ctx, c.home)
		return c.Shown.pair(p), err
	}
	r, err := rivalsOf(ctx, c, c.Verdict.Reel, c.Verdict.Boxed)
	if r == nil || err != nil {
		return nil, err
	}
	return r.outlook(ctx)
}

// rivalsOf holds one computed offer against another, nil when either is not there.
func rivalsOf(ctx context.Context, c *Comparison, offer, other string) (*rivals, error) {
	o, b := c.Find(offer), c.Find(other)
	if o == nil || b == nil || o == b {
		return nil, ctx.Err()
	}
	outlays, err := outlaysOf(ctx, c, o, b)
	if err != nil {
		return nil, err
	}
	return c.rivals(o, b, outlays), nil
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

// sideBySide does jobs on all processors but one, which is left to whoever waits, and
// returns their first error.
func sideBySide(jobs []func() error) error {
	errs := make([]error, len(jobs))
	var wait sync.WaitGroup
	workers := max(1, min(runtime.GOMAXPROCS(0)-1, len(jobs)))
	next := make(chan int)
	for range workers {
		wait.Go(func() {
			for i := range next {
				errs[i] = jobs[i]()
			}
		})
	}
	for i := range jobs {
		next <- i
	}
	close(next)
	wait.Wait()
	return cmp.Or(errs...)
}
