package form

import (
	"fmt"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func (b forms) developingForm(s *scenario.Scenario) *Form {
	f := &Form{title: always(words.TopicDeveloping), subtitle: always(words.UnderDeveloping)}
	for i, d := range s.Developing {
		g := b.processGroup(i, d)
		g.actions = kit.Objects(kit.NewLink(words.LinkRemoveProcess, b.does(func(s *session.Session) { s.RemoveProcess(i) })))
		f.groups = append(f.groups, g)
		if d.Way == scenario.Home {
			f.caution = words.ChemistryCaution
			list := func(s *scenario.Scenario) *[]scenario.Equipment { return &s.Developing[i].Equipment }
			f.groups = append(f.groups, b.equipmentGroups(s, fmt.Sprintf("developing[%d]", i+1), list)...)
		}
	}
	f.groups = append(f.groups, group{actions: kit.Objects(
		kit.NewLink(words.LinkAddLab, b.does(func(s *session.Session) { s.AddProcess(scenario.Lab) })),
		kit.NewLink(words.LinkAddAtHome, b.does(func(s *session.Session) { s.AddProcess(scenario.Home) })),
	)})
	return f
}

func (b forms) processGroup(i int, d scenario.Developing) group {
	at := func(s *scenario.Scenario) *scenario.Developing { return &s.Developing[i] }
	key := func(k string) string { return fmt.Sprintf("developing[%d].%s", i+1, k) }
	dec := func(k string, to func(*scenario.Developing) *scenario.Decimal) Binding {
		return decimals(key(k), func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) }).of(d.Name)
	}
	name := texts(key("name"), func(s *scenario.Scenario) *string { return &at(s).Name })
	way := choices(key("way"), func(s *scenario.Scenario) *scenario.Way { return &at(s).Way })
	way = way.then(func(s *scenario.Scenario) { scenario.SetWay(at(s), at(s).Way) })
	g := group{heading: d.Name, fields: []*Field{
		b.text(followName(i, name)),
		b.choice(kit.WideWidth, Options(words.WaysToDevelop()), way),
	}}
	if d.Way == scenario.Lab {
		g.fields = append(g.fields, b.number(dec("price", func(d *scenario.Developing) *scenario.Decimal { return &d.Price })))
		return g
	}
	rolls := counts(key("chemistry_rolls"), func(s *scenario.Scenario) *int { return &at(s).ChemistryRolls })
	keeps := maybes(key("chemistry_keeps_months"), func(s *scenario.Scenario) *scenario.Maybe { return &at(s).ChemistryKeepsMonth })
	g.fields = append(g.fields,
		b.number(dec("chemistry_price", func(d *scenario.Developing) *scenario.Decimal { return &d.ChemistryPrice })),
		b.number(rolls),
		b.number(keeps),
		b.number(dec("extra_per_roll", func(d *scenario.Developing) *scenario.Decimal { return &d.ExtraPerRoll })),
		b.number(dec("minutes_per_roll", func(d *scenario.Developing) *scenario.Decimal { return &d.MinutesPerRoll })),
	)
	return g
}

// followName keeps the offers that name a process naming it.
func followName(i int, name Binding) Binding {
	set := name.set
	name.set = func(s *scenario.Scenario, text string, l money.Locale) error {
		was := s.Developing[i].Name
		if err := set(s, text, l); err != nil {
			return err
		}
		for j := range s.Offers {
			if s.Offers[j].Developing == was {
				s.Offers[j].Developing = text
			}
		}
		return nil
	}
	return name
}
