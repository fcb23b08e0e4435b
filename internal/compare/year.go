package compare

import "reelworth/internal/exact"

// year runs through the months of the scenario as if this offer alone served them.
func (t *terms) year() Year {
	r := newRun(t)
	for m := range t.shooting.months {
		r.month(m)
	}
	return r.close()
}

// run is an offer on its way through the months.
type run struct {
	t                      *terms
	film, loads, chemistry supply
	landed                 exact.Fraction // of an order at today's price
	packPrice, setPrice    exact.Fraction
	cassettes              [12]exact.Fraction // filled in each month of the calendar
	equipped               bool

	y              Year
	exposuresShot  exact.Fraction
	cassettesUsed  exact.Fraction
	thrown         exact.Fraction // exposures
	chemistrySpent exact.Fraction
	developingPaid exact.Fraction // the lab's price, or what a cassette costs beside chemistry
}

func newRun(t *terms) *run {
	r := &run{t: t}
	r.film = supply{lot: t.orderSize(), keeps: t.keeps}
	r.film.start(t.onHand.Mul(t.yield.Good))
	r.landed = t.order(t.asking.price).Landed
	if t.reel {
		l := &t.loading
		r.loads.lot = l.pack.Mul(l.loads)
		r.loads.start(l.owned.Mul(l.loads))
		r.packPrice = t.home.of(l.pack.Mul(l.cassettePrice))
	}
	if d := &t.developing; d.atHome() {
		r.chemistry = supply{lot: d.chemistryRolls, keeps: d.keeps}
		r.setPrice = t.home.of(d.chemistryPrice)
	}
	per := t.perExposure()
	for i, demand := range t.shooting.demand {
		r.cassettes[i] = demand.Mul(per)
	}
	r.y.Cash = make([]exact.Fraction, 0, t.shooting.months)
	r.y.Cumulative = make([]exact.Fraction, 0, t.shooting.months)
	r.y.Orders = make([]int64, 0, t.shooting.months)
	return r
}

// month goes through month m in its fixed order: throw away, equip, top up and use,
// pay for each cassette.
func (r *run) month(m int) {
	demand, cassettes := r.t.shooting.demand[m%12], r.cassettes[m%12]
	r.thrown = r.thrown.Add(r.film.discard(m))
	r.chemistry.discard(m)

	cash := r.equip(demand)
	orders := r.film.lotsFor(demand)
	if orders.Sign() > 0 {
		cash = cash.Add(r.film.buy(orders, r.landedIn(m), m))
	}
	r.film.use(demand)
	if r.t.reel {
		cash = cash.Add(topUp(&r.loads, cassettes, r.packPrice, m))
		r.loads.use(cassettes)
	}
	if r.t.developing.atHome() {
		spent := topUp(&r.chemistry, cassettes, r.setPrice, m)
		r.chemistrySpent = r.chemistrySpent.Add(spent)
		cash = cash.Add(spent)
		r.chemistry.use(cassettes)
	}
	cash = cash.Add(r.payPerCassette(cassettes))
	r.exposuresShot = r.exposuresShot.Add(demand)
	r.cassettesUsed = r.cassettesUsed.Add(cassettes)
	r.book(cash, orders)
}

// equip buys the equipment once something is shot.
func (r *run) equip(demand exact.Fraction) (paid exact.Fraction) {
	if r.equipped || demand.Sign() <= 0 {
		return paid
	}
	r.equipped = true
	for _, gears := range r.t.equipment() {
		paid = paid.Add(r.t.prices(gears))
	}
	return paid
}

// landedIn is what an order costs in month m.
func (r *run) landedIn(m int) exact.Fraction {
	if m == 0 || r.t.asking.riseYearly.IsZero() {
		return r.landed
	}
	return r.t.order(r.t.priceIn(m)).Landed
}

// topUp buys what is missing to need and says what it cost.
func topUp(s *supply, need, price exact.Fraction, m int) (paid exact.Fraction) {
	lots := s.lotsFor(need)
	if lots.Sign() > 0 {
		return s.buy(lots, price, m)
	}
	return paid
}

// payPerCassette pays what every cassette costs beside film, loads and chemistry.
func (r *run) payPerCassette(cassettes exact.Fraction) exact.Fraction {
	developing := r.t.developing.perCassette
	r.developingPaid = r.developingPaid.Add(r.t.home.of(cassettes.Mul(developing)))
	return r.t.home.of(cassettes.Mul(r.t.loading.consumables.Add(developing)))
}

// book writes down the month.
func (r *run) book(cash, orders exact.Fraction) {
	r.y.Total = r.y.Total.Add(cash)
	r.y.Cash = append(r.y.Cash, cash)
	r.y.Cumulative = append(r.y.Cumulative, r.y.Total)
	r.y.Orders = append(r.y.Orders, toInt64(orders))
}

// close values what is left and the time, and splits the cost of the year.
func (r *run) close() Year {
	t, y, end := r.t, &r.y, r.t.shooting.months
	y.FilmLeftRolls = r.film.left().Quo(t.shooting.rollExposures)
	y.ThrownAwayRolls = r.thrown.Quo(t.shooting.rollExposures)
	y.Long = r.film.lastsLong(&t.shooting.demand)
	y.FilmLeftValue = t.home.of(r.film.worth(&t.shooting.demand, end))
	chemistryLeft := t.home.of(r.chemistry.worth(&r.cassettes, end))
	y.SuppliesLeftValue = t.home.of(r.loads.worth(&r.cassettes, end)).Add(chemistryLeft)
	if r.equipped {
		y.EquipmentLeftValue = t.resales(t.loading.equipment).Add(t.resales(t.developing.equipment))
	}
	y.Time = t.home.of(t.value(r.minutes()))
	y.Cost = y.Total.Sub(y.FilmLeftValue).Sub(y.SuppliesLeftValue).Sub(y.EquipmentLeftValue).Add(y.Time)
	y.DevelopingCost = r.developingSide(chemistryLeft)
	y.FilmCost = y.Cost.Sub(y.DevelopingCost)
	return *y
}

// minutes is the time that loading and developing take over the months.
func (r *run) minutes() exact.Fraction {
	reels := r.exposuresShot.Quo(r.t.yield.Good)
	return reels.Mul(r.t.loading.minutesPerReel).Add(r.cassettesUsed.Mul(r.t.minutesPerCassette()))
}

// developingSide is the part of the year's cost that developing makes up.
func (r *run) developingSide(chemistryLeft exact.Fraction) exact.Fraction {
	t := r.t
	cost := r.developingPaid.Add(r.chemistrySpent).Sub(chemistryLeft)
	if r.equipped {
		cost = cost.Add(t.prices(t.developing.equipment)).Sub(t.resales(t.developing.equipment))
	}
	return cost.Add(t.home.of(t.value(r.cassettesUsed.Mul(t.developing.minutes))))
}

// prices is what equipment costs, each piece rounded.
func (t *terms) prices(gears []gear) (sum exact.Fraction) {
	for _, g := range gears {
		sum = sum.Add(t.home.of(g.price))
	}
	return sum
}

// resales is what equipment is worth afterwards, each piece rounded.
func (t *terms) resales(gears []gear) (sum exact.Fraction) {
	for _, g := range gears {
		sum = sum.Add(t.home.of(g.resale))
	}
	return sum
}
