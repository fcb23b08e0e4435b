package compare_test

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// A deal is an offer that has not been taken yet: one is taken out of a random scenario and
// asked about; what is answered is computed anew by the reference.
func TestDealsAreRecomputedPlainly(t *testing.T) {
	met := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		s := anyScenario.Draw(t, "scenario")
		i := rapid.IntRange(0, len(s.Offers)-1).Draw(t, "deal")
		deal := compare.Deal{Offer: s.Offers[i], SavingPercent: exact.Int(10)}
		deal.Offer.Name = "the deal"
		if rapid.Bool().Draw(t, "developing left open") {
			deal.Offer.Developing = ""
		}
		s.Offers = append(s.Offers[:i:i], s.Offers[i+1:]...)
		c := compare.Compare(s, nil, scenario.Date{})
		a := compare.Weigh(&c, deal)
		want := reference(s)
		other := refCheapestRoll(want, deal.Offer.Developing != "")
		if other == nil {
			if a.Other != "" || a.Against != nil || a.MostBad != nil || a.Verdict != compare.DealUnknown {
				t.Fatalf("compared with %q\n%s", a.Other, compact(s))
			}
			return
		}
		o := deal.Offer
		if o.Developing == "" {
			o.Developing = refOfferNamed(s, other.Name).Developing
		}
		got := refComputeOffer(s, o)
		if (got.Fault != "") != (a.Fault != nil) {
			t.Fatalf("%v, want %q\n%s", a.Fault, got.Fault, compact(s))
		}
		if a.Fault != nil {
			return
		}
		if a.Other != other.Name || a.CostOfRoll.Text(20) != exactly(got.PerRoll.Total).Text(20) {
			t.Fatalf("%s against %q, want %s against %q\n%s", a.CostOfRoll, a.Other, got.PerRoll.Total, other.Name, compact(s))
		}
		s.Offers = append(s.Offers, a.Offer)
		kept := compare.Compare(s, nil, scenario.Date{})
		if in := kept.Find("the deal"); !in.PerRoll.Total.Equal(a.CostOfRoll) {
			t.Fatalf("a roll is said to cost %s, kept it costs %s\n%s", a.CostOfRoll, in.PerRoll.Total, compact(s))
		}
		met[mostBadHolds(t, s, o, a, other.PerRoll.Total)]++
	})
	for _, what := range []string{"none", "rolls", "a reel's percent"} {
		if met[what] == 0 && !testing.Short() { // few draws may miss one
			t.Errorf("%s never came about: %v", what, met)
		}
	}
}

func exactly(a rat) exact.Fraction {
	return exact.FromDecimal(decimal.NewFromBigInt(a.get().Num(), 0)).Quo(exact.FromDecimal(decimal.NewFromBigInt(a.get().Denom(), 0)))
}

// refCheapestRoll is the offer whose rolls cost least, among those that count developing
// if there is one or if only such will do.
func refCheapestRoll(c refComparison, only bool) *refOffer {
	for _, counts := range []bool{true, false} {
		var best *refOffer
		for i, o := range c.Offers {
			if o.Fault == "" && o.CountsDeveloping == counts && (best == nil || o.PerRoll.Total.below(best.PerRoll.Total)) {
				best = &c.Offers[i]
			}
		}
		if best != nil || only {
			return best
		}
	}
	return nil
}

// mostBadHolds computes a roll at every number of bad rolls, at every tenth of a percent.
func mostBadHolds(t *rapid.T, s scenario.Scenario, o scenario.Offer, a compare.DealAnswer, most rat) string {
	y, _ := refYieldOf(o)
	order := refLand(s, o, typed(o.Price))
	parts := 1000
	if o.Kind == scenario.KindBoxed {
		parts = o.Units * o.Boxed.RollsPerPack
	}
	last, step := -1, max(1, parts/60)
	costs := func(bad int) rat {
		worse := y
		worse.Good = whole(y.Exposures).times(whole(parts - bad)).over(whole(parts))
		return refPerRollOf(s, o, order, worse).Total
	}
	if a.MostBad != nil {
		last = int(a.MostBad.Percent.Mul(exact.Ratio(int64(parts), 100)).Floor().Float())
		if parts < 1000 && (a.MostBad.Rolls != last || a.MostBad.Of != parts) {
			t.Fatalf("%+v of %d rolls", a.MostBad, parts)
		}
	}
	for bad := last + 1; bad < parts; bad += step {
		if !costs(bad).above(most) {
			t.Fatalf("%d of %d may be bad, but at %d a roll costs %s, not more than %s\n%s", last, parts, bad, costs(bad), most, compact(s))
		}
	}
	if last < 0 {
		return "none"
	}
	if costs(last).above(most) {
		t.Fatalf("%d of %d may be bad, but then a roll costs %s, more than %s\n%s", last, parts, costs(last), most, compact(s))
	}
	if o.Kind == scenario.KindBoxed {
		return "rolls"
	}
	return "a reel's percent"
}
