package form

import (
	"fmt"

	"github.com/shopspring/decimal"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// yearField is the rolls of a year, spread over the months as they were.
func (b forms) yearField() *Field {
	return b.number(Binding{
		Key: catalogue.RollsAYear, Name: calledIn(catalogue.RollsAYear),
		Get: func(s *scenario.Scenario, l money.Locale) string { return l.Field(s.Shooting.RollsAYear()) },
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err == nil {
				s.Shooting, err = b.pattern.spread(s.Shooting, v)
			}
			if err == nil {
				s.Settle("shooting.rolls_per_month")
			}
			return err
		},
	}).means(catalogue.RollsAYear)
}

func (b forms) shootingForm(s *scenario.Scenario) *Form {
	f := &Form{title: always(words.TopicShooting), subtitle: always(words.UnderShooting)}
	exposures := counts("roll_exposures", func(s *scenario.Scenario) *int { return &s.RollExposures })
	horizon := counts("months", func(s *scenario.Scenario) *int { return &s.Months })
	first := months("first_month", func(s *scenario.Scenario) *scenario.Month { return &s.FirstMonth })
	f.groups = append(f.groups,
		group{heading: words.GroupAllYear, fields: []*Field{
			b.yearField(),
			b.monthField(),
			b.seasonField(catalogue.SeasonFrom),
			b.seasonField(catalogue.SeasonUntil),
			b.number(exposures),
			b.number(horizon),
			b.number(first),
		}},
	)
	g := group{heading: words.GroupMonths}
	for m := range s.Shooting.RollsPerMonth {
		key := fmt.Sprintf("shooting.rolls_per_month[%d]", m+1)
		rolls := decimals(key, func(s *scenario.Scenario) *decimal.Decimal { return &s.Shooting.RollsPerMonth[m] })
		f := numberField(b.e, "", string(catalogue.Rolls), rolls)
		f.label = func(s *scenario.Scenario) string { return s.FirstMonth.Add(m).Month.String() }
		g.fields = append(g.fields, f)
	}
	f.groups = append(f.groups, g)
	about := group{heading: words.GroupScenario, fields: []*Field{
		b.text(texts("name", func(s *scenario.Scenario) *string { return &s.Name })),
		b.text(texts("note", func(s *scenario.Scenario) *string { return &s.Note })),
		b.currencyField(s, texts("home", func(s *scenario.Scenario) *string { return &s.Home })),
	}}
	var offers []kit.Option
	for _, o := range s.Offers {
		offers = append(offers, kit.Option{Value: o.Name, Label: o.Name})
	}
	about.fields = append(about.fields, b.choice(kit.FormWidth-kit.LabelWidth, offers,
		texts("baseline", func(s *scenario.Scenario) *string { return &s.Baseline })))
	f.groups = append(f.groups, about)
	return f
}
