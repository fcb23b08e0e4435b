package compare_test

import (
	"context"
	"fmt"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// drawnOutlooks calls a test with random scenarios, their comparison and outlook.
func drawnOutlooks(t *testing.T, from, many int, try func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string)) {
	t.Helper()
	for seed := range many {
		s := anyScenario.Example(from + seed)
		c := compare.Compare(s, nil, scenario.Date{})
		ahead, err := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
		if err != nil {
			t.Fatal(err)
		}
		try(s, &c, ahead.Outlook, fmt.Sprintf("seed %d", from+seed))
	}
}

// with is the scenario with one input of a pair changed, where a decimal can say it.
func with(s scenario.Scenario, offer, other string, input scenario.Input, x scenario.Decimal) scenario.Scenario {
	s = s.Clone()
	of := func(name string) *scenario.Offer {
		for i := range s.Offers {
			if s.Offers[i].Name == name {
				return &s.Offers[i]
			}
		}
		panic(name)
	}
	// developAlone gives an offer a process of its own, like the one it had.
	developAlone := func(o *scenario.Offer) {
		d := *refProcess(s, *o)
		d.Name = "a process of its own"
		if d.Way == scenario.Lab {
			d.Price = x
		} else {
			d.ExtraPerRoll = x
		}
		s.Developing = append(s.Developing, d)
		o.Developing = d.Name
	}
	switch input {
	case "offer.price":
		of(offer).Price = x
	case "baseline.price":
		of(other).Price = x
	case "offer.shipping":
		of(offer).Shipping = x
	case "offer.spoiled_percent":
		if o := of(offer); o.Reel != nil {
			o.Reel.SpoiledPercent = x
		} else {
			o.Boxed.SpoiledPercent = x
		}
	case "loading.hourly_value":
		s.Loading.HourlyValue = x
	case "offer.developing":
		developAlone(of(offer))
	case "baseline.developing":
		developAlone(of(other))
	case "border.duty_percent":
		s.Border.DutyPercent = x
	case "border.tax_percent":
		s.Border.TaxPercent = x
	default:
		for i := range s.Rates {
			if scenario.RateInput(s.Rates[i]) == input {
				s.Rates[i].Equals = x
				return s
			}
		}
		panic(input)
	}
	return s
}

// Each end of a swing is what comparing the changed scenario gives.
func TestSwingsAreTheComparisonsOfChangedScenarios(t *testing.T) {
	swings := 0
	drawnOutlooks(t, 11_000, 150, func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		for _, offer := range o.Offers {
			if offer.Pair == nil {
				continue
			}
			for _, w := range offer.Pair.Swings {
				swings++
				ends := map[exact.Fraction]exact.Fraction{w.Low: w.SavingLow, w.High: w.SavingHigh}
				for x, saving := range ends {
					want := compare.SavingWith(s, offer.Name, s.Baseline, w.Input, x, true)
					if w.Input != scenario.InputRollsAYear {
						changed := compare.Compare(with(s, offer.Name, s.Baseline, w.Input, x.Decimal(30)), nil, scenario.Date{})
						want = changed.Baseline().Year.Cost.Sub(changed.Find(offer.Name).Year.Cost)
					}
					if !saving.Equal(want) {
						t.Errorf("%s, %s, %s at %s: %s, want %s", name, offer.Name, w.Input, x, saving, want)
					}
				}
				checkRange(t, name, w)
			}
		}
	})
	if swings < 500 {
		t.Errorf("only %d swings", swings)
	}
}

func checkRange(t *testing.T, name string, w compare.Swing) {
	t.Helper()
	tenth := w.Today.Mul(exact.Ratio(1, 10))
	low, high := w.Today.Sub(tenth), w.Today.Add(tenth)
	switch w.Input {
	case scenario.InputSpoiledPercent:
		low, high = exact.Int(0), exact.Min(exact.Int(99), exact.Max(exact.Int(10), w.Today.Add(w.Today)))
	case scenario.InputRollsAYear:
		if w.Low.Less(low) || !w.Low.Sub(exact.Int(1)).Less(low) || high.Less(w.High) || !high.Less(w.High.Add(exact.Int(1))) {
			t.Errorf("%s: rolls from %s to %s around %s", name, w.Low, w.High, w.Today)
		}
		return
	}
	if !w.Low.Equal(low) || !w.High.Equal(high) || w.SavingLow.Equal(w.SavingHigh) {
		t.Errorf("%s: %s from %s to %s around %s", name, w.Input, w.Low, w.High, w.Today)
	}
}

// Every size is what comparing with that many units gives; no allowed size beats the
// best, and of equals it is the smallest.
func TestOrderSizesAreTheComparisonsOfOtherUnits(t *testing.T) {
	reasons := map[compare.SizeReason]int{}
	drawnOutlooks(t, 12_000, 150, func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		for i, offer := range o.Offers {
			if c.Offers[i].Fault != nil {
				if offer.OrderSizes != nil || offer.Pair != nil {
					t.Errorf("%s: an offer with a fault has an outlook", name)
				}
				continue
			}
			bests, months := 0, exact.Int(int64(s.Months))
			var best compare.OrderSize
			for n, size := range offer.OrderSizes {
				changed := s.Clone()
				changed.Offers[i].Units = n + 1
				got := compare.Compare(changed, nil, scenario.Date{}).Offers[i]
				landed := got.Order.Landed.Quo(exact.Int(int64(n + 1)))
				if size.Units != n+1 || !size.LandedPerUnit.Equal(landed) || !size.TotalPerRoll.Equal(got.PerRoll.Total) {
					t.Fatalf("%s, %s: %d units: %+v", name, offer.Name, n+1, size)
				}
				if size.Best {
					bests++
					best = size
				}
				reasons[size.Why]++
			}
			if len(offer.OrderSizes) != 12 || bests != 1 {
				t.Fatalf("%s, %s: %d sizes, %d of them the best", name, offer.Name, len(offer.OrderSizes), bests)
			}
			for _, size := range offer.OrderSizes {
				allowed := size.MonthsToShoot != nil && !months.Less(*size.MonthsToShoot)
				cheaper := size.TotalPerRoll.Cmp(best.TotalPerRoll)
				if allowed && (cheaper < 0 || cheaper == 0 && size.Units < best.Units) {
					t.Errorf("%s, %s: %d units beat %d", name, offer.Name, size.Units, best.Units)
				}
				if size.Best && size.Units > 1 && !allowed {
					t.Errorf("%s, %s: %d units are not shot in time", name, offer.Name, size.Units)
				}
			}
		}
	})
	for _, why := range []compare.SizeReason{compare.SizeFreeShipping, compare.SizeShipping, compare.SizeFees, compare.SizeRounding,
		compare.SizeNoCheaper, compare.SizeOneLasts, compare.SizeNoDemand, compare.SizeTooMany, compare.SizeTooOld, compare.SizeOverLimit,
		compare.SizePaysPost, compare.SizeSharesLess, compare.SizeSame, compare.SizeDearer} {
		if reasons[why] == 0 {
			t.Errorf("no size is %s", why)
		}
	}
}

// At the ceiling the reel saves the percent, and at no price above it, all the way to
// where film alone costs more than the baseline's rolls.
func TestPriceCeilingsAreTheHighestPrices(t *testing.T) {
	ceilings, none := 0, 0
	drawnOutlooks(t, 13_000, 200, func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		for i, offer := range o.Offers {
			if c.Offers[i].Kind != scenario.KindReel || c.Offers[i].Against == nil || s.Offers[i].DiscountPercent.Equal(dec("100")) {
				if offer.Ceiling != nil {
					t.Errorf("%s, %s: a ceiling where there can be none", name, offer.Name)
				}
				continue
			}
			const most = 6000
			highest := compare.CeilingByHand(c, offer.Name, exact.Int(10), most)
			if offer.Ceiling == nil {
				if none++; highest != 0 {
					t.Errorf("%s, %s: no ceiling, want %d minor units", name, offer.Name, highest)
				}
				continue
			}
			ceilings++
			minor := offer.Ceiling.Price
			for range minorDigits[s.Offers[i].Currency] {
				minor = minor.Mul(exact.Int(10))
			}
			n, whole := minor.Int64()
			if !whole || highest != n && (highest < most && n < most) {
				t.Errorf("%s, %s: %s, want %d minor units", name, offer.Name, offer.Ceiling.Price, highest)
			}
			for step, price := range map[string]exact.Fraction{"at": offer.Ceiling.Price, "just above": offer.Ceiling.Price.Mul(exact.Ratio(n+1, n))} {
				at := compare.Compare(with(s, offer.Name, s.Baseline, "offer.price", price.Decimal(12)), nil, scenario.Date{})
				if saves := !at.Find(offer.Name).Against.SavingPercent.Less(exact.Int(10)); saves != (step == "at") {
					t.Errorf("%s, %s: %s the ceiling it saves: %v", name, offer.Name, step, saves)
				}
			}
		}
	})
	if ceilings < 60 || none < 5 {
		t.Errorf("%d ceilings, %d times none", ceilings, none)
	}
}

// The curve is both years themselves, and crosses where the flip is.
func TestCurvesAreTheYearsThemselves(t *testing.T) {
	crossed := 0
	for seed := range 120 {
		s := anyScenario.Example(14_000 + seed)
		pair := pairOf(t, s)
		if pair == nil {
			continue
		}
		c := compare.Compare(s, nil, scenario.Date{})
		for _, f := range pair.Flips {
			if f.Today.IsZero() {
				continue
			}
			curve, err := compare.CurveOf(context.Background(), &c, pair.Offer, pair.Other, f.Input, f.Today.Quo(exact.Int(4)), f.Today.Mul(exact.Int(3)), 9)
			if err != nil || curve == nil {
				t.Fatal(seed, f.Input, err)
			}
			if !sameOrNone(curve.Flip.Above, f.Above) || !sameOrNone(curve.Flip.Below, f.Below) || !curve.Today.Equal(f.Today) {
				t.Errorf("seed %d, %s: the curve's flip is another", seed, f.Input)
			}
			crossed += checkCurve(t, fmt.Sprintf("seed %d, %s", seed, f.Input), s, pair, curve)
		}
	}
	if crossed < 25 {
		t.Errorf("only %d curves cross", crossed)
	}
}

// checkCurve returns 1 where the two years change places between two points next to
// each other, around the flip.
func checkCurve(t *testing.T, name string, s scenario.Scenario, pair *compare.PairOutlook, c *compare.Curve) (crossed int) {
	t.Helper()
	for i, p := range c.Points {
		if i > 0 && p.At.Less(c.Points[i-1].At) {
			t.Fatalf("%s: the points do not run upwards", name)
		}
		jumps := i > 0 && c.Points[i-1].At.Equal(p.At) || i+1 < len(c.Points) && c.Points[i+1].At.Equal(p.At)
		if jumps {
			continue
		}
		if want := compare.SavingWith(s, pair.Offer, pair.Other, c.Input, p.At, false); !p.Other.Sub(p.Offer).Equal(want) {
			t.Errorf("%s at %s: %s, want %s", name, p.At, p.Other.Sub(p.Offer), want)
		}
	}
	for i := 1; i < len(c.Points); i++ {
		a, b := c.Points[i-1], c.Points[i]
		for _, at := range []*exact.Fraction{c.Flip.Below, c.Flip.Above} {
			if at != nil && !at.Less(a.At) && !b.At.Less(*at) && a.Other.Less(a.Offer) != b.Other.Less(b.Offer) {
				crossed = 1
			}
		}
	}
	return crossed
}

// Looking ahead is asking again: the pair's outlook is the one asked for alone, and the
// comparison stays as it is.
func TestOutlookOfThePairIsTheOneAskedForAlone(t *testing.T) {
	drawnOutlooks(t, 15_000, 60, func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		alone := pairOf(t, s)
		if (alone == nil) != (o.Pair == nil) || c.Outlook != nil {
			t.Fatal(name)
		}
		if alone == nil {
			return
		}
		for i, f := range alone.Flips {
			if g := o.Pair.Flips[i]; g.Input != f.Input || !sameOrNone(g.Below, f.Below) || !sameOrNone(g.Above, f.Above) {
				t.Errorf("%s: %+v and %+v", name, f, g)
			}
		}
	})
}
