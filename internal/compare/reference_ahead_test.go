package compare_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// A second reading of what would change the answer, by the reference, which shares no line
// with the engine: every value that the outlook names is typed into the scenario, and the
// whole year is lived through again.

// refUnrounded is a scenario in money that is never rounded.
func refUnrounded(s scenario.Scenario) scenario.Scenario {
	s = s.Clone()
	s.Home += exactMoney
	for i := range s.Offers {
		s.Offers[i].Currency += exactMoney
	}
	for i := range s.Rates {
		s.Rates[i].One += exactMoney
		s.Rates[i].In += exactMoney
	}
	return s
}

// refTyped is a scenario with an input of a pair at x, as far as 40 places say it.
func refTyped(s scenario.Scenario, offer, other string, input scenario.Input, x exact.Fraction) scenario.Scenario {
	if input != scenario.InputRollsAYear {
		return with(s, offer, other, input, x.Decimal(40))
	}
	s = s.Clone()
	year := refRollsAYear(s)
	for i, rolls := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = exact.FromDecimal(rolls).Mul(x).Quo(year).Decimal(40)
	}
	return s
}

func refRollsAYear(s scenario.Scenario) (year exact.Fraction) {
	for _, rolls := range s.Shooting.RollsPerMonth {
		year = year.Add(exact.FromDecimal(rolls))
	}
	return year
}

// refSaving is what an offer saves against another in a scenario, and what the other costs.
func refSaving(s scenario.Scenario, offer, other string) (saving, cost rat) {
	year := func(name string) rat { return refComputeOffer(s, refOfferNamed(s, name)).Year.Cost }
	cost = year(other)
	return cost.minus(year(offer)), cost
}

// decimalYear lifts the rolls of a year to a number by which every whole number can be
// divided to the last digit.
func decimalYear(s *scenario.Scenario) bool {
	year := refRollsAYear(*s)
	m := slices.IndexFunc(s.Shooting.RollsPerMonth[:], func(d scenario.Decimal) bool { return d.IsPositive() })
	for _, n := range []int64{1, 2, 4, 5, 8, 10, 16, 20, 25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 256} {
		if more := exact.Int(n).Sub(year); m >= 0 && more.Sign() >= 0 {
			s.Shooting.RollsPerMonth[m] = s.Shooting.RollsPerMonth[m].Add(more.Decimal(20))
			return true
		}
	}
	return false
}

// secondReading asks the reference after the outlook of a pair.
type secondReading struct {
	t     *testing.T
	name  string
	s     scenario.Scenario
	pair  *compare.PairOutlook
	asked map[string]int
	r     *rand.Rand
}

func (r *secondReading) sign(input scenario.Input, x exact.Fraction) int {
	saving, _ := refSaving(refUnrounded(refTyped(r.s, r.pair.Offer, r.pair.Other, input, x)), r.pair.Offer, r.pair.Other)
	return saving.get().Sign()
}

func (r *secondReading) wrong(format string, args ...any) {
	r.t.Helper()
	r.t.Errorf(r.name+", "+r.pair.Offer+" against "+r.pair.Other+": "+format, args...)
}

// flips asks at every flip, right before it, and here and there between it and today's.
func (r *secondReading) flips() {
	saving, _ := refSaving(refUnrounded(r.s), r.pair.Offer, r.pair.Other)
	if r.pair.Saving.Text(20) != exactly(saving).Text(20) {
		r.wrong("saves %s, want %s", r.pair.Saving, saving)
	}
	today := saving.get().Sign()
	for _, f := range r.pair.Flips {
		p := probe{flip: f}
		for _, way := range []int64{-1, 1} {
			at, end := f.Below, exact.Fraction{}
			if way > 0 {
				at, end = f.Above, p.most()
			}
			if at != nil {
				end = *at
				r.asked[string(f.Input)]++
				if !r.turns(p, *at, way, today) {
					r.wrong("%s flips at %s, says nobody else", f.Input, at)
				}
			}
			r.nothingBefore(f, end, today)
		}
	}
}

// turns says whether the saving is opposite at a flip or a hair beyond it.
func (r *secondReading) turns(p probe, at exact.Fraction, way int64, today int) bool {
	if today == 0 {
		return false
	}
	if p.steps() {
		return r.sign(p.flip.Input, at) == -today
	}
	hair := exact.Ratio(way, 1_000_000_000_000).Mul(exact.Max(at, exact.Ratio(1, 1000)))
	if after := at.Add(hair); after.Sign() > 0 && r.sign(p.flip.Input, after) == -today {
		return true
	}
	return r.sign(p.flip.Input, at) == -today
}

// nothingBefore asks at some places between today's value and a flip, or the end of what is
// searched.
func (r *secondReading) nothingBefore(f compare.Flip, end exact.Fraction, today int) {
	steps := map[scenario.Input]int64{scenario.InputSpoiledPercent: 10, scenario.InputRollsAYear: 1}[f.Input]
	for _, part := range []int64{999_999, 900_000 + r.r.Int64N(99_000), 1 + r.r.Int64N(900_000)} {
		x := f.Today.Add(end.Sub(f.Today).Mul(exact.Ratio(part, 1_000_000)))
		if steps > 0 { // towards today's
			n := x.Mul(exact.Int(steps))
			if x = n.Floor(); f.Today.Less(end) == false {
				x = n.Ceil()
			}
			if x = x.Quo(exact.Int(steps)); x.Equal(end) || x.Sign() <= 0 {
				continue
			}
		}
		if x.Sign() > 0 && today != 0 && r.sign(f.Input, x) == -today {
			r.wrong("%s flips at %s already, before %s", f.Input, x, end)
		}
	}
}

// volumes asks at both ends of every range, and once within.
func (r *secondReading) volumes() {
	for _, v := range r.pair.Volumes {
		for _, n := range []int{v.From, v.From + r.r.IntN(v.To-v.From+1), v.To} {
			r.asked["volumes"]++
			s := refTyped(r.s, r.pair.Offer, r.pair.Other, scenario.InputRollsAYear, exact.Int(int64(n)))
			saving, cost := refSaving(refUnrounded(s), r.pair.Offer, r.pair.Other)
			want := choose(saving.positive(), compare.CheaperOffer, compare.CheaperOther)
			if saving.zero() || saving.magnitude().times(whole(20)).below(cost) {
				want = compare.CheaperEven
			}
			if v.Cheaper != want {
				r.wrong("at %d rolls a year %s, want %s", n, v.Cheaper, want)
			}
		}
	}
}

// swings compares both ends, to the cent, and that what is left out moves nothing.
func (r *secondReading) swings() {
	told := map[scenario.Input]bool{}
	for _, w := range r.pair.Swings {
		told[w.Input] = true
		for x, got := range map[exact.Fraction]exact.Fraction{w.Low: w.SavingLow, w.High: w.SavingHigh} {
			r.asked["swings"]++
			saving, _ := refSaving(refTyped(r.s, r.pair.Offer, r.pair.Other, w.Input, x), r.pair.Offer, r.pair.Other)
			if got.Text(20) != exactly(saving).Text(20) {
				r.wrong("%s at %s saves %s, want %s", w.Input, x, got, saving)
			}
		}
	}
	for _, f := range r.pair.Flips {
		if told[f.Input] || f.Today.IsZero() || f.Input == scenario.InputRollsAYear || f.Input == scenario.InputSpoiledPercent {
			continue
		}
		tenth := f.Today.Quo(exact.Int(10))
		low, _ := refSaving(refTyped(r.s, r.pair.Offer, r.pair.Other, f.Input, f.Today.Sub(tenth)), r.pair.Offer, r.pair.Other)
		high, _ := refSaving(refTyped(r.s, r.pair.Offer, r.pair.Other, f.Input, f.Today.Add(tenth)), r.pair.Offer, r.pair.Other)
		if !low.is(high) {
			r.wrong("%s is not among what moves the saving, and moves it from %s to %s", f.Input, low, high)
		}
	}
}

func TestOutlookAgreesWithTheReference(t *testing.T) {
	asked := map[string]int{}
	r := rand.New(rand.NewPCG(3, 4))
	for seed := range choose(testing.Short(), 4, 25) {
		s := anyScenario.Example(seed + 21_000)
		if seed%3 == 0 {
			balance(&s)
		}
		s.Ranges = nil
		if !decimalYear(&s) {
			continue
		}
		c := compare.Compare(s, nil, scenario.Date{})
		ahead, err := compare.LookAhead(t.Context(), &c, exact.Int(compare.CeilingPercent))
		if err != nil {
			t.Fatal(err)
		}
		name := "seed " + decimal.NewFromInt(int64(seed)).String()
		for i := range ahead.Outlook.Offers {
			o := &ahead.Outlook.Offers[i]
			if c.Offers[i].Fault == nil {
				refSizes(t, name, s, i, o, asked)
			}
			if o.Pair != nil {
				r := secondReading{t, name, s, o.Pair, asked, r}
				r.flips()
				r.volumes()
				r.swings()
			}
		}
		if p := ahead.Outlook.Pair; p != nil {
			r := secondReading{t, name, s, p, asked, r}
			r.flips()
			r.volumes()
		}
		if t.Failed() {
			t.Fatal(compact(s))
		}
	}
	if testing.Short() {
		return // too few for all to have come about
	}
	for _, what := range []string{"offer.price", "baseline.price", "shooting.rolls_a_year", "volumes", "swings", "order sizes", "best sizes", "ceilings", "cuts"} {
		if asked[what] < 3 {
			t.Errorf("%s were asked after %d times", what, asked[what])
		}
	}
	t.Log(asked)
}
