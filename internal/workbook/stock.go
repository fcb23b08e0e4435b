package workbook

import (
	"fmt"

	"reelworth/internal/exact"
)

// stock is a supply on the sheet of months: what is there, lots bought, what is left,
// and the month it was bought in, in four columns. Lots are bought only when what is
// there does not cover the need, so that all that is older is used up by it: no more
// than one batch outlives a month, and one month's number tells its age.
type stock struct {
	first  int // column
	lot    term
	start  term
	keeps  string // name of the input that says how many months; "" for good
	unit   style
	thrown []exact.Fraction
	lots   []exact.Fraction
	left   []exact.Fraction
	bought []exact.Fraction
}

// old says whether what was left before month n is too old in it.
func (s *stock) old(m *monthly, n int, number term) truth {
	bought := term{m.s.reference(s.first+3, m.top+n-1), bindsWhole, s.bought[n-1]}
	return s.over(m, number, bought)
}

func (s *stock) over(m *monthly, number, bought term) truth {
	in := m.o.b.in
	return both(in.isSet(s.keeps), atLeast(number.minus(bought), in.figure(s.keeps)))
}

// leftRef is what was left at the end of month n.
func (s *stock) leftRef(m *monthly, n int) term {
	return term{m.s.reference(s.first+2, m.top+n), bindsWhole, s.left[n]}
}

// month places the supply in month n and gives the lots bought.
func (s *stock) month(m *monthly, n int, number, need term) term {
	row := m.top + n
	there, bought := s.start, whole(0)
	if n > 0 {
		there = s.leftRef(m, n-1)
		bought = term{m.s.reference(s.first+3, row-1), bindsWhole, s.bought[n-1]}
		if s.keeps != "" {
			there = when(s.old(m, n, number), whole(0), there)
		}
	}
	there = m.s.formula(s.first, row, there, s.unit)
	missing := greatest(whole(0), need.minus(there))
	lots := m.s.formula(s.first+1, row, ceil(missing.over(s.lot)), count(""))
	left := m.s.formula(s.first+2, row, there.plus(lots.times(s.lot)).minus(need), s.unit)
	month := m.s.formula(s.first+3, row, when(above(lots, whole(0)), number, bought), count(""))
	s.lots, s.left, s.bought = append(s.lots, lots.value), append(s.left, left.value), append(s.bought, month.value)
	return lots
}

// rest are the terms for what is left of a supply at the end.
type rest struct {
	left, month  term
	cost         term // of the batch it is of
	used, future term
	value        term // unrounded
}

// labels are what the lines of a rest are called.
type restLabels struct{ left, cost, used, future string }

// addRest places what is left after the last month and what it is worth: its batch's
// cost is borne by what of it was used and by what would still be used. price is what a
// lot of each month cost.
func (s *stock) addRest(m *monthly, labels restLabels, price func(month term) term, need int, needs []exact.Fraction) rest {
	o, home, last := m.o, m.o.b.inHome(), m.months-1
	r := rest{month: term{m.s.reference(s.first+3, m.top+last), bindsWhole, s.bought[last]}}
	r.left = o.line(labels.left, s.leftRef(m, last), s.unit)
	lots := m.column(s.first+1, s.lots).at(r.month)
	r.cost = o.line(labels.cost, lots.times(price(r.month)), home)
	r.used = o.line(labels.used, greatest(whole(0), lots.times(s.lot).minus(r.left)), s.unit)
	r.future = o.line(labels.future, least(r.left, s.needed(m, r.month, need, needs)), s.unit)
	borne := r.used.plus(r.future)
	r.value = when(above(r.future, literal("0.0000001")), r.cost.times(r.future).over(borne), whole(0))
	return r
}

// needed is what the months after the scenario need before a batch is too old.
func (s *stock) needed(m *monthly, month term, need int, needs []exact.Fraction) term {
	from, to := m.top+m.months, m.top+m.months+monthsValued-1
	area := m.s.area(need, from, need, to)
	all := column{area: area, values: needs[m.months:]}.sum()
	if s.keeps == "" {
		return all
	}
	keeps := m.o.b.in.figure(s.keeps)
	kept := exact.Fraction{}
	for n := m.months; n < m.months+monthsValued; n++ {
		if exact.Int(int64(n)).Sub(month.value).Less(keeps.value) {
			kept = kept.Add(needs[n])
		}
	}
	ages := m.s.area(monthNumber, from, monthNumber, to)
	young := call("SUMPRODUCT", kept, fmt.Sprintf("(%s-%s<%s)*%s", ages, month.text, keeps.text, area))
	return when(m.o.b.in.isSet(s.keeps), young, all)
}
