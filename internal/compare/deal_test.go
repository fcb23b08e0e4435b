package compare

import (
	"reflect"
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// An old box of ten for EUR 60 and EUR 5 postage, half of it expected to be bad: five good
// rolls for 65, so EUR 13 a roll against the shop's 10. To save 10 %, a roll may cost 9, the
// box 45, less the postage 40. The pack of the scenario is cheaper, at 8 a roll.
func TestOldBoxWorkedOutByHand(t *testing.T) {
	s := rollOrPack(nil)
	before := s.Clone()
	c := Compare(s, nil, scenario.Date{})
	box := scenario.Offer{Kind: scenario.KindBoxed, Currency: "EUR", Price: dec("60"), Shipping: dec("5"), Boxed: &scenario.Boxed{RollsPerPack: 10, Exposures: 36, SpoiledPercent: dec("50")}}
	a := Weigh(&c, Deal{Offer: box, Other: "roll", SavingPercent: exact.Int(10)})
	if a.Fault != nil {
		t.Fatal(a.Fault)
	}
	sameFigure(t, "cost of a roll", a.CostOfRoll, "13")
	sameFigure(t, "good rolls", a.GoodRolls, "5")
	sameFigure(t, "saving a roll", a.Against.SavingPerRoll, "-3")
	sameFigure(t, "ceiling", a.Ceiling.Price, "40")
	if a.Verdict != DealNoSaving || a.Against.RuinedUnits != nil || a.Other != "roll" {
		t.Errorf("%+v", a)
	}
	if cheapest := Weigh(&c, Deal{Offer: box}); cheapest.Other != "pack" {
		t.Errorf("compared with %q", cheapest.Other)
	}
	// At 65 landed, seven good rolls come to 9.29 each and six to 10.83.
	if m := a.MostBad; m == nil || m.Rolls != 3 || m.Of != 10 {
		t.Errorf("%+v may be bad, want 3 of 10", m)
	}
	box.Price = dec("40")
	if a = Weigh(&c, Deal{Offer: box, Other: "roll", SavingPercent: exact.Int(10)}); a.Verdict != DealTake {
		t.Errorf("at the ceiling: %s", a.Verdict)
	}
	// Sixty rolls at 9 instead of 10 save EUR 60 a year, in which a box of 45 may be lost 1⅓ times.
	sameRatio(t, "ruined boxes", a.Against.RuinedUnits, exact.Ratio(4, 3))
	box.Price = dec("44")
	if a = Weigh(&c, Deal{Offer: box, Other: "roll", SavingPercent: exact.Int(10)}); a.Verdict != DealCheaper {
		t.Errorf("above the ceiling: %s", a.Verdict)
	}
	if !reflect.DeepEqual(s, before) || !reflect.DeepEqual(c.Scenario, before) {
		t.Error("weighing a deal changes the scenario")
	}
}

func sameRatio(t *testing.T, what string, got *exact.Fraction, want exact.Fraction) {
	t.Helper()
	if got == nil || !got.Equal(want) {
		t.Errorf("%s: %v, want %s", what, got, want)
	}
}

// A reel offered is what the same reel in the scenario comes to, spoiled as expected.
func TestOfferedReelIsAnOfferOfTheScenario(t *testing.T) {
	s := quayside()
	c := Compare(s, nil, scenario.Date{})
	reel := s.Offers[2]
	a := Weigh(&c, Deal{Offer: reel, Other: s.Baseline, SavingPercent: exact.Int(10)})
	want := c.Offers[2]
	if a.Fault != nil || !a.CostOfRoll.Equal(want.PerRoll.Total) || !a.Landed.Equal(want.Order.Landed) || !reflect.DeepEqual(a.Against, want.Against) {
		t.Errorf("%+v, want %+v", a, want)
	}
}

func TestDealsThatCannotBeComputed(t *testing.T) {
	c := Compare(rollOrPack(nil), nil, scenario.Date{})
	box := scenario.Offer{Kind: scenario.KindBoxed, Currency: "USD", Price: dec("60"), Boxed: &scenario.Boxed{RollsPerPack: 10, Exposures: 36}}
	if a := Weigh(&c, Deal{Offer: box}); a.Fault == nil || a.Fault.Code != FaultNoRate {
		t.Errorf("%+v", a)
	}
	box.Currency = "EUR"
	for _, bad := range []string{"100", "-1"} {
		box.Boxed.SpoiledPercent = dec(bad)
		if a := Weigh(&c, Deal{Offer: box}); a.Fault == nil {
			t.Errorf("%s %% bad was taken", bad)
		}
	}
	box.Boxed.SpoiledPercent = dec("0")
	for _, other := range []string{"nobody", ""} {
		if other == "" {
			c = Compare(scenario.New("alone", "EUR", scenario.Month{Year: 2027, Month: 1}), nil, scenario.Date{})
			c.Scenario.Offers, c.Offers = nil, nil
		}
		if a := Weigh(&c, Deal{Offer: box, Other: other}); a.Fault != nil || a.Verdict != DealUnknown || a.Against != nil {
			t.Errorf("with nothing to compare it with: %+v", a)
		}
	}
}

// Payback after 11 rolls at 2, 2, 3, 4 a month: 11 are shot by the end of April. Beyond
// the year its months come round again.
func TestMonthShot(t *testing.T) {
	s := quayside()
	for rolls, want := range map[int64]int{1: 1, 2: 1, 3: 2, 11: 4, 43: 12, 44: 13, 90: 26} {
		if got := MonthShot(&s, exact.Int(rolls)); got != want {
			t.Errorf("%d rolls are shot in month %d, want %d", rolls, got, want)
		}
	}
	// One a year: the hundredth is shot in the hundredth January, the next one too late to name.
	s.Shooting.RollsPerMonth = [12]scenario.Decimal{0: dec("1")}
	for rolls, want := range map[int64]int{100: 1189, 101: 0} {
		if got := MonthShot(&s, exact.Int(rolls)); got != want {
			t.Errorf("at one a year %d rolls are shot in month %d, want %d", rolls, got, want)
		}
	}
	s.Shooting.RollsPerMonth = [12]scenario.Decimal{}
	if got := MonthShot(&s, exact.Int(1)); got != 0 {
		t.Error("nothing is shot, yet month", got)
	}
}
