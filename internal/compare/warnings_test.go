package compare

import (
	"slices"
	"strings"
	"testing"
	"time"

	"reelworth/internal/scenario"
)

// short names an offer of the worked example by a word of its own.
func short(offer string) string {
	for _, word := range []string{"shop roll", "pack of 5", "reel"} {
		if strings.Contains(offer, word) {
			return word
		}
	}
	return offer
}

func warningsOf(c *Comparison) (list []string) {
	for _, w := range c.Warnings {
		text := string(w.Code)
		if w.Offer != "" {
			text += ": " + short(w.Offer)
		}
		if w.Code == WarnNearLimit || w.Code == WarnOldQuote {
			text += ", " + w.Subject
		}
		list = append(list, text)
	}
	return list
}

// The worked example warns of two things; each case adds or takes away.
func TestWarnings(t *testing.T) {
	differs, expires := "developing-differs: reel", "chemistry-expires: reel"
	day := func(y, m, d int) scenario.Date { return scenario.Date{Year: y, Month: time.Month(m), Day: d} }
	for _, c := range []struct {
		name   string
		change func(*scenario.Scenario)
		today  scenario.Date
		want   []string
	}{
		{"as it is", func(*scenario.Scenario) {}, scenario.Date{}, []string{differs, expires}},
		{"cinema film with its black backing goes to a lab",
			func(s *scenario.Scenario) { s.Offers[2].Developing = "Town lab, colour" }, scenario.Date{},
			[]string{"remjet-to-lab: reel"}},
		{"one offer without developing",
			func(s *scenario.Scenario) { s.Offers[1].Developing = "" }, scenario.Date{},
			[]string{differs, "developing-missing: pack of 5", expires}},
		{"no offer counts developing: nothing is missing",
			func(s *scenario.Scenario) {
				for i := range s.Offers {
					s.Offers[i].Developing = ""
				}
			}, scenario.Date{}, nil},
		{"import not decided abroad",
			func(s *scenario.Scenario) { s.Offers[1].Import = scenario.ImportUndecided }, scenario.Date{},
			[]string{differs, "import-undecided: pack of 5", expires}},
		{"import not decided at home",
			func(s *scenario.Scenario) { s.Offers[0].Import = scenario.ImportUndecided }, scenario.Date{},
			[]string{differs, expires}},
		{"chemistry that keeps for good",
			func(s *scenario.Scenario) { s.Developing[1].ChemistryKeepsMonth = scenario.Maybe{} }, scenario.Date{},
			[]string{differs}},
		{"film that is thrown away",
			func(s *scenario.Scenario) { s.Offers[2].KeepsMonths = maybe("2") }, scenario.Date{},
			[]string{differs, expires, "film-expires: reel"}},
		{"film too old in the long run, though not within these months",
			func(s *scenario.Scenario) { s.Offers[1].KeepsMonths, s.Months = maybe("2.5"), 1 }, scenario.Date{},
			[]string{differs, "film-expires: pack of 5", expires}},
		{"quotes 30 days old", func(*scenario.Scenario) {}, day(2026, 12, 20), []string{differs, expires}},
		{"quotes 31 days old", func(*scenario.Scenario) {}, day(2026, 12, 21),
			[]string{"old-quote, USD/EUR", "old-quote, EUR/JPY", differs, expires}},
		{"an old quote that no offer uses",
			func(s *scenario.Scenario) { s.Offers[1].Currency = "EUR" }, day(2027, 1, 1),
			[]string{"old-quote, USD/EUR", differs, expires}},
		{"a quote without a date",
			func(s *scenario.Scenario) { s.Rates[0].Date = scenario.Date{} }, day(2027, 1, 1),
			[]string{"old-quote, EUR/JPY", differs, expires}},
		{"film already there",
			func(s *scenario.Scenario) { s.Offers[2].OnHand = dec("0.1") }, scenario.Date{},
			[]string{differs, expires, "on-hand-free: reel"}},
		{"film for more than two years",
			func(s *scenario.Scenario) { s.Offers[0].OnHand = dec("130") }, scenario.Date{},
			[]string{differs, "left-lasts-long: shop roll", "on-hand-free: shop roll", expires}},
		{"just below the duty limit",
			func(s *scenario.Scenario) { s.Border.DutyFreeUpTo = dec("99.49") }, scenario.Date{},
			[]string{differs, expires, "near-limit: reel, duty_free_up_to"}},
		{"just above the duty limit",
			func(s *scenario.Scenario) { s.Border.DutyFreeUpTo = dec("99.48") }, scenario.Date{},
			[]string{differs, expires}},
		// 95 % of 104.74 is 99.503, of 104.72 is 99.484; the pack's film is 103.45
		{"5 % below the duty limit is near, more is not",
			func(s *scenario.Scenario) { s.Border.DutyFreeUpTo = dec("104.74") }, scenario.Date{},
			[]string{differs, "near-limit: pack of 5, duty_free_up_to", expires}},
		{"5 % below the duty limit, both",
			func(s *scenario.Scenario) { s.Border.DutyFreeUpTo = dec("104.72") }, scenario.Date{},
			[]string{differs, "near-limit: pack of 5, duty_free_up_to", expires, "near-limit: reel, duty_free_up_to"}},
		{"just below the tax limit",
			func(s *scenario.Scenario) { s.Border.TaxFreeUpTo = dec("100") }, scenario.Date{},
			[]string{differs, expires, "near-limit: reel, tax_free_up_to"}},
		{"the tax limit does not matter where the seller collects",
			func(s *scenario.Scenario) {
				s.Border.TaxFreeUpTo, s.Offers[2].Import = dec("100"), scenario.ImportPrepaid
			}, scenario.Date{}, []string{differs, expires}},
		{"just below free shipping, in the seller's currency",
			func(s *scenario.Scenario) { s.Offers[2].FreeShippingFrom = maybe("115") }, scenario.Date{},
			[]string{differs, expires, "near-limit: reel, free_shipping_from"}},
		{"shipping is free already",
			func(s *scenario.Scenario) { s.Offers[2].FreeShippingFrom = maybe("112.10") }, scenario.Date{},
			[]string{differs, expires}},
		{"nothing is shot",
			func(s *scenario.Scenario) { s.Shooting.RollsPerMonth = rolls("0") }, scenario.Date{},
			[]string{"no-demand", differs}},
		{"a price that falls to nothing",
			func(s *scenario.Scenario) { s.Offers[0].PriceRisePercent = dec("-120") }, scenario.Date{},
			[]string{differs, "price-rise-stops-at-zero: shop roll", expires}},
		{"a price that falls to nothing in the very last month", // ten months at a tenth each
			func(s *scenario.Scenario) { s.Months, s.Offers[0].PriceRisePercent = 11, dec("-120") }, scenario.Date{},
			[]string{differs, "price-rise-stops-at-zero: shop roll", expires}},
		{"a price that would be nothing the month after",
			func(s *scenario.Scenario) { s.Months, s.Offers[0].PriceRisePercent = 10, dec("-120") }, scenario.Date{},
			[]string{differs, expires}},
		{"a price that falls, but not to nothing",
			func(s *scenario.Scenario) { s.Offers[0].PriceRisePercent = dec("-109") }, scenario.Date{},
			[]string{differs, expires}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := quayside()
			c.change(&s)
			got := Compare(s, nil, c.today)
			if list := warningsOf(&got); !slices.Equal(list, c.want) {
				t.Errorf("got  %q\nwant %q", list, c.want)
			}
		})
	}
}
