package compare

import (
	"sync"

	"reelworth/internal/exact"
)

// outlay is what an offer's year comes to with no rounding anywhere, taken apart:
// how many orders of film are placed does not go by what they cost, so the year is
// orders × landed cost, month by month, and the rest.
type outlay struct {
	rounded terms
	terms   terms // with no rounding
	cost    exact.Fraction
	film    []placed
	landed  []exact.Fraction // of an order at the price of each month
	rough   rough
	volumes []roughly // at 1, 2, 3 … rolls a year; see lookAtVolumes
	// What whoever is compared with this offer asks of it, once for all of them.
	pieces sync.Map // of asked: func() pieces
	swings sync.Map // of asked: func() exact.Fraction
}

// asked is a question to an outlay: how its year goes by an input, or what it costs, lines
// rounded, at the lower or the upper end of an input's usual swing.
type asked struct {
	side  side
	input Input
	upper bool
}

// once is the answer that is kept, worked out the first time.
func once[T any](kept *sync.Map, q asked, answer func() T) T {
	f, _ := kept.LoadOrStore(q, sync.OnceValue(answer))
	return f.(func() T)()
}

// placed is how much film is paid for at one drift of the price, in orders, less
// what of it is left and worth something at the end.
type placed struct {
	month  int // whose price it is
	orders exact.Fraction
}

func newOutlay(t *terms) *outlay {
	o := &outlay{rounded: *t, terms: t.withoutRounding()}
	o.cost = o.terms.year().Cost
	o.film = o.terms.placed()
	for m := range t.shooting.months {
		if m > 0 && t.asking.riseYearly.IsZero() {
			o.landed = append(o.landed, o.landed[0])
		} else {
			o.landed = append(o.landed, landed(&o.terms, m))
		}
	}
	o.rough = roughOf(o)
	return o
}

// cassettes is how many are filled in the scenario's months.
func (t *terms) cassettes() exact.Fraction { return t.shooting.total().Mul(t.perExposure()) }

// minutes is the time that loading and developing take in the scenario's months.
func (t *terms) minutes() exact.Fraction {
	reels := t.shooting.total().Quo(t.yield.Good)
	return reels.Mul(t.loading.minutesPerReel).Add(t.cassettes().Mul(t.minutesPerCassette()))
}

// placed goes through the months with the film alone.
func (t *terms) placed() (list []placed) {
	film := supply{lot: t.orderSize(), keeps: t.keeps}
	film.start(t.onHand.Mul(t.yield.Good))
	count := func(month int, orders exact.Fraction) {
		if t.asking.riseYearly.IsZero() {
			month = 0
		}
		for i := range list {
			if list[i].month == month {
				list[i].orders = list[i].orders.Add(orders)
				return
			}
		}
		list = append(list, placed{month, orders})
	}
	for m := range t.shooting.months {
		demand := t.shooting.demand[m%12]
		film.discard(m)
		if orders := film.lotsFor(demand); orders.Sign() > 0 {
			film.buy(orders, exact.Int(1), m) // money is orders here
			count(m, orders)
		}
		film.use(demand)
	}
	// No more than one batch outlives a month; what is on hand cost nothing.
	if len(film.batches) > 0 {
		left := film.worth(&t.shooting.demand, t.shooting.months)
		count(film.batches[0].month, left.Neg())
	}
	return list
}

// landed is what an order costs at the price of a month.
func landed(t *terms, month int) exact.Fraction {
	return t.order(t.priceIn(month)).Landed
}

// by is the year's cost as it goes by an input, in u: the input, or its inverse.
func (o *outlay) by(in *input, s side) pieces {
	return once(&o.pieces, asked{side: s, input: in.name}, func() pieces { return o.piecesBy(in, s) })
}

func (o *outlay) piecesBy(in *input, s side) pieces {
	if !in.moves[s] {
		return pieces{first: line{at0: o.cost}}
	}
	if in.slope != nil {
		slope := in.slope(&o.terms)
		return pieces{first: line{o.cost.Sub(slope.Mul(in.today)), slope}}
	}
	parts, weights := []pieces{{}}, []exact.Fraction{exact.Int(1)}
	rest := o.cost
	for _, p := range o.film {
		parts = append(parts, piecesOf(in.knots(&o.terms, p.month), func(u exact.Fraction) exact.Fraction {
			t := in.with(&o.terms, s, in.x(u))
			return landed(&t, p.month)
		}))
		weights = append(weights, p.orders)
		rest = rest.Sub(p.orders.Mul(o.landed[p.month]))
	}
	parts[0].first = line{at0: rest}
	return sumOf(parts, weights)
}

// x is the input at u, and u at x.
func (in *input) x(u exact.Fraction) exact.Fraction {
	if in.inverse {
		return exact.Int(1).Quo(u)
	}
	return u
}

// knots are where the landed cost of an order at a month's price may bend or jump.
func (in *input) knots(t *terms, month int) (list []exact.Fraction) {
	if in.from == fromZero {
		list = append(list, exact.Fraction{}) // a first cent of duty brings the handling fee
	}
	film := exact.Int(int64(t.units)).Mul(exact.Int(100).Sub(t.asking.discount).Percent())
	drift := exact.Max(exact.Fraction{}, t.asking.drift(month))
	var seller, home exact.Fraction // value of the film for 1 of u
	switch in.scale {
	case scalePrice:
		seller = film.Mul(drift)
		home = seller.Mul(t.rate)
	case scaleRate:
		home = film.Mul(t.asking.price).Mul(drift).Mul(t.rate).Quo(in.x(in.today))
	}
	add := func(limit, each exact.Fraction) {
		if each.Sign() > 0 && limit.Sign() > 0 {
			list = append(list, limit.Quo(each))
		}
	}
	if t.asking.freeSet {
		add(t.asking.freeFrom, seller)
	}
	if t.imported() {
		add(t.border.dutyFree, home)
		add(t.border.taxFree, home)
	}
	return list
}
