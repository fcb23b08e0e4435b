package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func (b forms) borderForm() *Form {
	at := func(s *scenario.Scenario) *scenario.Border { return &s.Border }
	dec := func(k string, to func(*scenario.Border) *scenario.Decimal) Binding {
		return decimals("border."+k, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	flag := func(k string, to func(*scenario.Border) *bool) Binding {
		return flags("border."+k, func(s *scenario.Scenario) *bool { return to(at(s)) })
	}
	return &Form{
		title:    always(words.TopicBorder),
		subtitle: always(words.UnderBorder),
		caution:  words.BorderCaution,
		groups: []group{
			{heading: words.GroupImportTax, fields: []*Field{
				b.number(dec("tax_percent", func(r *scenario.Border) *scenario.Decimal { return &r.TaxPercent })),
				b.number(dec("tax_free_up_to", func(r *scenario.Border) *scenario.Decimal { return &r.TaxFreeUpTo })),
				b.flag(flag("tax_on_shipping", func(r *scenario.Border) *bool { return &r.TaxOnShipping })),
			}},
			{heading: words.GroupDuty, fields: []*Field{
				b.number(dec("duty_percent", func(r *scenario.Border) *scenario.Decimal { return &r.DutyPercent })),
				b.number(dec("duty_free_up_to", func(r *scenario.Border) *scenario.Decimal { return &r.DutyFreeUpTo })),
				b.flag(flag("duty_on_shipping", func(r *scenario.Border) *bool { return &r.DutyOnShipping })),
			}},
			{heading: words.GroupCollecting, fields: []*Field{
				b.number(dec("handling_fee", func(r *scenario.Border) *scenario.Decimal { return &r.HandlingFee })),
			}},
			{actions: kit.Objects(kit.NewLink(words.LinkBorderSets, b.e.AskBorderSets))},
		},
	}
}
