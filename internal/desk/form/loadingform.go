package form

import (
	"fmt"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func (b forms) loadingForm(s *scenario.Scenario) *Form {
	at := func(s *scenario.Scenario) *scenario.Loading { return &s.Loading }
	dec := func(k string, to func(*scenario.Loading) *scenario.Decimal) Binding {
		return decimals("loading."+k, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	count := func(k string, to func(*scenario.Loading) *int) Binding {
		return counts("loading."+k, func(s *scenario.Scenario) *int { return to(at(s)) })
	}
	f := &Form{
		title:    always(words.TopicLoading),
		subtitle: always(words.UnderLoading),
		groups: []group{
			{heading: words.GroupCassettes, fields: []*Field{
				b.number(dec("cassette_price", func(r *scenario.Loading) *scenario.Decimal { return &r.CassettePrice })),
				b.number(count("cassette_pack", func(r *scenario.Loading) *int { return &r.CassettePack })),
				b.number(count("cassette_loads", func(r *scenario.Loading) *int { return &r.CassetteLoads })),
				b.number(count("cassettes_owned", func(r *scenario.Loading) *int { return &r.CassettesOwned })),
				b.number(dec("consumables_per_roll", func(r *scenario.Loading) *scenario.Decimal { return &r.ConsumablesPerRoll })),
			}},
			{heading: words.GroupTime, fields: []*Field{
				b.number(dec("minutes_per_reel", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerReel })),
				b.number(dec("minutes_per_roll", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerRoll })),
				b.number(dec("hourly_value", func(r *scenario.Loading) *scenario.Decimal { return &r.HourlyValue })),
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
			b.text(texts(k("name"), func(s *scenario.Scenario) *string { return &at(s).Name })),
			b.number(decimals(k("price"), func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Price }).of(e.Name)),
			b.number(decimals(k("resale"), func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Resale }).of(e.Name)),
			b.number(counts(k("lasts_rolls"), func(s *scenario.Scenario) *int { return &at(s).LastsRolls }).of(e.Name)),
			b.flag(flags(k("owned"), func(s *scenario.Scenario) *bool { return &at(s).Owned }).of(e.Name)),
		}, actions: kit.Objects(kit.NewLink(words.LinkRemove, b.does(func(s *session.Session) { s.RemoveEquipment(list, i) })))})
	}
	return append(gs, group{actions: kit.Objects(kit.NewLink(words.LinkAddEquipment, b.does(func(s *session.Session) { s.AddEquipment(list) })))})
}
