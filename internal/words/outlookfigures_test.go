package words

import (
	"context"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// curveOf is a made-up curve of the year's reel against its boxed rolls.
func curveOf(input scenario.Input, today string, flip compare.Flip) *compare.Curve {
	flip.Input, flip.Quote, flip.Today = input, -1, num(today)
	return &compare.Curve{Input: input, Offer: "100 ft", Other: "Shop roll", Today: num(today), Flip: flip}
}

// curveOver is a curve over the rolls a year.
func curveOver(volumes []compare.VolumeRange) *compare.Curve {
	c := curveOf(scenario.InputRollsAYear, "43", compare.Flip{Below: ptr("15")})
	c.Volumes = volumes
	return c
}

func TestTitlesOfFlips(t *testing.T) {
	c := year()
	c.Scenario.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.8875"), In: "EUR"}}
	for _, test := range []struct {
		curve              *compare.Curve
		sign               int
		title, under, unit string
	}{
		{curveOf("rate:USD/EUR", "0.8875", compare.Flip{Above: ptr("1.60875")}), 1,
			"The reel is cheaper unless 1 USD costs more than 1.6088 EUR", "EUR of the whole year, all counted, against 1 USD in EUR", "EUR"},
		{curveOver(yearsVolumes), 1,
			"The boxed rolls up to 13 rolls a year, about the same to 16, the reel to 430",
			"EUR of the whole year, all counted, against rolls a year", "rolls"},
		{curveOver(yearsVolumes[2:]), 1, "The reel up to the 430 rolls a year looked at",
			"EUR of the whole year, all counted, against rolls a year", "rolls"},
		{curveOver(append(yearsVolumes[:2:2], yearsVolumes...)), 1, "Up to 430 rolls a year the answer changes 4 times",
			"EUR of the whole year, all counted, against rolls a year", "rolls"},
		{curveOf(scenario.InputOfferPrice, "118", compare.Flip{Below: ptr("99")}), -1,
			"The boxed rolls are cheaper unless the reel costs less than USD 99.00",
			"EUR of the whole year, all counted, against the price of the reel, in USD", "USD"},
		{curveOf(scenario.InputDutyPercent, "4.2", compare.Flip{}), 1,
			"The reel is cheaper at every value drawn", "EUR of the whole year, all counted, against duty, in %", "%"},
		{curveOf(scenario.InputSpoiledPercent, "3", compare.Flip{}), 0,
			"Both cost the same today", "EUR of the whole year, all counted, against how much of the reel is spoiled, in %", "%"},
	} {
		f := FlippingOf(c, test.curve, "en")
		same(t, "title", f.Title(test.sign), test.title)
		same(t, "under", f.Under(), test.under)
		same(t, "unit", f.Unit(), test.unit)
	}
	c.Scenario.Months = 6
	same(t, "six months", FlippingOf(c, curveOf(scenario.InputDutyPercent, "4", compare.Flip{}), "en").Under(),
		"EUR of 6 months, all counted, against duty, in %")
}

func TestMarksOfFlips(t *testing.T) {
	c := year()
	curve := curveOf(scenario.InputOfferPrice, "118", compare.Flip{Above: ptr("242.897")})
	f := FlippingOf(c, curve, "de")
	same(t, "today", f.Today(), "today 118,00")
	same(t, "crossing", f.Crossing(compare.Crossings([]compare.Flip{curve.Flip})[0]), "242,90")
	same(t, "a crossing just above today", f.Crossing(compare.Crossing{Flip: curve.Flip, At: num("118.001"), Up: true}), "118,01")
	same(t, "one just below", f.Crossing(compare.Crossing{Flip: curve.Flip, At: num("117.999")}), "117,99")
	same(t, "one below what can be paid", f.Crossing(compare.Crossing{Flip: curve.Flip, At: num("0.004")}), "0,00")
	rolls := curveOf(scenario.InputRollsAYear, "43", compare.Flip{Below: ptr("15")})
	same(t, "steps", FlippingOf(c, rolls, "en").Crossing(compare.Crossings([]compare.Flip{rolls.Flip})[0]), "15")
	p := compare.CurvePoint{At: num("150"), Offer: num("900.4"), Other: num("850")}
	same(t, "dearer", f.Readout(p, 1), "Price of the reel, just above 150,00 USD: the reel 900 EUR, the boxed rolls 850; the reel costs 50 more")
	p.Other = p.Offer
	same(t, "even", f.Readout(p, 0), "Price of the reel, 150,00 USD: the reel 900 EUR, the boxed rolls 900; the same")
}

func TestTitlesOfSwings(t *testing.T) {
	swing := func(low, high string) compare.Swing {
		return compare.Swing{Input: scenario.InputRollsAYear, Low: num("39"), High: num("47"), SavingLow: num(low), SavingHigh: num(high)}
	}
	for _, test := range []struct {
		saving string
		swings []compare.Swing
		want   string
	}{
		{"359.63", []compare.Swing{swing("331.33", "415.81"), swing("350", "369")}, "The reel saves in every case: at least 331, at most 416"},
		{"-35", []compare.Swing{swing("-31.9", "-38.45")}, "The reel costs more in every case: at least 32, at most 38"},
		{"20", []compare.Swing{swing("-5", "40"), swing("10", "30")}, "Rolls a year alone can turn the answer"},
		{"-20", []compare.Swing{swing("5", "-40"), swing("-10", "3")}, "2 of 2 figures can each turn the answer alone"},
		{"0", []compare.Swing{swing("5", "-40")}, "Nothing is saved or lost today, so every figure decides"},
		{"9", nil, "No figure moves what the reel saves"},
	} {
		c := year()
		reelOf(c).Against = &compare.Against{Saving: num(test.saving)}
		same(t, "title", SwingingOf(c, "100 ft", test.swings, "en").Title(), test.want)
	}
	c := year()
	same(t, "baseline", SwingingOf(c, "Shop roll", nil, "en").Title(), "The boxed rolls are what the others are compared with")
	same(t, "no baseline", SwingingOf(c, "100 ft", nil, "en").Title(), "Nothing to hold the reel against")
	reelOf(c).Fault = noRate("USD")
	same(t, "fault", SwingingOf(c, "100 ft", nil, "en").Title(), "Not computed: no rate between USD and EUR")
	reelOf(c).Fault = nil
	w := swing("-5", "0")
	w.Typed, w.Today = true, num("43")
	same(t, "read-out", SwingingOf(c, "100 ft", nil, "en").Readout(&w),
		"Rolls a year: at 39 costs EUR 5.00 more, at 47 costs the same; today 43; your own range")
}

func TestTitlesOfSizes(t *testing.T) {
	size := func(units int, total, months string, best bool) compare.OrderSize {
		return compare.OrderSize{Units: units, TotalPerRoll: num(total), LandedPerUnit: num("100"), MonthsToShoot: ptr(months), Best: best}
	}
	for _, test := range []struct {
		today int
		sizes []compare.OrderSize
		want  string
	}{
		{1, []compare.OrderSize{size(1, "14.30", "5", false), size(2, "13.56", "10", true)}, "An order of 2 reels is best: a roll costs 0.74 less than today"},
		{2, []compare.OrderSize{size(1, "14.30", "5", false), size(2, "13.56", "10", true)}, "Today's order of 2 reels is best"},
		{3, []compare.OrderSize{size(2, "13.56", "10", true), size(3, "13.18", "15", false)}, "An order of 2 reels is best, today's lasts too long"},
		{99, []compare.OrderSize{size(1, "14.30", "5", true), size(2, "15", "10", false)}, "An order of 1 reel is best: 14.30 a roll"},
		{1, []compare.OrderSize{size(1, "14.30", "5", true), size(2, "14.30", "10", false)}, "However many in an order, a roll costs 14.30"},
		{1, []compare.OrderSize{size(1, "14.30", "25", true), size(2, "14", "50", false)}, "Even 1 reel lasts longer than the 12 months compared"},
		{1, []compare.OrderSize{{Units: 1, Best: true}}, "Nothing is shot yet, so no size of order is best"},
		{1, nil, "No size of order to compare"},
	} {
		c := year()
		reelOf(c).Order.Units = test.today
		same(t, "title", SizingOf(c, "100 ft", test.sizes, "en").Title(), test.want)
	}
	same(t, "under", SizingOf(year(), "Shop roll", nil, "en").Under(), "EUR per roll of 36 from the boxed rolls, by the rolls in one order")
	same(t, "no such offer", SizingOf(year(), "nobody's", nil, "en").Title(), NothingComputed)
}

func TestNoSentenceOfTheFiguresHasAHole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		c, err := compare.LookAhead(context.Background(), c, exact.Int(20))
		if err != nil {
			t.Fatal(err)
		}
		var said []string
		for _, offer := range c.Outlook.Offers {
			z := SizingOf(c, offer.Name, offer.OrderSizes, "en")
			said = append(said, z.Title(), z.Under())
			for i := range offer.OrderSizes {
				said = append(said, z.Readout(&offer.OrderSizes[i]))
			}
			if offer.Pair == nil {
				continue
			}
			s := SwingingOf(c, offer.Name, offer.Pair.Swings, "en")
			said = append(said, s.Title(), s.Under())
			for i := range offer.Pair.Swings {
				said = append(said, s.Readout(&offer.Pair.Swings[i]), s.Name(&offer.Pair.Swings[i]))
			}
			for _, flip := range offer.Pair.Flips {
				curve := &compare.Curve{Input: flip.Input, Offer: offer.Name, Other: c.Scenario.Baseline, Today: flip.Today, Flip: flip}
				if flip.Input == scenario.InputRollsAYear {
					curve.Volumes = offer.Pair.Volumes
				}
				f := FlippingOf(c, curve, "en")
				said = append(said, f.Title(1), f.Title(-1), f.Under(), f.Today(),
					f.Readout(compare.CurvePoint{At: flip.Today, Other: exact.Int(1)}, 0), strings.Join(f.Header(), "; "))
			}
		}
		for _, text := range said {
			if odd.MatchString(text) {
				t.Errorf("%q", text)
			}
		}
	})
}
