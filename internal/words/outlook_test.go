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
		{flip("baseline.price", "14.8", "6.436", ""), "1", "If a boxed roll costs less than EUR 6.44, it is cheaper; today 14.80."},
		{flip("offer.shipping", "34.5", "12", ""), "-1", "If shipping of the reel costs less than USD 12.00, the reel is cheaper; today 34.50."},
		{flip("offer.spoiled_percent", "3", "", "43.2"), "1", "If 43.2 % or more of the reel is spoiled, the boxed rolls are cheaper; today 3 %."},
		{flip("loading.hourly_value", "0", "", "12.27"), "1", "If an hour of your time is worth more than EUR 12.27, the boxed rolls are cheaper; today 0.00."},
		{flip("offer.developing", "0.6", "", "5"), "1", "If developing a cassette of the reel beside chemistry costs more than EUR 5.00, the boxed rolls are cheaper; today 0.60."},
		{flip("baseline.developing", "9.9", "1.5", ""), "1", "If developing a cassette of the boxed rolls costs less than EUR 1.50, the boxed rolls are cheaper; today 9.90."},
		{flip("border.duty_percent", "4.2", "", "17.456"), "1", "If duty is more than 17.46 %, the boxed rolls are cheaper; today 4.2 %."},
		{flip("border.duty_percent", "4.2", "0", ""), "-1", "If duty is nothing, the reel is cheaper; today 4.2 %."},
		{flip("border.tax_percent", "0", "", "0"), "1", "If import tax goes up at all, the boxed rolls are cheaper."},
		{flip("offer.price", "45", "45", ""), "-1", "If the reel goes down at all, it is cheaper."},
		{flip("offer.price", "45", "", "45.001"), "1", "If the reel costs more than USD 45.001, the boxed rolls are cheaper; today 45.00."},
		{flip("shooting.rolls_a_year", "43", "15", ""), "1", "If you shoot 15 rolls a year or fewer, the boxed rolls are cheaper; now you shoot 43."},
		{flip("shooting.rolls_a_year", "10", "", "16"), "-1", "If you shoot 16 rolls a year or more, the reel is cheaper; now you shoot 10."},
	} {
		c := year()
		c.Scenario.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.8875"), In: "EUR"}}
		got := Flips(c, "100 ft", "Shop roll", num(test.saving), []compare.Flip{test.flip}, "en")
		if len(got) != 1 {
			t.Fatalf("%s: %d sentences", test.flip.Input, len(got))
		}
		same(t, string(test.flip.Input), got[0], test.want)
	}
}

func TestNearestFlipIsSaidFirst(t *testing.T) {
	got := Flips(year(), "100 ft", "Shop roll", num("1"), []compare.Flip{
		flip("offer.price", "100", "20", "190"), flip("border.tax_percent", "20", "", "25"), flip("border.duty_percent", "0", "", "3"),
	}, "en")
	// 25 % up, 80 % down, 90 % up, and from nothing to something.
	for i, part := range []string{"import tax", "less than USD 20.00", "more than USD 190.00", "duty"} {
		if !strings.Contains(spaces(got[i]), part) {
			t.Errorf("sentence %d is %q, want the one of %s", i+1, got[i], part)
		}
	}
}

func TestHeadlineSaysWhatTurnsIt(t *testing.T) {
	pair := func(saving string, flips ...compare.Flip) *compare.Outlook {
		return &compare.Outlook{Pair: &compare.PairOutlook{Offer: "100 ft", Other: "Shop roll", Saving: num(saving), Flips: flips}}
	}
	price := flip("offer.price", "118", "", "242.897")
	for _, test := range []struct {
		name    string
		outlook *compare.Outlook
		ends    string
	}{
		{"no outlook yet", nil, "Equipment paid after 11 rolls."},
		{"nothing turns it", pair("359.63", flip("shooting.rolls_a_year", "43", "", "")), "Equipment paid after 11 rolls."},
		{"fewer rolls", pair("359.63", flip("shooting.rolls_a_year", "43", "15", "")), "11 rolls. Below 16 rolls a year, buy boxed."},
		{"more rolls", pair("359.63", flip("shooting.rolls_a_year", "43", "", "80")), "From 80 rolls a year on, buy boxed."},
		{"both", pair("359.63", flip("shooting.rolls_a_year", "43", "15", "80")), "Below 16 and from 80 rolls a year on, buy boxed."},
		{"and the nearest other", pair("359.63", price, flip("shooting.rolls_a_year", "43", "15", "")),
			"Below 16 rolls a year, buy boxed. If the reel costs more than USD 242.90, the boxed rolls are cheaper; today 118.00."},
		{"boxed wins", pair("-3", flip("shooting.rolls_a_year", "10", "", "16")), "From 16 rolls a year on, the reel is cheaper."},
	} {
		c := year()
		c.Outlook = test.outlook
		c.Scenario.Offers[1].Price = dec("118")
		if got := spaces(Verdict(c, "en").Under); !strings.HasSuffix(got, test.ends) {
			t.Errorf("%s: %q, want it to end with %q", test.name, got, test.ends)
		}
	}
	c := year()
	c.Outlook, c.Verdict.Kind = pair("1", price), compare.VerdictUnlike
	if got := Turning(c, "en"); got != "" {
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
		"offer.spoiled_percent": "spoiled of the reel: 2.5 %",
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
		"Up to USD 238.26 the reel still saves 10 % a roll.")
}

// Whatever is compared, no sentence about what changes the answer has a hole, and every
// size of order has a reason.
func TestNoOutlookHasAHole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		l := rapid.SampledFrom(money.Locales()).Draw(t, "locale")
		o, err := compare.LookAhead(context.Background(), c, exact.Int(10))
		if err != nil {
			t.Fatal(err)
		}
		c.Outlook = o
		said := map[string]string{"under": Verdict(c, l).Under}
		for i, offer := range o.Offers {
			if a := c.Offers[i].Against; a != nil {
				for n, text := range Flips(c, offer.Name, c.Scenario.Baseline, a.Saving, offer.Flips, l) {
					said[fmt.Sprint("flip ", i, n)] = text
				}
				said[fmt.Sprint("payback ", i)] = Payback(&c.Scenario, a, l)
			}
			for n, size := range offer.OrderSizes {
				said[fmt.Sprint("size ", i, n)] = SizeReason(c, size, l)
				if said[fmt.Sprint("size ", i, n)] == "" {
					t.Errorf("%s has no words", size.Why)
				}
			}
			for n, w := range offer.Swings {
				said[fmt.Sprint("swing ", i, n)] = InputName(c, offer.Name, c.Scenario.Baseline, w.Input) + ": " +
					InputValue(c, offer.Name, c.Scenario.Baseline, w.Input, w.High, l)
			}
		}
		for what, text := range said {
			if bad := odd.FindString(spaces(text)); bad != "" {
				t.Errorf("%s holds %q: %s", what, bad, text)
			}
		}
	})
}
