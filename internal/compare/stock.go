package compare

import "reelworth/internal/exact"

// stock is a supply in whole numbers of a small enough unit: for going through the
// months again and again when only the counts are asked for. Whatever is older is used
// up in the month in which lots are bought, so that only one batch is ever left.
type stock struct {
	lot, start int64
	need       [12]int64
	keeps      int // months; −1 for good
}

// stockLimit keeps every sum of a lot and a month's need within 63 bits.
const stockLimit = 1 << 60

// stockOf brings a supply to whole numbers; ok is false when they would be too large.
func stockOf(lot, start exact.Fraction, need *[12]exact.Fraction, keeps span) (s stock, ok bool) {
	unit, ok := commonDenominator(need, lot, start)
	if !ok {
		return s, false
	}
	count := func(f exact.Fraction) (n int64) {
		n, whole := f.Mul(unit).Int64()
		ok = ok && whole && n < stockLimit
		return n
	}
	s.lot, s.start, s.keeps = count(lot), count(start), -1
	for i, n := range need {
		s.need[i] = count(n)
	}
	if keeps.set {
		n, small := keeps.months.Ceil().Int64() // ages are whole months
		if small && n < maxMonths+monthsValued {
			s.keeps = int(n)
		}
	}
	return s, ok
}

func commonDenominator(need *[12]exact.Fraction, others ...exact.Fraction) (unit exact.Fraction, ok bool) {
	unit = exact.Int(1)
	widen := func(f exact.Fraction) bool {
		d, ok := f.Mul(unit).Denominator()
		unit = unit.Mul(exact.Int(d))
		return ok
	}
	for _, f := range others {
		if !widen(f) {
			return unit, false
		}
	}
	for _, f := range need {
		if !widen(f) {
			return unit, false
		}
	}
	return unit, true
}

// stocked is what a stock has gone through.
type stocked struct {
	lots  []int64 // bought in each month
	month int     // of the batch that is left
	worth int64   // of what is left, how much is used in time; 0 of what was there at no cost
}

// through goes through the months, throwing away, topping up and using.
func (s *stock) through(months int, lots []int64) stocked {
	left, month, free := s.start, 0, true
	for m := range months {
		if s.tooOld(m - month) {
			left = 0
		}
		need, bought := s.need[m%12], int64(0)
		if need > left {
			bought = (need - left + s.lot - 1) / s.lot
			left += bought * s.lot
			month, free = m, false
		}
		left -= need
		lots = append(lots, bought)
	}
	end := stocked{lots: lots, month: month}
	for m := months; m < months+monthsValued && !free && !s.tooOld(m-month); m++ {
		used := min(left, s.need[m%12])
		end.worth += used
		left -= used
	}
	return end
}

func (s *stock) tooOld(age int) bool { return s.keeps >= 0 && age >= s.keeps }

// cost is what the lots come to at the price of each month, less what is left.
func (s *stock) cost(months int, price func(m int) exact.Fraction) (sum exact.Fraction) {
	var room [maxMonths]int64
	end := s.through(months, room[:0])
	for m, n := range end.lots {
		if n > 0 {
			sum = sum.Add(exact.Int(n).Mul(price(m)))
		}
	}
	if end.worth > 0 {
		sum = sum.Sub(exact.Ratio(end.worth, s.lot).Mul(price(end.month)))
	}
	return sum
}
