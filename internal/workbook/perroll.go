package workbook

import (
	"reelworth/internal/words"
)

// addPerRoll places what one standard roll costs in the long run, part by part.
func (o *offer) addPerRoll(l order) {
	b, in := o.b, o.b.in
	each := b.inHome()
	perRoll := func(perUnit term) term { return perUnit.over(o.yield.standard) }
	demand := o.line(words.SheetDemandMonth, b.rollsAYear().times(in.figure("roll_exposures")).over(whole(12)), count("exposures"))
	ordered := o.figure("units").times(o.yield.good)
	keeps := both(in.isSet(o.prefix+"keeps_months"), above(demand, whole(0)))
	used := o.line(words.SheetUsedShare, when(keeps, least(whole(1), o.figure("keeps_months").times(demand).over(ordered)), whole(1)), measure(""))
	landed := func(t term) term { return t.over(o.figure("units")).over(used).over(o.yield.standard) }

	o.perRoll = map[words.CostPart]term{}
	put := func(part words.CostPart, t term) { o.perRoll[part] = o.line(part.Name(), t, each) }
	put(words.PartFilm, landed(l.film))
	put(words.PartShipping, landed(l.shipping))
	put(words.PartTax, landed(sum(l.salesTax, l.prepaid, l.duty, l.tax)))
	put(words.PartFees, landed(l.cardFee.plus(l.handling)))
	put(words.PartLoading, perRoll(o.yield.cassettes.times(o.loadingPerCassette())))
	put(words.PartEquipment, perRoll(o.yield.cassettes.times(o.wearPerCassette())))
	developing := whole(0)
	if o.process != nil {
		developing = o.developingPerCassette(demand)
	}
	put(words.PartDeveloping, perRoll(o.yield.cassettes.times(developing)))
	put(words.PartTime, perRoll(o.hourly().times(o.minutes(used))))
	parts := words.CostParts()
	total := o.perRoll[parts[0]]
	for _, part := range parts[1:] {
		total = total.plus(o.perRoll[part])
	}
	o.total = o.line(words.SheetTotalPerRoll, total, each.strong())
	o.line(words.SheetPerExposure, o.total.over(in.figure("roll_exposures")), each)
}

func (o *offer) loadingPerCassette() term {
	if !o.reel() {
		return whole(0)
	}
	in := o.b.in
	return in.figure("loading_cassette_price").over(in.figure("loading_cassette_loads")).plus(in.figure("loading_consumables_per_roll"))
}

// wearPerCassette is what a cassette takes off the worth of the equipment.
func (o *offer) wearPerCassette() term {
	loading, developing := o.equipmentInputs()
	return o.ofEquipment(append(loading, developing...), func(p string) term {
		return o.b.in.figure(p + "price").minus(o.b.in.figure(p + "resale")).over(o.b.in.figure(p + "lasts_rolls"))
	})
}

func (o *offer) developingPerCassette(demand term) term {
	if !o.home() {
		return o.developing("price")
	}
	monthly := demand.times(o.yield.cassettes).over(o.yield.good)
	keeps := both(o.b.in.isSet(o.process.prefix+"chemistry_keeps_months"), above(monthly, whole(0)))
	effective := o.line(words.SheetEffective, when(keeps,
		least(o.developing("chemistry_rolls"), greatest(whole(1), o.developing("chemistry_keeps_months").times(monthly))),
		o.developing("chemistry_rolls")), count("cassettes"))
	return o.developing("chemistry_price").over(effective).plus(o.developing("extra_per_roll"))
}

// minutes is the time a unit takes, the reel's own shared by what of it is used.
func (o *offer) minutes(used term) term {
	perCassette := o.yield.cassettes.times(o.minutesPerCassette())
	if !o.reel() {
		return perCassette
	}
	return o.b.in.figure("loading_minutes_per_reel").over(used).plus(perCassette)
}

// minutesPerCassette is the time for loading and developing one.
func (o *offer) minutesPerCassette() term {
	minutes := whole(0)
	if o.reel() {
		minutes = o.b.in.figure("loading_minutes_per_roll")
	}
	if o.home() {
		minutes = minutes.plus(o.developing("minutes_per_roll"))
	}
	return minutes
}

// hourly is what a minute is worth.
func (o *offer) hourly() term { return o.b.in.figure("loading_hourly_value").over(whole(60)) }
