package compare_test

import "reelworth/internal/scenario"

type refYear struct {
	Cash, Cumulative []rat
	Orders           []int64
	Total, Time      rat

	FilmLeftRolls      rat
	FilmLeftValue      rat
	SuppliesLeftValue  rat
	EquipmentLeftValue rat
	ThrownAwayRolls    rat

	Cost, FilmCost, DevelopingCost rat
	Long                           bool

	refTrace
}

// refTrace is what happened on the way, for telling whether a scenario got there.
type refTrace struct {
	onHandThrownAway, chemistryThrownAway, filmLeftTooOld bool
	packs, packsInAMonth                                  int
	chemistryLeft, loadsLeft                              rat
}

// refBatch is what came in at one time: how much of it is left, how much was used, and
// what all of it cost.
type refBatch struct {
	month              int
	amount, used, cost rat
}

// refSupply is film in exposures, cassettes in loads, or chemistry in cassettes;
// the oldest batch first.
type refSupply struct {
	batches []refBatch
	keeps   scenario.Maybe
}

func (s *refSupply) has() rat {
	var sum rat
	for _, b := range s.batches {
		sum = sum.plus(b.amount)
	}
	return sum
}

// topUp buys packs until the supply covers want, and says how many.
func (s *refSupply) topUp(month int, want, pack, cost rat) (bought int) {
	for have := s.has(); have.below(want); have = have.plus(pack) {
		bought++
	}
	if bought > 0 {
		s.batches = append(s.batches, refBatch{month: month, amount: whole(bought).times(pack), cost: whole(bought).times(cost)})
	}
	return bought
}

// throwAway drops what is too old in a month, and says how much that was.
func (s *refSupply) throwAway(month int) (gone rat) {
	var fresh []refBatch
	for _, b := range s.batches {
		if s.keeps.Set && !whole(month-b.month).below(typed(s.keeps.Decimal)) {
			gone = gone.plus(b.amount)
		} else {
			fresh = append(fresh, b)
		}
	}
	s.batches = fresh
	return gone
}

// use takes as much of want as is there.
func (s *refSupply) use(want rat) {
	for i := range s.batches {
		b := &s.batches[i]
		taken := least(b.amount, want)
		b.amount = b.amount.minus(taken)
		b.used = b.used.plus(taken)
		want = want.minus(taken)
	}
	var left []refBatch
	for _, b := range s.batches {
		if b.amount.positive() {
			left = append(left, b)
		}
	}
	s.batches = left
}

// monthsValued is how many months after the year what is left is valued for.
const monthsValued = 24

// worthAfter is what the supply is worth when nothing more is bought from a month on:
// of each batch's cost the part that falls on what is used after that month, when all
// that is ever used of the batch bears it.
func (s refSupply) worthAfter(month int, wanted func(month int) rat) (worth rat) {
	for i, b := range s.batches {
		later := s.usedAfter(i, month, wanted)
		if later.positive() {
			worth = worth.plus(b.cost.times(later).over(b.used.plus(later)))
		}
	}
	return worth
}

// usedAfter is how much of batch i is used from a month on.
func (s refSupply) usedAfter(i, month int, wanted func(month int) rat) (used rat) {
	stock := append([]refBatch(nil), s.batches...)
	for m := month; m < month+monthsValued; m++ {
		want := wanted(m)
		for j := range stock {
			b := &stock[j]
			if s.keeps.Set && !whole(m-b.month).below(typed(s.keeps.Decimal)) {
				continue
			}
			taken := least(b.amount, want)
			b.amount, want = b.amount.minus(taken), want.minus(taken)
			if j == i {
				used = used.plus(taken)
			}
		}
	}
	return used
}

// refLiveYear lives through the months of the scenario on one offer.
func refLiveYear(s scenario.Scenario, o scenario.Offer, y refYield) refYear {
	d := refProcess(s, o)
	reel := o.Kind == scenario.KindReel
	atHome := d != nil && d.Way == scenario.Home
	demand := func(m int) rat {
		return typed(s.Shooting.RollsPerMonth[m%12]).times(whole(s.RollExposures))
	}
	cassettesIn := func(m int) rat { return demand(m).times(whole(y.Cassettes)).over(y.Good) }

	film := refSupply{keeps: o.KeepsMonths}
	film.batches = []refBatch{{amount: typed(o.OnHand).times(y.Good)}}
	loads := refSupply{}
	loads.batches = []refBatch{{amount: whole(s.Loading.CassettesOwned * s.Loading.CassetteLoads)}}
	chemistry := refSupply{}
	var perCassette, toDevelop rat
	if reel {
		perCassette = typed(s.Loading.ConsumablesPerRoll)
	}
	if d != nil && d.Way == scenario.Lab {
		toDevelop = typed(d.Price)
	}
	if atHome {
		chemistry.keeps = d.ChemistryKeepsMonth
		toDevelop = typed(d.ExtraPerRoll)
	}
	perCassette = perCassette.plus(toDevelop)

	var year refYear
	var equipped bool
	var minutes, minutesDeveloping, developing, thrownAway rat
	for m := 0; m < s.Months; m++ {
		wanted, cassettes := demand(m), cassettesIn(m)
		var cash rat
		onHand := len(film.batches) > 0 && film.batches[0].amount.positive() && film.batches[0].cost.zero()
		gone := film.throwAway(m)
		thrownAway = thrownAway.plus(gone)
		year.onHandThrownAway = year.onHandThrownAway || onHand && gone.positive() && o.OnHand.IsPositive()
		year.chemistryThrownAway = chemistry.throwAway(m).positive() || year.chemistryThrownAway

		if wanted.positive() && !equipped {
			equipped = true
			for _, e := range refNeeds(s, o) {
				cash = cash.plus(typed(e.Price).billed(s.Home))
			}
		}

		raised := greatest(rat{}, whole(1).plus(percentOf(o.PriceRisePercent).times(whole(m)).over(whole(12))))
		landed := refLand(s, o, typed(o.Price).times(raised)).Landed
		orders := film.topUp(m, wanted, whole(o.Units).times(y.Good), landed)
		cash = cash.plus(whole(orders).times(landed))
		film.use(wanted)
		if reel {
			cost := whole(s.Loading.CassettePack).times(typed(s.Loading.CassettePrice)).billed(s.Home)
			packs := loads.topUp(m, cassettes, whole(s.Loading.CassettePack*s.Loading.CassetteLoads), cost)
			cash = cash.plus(whole(packs).times(cost))
			year.packs, year.packsInAMonth = year.packs+packs, max(year.packsInAMonth, packs)
			loads.use(cassettes)
			minutes = minutes.plus(wanted.over(y.Good).times(typed(s.Loading.MinutesPerReel)))
			minutes = minutes.plus(cassettes.times(typed(s.Loading.MinutesPerRoll)))
		}
		if atHome {
			cost := typed(d.ChemistryPrice).billed(s.Home)
			sets := chemistry.topUp(m, cassettes, whole(d.ChemistryRolls), cost)
			cash = cash.plus(whole(sets).times(cost))
			developing = developing.plus(whole(sets).times(cost))
			chemistry.use(cassettes)
			minutesDeveloping = minutesDeveloping.plus(cassettes.times(typed(d.MinutesPerRoll)))
		}

		cash = cash.plus(cassettes.times(perCassette).billed(s.Home))
		developing = developing.plus(cassettes.times(toDevelop).billed(s.Home))
		year.Cash = append(year.Cash, cash)
		year.Total = year.Total.plus(cash)
		year.Cumulative = append(year.Cumulative, year.Total)
		year.Orders = append(year.Orders, int64(orders))
	}

	perMinute := typed(s.Loading.HourlyValue).over(whole(60))
	year.Time = perMinute.times(minutes.plus(minutesDeveloping)).billed(s.Home)
	year.FilmLeftRolls = film.has().over(whole(s.RollExposures))
	year.ThrownAwayRolls = thrownAway.over(whole(s.RollExposures))
	year.FilmLeftValue = film.worthAfter(s.Months, demand).billed(s.Home)
	loadsLeft := flag(reel, loads.worthAfter(s.Months, cassettesIn).billed(s.Home))
	chemistryLeft := chemistry.worthAfter(s.Months, cassettesIn).billed(s.Home)
	year.SuppliesLeftValue = loadsLeft.plus(chemistryLeft)
	year.loadsLeft, year.chemistryLeft = loadsLeft, chemistryLeft
	film.keeps = scenario.Maybe{}
	year.filmLeftTooOld = film.worthAfter(s.Months, demand).billed(s.Home).above(year.FilmLeftValue)
	if equipped {
		for _, e := range refNeeds(s, o) {
			year.EquipmentLeftValue = year.EquipmentLeftValue.plus(typed(e.Resale).billed(s.Home))
		}
	}
	var soon rat
	for m := s.Months; m < s.Months+monthsValued; m++ {
		soon = soon.plus(demand(m))
	}
	year.Long = film.has().above(soon)

	left := total(year.FilmLeftValue, year.SuppliesLeftValue, year.EquipmentLeftValue)
	year.Cost = year.Total.minus(left).plus(year.Time)
	year.DevelopingCost = developing.minus(chemistryLeft).plus(perMinute.times(minutesDeveloping).billed(s.Home))
	if d != nil && equipped {
		for _, e := range refNotOwned(d.Equipment) {
			lost := typed(e.Price).billed(s.Home).minus(typed(e.Resale).billed(s.Home))
			year.DevelopingCost = year.DevelopingCost.plus(lost)
		}
	}
	year.FilmCost = year.Cost.minus(year.DevelopingCost)
	return year
}
