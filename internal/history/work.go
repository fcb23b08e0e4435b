package history

import (
	"context"
	"slices"
	"sync"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/parallel"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// work is a history being made.
type work struct {
	history *History
	file    *rates.File
	quote   map[int]int // place in history.Quotes of a quote of the scenario
	days    []rates.Day
	ways    []way // one for each currency the offers are priced in
	wayOf   []int // of each offer
}

// way is how a seller's currency becomes the home one.
type way struct {
	route money.Route
	moved bool
}

// pick finds the quotes that move, and the days that can be used.
func (w *work) pick(span Span) error {
	from, to := span.places(w.file)
	w.pickQuotes(from, to)
	missing := map[string]bool{}
	for place := from; place < to; place++ {
		if day := w.file.At(place); w.usable(day, missing) {
			w.days = append(w.days, day)
		}
	}
	h := w.history
	if len(w.days) == 0 {
		e := &Empty{Span: span, Oldest: w.file.Oldest().Date(), Newest: w.file.Newest().Date(), Days: to - from}
		for _, q := range h.Quotes {
			if pair := q.pair(); missing[pair] {
				e.Missing = append(e.Missing, pair)
			}
		}
		return e
	}
	h.Skipped = to - from - len(w.days)
	h.From, h.To = w.days[0].Date(), w.days[len(w.days)-1].Date()
	h.Dates = make([]scenario.Date, len(w.days))
	for i, day := range w.days {
		h.Dates[i] = day.Date()
	}
	return nil
}

// pickQuotes gathers the quotes that the offers go by. One moves where both of its
// currencies have a rate somewhere in the span.
func (w *work) pickQuotes(from, to int) {
	h := w.history
	byCurrency := map[string]int{}
	used := map[int]bool{}
	for i := range h.Offers {
		route := h.Offers[i].cost.Route
		seller := ""
		for _, step := range route {
			used[step.Index] = true
		}
		if len(route) > 0 {
			seller = startOf(route)
		}
		if _, known := byCurrency[seller]; !known {
			byCurrency[seller] = len(w.ways)
			w.ways = append(w.ways, way{route: route})
		}
		w.wayOf = append(w.wayOf, byCurrency[seller])
	}
	w.quote = map[int]int{}
	for i, r := range h.Scenario.Rates {
		if !used[i] {
			continue
		}
		w.quote[i] = len(h.Quotes)
		h.Quotes = append(h.Quotes, Quote{
			Input: scenario.RateInput(r), typed: r, FromStatement: r.Source == rates.SourceStatement,
			Moved: w.file.Has(r.One, from, to) && w.file.Has(r.In, from, to),
		})
	}
	for i := range w.ways {
		for _, step := range w.ways[i].route {
			w.ways[i].moved = w.ways[i].moved || h.Quotes[w.quote[step.Index]].Moved
		}
	}
}

// startOf is the currency a route starts from.
func startOf(route money.Route) string {
	if first := route[0]; first.Against {
		return first.Quote.In
	}
	return route[0].Quote.One
}

// usable says whether a day has every pair that moves, and notes those it lacks.
func (w *work) usable(day rates.Day, missing map[string]bool) bool {
	all := true
	for _, q := range w.history.Quotes {
		if q.Moved && !day.HasBoth(q.typed.One, q.typed.In) {
			missing[q.pair()] = true
			all = false
		}
	}
	return all
}

func (q *Quote) pair() string { return q.typed.One + "/" + q.typed.In }

// batch is how many days are costed between looks at whether anybody still waits.
const batch = 64

// cost works out what an order of each offer costs on each day, on all processors.
func (w *work) cost(ctx context.Context, progress Progress) error {
	h := w.history
	for i := range h.Offers {
		h.Offers[i].landed = make([]exact.Fraction, len(w.days))
	}
	for i := range h.Quotes {
		if q := &h.Quotes[i]; q.Moved {
			q.rates = make([]exact.Fraction, len(w.days))
		}
	}
	var telling sync.Mutex
	done := 0
	return parallel.Each(parallel.All(), (len(w.days)+batch-1)/batch, func(i int) error {
		if err := ctx.Err(); err != nil {
			return err
		}
		from := i * batch
		to := min(from+batch, len(w.days))
		w.costDays(from, to)
		telling.Lock()
		defer telling.Unlock()
		done += to - from
		if progress != nil {
			progress(done, len(w.days))
		}
		return nil
	})
}

// costDays works out the days from one place on, before another.
func (w *work) costDays(from, to int) {
	h := w.history
	rate := make([]exact.Fraction, len(w.ways))
	still := make([]exact.Fraction, len(h.Offers)) // of the offers that no quote moves
	for i := range h.Offers {
		if c := h.Offers[i].cost; !w.ways[w.wayOf[i]].moved {
			still[i] = c.Landed(c.Rate())
		}
	}
	for d := from; d < to; d++ {
		for i := range h.Quotes {
			if q := &h.Quotes[i]; q.Moved {
				q.rates[d], _ = w.days[d].Cross(q.typed.One, q.typed.In)
			}
		}
		for i := range w.ways {
			if w.ways[i].moved {
				rate[i] = w.convert(w.ways[i].route, d)
			}
		}
		for i := range h.Offers {
			if n := w.wayOf[i]; w.ways[n].moved {
				h.Offers[i].landed[d] = h.Offers[i].cost.Landed(rate[n])
			} else {
				h.Offers[i].landed[d] = still[i]
			}
		}
	}
}

// convert is home for 1 of the seller's currency on day d.
func (w *work) convert(route money.Route, d int) exact.Fraction {
	amount := exact.Int(1)
	for _, step := range route {
		q := &w.history.Quotes[w.quote[step.Index]]
		rate := exact.FromDecimal(q.typed.Equals)
		if q.Moved {
			rate = q.rates[d]
		}
		if step.Against {
			amount = amount.Quo(rate)
		} else {
			amount = amount.Mul(rate)
		}
	}
	return amount
}

// ranked are values in rising order; the slice given stays as it is.
func ranked(values []exact.Fraction) []exact.Fraction {
	sorted := slices.Clone(values)
	slices.SortFunc(sorted, exact.Fraction.Cmp)
	return sorted
}

// nearestRank is the value at place ⌈percent/100 × n⌉, from 1, of values in rising order.
func nearestRank(sorted []exact.Fraction, percent int) exact.Fraction {
	return sorted[(percent*len(sorted)+99)/100-1]
}
