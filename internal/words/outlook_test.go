package words

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// flip is a flip of an input of the year put together by hand; "" for none.
func flip(input scenario.Input, today, below, above string) compare.Flip {
	f := compare.Flip{Input: input, Quote: -1, Today: num(today)}
	if below != "" {
		f.Below = ptr(below)
	}
	if above != "" {
		f.Above = ptr(above)
	}
	return f
}

// crossesBack is a flip whose crossing above crosses back.
func crossesBack(f compare.Flip, end string) compare.Flip {
	f.AboveEnd = ptr(end)
	return f
}

// yearsVolumes are ranges as the worked example has them.
var yearsVolumes = []compare.VolumeRange{{From: 1, To: 13, Cheaper: compare.CheaperOther}, {From: 14, To: 16, Cheaper: compare.CheaperEven},
	{From: 17, To: 430, Cheaper: compare.CheaperOffer}}

// pairWith is the year's reel and boxed roll with flips put together by hand.
func pairWith(saving string, volumes []compare.VolumeRange, flips ...compare.Flip) *compare.PairOutlook {
	return &compare.PairOutlook{Offer: "100 ft", Other: "Shop roll", Saving: num(saving), Flips: flips, Volumes: volumes}
}

func TestFlipSentences(t *testing.T) {
	rate := flip("rate:USD/EUR", "0.8875", "", "1.6087550055")
	rate.Quote = 0
	for _, test := range []struct {
		flip   compare.Flip
		saving string
		want   string
	}{
		{rate, "1", "If 1 USD costs more than 1.6088 EUR, the boxed rolls are cheaper; today 0.8875."},
		{flip("offer.price", "118", "", "242.897"), "1", "If the reel costs more than USD 242.90, the boxed rolls are cheaper; today 118.00."},
		{flip("baseline.price", "14.8", "6.436", ""), "1", "If a boxed roll costs less than EUR 6.43, it is cheaper; today 14.80."},
		{flip("offer.shipping", "34.5", "12", ""), "-1", "If shipping of the reel costs less than USD 12.00, the reel is cheaper; today 34.50."},
		{flip("offer.spoiled_percent", "3", "", "43.2"), "1", "If as much as 43.2 % of the reel is spoiled, the boxed rolls are cheaper; today 3 %."},
		{flip("loading.hourly_value", "0", "", "12.27"), "1", "If an hour of your time is worth more than EUR 12.27, the boxed rolls are cheaper; today 0.00."},
		{flip("offer.developing", "0.6", "", "5"), "1", "If developing a cassette of the reel beside chemistry costs more than EUR 5.00, the boxed rolls are cheaper; today 0.60."},
		{flip("baseline.developing", "9.9", "1.5", ""), "1", "If developing a cassette of the boxed rolls costs less than EUR 1.50, the boxed rolls are cheaper; today 9.90."},
		{flip("border.duty_percent", "4.2", "", "17.456"), "1", "If duty is more than 17.46 %, the boxed rolls are cheaper; today 4.2 %."},
		{flip("border.duty_percent", "4.2", "0", ""), "-1", "If duty is nothing, the reel is cheaper; today 4.2 %."},
		{flip("border.tax_percent", "0", "", "0"), "1", "If import tax goes up at all, the boxed rolls are cheaper."},
		{flip("offer.price", "45", "45", ""), "-1", "If the reel goes down at all, it is cheaper."},
		{flip("offer.price", "45", "", "45.001"), "1", "If the reel costs more than USD 45.01, the boxed rolls are cheaper; today 45.00."},
		{crossesBack(flip("offer.price", "118", "", "242.897"), "300.005"), "1", "If the reel costs more than USD 242.90 and less than USD 300.00, the boxed rolls are cheaper; today 118.00."},
		{crossesBack(flip("offer.price", "118", "", "242.897"), "242.8975"), "1", "If the reel costs more than USD 242.897 and less than USD 242.8975, the boxed rolls are cheaper; today 118.00."},
		{flip("shooting.rolls_a_year", "43", "15", ""), "1", "From 14 to 16 rolls a year, about the same; at 13 or fewer, the boxed rolls are cheaper; now you shoot 43."},
		{flip("shooting.rolls_a_year", "10", "", "17"), "-1", "From 17 rolls a year on, up to the 430 looked at, the reel is cheaper; now you shoot 10."},
	} {
		c := year()
		c.Scenario.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.8875"), In: "EUR"}}
		got := Flips(c, pairWith(test.saving, yearsVolumes, test.flip), "en")
		if len(got) != 1 {
			t.Fatalf("%s: %d sentences", test.flip.Input, len(got))
		}
		same(t, string(test.flip.Input), got[0], test.want)
	}
}

func TestNearestFlipIsSaidFirst(t *testing.T) {
	got := Flips(year(), pairWith("1", nil,
		flip("offer.price", "100", "20", "190"), flip("border.tax_percent", "20", "", "25"), flip("border.duty_percent", "0", "", "3")), "en")
	// 25 % up, 80 % down, 90 % up, and from nothing to something.
	for i, part := range []string{"import tax", "less than USD 20.00", "more than USD 190.00", "duty"} {
		if !strings.Contains(spaces(got[i]), part) {
			t.Errorf("sentence %d is %q, want the one of %s", i+1, got[i], part)
		}
	}
}

func TestHeadlineSaysWhatChangesIt(t *testing.T) {
	r := func(from, to int, cheaper compare.Cheaper) compare.VolumeRange {
		return compare.VolumeRange{From: from, To: to, Cheaper: cheaper}
	}
	offer, other, even := compare.CheaperOffer, compare.CheaperOther, compare.CheaperEven
	price := flip("offer.price", "118", "", "242.897")
	for _, test := range []struct {
		name string
		pair *compare.PairOutlook
		ends string
	}{
		{"no outlook yet", nil, "Equipment paid after 11 rolls."},
		{"nothing changes it", pairWith("359.63", []compare.VolumeRange{r(1, 430, offer)}), "Equipment paid after 11 rolls."},
		{"fewer rolls", pairWith("359.63", yearsVolumes),
			"11 rolls. At 13 rolls a year or fewer, the boxed rolls are cheaper; from 14 to 16, about the same; from 17 up to the 430 looked at, the reel."},
		{"more rolls", pairWith("359.63", []compare.VolumeRange{r(1, 79, offer), r(80, 430, other)}),
			"At 79 rolls a year or fewer, the reel is cheaper; from 80 up to the 430 looked at, the boxed rolls."},
		{"single numbers", pairWith("359.63", []compare.VolumeRange{r(1, 1, other), r(2, 2, even), r(3, 430, offer)}),
			"At 1 roll a year, the boxed rolls are cheaper; at 2, about the same; from 3 up to the 430 looked at, the reel."},
		{"and the nearest other", pairWith("359.63", yearsVolumes, price),
			"looked at, the reel. If the reel costs more than USD 242.90, the boxed rolls are cheaper."},
		{"many ranges", pairWith("359.63", []compare.VolumeRange{r(1, 4, other), r(5, 9, offer), r(10, 12, other), r(13, 50, offer), r(51, 60, even), r(61, 430, offer)}),
			"From 13 to 50 rolls a year, the reel is cheaper; beyond that the answer changes 5 times up to the 430 looked at, for orders come in lumps."},
	} {
		c := year()
		if test.pair != nil {
			c.Outlook = &compare.Outlook{Pair: test.pair}
		}
		c.Scenario.Offers[1].Price = dec("118")
		if got := spaces(Verdict(c, "en").Under); !strings.HasSuffix(got, test.ends) {
			t.Errorf("%s: %q, want it to end with %q", test.name, got, test.ends)
		}
	}
	c := year()
	c.Outlook, c.Verdict.Kind = &compare.Outlook{Pair: pairWith("1", yearsVolumes, price)}, compare.VerdictUnlike
	if got := Changing(c, "en"); got != "" {
		t.Errorf("no winner is named, yet %q", got)
	}
}

func TestPaybackSentence(t *testing.T) {
	c := year() // 3 rolls a month from January 2027 on
	for _, test := range []struct {
		rolls *exact.Fraction
		want  string
	}{
		{nil, ""},
		{ptr("0"), "There is no equipment to pay for."},
		{ptr("1"), "Equipment paid after 1 roll, in January 2027 at this pace."},
		{ptr("11"), "Equipment paid after 11 rolls, in April 2027 at this pace."},
		{ptr("40"), "Equipment paid after 40 rolls, in February 2028 at this pace."},
	} {
		same(t, "payback", Payback(&c.Scenario, &compare.Against{PaybackRolls: test.rolls}, "en"), test.want)
	}
	c.Scenario.Shooting.RollsPerMonth = [12]scenario.Decimal{}
	same(t, "nothing shot", Payback(&c.Scenario, &compare.Against{PaybackRolls: ptr("11")}, "en"), "Equipment paid after 11 rolls.")
}

func TestReasonsOfOrderSizes(t *testing.T) {
	size := func(why compare.SizeReason) compare.OrderSize {
		return compare.OrderSize{Units: 3, Why: why, MonthsToShoot: ptr("14.6177"), Amount: num("0.4321")}
	}
	for why, want := range map[compare.SizeReason]string{
		compare.SizeOneLasts:     "one is enough: it lasts 14.6 months",
		compare.SizeTooMany:      "takes 14.6 months to shoot, more than the 12 compared",
		compare.SizeTooOld:       "only 43 % is shot before it is too old",
		compare.SizeFreeShipping: "the film is worth enough to be sent free",
		compare.SizeShipping:     "shipping is shared by more of them",
	} {
		same(t, string(why), SizeReason(year(), size(why), "en"), want)
	}
}

func TestInputNamesAndValues(t *testing.T) {
	for input, want := range map[scenario.Input]string{
		"rate:USD/EUR":          "1 USD: 2.5 EUR",
		"offer.price":           "price of the reel: USD 2.50",
		"baseline.price":        "price of the boxed rolls: EUR 2.50",
		"offer.shipping":        "shipping of the reel: USD 2.50",
		"offer.spoiled_percent": "spoiled share of the reel: 2.5 %",
		"loading.hourly_value":  "an hour of your time: EUR 2.50",
		"offer.developing":      "developing the reel, a cassette beside chemistry: EUR 2.50",
		"baseline.developing":   "developing the boxed rolls, a cassette: EUR 2.50",
		"border.duty_percent":   "duty: 2.5 %",
		"border.tax_percent":    "import tax: 2.5 %",
		"shooting.rolls_a_year": "rolls a year: 2.5",
	} {
		c := year()
		same(t, string(input), InputName(c, "100 ft", "Shop roll", input)+": "+InputValue(c, "100 ft", "Shop roll", input, num("2.5"), "en"), want)
	}
	same(t, "ceiling", Ceiling(year(), "100 ft", &compare.Ceiling{SavingPercent: num("10"), Price: num("238.26"), Currency: "USD"}, "en"),
		"Roll for roll, in the long run, the reel saves 10 % up to a price of USD 238.26.")
}

// Whatever is compared, no sentence about what changes the answer has a hole, and every
// size of order has a reason.
func TestNoOutlookHasAHole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		l := rapid.SampledFrom(money.Locales()).Draw(t, "locale")
		c, err := compare.LookAhead(context.Background(), c, exact.Int(10))
		if err != nil {
			t.Fatal(err)
		}
		said := map[string]string{"under": Verdict(c, l).Under}
		for i, offer := range c.Outlook.Offers {
			if p := offer.Pair; p != nil {
				for n, text := range Flips(c, p, l) {
					said[fmt.Sprint("flip ", i, n)] = text
				}
				said[fmt.Sprint("payback ", i)] = Payback(&c.Scenario, c.Offers[i].Against, l)
				for n, w := range p.Swings {
					said[fmt.Sprint("swing ", i, n)] = InputName(c, offer.Name, c.Scenario.Baseline, w.Input) + ": " +
						InputValue(c, offer.Name, c.Scenario.Baseline, w.Input, w.High, l)
				}
			}
			for n, size := range offer.OrderSizes {
				said[fmt.Sprint("size ", i, n)] = SizeReason(c, size, l)
				if said[fmt.Sprint("size ", i, n)] == "" {
					t.Errorf("%s has no words", size.Why)
				}
			}
		}
		for what, text := range said {
			if bad := odd.FindString(spaces(text)); bad != "" {
				t.Errorf("%s holds %q: %s", what, bad, text)
			}
		}
	})
}
