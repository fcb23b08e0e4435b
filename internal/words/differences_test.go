package words

import (
	"fmt"
	"reflect"
	"strings"
	"testing"
	"unicode/utf8"

	"reelworth/internal/scenario"
)

func TestDifferences(t *testing.T) {
	number := dec
	const reel = "Lanternlight 500, 100 ft reel"
	for name, c := range map[string]struct {
		change func(s *scenario.Scenario)
		says   []string
	}{
		"nothing":           {func(*scenario.Scenario) {}, nil},
		"a price":           {func(s *scenario.Scenario) { s.Offers[2].Price = number("119.00") }, []string{"price of " + reel + ": 118.00 → 119.00"}},
		"only its places":   {func(s *scenario.Scenario) { s.Offers[2].Price = number("118") }, []string{"price of " + reel + ": 118.00 → 118"}},
		"two things":        {func(s *scenario.Scenario) { s.Offers[0].Units = 3; s.Border.TaxPercent = number("25") }, []string{"import tax: 23 % → 25 %", "units per order of Marigold 400, shop roll: 1 → 3"}},
		"inside the reel":   {func(s *scenario.Scenario) { s.Offers[2].Reel.LeaderMM = number("150") }, []string{"leader of " + reel + ": 160 mm → 150 mm"}},
		"a truth":           {func(s *scenario.Scenario) { s.Border.TaxOnShipping = false }, []string{"import tax on shipping: yes → no"}},
		"set":               {func(s *scenario.Scenario) { s.Offers[0].KeepsMonths = scenario.Maybe{Decimal: number("12"), Set: true} }, []string{"how long it keeps of Marigold 400, shop roll: nothing → 12 months"}},
		"a month's rolls":   {func(s *scenario.Scenario) { s.Shooting.RollsPerMonth[2] = number("9") }, []string{"rolls per month, no. 3: 3 → 9"}},
		"the whole year":    {func(s *scenario.Scenario) { s.Shooting.RollsPerMonth = [12]scenario.Decimal{} }, []string{"rolls per month: 12 of 12 numbers are others"}},
		"a rate":            {func(s *scenario.Scenario) { s.Rates[0].Equals = number("0.9") }, []string{"exchange rate of USD, EUR: 0.8875 → 0.9"}},
		"a date":            {func(s *scenario.Scenario) { s.Rates[0].Date.Day = 21 }, []string{"date of the exchange rate of USD, EUR: 2026-11-20 → 2026-11-21"}},
		"the first month":   {func(s *scenario.Scenario) { s.FirstMonth.Month = 2 }, []string{"first month: 2027-01 → 2027-02"}},
		"the note":          {func(s *scenario.Scenario) { s.Note = "" }, []string{"note: Evening walks in colour: shop rolls or a cinema reel from ov… → nothing"}},
		"a long note":       {func(s *scenario.Scenario) { s.Note += " And back." }, []string{"note: … overseas? → … overseas? And back."}},
		"a way to buy":      {func(s *scenario.Scenario) { s.Offers = append(s.Offers, scenario.NewOffer(s, scenario.KindBoxed)) }, []string{"a way to buy was added: New boxed film"}},
		"one less":          {func(s *scenario.Scenario) { s.Offers = s.Offers[1:] }, []string{"a way to buy was taken away: Marigold 400, shop roll"}},
		"another name":      {func(s *scenario.Scenario) { s.Offers[1].Name = "Five by post" }, []string{"name of Five by post: Marigold 400, pack of 5 by post → Five by post"}},
		"name and less":     {func(s *scenario.Scenario) { s.Offers = s.Offers[1:]; s.Offers[1].Name = "Reel" }, []string{"a way to buy was taken away: Marigold 400, shop roll", "name of Reel: " + reel + " → Reel"}},
		"order":             {func(s *scenario.Scenario) { s.Offers[0], s.Offers[1] = s.Offers[1], s.Offers[0] }, []string{"the ways to buy are in another order"}},
		"nested equipment":  {func(s *scenario.Scenario) { s.Developing[1].Equipment = nil }, []string{"a piece of equipment was taken away from At home, with a remjet bath: Tank and measures"}},
		"the reel itself":   {func(s *scenario.Scenario) { s.Offers[2].Reel = nil }, []string{"the reel was taken away from " + reel}},
		"an unknown key":    {func(s *scenario.Scenario) { s.Offers[2].Extra = scenario.Extra{"colour": "warm"} }, []string{"unknown key colour of " + reel + ": nothing → warm"}},
		"what was not read": {func(s *scenario.Scenario) { s.Border.Extra = scenario.Extra{"tax_percent": "about 20"} }, []string{"import tax: nothing → about 20"}},
		"the same name twice": {func(s *scenario.Scenario) { s.Offers = append(s.Offers, s.Offers[0]) },
			[]string{"a way to buy was added: Marigold 400, shop roll"}},
	} {
		t.Run(name, func(t *testing.T) {
			from, to := scenario.Demo(), scenario.Demo()
			c.change(&to.Scenarios[0])
			got := Differences(from, to)
			for i, says := range c.says {
				c.says[i] = "Quayside year, colour: " + says
			}
			if !reflect.DeepEqual(got, c.says) {
				t.Errorf("\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.says, "\n"))
			}
		})
	}
}

func TestDifferencesOfWholeScenarios(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	second := scenario.Demo().Scenarios[0]
	second.Name = "Harbour"
	second.Offers = second.Offers[:1]
	second.Rates, second.Developing, second.Note, second.Home = nil, nil, "another", "JPY"
	to.Scenarios = append(to.Scenarios, second)
	winter := scenario.Demo()
	winter.Scenarios[0].Name = "Winter"
	check := func(from, to scenario.File, want string) {
		t.Helper()
		if got := strings.Join(Differences(from, to), "\n"); got != want {
			t.Errorf("%s\nwant %s", got, want)
		}
	}
	check(from, to, "a scenario was added: Harbour")
	check(to, from, "a scenario was taken away: Harbour")
	check(from, winter, "Winter: name of the scenario: Quayside year, colour → Winter")
	check(scenario.File{}, from, "a scenario was added: Quayside year, colour")
}

func TestDifferencesAreFewAndShort(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	for i := range 45 {
		o := scenario.NewOffer(&to.Scenarios[0], scenario.KindReel)
		o.Name = fmt.Sprint(i, strings.Repeat(" very\n\x00long\xff", 5000))
		to.Scenarios[0].Offers = append(to.Scenarios[0].Offers, o)
	}
	got := Differences(from, to)
	if len(got) != MostDifferences+1 || got[MostDifferences] != "… and 25 more" {
		t.Fatal(len(got), got[len(got)-1])
	}
	for _, g := range got {
		if utf8.RuneCountInString(g) > 200 || strings.ContainsAny(g, "\n\x00") || !utf8.ValidString(g) {
			t.Errorf("%q", g)
		}
	}
}

// Every table that may be there or not has a noun, and no noun is for another.
func TestEveryTableHasANoun(t *testing.T) {
	always := map[string]bool{"": true, "scenario.shooting": true, "scenario.border": true, "scenario.loading": true}
	once := map[string]bool{"scenario.offer.reel": true, "scenario.offer.boxed": true}
	tables := map[string]bool{}
	for _, f := range scenario.Fields() {
		tables[f.Table] = true
		noun := tableNouns[f.Table]
		if !always[f.Table] && (noun.one == "" || !once[f.Table] && noun.many == "") {
			t.Errorf("no noun for %q", f.Table)
		}
	}
	for path := range tableNouns {
		if !tables[path] {
			t.Errorf("there is no table %q", path)
		}
	}
}
