package compare

import (
	"context"
	"errors"
	"runtime"
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

	unrounded exact.Fraction // what it saves against the baseline
}

// PairOutlook is what would change the verdict: its reel held against its boxed offer.
type PairOutlook struct {
	Offer, Other string         // the reel, and the boxed offer in the baseline's place
	Saving       exact.Fraction // today's, with no rounding
	Flips        []Flip
}

// Volume is the flip of the rolls shot in a year, nil when there is none to tell.
func (p *PairOutlook) Volume() *Flip { return flipOf(p.Flips, scenario.InputRollsAYear) }

// LookAhead finds what would change the answer of a comparison, price ceilings for the
// percent given. Its only error is ctx's, when that is done before it is.
func LookAhead(ctx context.Context, c *Comparison, percent exact.Fraction) (*Outlook, error) {
	g := newGatherer(&c.Scenario, nil)
	o := &Outlook{Offers: make([]OfferOutlook, len(c.Offers))}
	var base *outlay
	baseline := c.Baseline()
	if baseline != nil {
		t, _ := g.terms(c.index(baseline))
		out := newOutlay(&t)
		base = &out
	}
	var jobs []func() error
	for i := range c.Offers {
		jobs = append(jobs, func() (err error) {
			o.Offers[i], err = g.outlook(ctx, c, i, base, baseline, percent)
			return err
		})
	}
	reel := c.Find(c.Verdict.Reel)
	known := reel != nil && reel.Against != nil && c.Verdict.Boxed == baseline.Name // the pair is one of them
	if !known {
		jobs = append(jobs, func() (err error) {
			o.Pair, err = PairFlips(ctx, c)
			return err
		})
	}
	if err := sideBySide(jobs); err != nil {
		return nil, err
	}
	if known {
		ahead := &o.Offers[c.index(reel)]
		o.Pair = &PairOutlook{Offer: reel.Name, Other: baseline.Name, Saving: ahead.unrounded, Flips: ahead.Flips}
	}
	return o, nil
}

// outlook is one offer's.
func (g *gatherer) outlook(ctx context.Context, c *Comparison, i int, base *outlay, baseline *Offer, percent exact.Fraction) (OfferOutlook, error) {
	offer := &c.Offers[i]
	o := OfferOutlook{Name: offer.Name}
	if offer.Fault != nil {
		return o, ctx.Err()
	}
	t, _ := g.terms(i)
	o.OrderSizes = orderSizes(&t)
	if offer.Against == nil {
		return o, ctx.Err()
	}
	d := duel{names: [2]string{offer.Name, baseline.Name}, terms: [2]terms{t, base.rounded}, rates: c.Scenario.Rates}
	o.Swings = d.swings(c.Scenario.Ranges)
	if t.reel {
		o.Ceiling = ceiling(&t, &baseline.PerRoll, percent, c.Scenario.Offers[i].Currency)
	}
	r := newRivals(d, base)
	o.unrounded = r.saving
	var err error
	o.Flips, err = r.flips(ctx)
	return o, err
}

// PairFlips is what would change the verdict, nil when that is one-sided. It is quick
// enough for every change of the scenario; its only error is ctx's.
func PairFlips(ctx context.Context, c *Comparison) (*PairOutlook, error) {
	r := rivalsOf(c, c.Verdict.Reel, c.Verdict.Boxed)
	if r == nil || c.Verdict.Pair == nil {
		return nil, ctx.Err()
	}
	flips, err := r.flips(ctx)
	if err != nil {
		return nil, err
	}
	return &PairOutlook{Offer: c.Verdict.Reel, Other: c.Verdict.Boxed, Saving: r.saving, Flips: flips}, nil
}

// rivalsOf holds one computed offer against another, nil when either is not there.
func rivalsOf(c *Comparison, offer, other string) *rivals {
	d := duelOf(c, offer, other)
	if d == nil {
		return nil
	}
	return newRivals(*d, nil)
}

func duelOf(c *Comparison, offer, other string) *duel {
	o, b := c.Find(offer), c.Find(other)
	if o == nil || b == nil || o == b {
		return nil
	}
	g := newGatherer(&c.Scenario, nil)
	d := &duel{names: [2]string{offer, other}, rates: c.Scenario.Rates}
	d.terms[offerSide], _ = g.terms(c.index(o))
	d.terms[otherSide], _ = g.terms(c.index(b))
	return d
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
	return errors.Join(errs...)
}
