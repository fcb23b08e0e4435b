package workbook

import (
	"reelworth/internal/compare"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// offer is one way to buy with its sheet, and the terms that other sheets refer to.
type offer struct {
	b        *book
	scenario *scenario.Offer
	computed *compare.Offer
	prefix   string // of its inputs' names
	sheet    *sheet
	process  *process // nil when developing is not counted

	receipt order
	yield   yield
	perRoll map[words.CostPart]term
	total   term // of a standard roll
	year    year
}

// process is the offer's way of developing.
type process struct {
	prefix string
	*scenario.Developing
}

// figure is one of the offer's own inputs.
func (o *offer) figure(key string) term { return o.b.in.figure(o.prefix + key) }

func (o *offer) reel() bool { return o.scenario.Kind == scenario.KindReel }

// home says whether the film is developed at home.
func (o *offer) home() bool { return o.process != nil && o.process.Way == scenario.Home }

// developing is one of the inputs of the offer's way of developing.
func (o *offer) developing(key string) term { return o.b.in.figure(o.process.prefix + key) }

func (o *offer) inSeller() style { return o.b.money(o.scenario.Currency) }

// The columns of an offer's sheet.
const (
	lineLabel = iota + 1
	lineValue
	lineUnit
)

// addOffer makes the sheet of an offer up to the cost of a roll.
func (b *book) addOffer(i int) *offer {
	o := &offer{b: b, scenario: &b.s.Offers[i], computed: &b.c.Offers[i], prefix: offerPrefix(i)}
	for k := range b.s.Developing {
		if d := &b.s.Developing[k]; d.Name == o.scenario.Developing {
			o.process = &process{developingPrefix(k), d}
		}
	}
	o.sheet = b.addSheet(o.scenario.Name)
	o.sheet.widths = map[int]float64{lineLabel: 42, lineValue: 20, lineUnit: 14}
	o.sheet.text(lineLabel, 1, o.scenario.Name, style{kind: titled})
	o.sheet.text(lineLabel, 2, words.SheetOfferSay(o.scenario), style{kind: noted})
	o.sheet.frozen = 2
	o.section(words.SheetOrder)
	o.receipt = o.orderAt(o.figure("price"), o.line)
	o.section(words.SheetYield)
	o.addYield()
	o.section(words.SheetPerRoll)
	o.addPerRoll(o.receipt)
	return o
}

func (o *offer) section(title string) {
	o.sheet.text(lineLabel, o.sheet.next()+1, title, style{kind: headed})
}

// line places a line of the sheet, and its unit beside it.
func (o *offer) line(label string, t term, st style) term {
	row := o.sheet.next()
	o.sheet.text(lineLabel, row, label, style{kind: labelled, bold: st.bold})
	ref := o.sheet.formula(lineValue, row, t, st)
	o.sheet.text(lineUnit, row, st.unit(), style{kind: noted})
	return ref
}

// yield is what one unit gives.
type yield struct {
	good, cassettes term
	standard        term // in standard rolls
}

func (o *offer) addYield() {
	exposures, spoiled := o.boxedYield()
	if o.reel() {
		exposures, spoiled = o.reelYield()
	}
	o.yield.good = o.line(words.SheetGood, exposures.times(spoiled.rest()), count("exposures"))
	o.yield.standard = o.line(words.SheetStandard, o.yield.good.over(o.b.in.figure("roll_exposures")), count("rolls"))
}

// reelYield divides the reel as the cutter does: full rolls, then one short one.
func (o *offer) reelYield() (exposures, spoiled term) {
	in := func(key string) term { return o.figure("reel_" + key) }
	mm := measure("mm")
	frame := o.line(words.SheetFrame, whole(8).times(when(o.b.in.is(o.prefix+"reel_pitch", "short"), literal("4.74"), literal("4.75"))), mm)
	ends := o.line(words.SheetEnds, sum(in("leader_mm"), in("trailer_mm"), in("fogged_mm")), mm)
	roll := o.line(words.SheetRollLength, ends.plus(in("exposures").times(frame)), mm)
	perUnit := when(o.b.in.is(o.prefix+"reel_length_unit", "ft"), literal("304.8"), whole(1000))
	usable := o.line(words.SheetUsable, in("length").times(perUnit).minus(in("start_waste_mm")).minus(in("end_waste_mm")).
		minus(in("test_exposures").times(frame)), mm)
	full := o.line(words.SheetFullRolls, greatest(whole(0), floor(usable.over(roll))), count("rolls"))
	left := o.line(words.SheetLeftOfReel, usable.minus(full.times(roll)), mm)
	fits := o.line(words.SheetShortFits, least(in("exposures").minus(whole(1)),
		greatest(whole(0), floor(left.minus(ends).over(frame)))), count("exposures"))
	short := o.line(words.SheetShortRoll, when(atLeast(fits, in("short_roll_from")), fits, whole(0)), count("exposures"))
	o.yield.cassettes = o.line(words.SheetCassettes, full.plus(when(above(short, whole(0)), whole(1), whole(0))), count("cassettes"))
	return o.line(words.SheetExposures, full.times(in("exposures")).plus(short), count("exposures")), in("spoiled_percent")
}

func (o *offer) boxedYield() (exposures, spoiled term) {
	if o.reel() {
		return exposures, spoiled
	}
	rolls := o.figure("boxed_rolls_per_pack")
	o.yield.cassettes = o.line(words.SheetCassettes, rolls, count("cassettes"))
	return o.line(words.SheetExposures, rolls.times(o.figure("boxed_exposures")), count("exposures")), o.figure("boxed_spoiled_percent")
}

// equipmentInputs are the prefixes of what has to be bought once.
func (o *offer) equipmentInputs() (loading, developing []string) {
	if o.reel() {
		for i := range o.b.s.Loading.Equipment {
			loading = append(loading, equipmentPrefix("loading_", i))
		}
	}
	if o.process != nil {
		for i := range o.process.Equipment {
			developing = append(developing, equipmentPrefix(o.process.prefix, i))
		}
	}
	return loading, developing
}

// ofEquipment adds something up over the equipment that is not owned.
func (o *offer) ofEquipment(prefixes []string, of func(prefix string) term) term {
	total := whole(0)
	for _, p := range prefixes {
		piece := when(o.b.in.holds(p+"owned"), whole(0), of(p))
		if total.text == "0" {
			total = piece
		} else {
			total = total.plus(piece)
		}
	}
	return total
}
