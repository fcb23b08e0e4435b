package form

import (
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func (b forms) borderForm() *Form {
	at := func(s *scenario.Scenario) *scenario.Border { return &s.Border }
	dec := func(k, name string, to func(*scenario.Border) *scenario.Decimal) Binding {
		return decimals("border."+k, name, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	flag := func(k, name string, to func(*scenario.Border) *bool) Binding {
		return flags("border."+k, name, func(s *scenario.Scenario) *bool { return to(at(s)) })
	}
	return &Form{
		title:    always("At the border"),
		subtitle: always("for what is imported"),
		caution:  words.BorderCaution,
		groups: []group{
			{heading: "Import tax", fields: []*Field{
				numberField(b.e, "Import tax", "%", dec("tax_percent", "import tax", func(r *scenario.Border) *scenario.Decimal { return &r.TaxPercent })),
				homeField(b.e, "Free up to", dec("tax_free_up_to", "free limit of the import tax", func(r *scenario.Border) *scenario.Decimal { return &r.TaxFreeUpTo })),
				yesNo(b.e, "on shipping too", flag("tax_on_shipping", "import tax on shipping", func(r *scenario.Border) *bool { return &r.TaxOnShipping })),
			}},
			{heading: "Duty", fields: []*Field{
				numberField(b.e, "Duty", "%", dec("duty_percent", "duty", func(r *scenario.Border) *scenario.Decimal { return &r.DutyPercent })),
				homeField(b.e, "Free up to", dec("duty_free_up_to", "free limit of the duty", func(r *scenario.Border) *scenario.Decimal { return &r.DutyFreeUpTo })),
				yesNo(b.e, "on shipping too", flag("duty_on_shipping", "duty on shipping", func(r *scenario.Border) *bool { return &r.DutyOnShipping })),
			}},
			{heading: "Whoever collects it takes", fields: []*Field{
				homeField(b.e, "Handling fee", dec("handling_fee", "handling fee", func(r *scenario.Border) *scenario.Decimal { return &r.HandlingFee })),
			}},
		},
	}
}
