package compare

import (
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// A reel of five rolls at 9.90 each and a loader for k tenths of a euro, against rolls at
// 10: at k rolls a year both cost the same to the cent, which is not the opposite of
// dearer, so the answer turns at k − 1. A month's rolls are thirds, which floating point
// does not hold.
func TestASavingOfNothingIsNotTheOppositeHoweverRough(t *testing.T) {
	for k := int64(4); k <= 50; k++ {
		s := rollOrPack(func(s *scenario.Scenario, roll, pack *scenario.Offer) {
			asReel(pack)
			roll.Price, pack.Price = dec("10"), dec("49.5")
			s.Loading.Equipment = []scenario.Equipment{{Name: "loader", Price: dec("0.1").Mul(dec(exact.Int(k).String())), LastsRolls: 100}}
		})
		_, o := lookAhead(t, s)
		for _, f := range o.Pair.Flips {
			if f.Input == scenario.InputRollsAYear && (f.Below == nil || !f.Below.Equal(exact.Int(k-1))) {
				t.Errorf("the same at %d rolls a year, but the answer turns at %v", k, f.Below)
			}
		}
	}
}

// One twentieth cheaper to the last digit is cheaper, not about the same, at every number
// of rolls.
func TestExactlyTheShareOfACloseCallIsNoCloseCall(t *testing.T) {
	for _, price := range []string{"10.7", "3.1", "0.7", "14.83"} {
		s := rollOrPack(func(_ *scenario.Scenario, roll, pack *scenario.Offer) {
			roll.Price = dec(price)
			pack.Price, pack.Boxed.RollsPerPack = dec(price).Mul(dec("0.95")), 1
		})
		_, o := lookAhead(t, s)
		if v := o.Offers[1].Pair.Volumes; len(v) != 1 || v[0] != (VolumeRange{1, 500, CheaperOffer}) {
			t.Errorf("at %s: %v", price, v)
		}
	}
}

// What is turned down towards nothing: the last value before it is found, nothing itself
// only where the first cent brings a fee.
func TestFlipsNextToNothing(t *testing.T) {
	below := func(input Input, change func(s *scenario.Scenario, pack *scenario.Offer)) *exact.Fraction {
		_, o := lookAhead(t, rollOrPack(func(s *scenario.Scenario, _, pack *scenario.Offer) { change(s, pack) }))
		for _, f := range o.Offers[1].Pair.Flips {
			if f.Input == input {
				return f.Below
			}
		}
		t.Fatalf("%s is not listed", input)
		return nil
	}
	postage := func(price string) *exact.Fraction {
		return below(scenario.InputOfferShipping, func(_ *scenario.Scenario, pack *scenario.Offer) {
			pack.Price, pack.Shipping = dec(price), dec("5")
		})
	}
	if at := postage("49.999999"); at == nil || !at.Equal(exact.Ratio(1, 1_000_000)) {
		t.Errorf("five rolls at 49.999999 and postage, not dearer than 50 up to %v", at)
	}
	if at := postage("50"); at != nil {
		t.Errorf("without postage it costs the same, and yet the answer turns at %s", at)
	}
	duty := below(scenario.InputDutyPercent, func(s *scenario.Scenario, pack *scenario.Offer) {
		pack.Price, pack.Import = dec("45"), scenario.ImportBorder
		s.Border = scenario.Border{DutyPercent: dec("4"), HandlingFee: dec("6")}
	})
	if duty == nil || !duty.IsZero() {
		t.Errorf("any duty costs six more, but the answer turns at %v", duty)
	}
}

// What is nothing today has no share of itself to go by: its crossing is as far as doubling.
func TestCrossingsOfWhatIsNothingToday(t *testing.T) {
	flip := func(input Input, today, above int64) Flip {
		at := exact.Int(above)
		return Flip{Input: input, Today: exact.Int(today), Above: &at}
	}
	list := Crossings([]Flip{flip("far", 10, 21), flip("nothing", 0, 5), flip("near", 10, 19), flip("at once", 0, 0)})
	for i, want := range []Input{"at once", "near", "nothing", "far"} {
		if list[i].Input != want {
			t.Errorf("%d: %s, want %s", i, list[i].Input, want)
		}
	}
}

// A curve is drawn by straight strokes from point to point. What goes by a quote that is
// divided by bends, yet no stroke leaves it by more than a pixel of 600.
func TestStrokesOfACurveFollowIt(t *testing.T) {
	s := rollOrPack(func(s *scenario.Scenario, _, pack *scenario.Offer) {
		pack.Price, pack.Currency = dec("40"), "USD"
		s.Rates = []scenario.Rate{{One: "EUR", Equals: dec("1.1"), In: "USD"}}
	})
	c, _ := lookAhead(t, s)
	ahead, err := LookAhead(t.Context(), c, exact.Int(CeilingPercent))
	if err != nil {
		t.Fatal(err)
	}
	look, err := ahead.LookAt(t.Context(), "pack", "rate:EUR/USD", false)
	if err != nil || look.Curve == nil {
		t.Fatal(look, err)
	}
	points := look.Curve.Points
	least, most := points[0].Offer, points[0].Offer
	for _, p := range points {
		least, most = exact.Min(least, p.Offer), exact.Max(most, p.Offer)
	}
	pixel := most.Sub(least).Quo(exact.Int(600))
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		half := a.At.Add(b.At).Quo(exact.Int(2))
		offer, _ := CostsWith(s, "pack", "roll", "rate:EUR/USD", half, false)
		if off := a.Offer.Add(b.Offer).Quo(exact.Int(2)).Sub(offer).Abs(); pixel.Less(off) {
			t.Errorf("at %s the stroke is off by %s, a pixel is %s", half.Text(4), off.Text(2), pixel.Text(2))
		}
	}
}
