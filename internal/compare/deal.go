package compare

import (
	"context"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Deal is film that somebody offers, perhaps old: what is asked for it, and how much
// of it is expected to be bad.
type Deal struct {
	// Offer is the film as an offer of the scenario: kind, currency, price, shipping as
	// the postage, what it holds and how much of that will be spoiled. Its name is not
	// looked at; with no developing it is developed as what it is compared with.
	Offer scenario.Offer
	// Other is what it is compared with; "" for the computed offer whose rolls cost least,
	// among those that count developing if there are such.
	Other string
	// SavingPercent is what it should save a roll, for the verdict and the price ceiling.
	SavingPercent exact.Fraction
}

// DealAnswer is what a deal comes to. With a Fault nothing else is filled in.
type DealAnswer struct {
	Fault      *Fault
	Offer      scenario.Offer // as it was computed: kept so, a roll of it costs CostOfRoll
	Landed     exact.Fraction
	CostOfRoll exact.Fraction // in the long run, as Offer.PerRoll.Total
	GoodRolls  exact.Fraction // standard rolls expected of one unit
	Other      string         // what it is compared with; "" where there is nothing
	Against    *Against       // nil likewise
	Ceiling    *Ceiling       // likewise; nil as well where no price, or every price, saves as much
	MostBad    *MostBad       // likewise; nil as well where a roll costs more with none of it bad
	Verdict    DealVerdict
}

// DealVerdict says whether to take a deal.
type DealVerdict string

// The verdicts on a deal, by what it costs a roll.
const (
	DealUnknown  DealVerdict = ""          // nothing alike to compare it with
	DealTake     DealVerdict = "take"      // saves at least the percent
	DealCheaper  DealVerdict = "cheaper"   // saves, but less than the percent
	DealNoSaving DealVerdict = "no-saving" // costs as much or more
)

// Weigh computes a deal within a compared scenario, which stays as it is.
func Weigh(c *Comparison, d Deal) DealAnswer {
	s := c.Scenario
	other := d.other(c)
	o := d.offerIn(&s, other)
	s.Offers = append(s.Offers[:len(s.Offers):len(s.Offers)], o)
	g := newGatherer(&s, nil)
	t, fault := g.terms(len(s.Offers) - 1)
	if fault == nil {
		fault = believable(&o)
	}
	if fault != nil {
		return DealAnswer{Fault: fault}
	}
	var offer Offer
	cost(&offer, &t)
	offer.Kind = o.Kind
	a := DealAnswer{Offer: o, Landed: offer.Order.Landed, CostOfRoll: offer.PerRoll.Total, GoodRolls: t.standardRolls()}
	if other == nil {
		return a
	}
	rival, _ := g.terms(c.index(other))
	a.Other = other.Name
	a.Against = against(costed{&offer, &t}, costed{other, &rival})
	a.Ceiling, _ = ceiling(context.Background(), &t, &other.PerRoll, d.SavingPercent, o.Currency)
	a.MostBad = mostBad(&t, &offer.Order, other.PerRoll.Total)
	if offer.CountsDeveloping == other.CountsDeveloping {
		a.Verdict = d.verdict(a.Against)
	}
	return a
}

// other is the computed offer that a deal is compared with, nil for none.
func (d Deal) other(c *Comparison) (best *Offer) {
	if d.Other != "" {
		if o := c.Find(d.Other); o != nil && o.Fault == nil {
			return o
		}
		return nil
	}
	for i := range c.Offers {
		o := &c.Offers[i]
		switch {
		case o.Fault != nil || d.Offer.Developing != "" && !o.CountsDeveloping:
		case best == nil, o.CountsDeveloping && !best.CountsDeveloping,
			o.CountsDeveloping == best.CountsDeveloping && o.PerRoll.Total.Less(best.PerRoll.Total):
			best = o
		}
	}
	return best
}

// offerIn is the film as an offer of the scenario.
func (d Deal) offerIn(s *scenario.Scenario, other *Offer) scenario.Offer {
	o := d.Offer
	o.Units = max(o.Units, 1)
	if o.Developing == "" && other != nil {
		i := slices.IndexFunc(s.Offers, func(o scenario.Offer) bool { return o.Name == other.Name })
		o.Developing = s.Offers[i].Developing
	}
	if o.Reel != nil {
		reel := *o.Reel
		o.Reel = &reel
	}
	if o.Boxed != nil {
		boxed := *o.Boxed
		o.Boxed = &boxed
	}
	return o
}

// believable refuses a share of bad film that cannot be, which a scenario's own checks
// would find.
func believable(o *scenario.Offer) *Fault {
	percent, key := scenario.Decimal{}, ""
	if o.Reel != nil {
		percent, key = o.Reel.SpoiledPercent, "reel.spoiled_percent"
	} else if o.Boxed != nil {
		percent, key = o.Boxed.SpoiledPercent, "boxed.spoiled_percent"
	}
	rule := scenario.InputSpoiledPercent.Rule()
	if code, bound := rule.Broken(percent); code != "" {
		return found(FaultNoYield, key, code, scenario.Args{Number: percent, Bound: *bound, Rule: rule, Wanted: scenario.ValueNumber})
	}
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
