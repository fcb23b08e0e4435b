package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

type inHand = scenario.InHand

// ofReel is the binding of a value of the reel in hand that is chosen.
func (b forms) ofReel(key string, v value[inHand]) Binding {
	key = b.reelKey + "." + key
	return Binding{
		Key: key, Name: calledIn(key), reel: &v,
		Get: func(_ *scenario.Scenario, l money.Locale) string {
			if r, ok := b.reel(); ok {
				return v.get(&r, l)
			}
			return ""
		},
	}
}

// reelForm is the form of the reel in hand that is chosen: what it is, what stands on its
// labels, the loader's counter, and how it is cut.
func (b forms) reelForm() *Form {
	r, _ := b.reel()
	f := &Form{
		title: func(*scenario.Scenario) string { now, _ := b.reel(); return now.Name },
		subtitle: func(*scenario.Scenario) string {
			now, _ := b.reel()
			return words.UnderReel(&now)
		},
		groups: []group{b.inHandGroup(), b.labelGroup(), b.counterGroup(), b.reelCutGroup(), b.reelActions()},
	}
	if r.Remjet {
		f.caution = words.RemjetCaution
	}
	return f
}

func (b forms) inHandGroup() group {
	text := func(key string, at func(*inHand) *string) *Field { return b.text(b.ofReel(key, choiceIn(at))) }
	paid := b.number(b.ofReel("paid", paidIn())).withUnit(b.e, AllCurrencies, b.ofReel("currency", choiceIn(func(r *inHand) *string { return &r.Currency })))
	return group{heading: words.GroupInHand, fields: []*Field{
		text("name", func(r *inHand) *string { return &r.Name }),
		text("offer", func(r *inHand) *string { return &r.Offer }),
		b.text(b.ofReel("bought", dateIn(func(r *inHand) *scenario.Date { return &r.Bought }))),
		b.text(b.ofReel("keeps_until", dateIn(func(r *inHand) *scenario.Date { return &r.KeepsUntil }))),
		paid,
		text("note", func(r *inHand) *string { return &r.Note }),
	}}
}

// paidIn is an amount with the currency that may be written with it.
func paidIn() value[inHand] {
	v := decimalIn(func(r *inHand) *scenario.Decimal { return &r.Paid })
	number := v.set
	v.set = func(r *inHand, text string, l money.Locale) error {
		if read, err := l.Read(text); err == nil && read.Currency != "" {
			r.Currency = read.Currency
		}
		return number(r, text, l)
	}
	return v
}

func (b forms) labelGroup() group {
	return group{heading: words.GroupOnLabels, fields: []*Field{
		b.number(b.ofReel("speed", maybeCountIn(func(r *inHand) *scenario.MaybeWhole { return &r.Speed }))),
		b.text(b.ofReel("process", choiceIn(func(r *inHand) *string { return &r.Process }))),
		b.text(b.ofReel("label_note", choiceIn(func(r *inHand) *string { return &r.LabelNote }))),
	}}
}

// counterGroup is the loader's counter, to be typed or measured.
func (b forms) counterGroup() group {
	return group{heading: words.GroupCounter, fields: []*Field{
		b.number(b.ofReel("counter_mm", maybeIn(func(r *inHand) *scenario.Maybe { return &r.CounterMM }))),
		b.number(b.ofReel("counter_growth_mm", decimalIn(func(r *inHand) *scenario.Decimal { return &r.CounterGrowthMM }))),
		b.number(b.ofReel("counter_zero_mm", decimalIn(func(r *inHand) *scenario.Decimal { return &r.CounterZeroMM }))),
		b.number(b.ofReel("counter_wraps", maybeCountIn(func(r *inHand) *scenario.MaybeWhole { return &r.CounterWraps }))),
	}, actions: kit.Objects(kit.NewLink(words.LinkMeasureCounter, b.acts.MeasureCounter))}
}

// reelCutGroup is how the reel is cut: as of an offer's reel, and what a session loses.
func (b forms) reelCutGroup() group {
	mm := func(key string, at func(*inHand) *scenario.Decimal) *Field {
		return b.number(b.ofReel(key, decimalIn(at)))
	}
	count := func(key string, at func(*inHand) *int) *Field { return b.number(b.ofReel(key, countIn(at))) }
	length := mm("length", func(r *inHand) *scenario.Decimal { return &r.Length }).
		withUnit(b.e, Options(words.LengthUnits()), b.ofReel("length_unit", choiceIn(func(r *inHand) *scenario.LengthUnit { return &r.LengthUnit })))
	pitch := b.ofReel("pitch", choiceIn(func(r *inHand) *scenario.Pitch { return &r.Pitch }))
	remjet := b.ofReel("remjet", flagIn(func(r *inHand) *bool { return &r.Remjet }))
	return group{heading: words.GroupCutting, fold: words.FoldReel, fields: []*Field{
		length,
		count("exposures", func(r *inHand) *int { return &r.Exposures }),
		mm("spoiled_percent", func(r *inHand) *scenario.Decimal { return &r.SpoiledPercent }),
		b.choice(kit.WideWidth, Options(words.Pitches()), pitch),
		mm("leader_mm", func(r *inHand) *scenario.Decimal { return &r.LeaderMM }),
		mm("trailer_mm", func(r *inHand) *scenario.Decimal { return &r.TrailerMM }),
		mm("fogged_mm", func(r *inHand) *scenario.Decimal { return &r.FoggedMM }),
		mm("start_waste_mm", func(r *inHand) *scenario.Decimal { return &r.StartWasteMM }),
		mm("end_waste_mm", func(r *inHand) *scenario.Decimal { return &r.EndWasteMM }),
		mm("session_waste_mm", func(r *inHand) *scenario.Decimal { return &r.SessionWasteMM }),
		count("test_exposures", func(r *inHand) *int { return &r.TestExposures }),
		count("short_roll_from", func(r *inHand) *int { return &r.ShortRollFrom }),
		b.flag(remjet),
	}}
}

func (b forms) reelActions() group {
	return group{actions: kit.Objects(kit.NewLink(words.LinkRemoveReel, b.acts.RemoveReel))}
}
