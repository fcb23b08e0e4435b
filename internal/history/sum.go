package history

import "reelworth/internal/exact"

// sumUp works out of each offer's days what is told of them.
func (h *History) sumUp() {
	for i := range h.Offers {
		o := &h.Offers[i]
		o.place(h)
		if h.base >= 0 && i != h.base {
			n := o.daysBelow(&h.Offers[h.base])
			o.DaysCheaper = &n
		}
	}
}

// place finds the ends and the ranks. A roll's cost rises with what an order costs, so
// that both stand in the same order.
func (o *Offer) place(h *History) {
	low, high := 0, 0
	for d, landed := range o.landed {
		if landed.Less(o.landed[low]) {
			low = d
		}
		if o.landed[high].Less(landed) {
			high = d
		}
	}
	point := func(d int) Point { return Point{h.Dates[d], o.Total(d)} }
	o.First, o.Last, o.Low, o.High = point(0), point(len(o.landed)-1), point(low), point(high)
	sorted := ranked(o.landed)
	rank := func(percent int) exact.Fraction { return o.cost.PerRoll(nearestRank(sorted, percent)) }
	o.P10, o.P50, o.P90 = rank(10), rank(50), rank(90)
}

// daysBelow is on how many days a roll costs less than the other offer's: a·x + b < c·y + d,
// with the four brought to whole numbers first, which compare fast.
func (o *Offer) daysBelow(other *Offer) (days int) {
	a, c := o.cost.PerLanded(), other.cost.PerLanded()
	rest := other.cost.Rest().Sub(o.cost.Rest())
	for _, f := range []*exact.Fraction{&a, &c, &rest} {
		if d, ok := f.Denominator(); ok {
			scale := exact.Int(d)
			a, c, rest = a.Mul(scale), c.Mul(scale), rest.Mul(scale)
		}
	}
	for d := range o.landed {
		if a.Mul(o.landed[d]).Sub(c.Mul(other.landed[d])).Less(rest) {
			days++
		}
	}
	return days
}

// Range is where a quote that moves has been on the middle four of five days: the 10th and
// the 90th percentile of its rate (nearest rank), 1 one = x in; ok is false for a quote
// that does not move.
func (h *History) Range(quote int) (p10, p90 exact.Fraction, ok bool) {
	if q := &h.Quotes[quote]; q.Moved {
		sorted := ranked(q.rates)
		return nearestRank(sorted, 10), nearestRank(sorted, 90), true
	}
	return p10, p90, false
}

// Rate is what a quote was on day i of Dates: that day's rate, or as typed.
func (h *History) Rate(quote, i int) exact.Fraction {
	if q := &h.Quotes[quote]; q.Moved {
		return q.rates[i]
	}
	return exact.FromDecimal(h.Quotes[quote].typed.Equals)
}
