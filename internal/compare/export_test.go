package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// SavingWith is what an offer saves against another with one input at x: the years
// themselves, computed anew, with no way through pieces, counts or knobs. It is what
// the solver's flips are held against.
func SavingWith(s scenario.Scenario, offer, other string, input scenario.Input, x exact.Fraction, rounded bool) exact.Fraction {
	a, b := CostsWith(s, offer, other, input, x, rounded)
	return b.Sub(a)
}

// CostsWith is what the years of both cost with one input at x.
func CostsWith(s scenario.Scenario, offer, other string, input scenario.Input, x exact.Fraction, rounded bool) (offerCost, otherCost exact.Fraction) {
	g := newGatherer(&s, nil)
	var cost [2]exact.Fraction
	for i, name := range []string{offer, other} {
		for j := range s.Offers {
			if s.Offers[j].Name != name {
				continue
			}
			t, fault := g.terms(j)
			if fault != nil {
				panic(fault.Why)
			}
			set(&t, i == 0, input, x)
			if !rounded {
				t = t.withoutRounding()
			}
			cost[i] = t.year().Cost
			break
		}
	}
	return cost[0], cost[1]
}

// set writes an input into an offer's terms.
func set(t *terms, isOffer bool, input scenario.Input, x exact.Fraction) {
	switch {
	case input == "offer.price" && isOffer, input == "baseline.price" && !isOffer:
		t.asking.price = x
	case input == "offer.shipping" && isOffer:
		t.asking.shipping = x
	case input == "offer.spoiled_percent" && isOffer:
		t.yield.Good = exact.Int(int64(t.yield.Exposures)).Mul(exact.Int(1).Sub(x.Quo(exact.Int(100))))
	case input == "offer.developing" && isOffer, input == "baseline.developing" && !isOffer:
		t.developing.perCassette = x
	case input == "loading.hourly_value":
		t.hourly = x
	case input == "border.duty_percent":
		t.border.duty = x
	case input == "border.tax_percent":
		t.border.tax = x
	case input == "shooting.rolls_a_year":
		var year exact.Fraction
		for _, d := range t.shooting.demand {
			year = year.Add(d)
		}
		for i, d := range t.shooting.demand {
			t.shooting.demand[i] = d.Mul(x).Mul(t.shooting.rollExposures).Quo(year)
		}
	}
	pair, isRate := input.Quote()
	if !isRate {
		return
	}
	rate := exact.Int(1)
	for _, step := range t.route {
		each := exact.FromDecimal(step.Quote.Equals)
		if step.Quote.One+"/"+step.Quote.In == pair {
			each = x
		}
		if step.Against {
			each = exact.Int(1).Quo(each)
		}
		rate = rate.Mul(each)
	}
	t.rate = rate
}

// CeilingByHand tries every price of a reel from 1 minor unit to most of them and
// returns the highest, in minor units, at which it saves; 0 for none.
func CeilingByHand(c *Comparison, offer string, percent exact.Fraction, most int64) (highest int64) {
	g := newGatherer(&c.Scenario, nil)
	t, _ := g.terms(c.index(c.Find(offer)))
	base := c.Baseline().PerRoll.Total
	for n := int64(1); n <= most; n++ {
		t.asking.price = exact.Int(n)
		for range t.seller.places {
			t.asking.price = t.asking.price.Quo(exact.Int(10))
		}
		o := t.order(t.asking.price)
		if !base.Sub(t.perRoll(&o).Total).Mul(exact.Int(100)).Less(percent.Mul(base)) {
			highest = n
		}
	}
	return highest
}
