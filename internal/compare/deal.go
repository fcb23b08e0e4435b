package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Deal is film that somebody offers, perhaps old: what is asked for it, and how much
// of it is expected to be bad.
type Deal struct {
	// Offer is the film as an offer of the scenario: kind, currency, price, shipping as
	// the postage, what it holds. Its name is not looked at; with no developing it is
	// developed as the baseline is.
	Offer scenario.Offer
	// BadPercent of its exposures will be spoiled, from 0 to below 100, in place of the
	// offer's own.
	BadPercent scenario.Decimal
	// SavingPercent is what it should save a roll, for the price ceiling.
	SavingPercent exact.Fraction
}

// DealAnswer is what a deal comes to. With a Fault nothing else is filled in.
type DealAnswer struct {
	Fault      *Fault
	Landed     exact.Fraction
	CostOfRoll exact.Fraction // in the long run, as Offer.PerRoll.Total
	GoodRolls  exact.Fraction // standard rolls expected of one unit
	Baseline   string         // "" where there is none to hold it against
	Against    *Against       // nil likewise
	Ceiling    *Ceiling       // likewise; nil as well where no price, or every price, saves as much
	Verdict    DealVerdict
}

// DealVerdict says whether to take a deal.
type DealVerdict string

// The verdicts on a deal, by what it costs a roll.
const (
	DealUnknown  DealVerdict = ""          // nothing to hold it against
	DealTake     DealVerdict = "take"      // saves at least the percent
	DealCheaper  DealVerdict = "cheaper"   // saves, but less than the percent
	DealNoSaving DealVerdict = "no-saving" // costs as much or more
)

// Weigh computes a deal within a compared scenario, which stays as it is.
func Weigh(c *Comparison, d Deal) DealAnswer {
	s := c.Scenario
	baseline := c.Baseline()
	o := d.offerIn(&s, baseline)
	s.Offers = append(s.Offers[:len(s.Offers):len(s.Offers)], o)
	g := newGatherer(&s, nil)
	t, fault := g.terms(len(s.Offers) - 1)
	if fault == nil {
		fault = d.spoil(&t)
	}
	if fault != nil {
		return DealAnswer{Fault: fault}
	}
	var offer Offer
	cost(&offer, &t)
	offer.Kind = o.Kind
	a := DealAnswer{Landed: offer.Order.Landed, CostOfRoll: offer.PerRoll.Total, GoodRolls: t.standardRolls()}
	if baseline == nil {
		return a
	}
	base, _ := g.terms(c.index(baseline))
	a.Baseline = baseline.Name
	a.Against = against(costed{&offer, &t}, costed{baseline, &base})
	a.Ceiling, _ = ceiling(context.Background(), &t, &baseline.PerRoll, d.SavingPercent, o.Currency)
	a.Verdict = d.verdict(a.Against)
	return a
}

// offerIn is the film as an offer of the scenario.
func (d Deal) offerIn(s *scenario.Scenario, baseline *Offer) scenario.Offer {
	o := d.Offer
	o.Units = max(o.Units, 1)
	if o.Developing == "" && baseline != nil {
		for i := range s.Offers {
			if s.Offers[i].Name == baseline.Name {
				o.Developing = s.Offers[i].Developing
				break
			}
		}
	}
	if o.Reel != nil {
		reel := *o.Reel
		reel.SpoiledPercent = scenario.Decimal{}
		o.Reel = &reel
	}
	return o
}

// spoil takes what is expected to be bad off the yield. It is found after developing,
// so that the cassettes stay.
func (d Deal) spoil(t *terms) *Fault {
	rule := scenario.InputSpoiledPercent.Rule()
	if code, bound := rule.Broken(d.BadPercent); code != "" {
		return found(FaultNoYield, "bad_percent", code,
			scenario.Args{Number: d.BadPercent, Bound: *bound, Rule: rule, Wanted: scenario.ValueNumber})
	}
	bad := exact.FromDecimal(d.BadPercent)
	t.yield.Good = t.yield.Good.Mul(exact.Int(100).Sub(bad).Percent())
	return nil
}

func (d Deal) verdict(a *Against) DealVerdict {
	switch {
	case a.SavingPercent == nil:
		return DealUnknown
	case !a.SavingPercent.Less(d.SavingPercent) && a.SavingPercent.Sign() > 0:
		return DealTake
	case a.SavingPercent.Sign() > 0:
		return DealCheaper
	}
	return DealNoSaving
}
