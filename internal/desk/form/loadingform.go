package form

import (
	"fmt"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

func (b forms) loadingForm(s *scenario.Scenario) *Form {
	at := func(s *scenario.Scenario) *scenario.Loading { return &s.Loading }
	dec := func(k, name string, to func(*scenario.Loading) *scenario.Decimal) Binding {
		return decimals("loading."+k, name, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	count := func(k, name string, to func(*scenario.Loading) *int) Binding {
		return counts("loading."+k, name, func(s *scenario.Scenario) *int { return to(at(s)) })
	}
	f := &Form{
		title:    always("Loading"),
		subtitle: always("for every reel"),
		groups: []group{
			{heading: "Cassettes", fields: []*Field{
				homeField(b.e, "Price of one", dec("cassette_price", "price of a cassette", func(r *scenario.Loading) *scenario.Decimal { return &r.CassettePrice })),
				numberField(b.e, "sold by", "", count("cassette_pack", "pack of cassettes", func(r *scenario.Loading) *int { return &r.CassettePack })),
				numberField(b.e, "Loads of each", "", count("cassette_loads", "loads of a cassette", func(r *scenario.Loading) *int { return &r.CassetteLoads })),
				numberField(b.e, "Already there", "", count("cassettes_owned", "cassettes already there", func(r *scenario.Loading) *int { return &r.CassettesOwned })),
				homeField(b.e, "Tape, a roll", dec("consumables_per_roll", "tape", func(r *scenario.Loading) *scenario.Decimal { return &r.ConsumablesPerRoll })),
			}},
			{heading: "Time", fields: []*Field{
				numberField(b.e, "For a reel", "min", dec("minutes_per_reel", "time for a reel", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerReel })),
				numberField(b.e, "For a roll", "min", dec("minutes_per_roll", "time for a roll", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerRoll })),
				homeField(b.e, "An hour is worth", dec("hourly_value", "worth of an hour", func(r *scenario.Loading) *scenario.Decimal { return &r.HourlyValue })),
			}},
		},
	}
	list := func(s *scenario.Scenario) *[]scenario.Equipment { return &s.Loading.Equipment }
	f.groups = append(f.groups, b.equipmentGroups(s, "loading", list)...)
	return f
}

// equipmentGroups are what is bought once, one group a piece.
func (b forms) equipmentGroups(s *scenario.Scenario, key string, list session.EquipmentList) []group {
	var gs []group
	for i, e := range *list(s) {
		at := func(s *scenario.Scenario) *scenario.Equipment { return &(*list(s))[i] }
		k := func(name string) string { return fmt.Sprintf("%s.equipment[%d].%s", key, i+1, name) }
		gs = append(gs, group{heading: e.Name, fields: []*Field{
			wordField(b.e, "Name", texts(k("name"), "name of equipment", func(s *scenario.Scenario) *string { return &at(s).Name })),
			homeField(b.e, "Price", decimals(k("price"), "price of "+e.Name, func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Price })),
			homeField(b.e, "Sells for later", decimals(k("resale"), "resale of "+e.Name, func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Resale })),
			numberField(b.e, "Lasts", "rolls", counts(k("lasts_rolls"), "life of "+e.Name, func(s *scenario.Scenario) *int { return &at(s).LastsRolls })),
			yesNo(b.e, "Already there", flags(k("owned"), "owning "+e.Name, func(s *scenario.Scenario) *bool { return &at(s).Owned })),
		}, actions: kit.Objects(kit.NewLink("Remove", b.does(func(s *session.Session) { s.RemoveEquipment(list, i) })))})
	}
	return append(gs, group{actions: kit.Objects(kit.NewLink("+ equipment", b.does(func(s *session.Session) { s.AddEquipment(list) })))})
}
