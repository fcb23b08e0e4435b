package words

import (
	"testing"

	"reelworth/internal/scenario"
)

func TestMeaning(t *testing.T) {
	set := func(text string) scenario.Maybe { return scenario.Maybe{Decimal: dec(text), Set: true} }
	for _, test := range []struct {
		key    string
		offer  int
		change func(s *scenario.Scenario)
		want   string
	}{
		{"price", reel, nil, "EUR 104.73"}, // 118 × 0.8875 = 104.725
		{"price", shopRoll, nil, ""},
		{"currency", reel, nil, "1 USD = 0.8875 EUR, 20 Nov 2026"},
		{"currency", shopRoll, nil, ""},
		{"units", reel, nil, ""},
		{"units", pack, nil, "EUR 156.18 landed"},
		{"discount_percent", reel, nil, "EUR 99.49 of film"},
		{"shipping", reel, nil, "EUR 30.62"},
		{"shipping", shopRoll, nil, ""},
		{"shipping", reel, func(s *scenario.Scenario) { s.Offers[reel].FreeShippingFrom = set("100") }, "free, film is USD 112.10"},
		{"shipping_each_extra", reel, nil, ""},
		{"shipping_each_extra", pack, nil, "1 × JPY 300"},
		{"free_shipping_from", reel, nil, "never free"},
		{"free_shipping_from", reel, func(s *scenario.Scenario) { s.Offers[reel].FreeShippingFrom = set("200") }, "EUR 177.50"},
		{"sales_tax_percent", reel, nil, ""},
		{"card_fee_percent", reel, nil, "EUR 2.28"},
		{"card_fee_percent", shopRoll, nil, ""},
		{"card_fee_percent", shopRoll, func(s *scenario.Scenario) { s.Offers[shopRoll].CardFeePercent = dec("2") }, "none in EUR"},
		{"import", reel, nil, "EUR 29.93"},
		{"import", shopRoll, nil, ""},
		{"import", reel, func(s *scenario.Scenario) { s.Offers[reel].Import = scenario.ImportUndecided }, "nothing counted"},
		// Duty 4.2 % of 130.11 = 5.46; tax 23 % of 135.57 = 31.18.
		{"import", reel, func(s *scenario.Scenario) { s.Border.DutyFreeUpTo = dec("0") }, "EUR 36.64 with duty"},
		{"import", reel, func(s *scenario.Scenario) { s.Border.TaxPercent, s.Border.DutyPercent = dec("0"), dec("0") }, "0 % so far"},
		{"price_rise_percent", reel, nil, "USD 125.08 in a year"},
		{"price_rise_percent", shopRoll, nil, ""},
		{"price_rise_percent", reel, func(s *scenario.Scenario) { s.Offers[reel].PriceRisePercent = dec("-150") }, "USD 0.00 in a year"},
		{"keeps_months", reel, nil, ""},
		{"keeps_months", shopRoll, nil, "no limit"},
		{"keeps_months", reel, func(s *scenario.Scenario) { s.Offers[reel].Units = 6 }, "62 % shot in time"},
		{"developing", reel, nil, "EUR 3.85 a roll"},
		{"developing", shopRoll, nil, "EUR 9.90 a roll"},
		{"developing", shopRoll, func(s *scenario.Scenario) { s.Offers[shopRoll].Developing = "" }, "not counted"},
		{"on_hand", reel, nil, ""},
		{"on_hand", reel, func(s *scenario.Scenario) { s.Offers[reel].OnHand = dec("0.5") }, "8.7 rolls, not paid for"},
		{"reel.length", reel, nil, "30.48 m"},
		{"reel.length", reel, func(s *scenario.Scenario) {
			s.Offers[reel].Reel.Length, s.Offers[reel].Reel.LengthUnit = dec("30.48"), scenario.Metres
		}, "100 ft"},
		{"reel.exposures", reel, nil, "18 rolls, 0.53 m over"},
		// Short pitch: a roll of 24 takes 282 + 24 × 37.92 = 1192.08 mm; 30180 gives 25, and 378
		// more, of which the ends leave room for 2.
		{"reel.exposures", reel, func(s *scenario.Scenario) {
			s.Offers[reel].Reel.Exposures, s.Offers[reel].Reel.ShortRollFrom = 24, 1
		}, "25 rolls and one of 2, 0.02 m over"},
		{"reel.short_roll_from", reel, nil, "no short roll"},
		{"reel.spoiled_percent", reel, nil, "628.56 of 648 exposures good"},
		{"reel.test_exposures", reel, nil, ""},
		{"reel.test_exposures", reel, func(s *scenario.Scenario) { s.Offers[reel].Reel.TestExposures = 10 }, "0.38 m"},
		{"boxed.rolls_per_pack", pack, nil, ""},
		{"boxed.exposures", pack, func(s *scenario.Scenario) { s.Offers[pack].Boxed.Exposures = 24 }, "as much as 3.33 rolls of 36"},
		{"reel.length", pack, nil, ""},
		{"shooting.rolls_a_year", -1, nil, "3.6 a month"},
		{"rate[1].equals", -1, nil, "20 Nov 2026, 1.1268 USD a EUR"},
		{"rate[9].equals", -1, nil, ""},
		{"unheard_of", reel, nil, ""},
		{"price", 99, nil, ""},
		{"price", reel, func(s *scenario.Scenario) { s.Rates = s.Rates[1:] }, ""},
	} {
		t.Run(test.key, func(t *testing.T) {
			same(t, test.key, Meaning(test.key, demo(test.change), test.offer, "en"), test.want)
		})
	}
}

func TestSummaries(t *testing.T) {
	s := scenario.Demo().Scenarios[0]
	same(t, "shooting", ShootingSummary(&s, "en"), "43 rolls")
	same(t, "loading", LoadingSummary(&s, "en"), "10 cassettes, 1.20 each")
	same(t, "developing", DevelopingSummary(&s), "2 ways")
	same(t, "border", BorderSummary(&s, "en"), "tax 23 %, duty over 150")
	same(t, "rates", RatesSummary(&s, "en"), "1 USD = 0.8875 EUR, 20 Nov")
	same(t, "rates, in German numbers", RatesSummary(&s, "de"), "1 USD = 0,8875 EUR, 20 Nov")

	s.Border.DutyFreeUpTo = dec("0")
	same(t, "border", BorderSummary(&s, "en"), "tax 23 %, duty 4.2 %")
	s.Border.TaxPercent = dec("0")
	same(t, "border", BorderSummary(&s, "en"), "duty 4.2 %")
	s.Border.DutyPercent = dec("0")
	same(t, "border", BorderSummary(&s, "en"), "nothing due")
	s.Rates, s.Developing, s.Loading.CassettePack = nil, s.Developing[:1], 1
	same(t, "rates", RatesSummary(&s, "en"), "none")
	same(t, "developing", DevelopingSummary(&s), "1 way")
	same(t, "loading", LoadingSummary(&s, "en"), "1 cassette, 1.20 each")
	s.Developing = nil
	same(t, "developing", DevelopingSummary(&s), "not counted")
	s.Shooting.RollsPerMonth = rolls("0")
	s.Shooting.RollsPerMonth[3] = dec("1")
	same(t, "shooting", ShootingSummary(&s, "en"), "1 roll")
}

func TestOfferSubtitle(t *testing.T) {
	s := scenario.Demo().Scenarios[0]
	for i, want := range []string{"boxed · compared with", "boxed · from JPY", "reel · from USD"} {
		same(t, "subtitle", OfferSubtitle(&s, &s.Offers[i]), want)
	}
}
