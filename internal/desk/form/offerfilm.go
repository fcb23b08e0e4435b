package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// filmGroup is the film itself.
func (b forms) filmGroup(s *scenario.Scenario, of offerBindings) group {
	keeps := of.maybe("keeps_months", func(o *scenario.Offer) *scenario.Maybe { return &o.KeepsMonths })
	keepsField := b.number(keeps)
	if o := of.at(s); o.Kind == scenario.KindBoxed && o.Boxed != nil {
		perPack := of.count("boxed.rolls_per_pack", func(o *scenario.Offer) *int { return &o.Boxed.RollsPerPack })
		exposures := of.count("boxed.exposures", func(o *scenario.Offer) *int { return &o.Boxed.Exposures })
		spoiled := of.decimal("boxed.spoiled_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.Boxed.SpoiledPercent })
		return group{heading: words.GroupFilm, fields: []*Field{
			b.number(perPack),
			b.number(exposures),
			b.number(spoiled).taking(takesShare),
			keepsField,
		}}
	}
	g := group{heading: words.GroupReel}
	if of.at(s).Reel == nil {
		return g
	}
	length := of.decimal("reel.length", func(o *scenario.Offer) *scenario.Decimal { return &o.Reel.Length })
	unit := choices(of.key("reel.length_unit"), func(s *scenario.Scenario) *scenario.LengthUnit { return &of.at(s).Reel.LengthUnit })
	exposures := of.count("reel.exposures", func(o *scenario.Offer) *int { return &o.Reel.Exposures })
	spoiled := of.decimal("reel.spoiled_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.Reel.SpoiledPercent })
	g.fields = []*Field{
		b.number(length).withUnit(b.e, Options(words.LengthUnits()), unit).
			taking(takesLengthUnit(func(s *scenario.Scenario) *scenario.LengthUnit { return &of.at(s).Reel.LengthUnit })),
		b.number(exposures),
		b.number(spoiled).taking(takesShare),
		keepsField,
	}
	return g
}

// cutGroup is how a reel is cut.
func (b forms) cutGroup(of offerBindings) group {
	mm := func(k string, at func(*scenario.Reel) *scenario.Decimal) *Field {
		return b.number(of.decimal("reel."+k, func(o *scenario.Offer) *scenario.Decimal { return at(o.Reel) }))
	}
	pitch := choices(of.key("reel.pitch"), func(s *scenario.Scenario) *scenario.Pitch { return &of.at(s).Reel.Pitch })
	test := of.count("reel.test_exposures", func(o *scenario.Offer) *int { return &o.Reel.TestExposures })
	short := of.count("reel.short_roll_from", func(o *scenario.Offer) *int { return &o.Reel.ShortRollFrom })
	remjet := of.flag("reel.remjet", func(o *scenario.Offer) *bool { return &o.Reel.Remjet })
	return group{heading: words.GroupCutting, fold: words.FoldCutting, fields: []*Field{
		b.choice(kit.WideWidth, Options(words.Pitches()), pitch),
		mm("leader_mm", func(r *scenario.Reel) *scenario.Decimal { return &r.LeaderMM }),
		mm("trailer_mm", func(r *scenario.Reel) *scenario.Decimal { return &r.TrailerMM }),
		mm("fogged_mm", func(r *scenario.Reel) *scenario.Decimal { return &r.FoggedMM }),
		mm("start_waste_mm", func(r *scenario.Reel) *scenario.Decimal { return &r.StartWasteMM }),
		mm("end_waste_mm", func(r *scenario.Reel) *scenario.Decimal { return &r.EndWasteMM }),
		b.number(test),
		b.number(short),
		b.flag(remjet),
	}}
}
