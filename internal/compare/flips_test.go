package compare_test

import (
	"context"
	"math/rand/v2"
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// pairOf is the offers whose flips are checked in a scenario: the verdict's pair, or
// nil where there is none.
func pairOf(t *testing.T, s scenario.Scenario) *compare.PairOutlook {
	t.Helper()
	c := compare.Compare(s, nil, scenario.Date{})
	ahead, err := compare.LookAtPair(context.Background(), &c)
	if err != nil {
		t.Fatal(err)
	}
	return ahead.Outlook.Pair
}

// probe is one input of a pair, with the saving computed anew wherever asked.
type probe struct {
	s    scenario.Scenario
	pair *compare.PairOutlook
	flip compare.Flip
}

func (p probe) sign(x exact.Fraction) int {
	return compare.SavingWith(p.s, p.pair.Offer, p.pair.Other, p.flip.Input, x, false).Sign()
}

func (p probe) steps() bool {
	return p.flip.Input == scenario.InputSpoiledPercent || p.flip.Input == scenario.InputRollsAYear
}

func (p probe) most() exact.Fraction {
	switch {
	case p.flip.Input == scenario.InputSpoiledPercent:
		return exact.Max(exact.Int(50), p.flip.Today)
	case p.flip.Input == scenario.InputRollsAYear:
		return exact.Min(exact.Int(500), p.flip.Today.Mul(exact.Int(10)))
	case p.flip.Today.IsZero():
		return exact.Int(100)
	}
	return p.flip.Today.Mul(exact.Int(10))
}

// grid is values to try: evenly from end to end, and ever closer to today's.
func (p probe) grid(r *rand.Rand, many int) (list []exact.Fraction) {
	one, most := exact.Int(1), p.most()
	unit := map[scenario.Input]int64{scenario.InputSpoiledPercent: 10, scenario.InputRollsAYear: 1}[p.flip.Input]
	for i := range many {
		x := most.Mul(exact.Ratio(int64(i)*1000+r.Int64N(1000)+1, int64(many)*1000))
		list = append(list, x)
		if i < 7 {
			near := exact.Ratio(1+r.Int64N(9), []int64{20, 100, 1000, 10_000, 1_000_000, 100_000_000, 10_000_000_000}[i])
			list = append(list, p.flip.Today.Mul(one.Add(near)), p.flip.Today.Mul(one.Sub(near)))
		}
	}
	if unit == 0 {
		return list
	}
	for i := range list {
		list[i] = exact.Max(exact.Ratio(choose[int64](p.flip.Input == scenario.InputRollsAYear, 1, 0), 1),
			exact.Min(most, list[i].Mul(exact.Int(unit)).Floor().Quo(exact.Int(unit))))
	}
	return list
}

// problem says what is wrong with a flip, "" for nothing.
func (p probe) problem(r *rand.Rand, many int) string {
	nothingShot := p.flip.Input == scenario.InputRollsAYear && p.flip.Today.IsZero()
	today := 0
	if !nothingShot {
		today = p.sign(p.flip.Today)
	}
	if today == 0 {
		if p.flip.Below != nil || p.flip.Above != nil {
			return "there is nothing to flip"
		}
		return ""
	}
	for _, x := range p.grid(r, many) {
		if x.Sign() < 0 || p.most().Less(x) || p.sign(x) != -today {
			continue
		}
		if p.flip.Today.Less(x) && (p.flip.Above == nil || x.Less(*p.flip.Above)) {
			return "a flip nearer above, at or before " + x.String()
		}
		if x.Less(p.flip.Today) && (p.flip.Below == nil || p.flip.Below.Less(x)) {
			return "a flip nearer below, at or before " + x.String()
		}
	}
	if at := p.flip.Above; at != nil && !p.turnsAt(*at, 1, today) {
		return "no flip above at " + at.String()
	}
	if at := p.flip.Below; at != nil && !p.turnsAt(*at, -1, today) {
		return "no flip below at " + at.String()
	}
	return ""
}

// turnsAt evaluates both sides of a flip: not opposite a hair before it, opposite at
// it or a hair after. A step is opposite itself.
func (p probe) turnsAt(at exact.Fraction, way int64, today int) bool {
	if (at.Cmp(p.flip.Today) == -int(way)) || p.most().Less(at) || at.Sign() < 0 {
		return false
	}
	if p.steps() {
		return !at.Equal(p.flip.Today) && p.sign(at) == -today
	}
	hair := exact.Ratio(way, 1_000_000_000_000).Mul(exact.Max(at, exact.Ratio(1, 1000)))
	if before := at.Sub(hair); !at.Equal(p.flip.Today) && p.sign(before) == -today {
		return false
	}
	after := at.Add(hair)
	return p.sign(at) == -today || after.Sign() > 0 && p.sign(after) == -today
}

// A grid of values finds no flip nearer than the solver's, and every flip turns the
// answer, whatever the scenario.
func TestNoGridFindsANearerFlip(t *testing.T) {
	scenarios, many := 500, 16
	if testing.Short() {
		scenarios = 60
	}
	found := map[scenario.Input]int{}
	r := rand.New(rand.NewPCG(1, 2))
	for seed := range scenarios {
		s := anyScenario.Example(seed + 7000)
		if seed%2 == 1 {
			balance(&s) // near zero, where small inputs flip it too
		}
		pair := pairOf(t, s)
		if pair == nil {
			continue
		}
		for _, f := range pair.Flips {
			input := f.Input
			if _, rate := input.Quote(); rate {
				input = "rate"
			}
			for _, at := range []*exact.Fraction{f.Below, f.Above} {
				if at != nil {
					found[input]++
				}
			}
			if wrong := (probe{s, pair, f}).problem(r, many); wrong != "" {
				t.Fatalf("seed %d, %s: %s (today %s, below %v, above %v)\n%s", seed, f.Input, wrong, f.Today, f.Below, f.Above, compact(s))
			}
		}
	}
	for _, input := range append((&scenario.Scenario{}).Inputs(), "rate") {
		if found[input] < scenarios/100 {
			t.Errorf("only %d flips of %s were tried", found[input], input)
		}
	}
}

// Every step between today and the flip is tried, none left out.
func TestNoStepIsNearerThanTheFlip(t *testing.T) {
	for seed := range choose(testing.Short(), 10, 40) {
		s := anyScenario.Example(seed + 9000)
		pair := pairOf(t, s)
		if pair == nil {
			continue
		}
		for _, f := range pair.Flips {
			p := probe{s, pair, f}
			if !p.steps() || f.Today.IsZero() {
				continue
			}
			step, today := exact.Int(1), p.sign(f.Today)
			x := exact.Int(1)
			if f.Input == scenario.InputSpoiledPercent {
				step, x = exact.Ratio(1, 10), exact.Fraction{}
			}
			var below, above *exact.Fraction
			for ; today != 0 && !p.most().Less(x); x = x.Add(step) {
				if p.sign(x) != -today {
					continue
				}
				at := x
				if x.Less(f.Today) {
					below = &at
				} else if f.Today.Less(x) && above == nil {
					above = &at
				}
			}
			if !sameOrNone(below, f.Below) || !sameOrNone(above, f.Above) {
				t.Fatalf("seed %d, %s: below %v and above %v, want %v and %v\n%s", seed, f.Input, f.Below, f.Above, below, above, compact(s))
			}
		}
	}
}

func sameOrNone(a, b *exact.Fraction) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Equal(*b)
}

// An input stands in the list where it applies, and nowhere else.
func TestOnlyInputsThatApplyAreListed(t *testing.T) {
	for seed := range 300 {
		s := anyScenario.Example(seed + 4000)
		pair := pairOf(t, s)
		if pair == nil {
			continue
		}
		offers := map[string]scenario.Offer{}
		for _, o := range s.Offers {
			offers[o.Name] = o
		}
		a, b := offers[pair.Offer], offers[pair.Other]
		spends := func(o scenario.Offer) bool {
			d := refProcess(s, o)
			loads := o.Kind == scenario.KindReel && (s.Loading.MinutesPerReel.IsPositive() || s.Loading.MinutesPerRoll.IsPositive())
			return loads || d != nil && d.Way == scenario.Home && d.MinutesPerRoll.IsPositive()
		}
		imports := func(o scenario.Offer) bool {
			return o.Import == scenario.ImportBorder || o.Import == scenario.ImportPrepaid
		}
		want := map[scenario.Input]bool{"offer.price": true, "baseline.price": true, "offer.shipping": true,
			"offer.spoiled_percent": a.Kind == scenario.KindReel || a.Boxed.SpoiledPercent.IsPositive(), "loading.hourly_value": spends(a) || spends(b),
			"offer.developing": a.Developing != "", "baseline.developing": b.Developing != "",
			"border.duty_percent": imports(a) || imports(b), "border.tax_percent": imports(a) || imports(b), "shooting.rolls_a_year": true}
		for _, o := range []scenario.Offer{a, b} {
			route, _ := refRoute(s, o.Currency)
			for _, step := range route {
				want[scenario.RateInput(s.Rates[step.Index])] = true
			}
		}
		got := map[scenario.Input]bool{}
		for _, f := range pair.Flips {
			if !want[f.Input] || got[f.Input] {
				t.Errorf("seed %d: %s is listed", seed, f.Input)
			}
			got[f.Input] = true
		}
		for input, applies := range want {
			if applies && !got[input] {
				t.Errorf("seed %d: %s is missing", seed, input)
			}
		}
	}
}

// Stopping is quick and says so.
func TestAStoppedSearchEnds(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	c := compare.Compare(quaysideByHand(), nil, scenario.Date{})
	if _, err := compare.LookAtPair(ctx, &c); err != context.Canceled {
		t.Error(err)
	}
	if _, err := compare.LookAhead(ctx, &c, exact.Int(10)); err == nil || !strings.Contains(err.Error(), "canceled") {
		t.Error(err)
	}
}
