package words

import (
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

func TestWarnings(t *testing.T) {
	c := year()
	c.Scenario.Rates = []scenario.Rate{{One: "USD", Equals: dec("0.8875"), In: "EUR", Date: scenario.Date{Year: 2026, Month: 10, Day: 1}}}
	c.Scenario.Offers[1].PriceRisePercent = dec("-120")
	reelOf(c).UsedShare = num("0.6154")
	for _, test := range []struct {
		w    compare.Warning
		want string
	}{
		{compare.Warning{Code: compare.WarnRemjetToLab, Offer: "100 ft", Subject: "Town lab"},
			"The reel: this film has a remjet backing, soot that spoils the baths of an ordinary lab. " +
				"Ask Town lab before sending it, or choose a process that removes the backing."},
		{compare.Warning{Code: compare.WarnDevelopingDiffers, Offer: "100 ft", Subject: "In the kitchen"},
			"The reel: it is developed differently from the offer it is compared with (In the kitchen), and EUR 202 of the saving comes from that. " +
				"Choose the same Developing for both to compare the film alone."},
		{compare.Warning{Code: compare.WarnDevelopingMissing, Offer: "Shop roll"},
			"The boxed rolls: developing is not counted here, but is elsewhere, so its cost per roll looks lower than it is. " +
				"Choose Developing for it, or leave it out everywhere."},
		{compare.Warning{Code: compare.WarnImportUndecided, Offer: "100 ft", Subject: "import"},
			"The reel: import tax is not decided, and nothing is counted for it, which flatters this way to buy. " +
				"Choose Import tax. What is due is decided by the customs authority."},
		{compare.Warning{Code: compare.WarnChemistryExpires, Offer: "100 ft", Subject: "In the kitchen", Amount: num("11.0859"), Limit: num("16")},
			"The reel: a set of chemistry (In the kitchen) is too old after 11.1 rolls, though it would do 16. " +
				"Mix smaller sets, or gather rolls and develop them together. " +
				"How long it keeps and how to dispose of it stand on its safety data sheet and in the local rules."},
		{compare.Warning{Code: compare.WarnFilmExpires, Offer: "100 ft", Amount: num("1")},
			"The reel: film for 1 roll is too old before it is shot, paid for and thrown away. Buy a shorter reel, or shoot more."},
		{compare.Warning{Code: compare.WarnFilmExpires, Offer: "100 ft", Amount: num("7.46")},
			"The reel: film for 7.5 rolls is too old before it is shot, paid for and thrown away. Buy a shorter reel, or shoot more."},
		{compare.Warning{Code: compare.WarnFilmExpires, Offer: "100 ft"},
			"The reel: at this pace 62 % of an order is shot before it is too old; the cost per roll counts the rest as thrown away. " +
				"Buy a shorter reel, or shoot more."},
		{compare.Warning{Code: compare.WarnOldQuote, Subject: "USD/EUR", Count: 50},
			"The rate 1 USD = 0.8875 EUR is of 1 Oct 2026, 50 days ago. Enter today's under Exchange rates."},
		{compare.Warning{Code: compare.WarnLeftLastsLong, Offer: "100 ft", Amount: num("80.25")},
			"The reel: the film left (80.3 rolls) lasts longer than 24 months, and what is shot later is counted as worth nothing. " +
				"Buy a shorter reel."},
		{compare.Warning{Code: compare.WarnOnHandFree, Offer: "100 ft", Amount: num("1")},
			"The reel: it starts with film that is there already and costs nothing, which flatters it. " +
				"Set Already there to 0 to compare what is bought."},
		{compare.Warning{Code: compare.WarnNearLimit, Offer: "100 ft", Subject: "duty_free_up_to", Amount: num("148.2"), Limit: num("150")},
			"The reel: film for EUR 148.20 is just below the limit below which no duty is due, EUR 150.00. " +
				"A small change of price or rate crosses it, and what is due is decided by the customs authority."},
		{compare.Warning{Code: compare.WarnNearLimit, Offer: "100 ft", Subject: "free_shipping_from", Amount: num("190"), Limit: num("200")},
			"The reel: film for USD 190.00 is just below the sum from which shipping is free, USD 200.00. " +
				"A little more in the order would ship it free."},
		{compare.Warning{Code: compare.WarnNoDemand},
			"Nothing is shot in these months, so there is no year to compare. Enter rolls under The year's shooting."},
		{compare.Warning{Code: compare.WarnPriceRiseStops, Offer: "100 ft"},
			"The reel: a price that falls by 120 % a year reaches nothing within these months and stays there. " +
				"Enter a smaller fall in Price rises a year."},
		{compare.Warning{Code: "something-new"}, "something-new"},
	} {
		t.Run(string(test.w.Code), func(t *testing.T) { same(t, "warning", Warning(test.w, c, "en"), test.want) })
	}
}

func TestWhatTheOtherDevelopingDoes(t *testing.T) {
	for _, test := range []struct{ saving, developing, want string }{
		{"100", "40", ", and EUR 40 of the saving comes from that"},
		{"100", "-40", ", which costs EUR 40 more"},
		{"-100", "40", ", which saves EUR 40"},
		{"-100", "-40", ", which costs EUR 40 more"},
		{"100", "0", ""},
	} {
		c := year()
		c.Verdict.Pair.Saving, c.Verdict.Pair.SavingDeveloping = num(test.saving), num(test.developing)
		same(t, "share", warned{voice{s: &c.Scenario, l: "en"}, c, compare.Warning{}}.developingShare(), test.want)
	}
}

func TestLeftOut(t *testing.T) {
	// As in a file of several scenarios, one with quotation marks in its name: they have
	// no place in a sentence about an offer on the screen.
	in := scenario.Fault{Several: true, Scenario: `The "good" year`}
	noRate, missing, below, free := in, in, in, in
	noRate.Code, noRate.Args = scenario.NoRate, scenario.Args{From: "USD", To: "EUR"}
	missing.Code = scenario.Missing
	below.Code, below.Args = scenario.BelowMin, scenario.Args{Number: dec("-3")}
	free.Code = scenario.NotAbove
	for _, test := range []struct {
		name  string
		fault compare.Fault
		want  string
	}{
		{"no rate", compare.Fault{Code: compare.FaultNoRate, Key: "currency", Why: noRate},
			"Without the reel: no rate for USD. Add one between USD and EUR under Exchange rates."},
		{"no rate, found when the file was read", compare.Fault{Code: compare.FaultInput, Key: "currency", Why: noRate},
			"Without the reel: no rate for USD. Add one between USD and EUR under Exchange rates."},
		{"no yield", compare.Fault{Code: compare.FaultNoYield, Key: "reel.length",
			Why: scenario.Fault{Code: scenario.NoRoll, Args: scenario.Args{Missing: num("412.5")}}},
			"Without the reel: the reel gives no roll: 412.5 mm are missing to the shortest roll that would be loaded. Correct Length."},
		{"unknown developing", compare.Fault{Code: compare.FaultDeveloping, Key: "developing",
			Why: scenario.Fault{Code: scenario.NoProcess, Args: scenario.Args{Got: "Elsewhere"}}},
			`Without the reel: no way of developing is named "Elsewhere". Choose another under Developing.`},
		{"a field is missing", compare.Fault{Code: compare.FaultInput, Key: "price", Why: missing},
			"Without the reel: Price of a reel is missing."},
		{"nobody typed its price yet", compare.Fault{Code: compare.FaultInput, Key: "price", Why: free},
			"Without the reel: no price yet."},
		{"a field is wrong", compare.Fault{Code: compare.FaultInput, Key: "shipping", Why: below},
			"Without the reel: Shipping: -3 is below 0."},
		{"a field of the whole scenario", compare.Fault{Code: compare.FaultInput, Key: "first_month", Why: missing},
			"Without the reel: First month is missing."},
		{"a field of the loading", compare.Fault{Code: compare.FaultInput, Key: "loading.equipment[1].price", Why: below},
			"Without the reel: Price of equipment under Loading: -3 is below 0."},
		{"no key", compare.Fault{Code: compare.FaultInput, Why: below},
			"Without the reel: -3 is below 0. Correct its fields."},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := year()
			reelOf(c).Fault = &test.fault
			got := LeftOut(c)
			if len(got) != 1 {
				t.Fatalf("got %d sentences: %q", len(got), got)
			}
			same(t, "left out", got[0], test.want)
		})
	}
	if got := LeftOut(year()); len(got) != 0 {
		t.Errorf("nothing is left out, but it says %q", got)
	}
}

func TestCalled(t *testing.T) {
	c := year()
	same(t, "only reel", Called(&c.Scenario, "100 ft"), "the reel")
	same(t, "only boxed", Called(&c.Scenario, "Shop roll"), "the boxed rolls")
	same(t, "unknown", Called(&c.Scenario, "nothing"), "nothing")
	c.Scenario.Offers[0].Boxed.RollsPerPack = 5
	same(t, "only pack", Called(&c.Scenario, "Shop roll"), "the pack")
	c.Scenario.Offers = append(c.Scenario.Offers, scenario.Offer{Name: "400 ft", Kind: scenario.KindReel})
	same(t, "one of two", Called(&c.Scenario, "100 ft"), "100 ft")
}

func TestPeriod(t *testing.T) {
	for months, want := range map[int]string{
		1: "in 1 month", 6: "in 6 months", 12: "this year", 18: "in 18 months", 24: "in 2 years", 60: "in 5 years",
	} {
		same(t, "period", period(months), want)
	}
	same(t, "of a cost", perPeriod(12), "a year")
	same(t, "of a cost", perPeriod(36), "in 3 years")
}
