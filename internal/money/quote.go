package money

import (
	"fmt"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// Quote is a rate as it is published: 1 One = Equals In.
type Quote struct {
	One    string
	Equals decimal.Decimal // above 0
	In     string
}

// Step is one quote used in a conversion, with it (multiply) or against it (divide).
type Step struct {
	Quote   Quote
	Index   int // of the quote in the Book
	Against bool
}

// Route is how one currency becomes another: no step when they are the same, one
// with a quote for the pair, two through a third currency.
type Route []Step

// Convert takes an amount along the route, exactly.
func (r Route) Convert(amount exact.Fraction) exact.Fraction {
	for _, s := range r {
		rate := exact.FromDecimal(s.Quote.Equals)
		if s.Against {
			amount = amount.Quo(rate)
		} else {
			amount = amount.Mul(rate)
		}
	}
	return amount
}

// Book is the quotes of a scenario, in their order, and its home currency.
type Book struct {
	Home   string
	Quotes []Quote
}

// NoRate is the error of a pair that no quotes connect.
type NoRate struct{ From, To string }

func (e *NoRate) Error() string { return fmt.Sprintf("no rate between %s and %s", e.From, e.To) }

// TwoRates is the error of a pair that is quoted twice.
type TwoRates struct{ From, To string }

func (e *TwoRates) Error() string { return fmt.Sprintf("two rates between %s and %s", e.From, e.To) }

// Route finds the way from one currency to another: the quote for the pair, else
// through one currency that has a quote with both: Home first, then the first in the
// Book's order. Errors: *NoRate, *TwoRates.
func (b Book) Route(from, to string) (Route, error) {
	if from == to {
		return nil, nil
	}
	if s, n := b.step(from, to); n > 0 {
		if n > 1 {
			return nil, &TwoRates{from, to}
		}
		return Route{s}, nil
	}
	for _, via := range b.bridges() {
		if via == from || via == to {
			continue
		}
		in, n := b.step(from, via)
		out, m := b.step(via, to)
		if n == 0 || m == 0 {
			continue
		}
		if n > 1 {
			return nil, &TwoRates{from, via}
		}
		if m > 1 {
			return nil, &TwoRates{via, to}
		}
		return Route{in, out}, nil
	}
	return nil, &NoRate{from, to}
}

// step is the first quote between two currencies, and how many there are.
func (b Book) step(from, to string) (s Step, count int) {
	for i, q := range b.Quotes {
		with, against := q.One == from && q.In == to, q.One == to && q.In == from
		if !with && !against {
			continue
		}
		if count == 0 {
			s = Step{Quote: q, Index: i, Against: against}
		}
		count++
	}
	return s, count
}

// bridges are the currencies to go through, best first.
func (b Book) bridges() []string {
	list := []string{b.Home}
	seen := map[string]bool{b.Home: true}
	for _, q := range b.Quotes {
		for _, c := range []string{q.One, q.In} {
			if !seen[c] {
				seen[c] = true
				list = append(list, c)
			}
		}
	}
	return list
}
