package workbook

import (
	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// The columns of the sheet of months. The order's lines stand between monthPrice and
// monthTooOld; four columns make a supply.
const (
	monthName = iota + 1
	monthNumber
	monthShot
	monthCassettes
	monthPrice
	monthOrder
	monthTooOld    = monthOrder + 14
	monthFilm      = monthTooOld + 1
	monthLoads     = monthFilm + 4
	monthBath      = monthLoads + 4
	monthEquipment = monthBath + 4
	monthPer       = monthEquipment + 1
	monthPerDev    = monthPer + 1
	monthCash      = monthPerDev + 1
	monthSoFar     = monthCash + 1
)

// monthsValued is how long after the scenario's months what is left still counts.
const monthsValued = 24

// monthly is an offer's block on the sheet of months.
type monthly struct {
	o            *offer
	s            *sheet
	top          int // row of the first month
	months       int
	film         stock
	loads, bath  stock
	shot, fill   []exact.Fraction // also of the months after
	landed       column
	cash, perDev column
	packs, sets  term // the price of one
}

// addMonths makes the block of an offer on the sheet of months.
func (b *book) addMonths(o *offer) *monthly {
	s := b.months
	s.text(monthName, s.next()+1, o.scenario.Name, style{kind: headed})
	head := s.next()
	for i, text := range words.SheetMonthsHead() {
		s.text(i+1, head, text, style{kind: wrapped})
	}
	m := &monthly{o: o, s: s, top: head + 1, months: b.s.Months}
	m.prepare()
	for n := range m.months {
		m.month(n)
	}
	for n := m.months; n < m.months+monthsValued; n++ {
		m.calendar(n, style{kind: quiet})
	}
	return m
}

// prepare says what the supplies are made of.
func (m *monthly) prepare() {
	o, in := m.o, m.o.b.in
	m.film = stock{first: monthFilm, lot: o.figure("units").times(o.yield.good), start: o.figure("on_hand").times(o.yield.good), unit: count("exposures"),
		keeps: o.prefix + "keeps_months"}
	if o.reel() {
		loads := in.figure("loading_cassette_loads")
		m.packs = round(in.figure("loading_cassette_pack").times(in.figure("loading_cassette_price")), o.b.digits)
		m.loads = stock{first: monthLoads, lot: in.figure("loading_cassette_pack").times(loads),
			start: in.figure("loading_cassettes_owned").times(loads), unit: count("loads")}
	}
	if o.home() {
		m.sets = round(o.developing("chemistry_price"), o.b.digits)
		m.bath = stock{first: monthBath, lot: o.developing("chemistry_rolls"), start: whole(0), unit: count("cassettes"),
			keeps: o.process.prefix + "chemistry_keeps_months"}
	}
}

// calendar places what a month needs, and gives the terms for it.
func (m *monthly) calendar(n int, st style) (number, shot, cassettes term) {
	row, o, in := m.top+n, m.o, m.o.b.in
	m.s.text(monthName, row, words.MonthAndYear(o.b.s, n+1), st.of(labelled))
	m.s.put(monthNumber, row, cell{style: st.of(counted), value: exact.Int(int64(n))})
	number = term{m.s.reference(monthNumber, row), bindsWhole, exact.Int(int64(n))}
	shot = m.s.formula(monthShot, row, in.figure(rollsName(n)).times(in.figure("roll_exposures")), st.of(counted))
	cassettes = m.s.formula(monthCassettes, row, shot.times(o.yield.cassettes).over(o.yield.good), st.of(counted))
	m.shot, m.fill = append(m.shot, shot.value), append(m.fill, cassettes.value)
	return number, shot, cassettes
}

// month goes through one month in the order of the model: throw away, equip, top up and
// use, pay for each cassette.
func (m *monthly) month(n int) {
	row, o, home := m.top+n, m.o, m.o.b.inHome()
	number, shot, cassettes := m.calendar(n, style{})
	drift := whole(1).plus(o.figure("price_rise_percent").percent().times(number).over(whole(12)))
	price := m.s.formula(monthPrice, row, o.figure("price").times(greatest(whole(0), drift)), o.inSeller())
	next := monthOrder
	l := o.orderAt(price, func(_ string, t term, st style) term {
		next++
		return m.s.formula(next-1, row, t, st)
	})
	m.landed.values = append(m.landed.values, l.landedCost.value)

	m.tooOld(n, number)
	cash := m.film.month(m, n, number, shot).times(l.landedCost)
	if o.reel() {
		cash = cash.plus(m.loads.month(m, n, number, cassettes).times(m.packs))
	}
	if o.home() {
		cash = cash.plus(m.bath.month(m, n, number, cassettes).times(m.sets))
	}
	equipment := m.s.formula(monthEquipment, row, m.equip(n, shot), home)
	perCassette, developing := m.perCassette()
	paid := m.s.formula(monthPer, row, round(cassettes.times(perCassette), o.b.digits), home)
	dev := m.s.formula(monthPerDev, row, round(cassettes.times(developing), o.b.digits), home)
	total := m.s.formula(monthCash, row, sum(cash, equipment, paid), home)
	m.cash.values, m.perDev.values = append(m.cash.values, total.value), append(m.perDev.values, dev.value)
	m.s.formula(monthSoFar, row, m.sumTo(monthCash, n, m.cash.values), home.strong())
}

// sumTo sums a column from the first month to month n.
func (m *monthly) sumTo(c, n int, values []exact.Fraction) term {
	return column{area: m.s.area(c, m.top, c, m.top+n), values: values[:n+1]}.sum()
}

// column is a column of the block, over the months.
func (m *monthly) column(c int, values []exact.Fraction) column {
	last := m.top + m.months - 1
	return column{m.s.area(c, m.top, c, last), m.s.area(monthNumber, m.top, monthNumber, last), values}
}

// tooOld places how much film is thrown away at the beginning of a month.
func (m *monthly) tooOld(n int, number term) {
	gone := whole(0)
	if n > 0 {
		gone = when(m.film.old(m, n, number), m.film.leftRef(m, n-1), whole(0))
	}
	ref := m.s.formula(monthTooOld, m.top+n, gone, count("exposures"))
	m.film.thrown = append(m.film.thrown, ref.value)
}

// equip is what is paid for equipment in month n: all of it once something is shot.
func (m *monthly) equip(n int, shot term) term {
	loading, developing := m.o.equipmentInputs()
	price := m.o.ofEquipment(append(loading, developing...), func(p string) term {
		return round(m.o.b.in.figure(p+"price"), m.o.b.digits)
	})
	first := above(shot, whole(0))
	if n > 0 {
		before := m.sumTo(monthShot, n-1, m.shot)
		first = both(first, truth{before.text + "=0", before.value.IsZero()})
	}
	return when(first, price, whole(0))
}

// perCassette is what is paid for each cassette beside film, loads and chemistry, and
// the part of it that developing makes up.
func (m *monthly) perCassette() (all, developing term) {
	developing = whole(0)
	if m.o.process != nil {
		key := "price"
		if m.o.home() {
			key = "extra_per_roll"
		}
		developing = m.o.developing(key)
	}
	if !m.o.reel() {
		return developing, developing
	}
	return m.o.b.in.figure("loading_consumables_per_roll").plus(developing), developing
}
