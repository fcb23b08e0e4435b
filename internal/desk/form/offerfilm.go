package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
)

// filmGroup is the film itself.
func (b forms) filmGroup(s *scenario.Scenario, of offerBindings) group {
	keeps := of.maybe("keeps_months", "how long it keeps", func(o *scenario.Offer) *scenario.Maybe { return &o.KeepsMonths })
	keepsField := numberField(b.e, "Keeps", "months", keeps).means("keeps_months")
	if o := of.at(s); o.Kind == scenario.KindBoxed && o.Boxed != nil {
		perPack := of.count("boxed.rolls_per_pack", "rolls in a pack", func(o *scenario.Offer) *int { return &o.Boxed.RollsPerPack })
		exposures := of.count("boxed.exposures", "exposures", func(o *scenario.Offer) *int { return &o.Boxed.Exposures })
		spoiled := of.decimal("boxed.spoiled_percent", "what is lost to faults", func(o *scenario.Offer) *scenario.Decimal { return &o.Boxed.SpoiledPercent })
		return group{heading: "The film", fields: []*Field{
			numberField(b.e, "Rolls in a pack", "", perPack).means("boxed.rolls_per_pack"),
			numberField(b.e, "Exposures in each", "", exposures).means("boxed.exposures"),
			numberField(b.e, "Lost to faults", "%", spoiled).taking(takesShare),
			keepsField,
		}}
	}
	g := group{heading: "The reel"}
	if of.at(s).Reel == nil {
		return g
	}
	length := of.decimal("reel.length", "length", func(o *scenario.Offer) *scenario.Decimal { return &o.Reel.Length })
	unit := choices(of.key("reel.length_unit"), "unit of length", func(s *scenario.Scenario) *scenario.LengthUnit { return &of.at(s).Reel.LengthUnit })
	exposures := of.count("reel.exposures", "exposures", func(o *scenario.Offer) *int { return &o.Reel.Exposures })
	spoiled := of.decimal("reel.spoiled_percent", "what is lost to faults", func(o *scenario.Offer) *scenario.Decimal { return &o.Reel.SpoiledPercent })
	g.fields = []*Field{
		numberField(b.e, "Length", "", length).withUnit(b.e, []kit.Option{{Value: "ft", Label: "ft"}, {Value: "m", Label: "m"}}, unit).taking(takesLengthUnit(func(s *scenario.Scenario) *scenario.LengthUnit { return &of.at(s).Reel.LengthUnit })).means("reel.length"),
		numberField(b.e, "Exposures in each", "", exposures).means("reel.exposures"),
		numberField(b.e, "Lost to faults", "%", spoiled).taking(takesShare).means("reel.spoiled_percent"),
		keepsField,
	}
	return g
}

// cutGroup is how a reel is cut.
func (b forms) cutGroup(of offerBindings) group {
	mm := func(k, label string, at func(*scenario.Reel) *scenario.Decimal) *Field {
		s := of.decimal("reel."+k, label, func(o *scenario.Offer) *scenario.Decimal { return at(o.Reel) })
		return numberField(b.e, label, "mm", s).means("reel." + k)
	}
	pitch := choices(of.key("reel.pitch"), "perforation", func(s *scenario.Scenario) *scenario.Pitch { return &of.at(s).Reel.Pitch })
	test := of.count("reel.test_exposures", "test exposures", func(o *scenario.Offer) *int { return &o.Reel.TestExposures })
	short := of.count("reel.short_roll_from", "short roll", func(o *scenario.Offer) *int { return &o.Reel.ShortRollFrom })
	remjet := of.flag("reel.remjet", "remjet", func(o *scenario.Offer) *bool { return &o.Reel.Remjet })
	pitches := []kit.Option{{Value: "long", Label: "long, 4.750 mm"}, {Value: "short", Label: "short, 4.740 mm"}}
	return group{heading: "Cutting", fold: "Leader, trailer, waste, perforation …", fields: []*Field{
		choiceField(b.e, "Perforation", kit.WideWidth, pitches, pitch).means("reel.pitch"),
		mm("leader_mm", "Leader", func(r *scenario.Reel) *scenario.Decimal { return &r.LeaderMM }),
		mm("trailer_mm", "Trailer", func(r *scenario.Reel) *scenario.Decimal { return &r.TrailerMM }),
		mm("fogged_mm", "Fogged end", func(r *scenario.Reel) *scenario.Decimal { return &r.FoggedMM }),
		mm("start_waste_mm", "Lost at the start", func(r *scenario.Reel) *scenario.Decimal { return &r.StartWasteMM }),
		mm("end_waste_mm", "Lost at the end", func(r *scenario.Reel) *scenario.Decimal { return &r.EndWasteMM }),
		numberField(b.e, "Test exposures", "", test).means("reel.test_exposures"),
		numberField(b.e, "Short roll from", "exposures", short).means("reel.short_roll_from"),
		yesNo(b.e, "Remjet backing", remjet),
	}}
}
