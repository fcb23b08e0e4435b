package compare

import (
	"context"
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Five rolls a month for a year. A roll costs EUR 10, so a month EUR 50; a pack of five
// is ordered every month and nothing is ever left, so it saves as long as it lands below
// EUR 50. That is arithmetic for the head: every figure below is worked out so.
func rollOrPack(change func(s *scenario.Scenario, roll, pack *scenario.Offer)) scenario.Scenario {
	s := scenario.Scenario{Name: "by hand", Home: "EUR", Months: 12, RollExposures: 36, Baseline: "roll",
		FirstMonth: scenario.Month{Year: 2027, Month: 1}}
	s.Loading.CassetteLoads, s.Loading.CassettePack = 1, 1
	s.Shooting.RollsPerMonth = rolls("5")
	s.Offers = []scenario.Offer{
		{Name: "roll", Kind: scenario.KindBoxed, Currency: "EUR", Price: dec("10"), Units: 1, Boxed: &scenario.Boxed{RollsPerPack: 1, Exposures: 36}},
		{Name: "pack", Kind: scenario.KindBoxed, Currency: "EUR", Price: dec("40"), Units: 1, Boxed: &scenario.Boxed{RollsPerPack: 5, Exposures: 36}},
	}
	if change != nil {
		change(&s, &s.Offers[0], &s.Offers[1])
	}
	return s
}

// asReel makes the pack a reel of the same five rolls: 5 × 36 frames of 38 mm and
// nothing lost.
func asReel(pack *scenario.Offer) {
	pack.Kind, pack.Boxed = scenario.KindReel, nil
	pack.Reel = &scenario.Reel{Length: dec("6.84"), LengthUnit: scenario.Metres, Exposures: 36}
}

func lookAhead(t *testing.T, s scenario.Scenario) (*Comparison, *Outlook) {
	t.Helper()
	c := Compare(s, nil, scenario.Date{})
	ahead, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent))
	if err != nil {
		t.Fatal(err)
	}
	return &c, ahead.Outlook
}

func TestFlipsWorkedOutByHand(t *testing.T) {
	type change = func(s *scenario.Scenario, roll, pack *scenario.Offer)
	fromAbroad := func(price, one, equals, in string) change {
		return func(s *scenario.Scenario, _, pack *scenario.Offer) {
			pack.Price, pack.Currency = dec(price), "USD"
			s.Rates = []scenario.Rate{{One: one, Equals: dec(equals), In: in}}
		}
	}
	viaDollars := func(s *scenario.Scenario, _, pack *scenario.Offer) {
		pack.Price, pack.Currency = dec("6000"), "JPY" // USD 40, EUR 36
		s.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.9"), In: "EUR"}, {One: "USD", Equals: dec("150"), In: "JPY"}}
	}
	// Above EUR 45 of film the customs take 10 % and the carrier EUR 3: EUR 45 lands at 45, a
	// cent more beyond 52.50.
	dutiable := func(price string) change {
		return func(s *scenario.Scenario, _, pack *scenario.Offer) {
			pack.Price, pack.Import = dec(price), scenario.ImportBorder
			s.Border = scenario.Border{DutyPercent: dec("10"), DutyFreeUpTo: dec("45"), HandlingFee: dec("3")}
		}
	}
	// From EUR 48 of film on the post, EUR 12, is free: 47.99 lands at 59.99, 48 at 48.
	postFree := func(price string) change {
		return func(_ *scenario.Scenario, _, pack *scenario.Offer) {
			pack.Price, pack.Shipping, pack.FreeShippingFrom = dec(price), dec("12"), maybe("48")
		}
	}
	// Any duty at all brings a handling fee of EUR 3 to EUR 48 of film.
	anyDuty := func(percent string) change {
		return func(s *scenario.Scenario, _, pack *scenario.Offer) {
			pack.Price, pack.Import = dec("48"), scenario.ImportBorder
			s.Border = scenario.Border{DutyPercent: dec(percent), HandlingFee: dec("3")}
		}
	}
	atOneLab := func(s *scenario.Scenario, roll, pack *scenario.Offer) {
		s.Developing = []scenario.Developing{{Name: "lab", Way: scenario.Lab, Price: dec("5"), ChemistryRolls: 1}}
		roll.Developing, pack.Developing = "lab", "lab"
	}
	// An hour a month: 30 minutes for the reel, 6 for each of five rolls.
	anHour := func(s *scenario.Scenario, _, pack *scenario.Offer) {
		asReel(pack)
		s.Loading.MinutesPerReel, s.Loading.MinutesPerRoll = dec("30"), dec("6")
	}
	taxed := func(s *scenario.Scenario, _, pack *scenario.Offer) {
		pack.Import = scenario.ImportBorder
		s.Border.TaxPercent = dec("10")
	}
	posted := func(_ *scenario.Scenario, _, pack *scenario.Offer) { pack.Shipping = dec("6") }

	for _, c := range []struct {
		name         string
		change       change
		input        Input
		below, above string
	}{
		{"a dearer pack", nil, "offer.price", "", "50"},
		{"a dearer pack with postage", posted, "offer.price", "", "44"},
		{"dearer postage", posted, "offer.shipping", "", "10"},
		{"cheaper rolls", posted, "baseline.price", "9.2", ""},
		{"a dollar above EUR 1.25", fromAbroad("40", "USD", "0.9", "EUR"), "rate:USD/EUR", "", "1.25"},
		{"a euro below USD 0.80", fromAbroad("40", "EUR", "1.25", "USD"), "rate:EUR/USD", "0.8", ""},
		{"a price in dollars", fromAbroad("36", "USD", "0.8", "EUR"), "offer.price", "", "62.5"},
		{"the second of two quotes", viaDollars, "rate:USD/EUR", "", "1.25"},
		{"the first of two quotes, divided by", viaDollars, "rate:USD/JPY", "108", ""},
		{"a quote both go by", func(s *scenario.Scenario, roll, pack *scenario.Offer) {
			roll.Currency, pack.Currency = "USD", "USD"
			s.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.9"), In: "EUR"}}
		}, "rate:USD/EUR", "", ""},
		{"a jump across zero", dutiable("40"), "offer.price", "", "45"},
		{"a jump across zero from above", dutiable("46"), "offer.price", "45", ""},
		{"at the jump, going up crosses it", dutiable("45"), "offer.price", "", "45"},
		{"free post from here on", postFree("40"), "offer.price", "38", "48"},
		{"at free post, going down crosses it", postFree("48"), "offer.price", "48", "50"},
		{"duty of nothing at all", anyDuty("4"), "border.duty_percent", "0", ""},
		{"the first cent of duty", anyDuty("0"), "border.duty_percent", "", "0"},
		{"a saving of exactly nothing", func(_ *scenario.Scenario, _, pack *scenario.Offer) { pack.Price = dec("50") }, "offer.price", "", ""},
		{"more than ten times today's", func(_ *scenario.Scenario, _, pack *scenario.Offer) { pack.Price = dec("4") }, "offer.price", "", ""},
		{"the value of an hour", anHour, "loading.hourly_value", "", "10"},
		{"one lab, the pack's side", atOneLab, "offer.developing", "", "7"},
		{"one lab, the rolls' side", atOneLab, "baseline.developing", "3", ""},
		{"a quarter of import tax", taxed, "border.tax_percent", "", "25"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, o := lookAhead(t, rollOrPack(c.change))
			f := flipIn(o.Offers[1].Pair.Flips, c.input)
			if f == nil {
				t.Fatal("the input is not listed")
			}
			sameFlip(t, "below", f.Below, c.below)
			sameFlip(t, "above", f.Above, c.above)
		})
	}
}

func sameFlip(t *testing.T, what string, got *exact.Fraction, want string) {
	t.Helper()
	switch {
	case got == nil && want != "":
		t.Errorf("nothing %s, want %s", what, want)
	case got != nil && want == "":
		t.Errorf("%s is %s, want nothing", what, got)
	case got != nil:
		sameFigure(t, what, *got, want)
	}
}

// A reel of five rolls for EUR 40, and EUR 30 for a loader that single rolls do not need:
// n reels cost 40 n + 30, as many rolls 50 n, so three reels, 15 rolls, break even and 14
// rolls lose. In steps a saving of 0 is not opposite.
func TestVolumeFlipWorkedOutByHand(t *testing.T) {
	s := rollOrPack(func(s *scenario.Scenario, _, pack *scenario.Offer) {
		asReel(pack)
		s.Shooting.RollsPerMonth = [12]scenario.Decimal{dec("60")} // all in one month: one order a year
		s.Loading.Equipment = []scenario.Equipment{{Name: "loader", Price: dec("30"), LastsRolls: 100}}
	})
	_, o := lookAhead(t, s)
	v := o.Pair.Volume()
	sameFigure(t, "today", v.Today, "60")
	sameFlip(t, "above", v.Above, "")
	// At 15 rolls the two are equal; what is left of a fourth pack is worth what it
	// cost within 24 months, so 14 rolls cost 2.8 packs and the loader.
	sameFlip(t, "below", v.Below, "14")
	if o.Pair.Offer != "pack" || o.Pair.Other != "roll" {
		t.Error(o.Pair.Offer, o.Pair.Other)
	}
}

// A pack of EUR 44 is within the EUR 45 that come in free of duty; 10 % dearer, EUR 48.40, it
// is not: 5 % duty on it are EUR 2.42 and the carrier takes EUR 4, so it lands at 54.82. 10 %
// cheaper it lands at 39.60. Against EUR 50 a month of single rolls, in twelve months:
// 12 × (50 − 39.60) = 124.80 and 12 × (50 − 54.82) = −57.84.
func TestSwingAcrossADutyLimitWorkedOutByHand(t *testing.T) {
	s := rollOrPack(func(s *scenario.Scenario, _, pack *scenario.Offer) {
		pack.Price, pack.Import = dec("44"), scenario.ImportBorder
		s.Border = scenario.Border{DutyPercent: dec("5"), DutyFreeUpTo: dec("45"), HandlingFee: dec("4")}
	})
	_, o := lookAhead(t, s)
	for _, w := range o.Offers[1].Pair.Swings {
		if w.Input != "offer.price" {
			continue
		}
		sameFigure(t, "low", w.Low, "39.6")
		sameFigure(t, "high", w.High, "48.4")
		sameFigure(t, "saving at low", w.SavingLow, "124.8")
		sameFigure(t, "saving at high", w.SavingHigh, "-57.84")
		return
	}
	t.Error("the price is not listed")
}

// The user's range counts in place of 10 %, the offer's own before the one for all.
func TestTypedRangesAreUsed(t *testing.T) {
	s := rollOrPack(func(s *scenario.Scenario, _, _ *scenario.Offer) {
		s.Ranges = []scenario.Range{
			{Input: "offer.price", Low: dec("30"), High: dec("35")},
			{Input: "offer.price", Offer: "pack", Low: dec("20"), High: dec("60")},
			{Input: "baseline.price", Low: dec("8"), High: dec("9.5")},
			{Input: "offer.shipping", Low: dec("5"), High: dec("1")}, // upside down: not used
			{Input: "shooting.rolls_a_year", Low: dec("30"), High: dec("90")},
		}
	})
	_, o := lookAhead(t, s)
	got := map[Input]Swing{}
	for _, w := range o.Offers[1].Pair.Swings {
		got[w.Input] = w
	}
	price, base, rolls := got["offer.price"], got["baseline.price"], got["shooting.rolls_a_year"]
	sameFigure(t, "saving at 20", price.SavingLow, "360")
	sameFigure(t, "saving at 60", price.SavingHigh, "-120")
	sameFigure(t, "saving at 8", base.SavingLow, "0")
	sameFigure(t, "saving at 9.50", base.SavingHigh, "90")
	// 30 rolls a year are half a pack a month, 90 one and a half; what is left counts.
	sameFigure(t, "saving at 30 rolls", rolls.SavingLow, "60")
	sameFigure(t, "saving at 90 rolls", rolls.SavingHigh, "180")
	if _, there := got["offer.shipping"]; there || !price.Typed {
		t.Error("shipping of nothing swings, or the range was not the user's")
	}
}

// flipIn is the flip of one input in a list, nil when it is not there.
func flipIn(list []Flip, input Input) *Flip {
	for i := range list {
		if list[i].Input == input {
			return &list[i]
		}
	}
	return nil
}
