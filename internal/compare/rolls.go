package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// RollCost is an offer made ready to be costed per roll at one rate after another: what
// no rate moves is worked out beforehand. It may be used from several goroutines.
type RollCost struct {
	Name  string
	Kind  scenario.Kind
	Fault *Fault      // with one, nothing below is there
	Route money.Route // the quotes it goes by, from the seller's currency to home

	terms     terms
	seller    SellerLines
	perLanded exact.Fraction // what a roll costs for 1 that an order costs; above 0
	rest      exact.Fraction // of a roll, whatever an order costs
}

// RollCosts makes the offers of a scenario ready, in the order of the file. faults are
// those of Compare. baseline is the place of the offer the others are compared with, −1
// where it could not be computed.
func RollCosts(s scenario.Scenario, faults []scenario.Fault) (list []RollCost, baseline int) {
	g := newGatherer(&s, faults)
	list, baseline = make([]RollCost, len(s.Offers)), -1
	for i := range s.Offers {
		r := &list[i]
		r.Name, r.Kind = s.Offers[i].Name, s.Offers[i].Kind
		t, fault := g.terms(i)
		if fault != nil {
			r.Fault = fault
			continue
		}
		r.prepare(t)
		if baseline < 0 && r.Name == s.Baseline && !g.spoilt.baseline {
			baseline = i
		}
	}
	return list, baseline
}

func (r *RollCost) prepare(t terms) {
	r.terms, r.Route = t, t.route
	r.seller = t.sellerLines(t.asking.price)
	r.perLanded = exact.Int(1).Quo(t.rollsAnOrder())
	nothing := t.perRoll(&Order{})
	r.rest = nothing.Total
}

// Rate is the rate that the scenario's own quotes give: home for 1 of the seller's.
func (r *RollCost) Rate() exact.Fraction { return r.terms.rate }

// Landed is what an order costs at a rate of the seller's currency, above 0.
func (r *RollCost) Landed(rate exact.Fraction) exact.Fraction {
	t := r.terms
	t.rate = rate
	return t.orderOf(r.seller).Landed
}

// PerRoll is the cost of a standard roll in the long run (Offer.PerRoll.Total) where an
// order costs so much. It is PerLanded × landed + Rest.
func (r *RollCost) PerRoll(landed exact.Fraction) exact.Fraction {
	return r.perLanded.Mul(landed).Add(r.rest)
}

// PerLanded is what a roll costs for 1 that an order costs, above 0.
func (r *RollCost) PerLanded() exact.Fraction { return r.perLanded }

// Rest is the part of a roll's cost that does not go by what an order costs.
func (r *RollCost) Rest() exact.Fraction { return r.rest }
