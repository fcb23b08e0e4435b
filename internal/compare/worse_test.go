package compare_test

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// What is dearer makes the year no cheaper, with no rounding anywhere, and a quote moves
// all who go by it the same way. Not told of are a price where shipping becomes free, which
// may fall for it, and what moves orders.
func TestWhatGetsDearerMakesNoYearCheaper(t *testing.T) {
	moved := map[scenario.Input]int{}
	rapid.Check(t, func(t *rapid.T) {
		s := anyScenario.Draw(t, "scenario")
		c := compare.Compare(s, nil, scenario.Date{})
		pair := rapid.Permutation(c.Offers).Draw(t, "pair")
		if len(pair) < 2 || pair[0].Fault != nil || pair[1].Fault != nil {
			return
		}
		offer, other := pair[0].Name, pair[1].Name
		for _, input := range dearer(s, offer, other) {
			today := todayOf(s, offer, other, input)
			more := today.Add(exact.FromDecimal(decimal.New(rapid.Int64Range(1, 5000).Draw(t, "more"), -2)))
			a, b := compare.CostsWith(s, offer, other, input, today, false)
			a2, b2 := compare.CostsWith(s, offer, other, input, more, false)
			if a2.Less(a) || b2.Less(b) {
				t.Fatalf("%s from %s to %s: %s falls from %s to %s, or %s from %s to %s\n%s", input, today, more, offer, a, a2, other, b, b2, compact(s))
			}
			if a.Less(a2) || b.Less(b2) {
				moved[input]++
			}
		}
		for _, r := range s.Rates {
			today := exact.FromDecimal(r.Equals)
			more := today.Mul(exact.FromDecimal(decimal.New(rapid.Int64Range(101, 900).Draw(t, "dearer"), -2)))
			a, b := compare.CostsWith(s, offer, other, scenario.RateInput(r), today, false)
			a2, b2 := compare.CostsWith(s, offer, other, scenario.RateInput(r), more, false)
			if a2.Less(a) && b.Less(b2) || a.Less(a2) && b2.Less(b) {
				t.Fatalf("1 %s from %s to %s %s: one falls from %s to %s, the other rises from %s to %s\n%s", r.One, today, more, r.In, a, a2, b, b2, compact(s))
			}
			if !a.Equal(a2) || !b.Equal(b2) {
				moved["a rate"]++
			}
		}
	})
	if testing.Short() {
		return // so few draws need not meet them all
	}
	for _, input := range []scenario.Input{"a rate", "offer.price", "baseline.price", "offer.shipping", "loading.hourly_value", "offer.developing",
		"baseline.developing", "border.duty_percent", "border.tax_percent"} {
		if moved[input] == 0 {
			t.Errorf("%s never moved a year", input)
		}
	}
}

// dearer are the inputs of which more is worse.
func dearer(s scenario.Scenario, offer, other string) (list []scenario.Input) {
	a, b := refOfferNamed(s, offer), refOfferNamed(s, other)
	if !a.FreeShippingFrom.Set {
		list = append(list, scenario.InputOfferPrice)
	}
	if !b.FreeShippingFrom.Set {
		list = append(list, scenario.InputBaselinePrice)
	}
	list = append(list, scenario.InputOfferShipping, scenario.InputHourlyValue, scenario.InputDutyPercent, scenario.InputTaxPercent)
	if refProcess(s, a) != nil {
		list = append(list, scenario.InputOfferDeveloping)
	}
	if refProcess(s, b) != nil {
		list = append(list, scenario.InputBaselineDeveloping)
	}
	return list
}

// todayOf is where an input stands.
func todayOf(s scenario.Scenario, offer, other string, input scenario.Input) exact.Fraction {
	a, b := refOfferNamed(s, offer), refOfferNamed(s, other)
	perCassette := func(o scenario.Offer) scenario.Decimal {
		if d := refProcess(s, o); d.Way == scenario.Lab {
			return d.Price
		} else {
			return d.ExtraPerRoll
		}
	}
	switch input {
	case scenario.InputOfferPrice:
		return exact.FromDecimal(a.Price)
	case scenario.InputBaselinePrice:
		return exact.FromDecimal(b.Price)
	case scenario.InputOfferShipping:
		return exact.FromDecimal(a.Shipping)
	case scenario.InputHourlyValue:
		return exact.FromDecimal(s.Loading.HourlyValue)
	case scenario.InputDutyPercent:
		return exact.FromDecimal(s.Border.DutyPercent)
	case scenario.InputTaxPercent:
		return exact.FromDecimal(s.Border.TaxPercent)
	case scenario.InputOfferDeveloping:
		return exact.FromDecimal(perCassette(a))
	}
	return exact.FromDecimal(perCassette(b))
}
