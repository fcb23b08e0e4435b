package form

import (
	"fmt"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

func (b forms) shootingForm(s *scenario.Scenario) *Form {
	year := Binding{
		Key: "shooting.rolls_a_year", Name: "rolls a year",
		Get: func(s *scenario.Scenario, l money.Locale) string { return l.Field(s.Shooting.RollsAYear()) },
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err == nil {
				s.Shooting, err = b.pattern.spread(s.Shooting, v)
			}
			return err
		},
	}
	f := &Form{title: always("The year's shooting"), subtitle: always("each way to buy serves all of it")}
	exposures := counts("roll_exposures", "exposures of a roll", func(s *scenario.Scenario) *int { return &s.RollExposures })
	horizon := counts("months", "months to look at", func(s *scenario.Scenario) *int { return &s.Months })
	first := months("first_month", "first month", func(s *scenario.Scenario) *scenario.Month { return &s.FirstMonth })
	f.groups = append(f.groups,
		group{heading: "All year", fields: []*Field{
			numberField(b.e, "Rolls a year", "", year).means("shooting.rolls_a_year"),
			numberField(b.e, "A roll is", "exposures", exposures),
			numberField(b.e, "Look ahead", "months", horizon),
			numberField(b.e, "First month", "", first),
		}},
	)
	g := group{heading: "Month by month"}
	for m := range s.Shooting.RollsPerMonth {
		key := fmt.Sprintf("shooting.rolls_per_month[%d]", m+1)
		rolls := decimals(key, "rolls of a month", func(s *scenario.Scenario) *decimal.Decimal { return &s.Shooting.RollsPerMonth[m] })
		f := numberField(b.e, s.FirstMonth.Add(m).Month.String(), "rolls", rolls)
		f.label = func(s *scenario.Scenario) string { return s.FirstMonth.Add(m).Month.String() }
		g.fields = append(g.fields, f)
	}
	f.groups = append(f.groups, g)
	about := group{heading: "The scenario", fields: []*Field{
		wordField(b.e, "Name", texts("name", "name of the scenario", func(s *scenario.Scenario) *string { return &s.Name })),
		wordField(b.e, "Note", texts("note", "note", func(s *scenario.Scenario) *string { return &s.Note })),
		b.currencyField(s, "Home currency", texts("home", "home currency", func(s *scenario.Scenario) *string { return &s.Home })),
	}}
	var offers []kit.Option
	for _, o := range s.Offers {
		offers = append(offers, kit.Option{Value: o.Name, Label: o.Name})
	}
	about.fields = append(about.fields, choiceField(b.e, "Compared with", kit.FormWidth-kit.LabelWidth, offers,
		texts("baseline", "what the others are compared with", func(s *scenario.Scenario) *string { return &s.Baseline })))
	f.groups = append(f.groups, about)
	return f
}
