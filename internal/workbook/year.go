package workbook

import "reelworth/internal/words"

// year are the terms for what the months come to.
type year struct {
	cash, cost     term
	film, develop  term
	filmLeftValue  term
	suppliesLeft   term
	equipmentLeft  term
	time           term
	first, soFarTo int // rows of the cash so far, on the sheet of months
}

// addYear places, on the offer's sheet, what its months come to.
func (o *offer) addYear(m *monthly) {
	b, home := o.b, o.b.inHome()
	o.section(words.SheetYear)
	y := &o.year
	y.first, y.soFarTo = m.top, m.top+m.months-1
	y.cash = o.line(words.SheetCash, m.column(monthCash, m.cash.values).sum(), home.strong())
	y.filmLeftValue = o.addFilmLeft(m)
	loads, bath := o.addSuppliesLeft(m)
	y.suppliesLeft = loads.plus(bath)
	equipped := above(m.column(monthShot, m.shot[:m.months]).sum(), whole(0))
	loading, developing := o.equipmentInputs()
	worth := func(prefixes []string) term {
		return when(equipped, o.ofEquipment(prefixes, func(p string) term { return round(b.in.figure(p+"resale"), b.digits) }), whole(0))
	}
	y.equipmentLeft = o.line(words.SheetEquipmentLeft, worth(append(loading, developing...)), home)
	y.time = o.line(words.SheetTime, round(o.hourly().times(m.minutes()), b.digits), home)
	y.cost = o.line(words.SheetYearCost, y.cash.minus(y.filmLeftValue).minus(loads).minus(bath).minus(y.equipmentLeft).plus(y.time), home.strong())
	y.develop = o.line(words.SheetDevelopingSide, o.developingSide(m, bath, worth(developing)), home)
	y.film = o.line(words.SheetFilmSide, y.cost.minus(y.develop), home)
}

// addFilmLeft places the film left and gives what it is worth.
func (o *offer) addFilmLeft(m *monthly) term {
	standard := o.b.in.figure("roll_exposures")
	landed := m.column(monthTooOld-1, m.landed.values)
	r := m.film.addRest(m, restLabels{words.SheetFilmLeft, words.SheetFilmLeftCost, words.SheetFilmLeftUsed, words.SheetFilmLeftFuture},
		landed.at, monthShot, m.shot)
	value := o.line(words.SheetFilmLeftValue, round(r.value, o.b.digits), o.b.inHome())
	o.line(words.SheetFilmLeftRolls, r.left.over(standard), count("rolls"))
	o.line(words.SheetThrownAway, m.column(monthTooOld, m.film.thrown).sum().over(standard), count("rolls"))
	return value
}

// addSuppliesLeft places what is left of cassette loads and chemistry.
func (o *offer) addSuppliesLeft(m *monthly) (loads, bath term) {
	loads, bath = whole(0), whole(0)
	if o.reel() {
		r := m.loads.addRest(m, restLabels{words.SheetLoadsLeft, words.SheetLoadsLeftCost, words.SheetLoadsLeftUsed, words.SheetLoadsLeftFuture},
			func(term) term { return m.packs }, monthCassettes, m.fill)
		loads = o.line(words.SheetLoadsLeftValue, round(r.value, o.b.digits), o.b.inHome())
	}
	if o.home() {
		r := m.bath.addRest(m, restLabels{words.SheetBathLeft, words.SheetBathLeftCost, words.SheetBathLeftUsed, words.SheetBathLeftFuture},
			func(term) term { return m.sets }, monthCassettes, m.fill)
		bath = o.line(words.SheetBathLeftValue, round(r.value, o.b.digits), o.b.inHome())
	}
	return loads, bath
}

// minutes is the time that loading and developing take over the months.
func (m *monthly) minutes() term {
	cassettes := m.column(monthCassettes, m.fill[:m.months]).sum()
	minutes := cassettes.times(m.o.minutesPerCassette())
	if !m.o.reel() {
		return minutes
	}
	reels := m.column(monthShot, m.shot[:m.months]).sum().over(m.o.yield.good)
	return reels.times(m.o.b.in.figure("loading_minutes_per_reel")).plus(minutes)
}

// developingSide is the part of the year's cost that developing makes up.
func (o *offer) developingSide(m *monthly, bathLeft, equipmentLeft term) term {
	if o.process == nil {
		return whole(0)
	}
	b := o.b
	cost := m.column(monthPerDev, m.perDev.values).sum()
	_, developing := o.equipmentInputs()
	price := o.ofEquipment(developing, func(p string) term { return round(b.in.figure(p+"price"), b.digits) })
	equipped := above(m.column(monthShot, m.shot[:m.months]).sum(), whole(0))
	cost = cost.plus(when(equipped, price, whole(0))).minus(equipmentLeft)
	if !o.home() {
		return cost
	}
	cost = cost.plus(m.column(monthBath+1, m.bath.lots).sum().times(m.sets)).minus(bathLeft)
	time := round(o.hourly().times(m.column(monthCassettes, m.fill[:m.months]).sum().times(o.developing("minutes_per_roll"))), b.digits)
	return cost.plus(time)
}
