package compare

import (
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// checkLeftOut fails unless exactly the offers at the indexes wanted have a fault.
func checkLeftOut(t *testing.T, c *Comparison, want string) {
	t.Helper()
	var got []string
	for _, o := range c.Offers {
		if o.Fault != nil {
			got = append(got, short(o.Name))
		}
	}
	if list := strings.Join(got, "; "); list != want {
		t.Errorf("left out %q, want %q", list, want)
	}
}

// What is wrong with the value itself, for a scenario that nobody checked.
func TestOffersThatCannotBeComputed(t *testing.T) {
	reel := func(s *scenario.Scenario) *scenario.Offer { return &s.Offers[2] }
	for _, c := range []struct {
		name   string
		change func(*scenario.Scenario)
		left   string // the offers left out
		code   FaultCode
		key    string
		why    scenario.Code
	}{
		{"no rate", func(s *scenario.Scenario) { reel(s).Currency = "CAD" }, "reel", FaultNoRate, "currency", scenario.NoRate},
		{"two rates", func(s *scenario.Scenario) {
			s.Rates = append(s.Rates, scenario.Rate{One: "EUR", Equals: dec("1.12"), In: "USD"})
		}, "reel", FaultInput, "rate", scenario.TwoRates},
		{"a rate of 0", func(s *scenario.Scenario) { s.Rates[0].Equals = dec("0") }, "reel", FaultInput, "rate[1].equals", scenario.NotAbove},
		{"no currency", func(s *scenario.Scenario) { reel(s).Currency = "" }, "reel", FaultInput, "currency", scenario.Missing},
		{"unknown developing", func(s *scenario.Scenario) { reel(s).Developing = "the cellar" }, "reel", FaultDeveloping, "developing", scenario.NoProcess},
		{"a reel too short for a roll", func(s *scenario.Scenario) { reel(s).Reel.Length = dec("2") }, "reel", FaultNoYield, "reel.length", scenario.NoRoll},
		{"everything spoiled", func(s *scenario.Scenario) { reel(s).Reel.SpoiledPercent = dec("100") }, "reel", FaultNoYield, "reel.spoiled_percent", scenario.NothingGood},
		{"no reel table", func(s *scenario.Scenario) { reel(s).Reel = nil }, "reel", FaultInput, "reel", scenario.MissingTable},
		{"no boxed table", func(s *scenario.Scenario) { s.Offers[0].Boxed = nil }, "shop roll", FaultInput, "boxed", scenario.MissingTable},
		{"an empty pack", func(s *scenario.Scenario) { s.Offers[1].Boxed = &scenario.Boxed{Exposures: 36} }, "pack of 5", FaultNoYield, "boxed", scenario.NothingGood},
		{"no unit of length", func(s *scenario.Scenario) { reel(s).Reel.LengthUnit = "" }, "reel", FaultInput, "reel.length_unit", scenario.NotAmong},
		{"no exposures", func(s *scenario.Scenario) { reel(s).Reel.Exposures = 0 }, "reel", FaultInput, "reel.exposures", scenario.BelowMin},
		{"a loader that lasts for nothing", func(s *scenario.Scenario) { s.Loading.Equipment[0].LastsRolls = 0 }, "reel", FaultInput, "loading.equipment.lasts_rolls", scenario.BelowMin},
		{"a tank that lasts for nothing", func(s *scenario.Scenario) { s.Developing[1].Equipment[0].LastsRolls = 0 }, "reel", FaultInput, "developing.equipment.lasts_rolls", scenario.BelowMin},
		{"cassettes for no load", func(s *scenario.Scenario) { s.Loading.CassetteLoads = 0 }, "reel", FaultInput, "loading.cassette_loads", scenario.BelowMin},
		{"chemistry for no roll", func(s *scenario.Scenario) { s.Developing[1].ChemistryRolls = 0 }, "reel", FaultInput, "developing.chemistry_rolls", scenario.BelowMin},
		{"no way of developing", func(s *scenario.Scenario) { s.Developing[1].Way = "" }, "reel", FaultInput, "developing.way", scenario.NotAmong},
		{"film that keeps for no time", func(s *scenario.Scenario) { reel(s).KeepsMonths = maybe("0") }, "reel", FaultInput, "keeps_months", scenario.NotAbove},
		{"an order of nothing", func(s *scenario.Scenario) { reel(s).Units = 0 }, "reel", FaultInput, "units", scenario.BelowMin},
		{"no kind", func(s *scenario.Scenario) { reel(s).Kind = "" }, "reel", FaultInput, "kind", scenario.NotAmong},
		{"no standard roll", func(s *scenario.Scenario) { s.RollExposures = 0 }, "shop roll; pack of 5; reel", FaultInput, "roll_exposures", scenario.BelowMin},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := quayside()
			c.change(&s)
			got := Compare(s, nil, scenario.Date{})
			checkLeftOut(t, &got, c.left)
			for _, o := range got.Offers {
				if f := o.Fault; f != nil && (f.Code != c.code || f.Key != c.key || f.Why.Code != c.why) {
					t.Errorf("%+v, want code %s, key %s, why %s", *f, c.code, c.key, c.why)
				}
			}
		})
	}
}

// What the scenario's own checks found spoils what depends on it, and no more.
func TestFaultsSpoilWhatDependsOnThem(t *testing.T) {
	at := func(path string, part scenario.Part, index int) scenario.Fault {
		return scenario.Fault{Path: path, Place: scenario.Place{Part: part, Index: index}, Code: scenario.NotNumber}
	}
	for _, c := range []struct {
		name  string
		fault scenario.Fault
		left  string
		key   string
	}{
		{"the file", at("schema", scenario.PartFile, 0), "shop roll; pack of 5; reel", "schema"},
		{"the whole scenario", at("months", scenario.PartWhole, 0), "shop roll; pack of 5; reel", "months"},
		{"an offer", at("offer[2].price", scenario.PartOffer, 1), "pack of 5", "price"},
		{"a table in an offer", at("offer[3].reel.exposures", scenario.PartOffer, 2), "reel", "reel.exposures"},
		{"an offer that is not there", at("offer[9].price", scenario.PartOffer, 8), "", ""},
		{"a rate", at("rate[2].equals", scenario.PartRate, 1), "pack of 5", "rate[2].equals"},
		{"a process", at("developing[1].price", scenario.PartDeveloping, 0), "shop roll; pack of 5", "developing[1].price"},
		{"a process that is not there", at("developing[9].price", scenario.PartDeveloping, 8), "", ""},
		{"loading", at("loading.cassette_price", scenario.PartLoading, 0), "reel", "loading.cassette_price"},
		{"the baseline", at("baseline", scenario.PartBaseline, 0), "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := Compare(quayside(), []scenario.Fault{c.fault}, scenario.Date{})
			checkLeftOut(t, &got, c.left)
			for _, o := range got.Offers {
				if f := o.Fault; f != nil && (f.Code != FaultInput || f.Key != c.key || f.Why.Code != scenario.NotNumber) {
					t.Errorf("%+v", *f)
				}
				if c.fault.Place.Part == scenario.PartBaseline && o.Against != nil {
					t.Errorf("%s is held against a baseline", o.Name)
				}
			}
		})
	}
}

// A fault the engine has a name for keeps that name when the checks report it too.
func TestEngineNamesWhatTheChecksReport(t *testing.T) {
	s := quayside()
	s.Offers[0].Developing = "the cellar"
	s.Offers[1].Currency = "CAD"
	reel := *s.Offers[2].Reel
	reel.Length = dec("1")
	s.Offers[2].Reel = &reel
	c := Compare(s, scenario.Check(s), scenario.Date{})
	for i, code := range []FaultCode{FaultDeveloping, FaultNoRate, FaultNoYield} {
		if f := c.Offers[i].Fault; f == nil || f.Code != code {
			t.Errorf("%s: %+v, want %s", c.Offers[i].Name, f, code)
		}
	}
}

// Nothing a caller can hand over makes the engine panic.
func TestEmptyScenariosAreNoTrouble(t *testing.T) {
	for _, s := range []scenario.Scenario{
		{}, {Offers: make([]scenario.Offer, 3)},
		{Home: "EUR", Months: 60, RollExposures: 36, Offers: []scenario.Offer{plainReel("reel", "1"), plainBoxed("boxed", "0")}},
		{Home: "EUR", Months: -1, RollExposures: 36, Baseline: "boxed", Loading: scenario.Loading{CassetteLoads: 1, CassettePack: 1},
			Offers: []scenario.Offer{plainReel("reel", "1"), plainBoxed("boxed", "0")}},
	} {
		Compare(s, nil, scenario.Date{Year: 2027, Month: 1, Day: 1})
		Compare(s, scenario.Check(s), scenario.Date{})
	}
}
