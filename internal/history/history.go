package history

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// History is what a roll has cost at the rates of the past, in the home currency.
type History struct {
	Scenario scenario.Scenario
	Span     Span
	From, To scenario.Date // the first and the last day used
	Dates    []scenario.Date
	Skipped  int // days of the span without a rate that is needed
	Quotes   []Quote
	Offers   []Offer   // those that can be computed, in the order of the file
	LeftOut  []LeftOut // the others
	base     int       // the baseline's place among the offers, −1 for none
}

// Quote is a quote that the offers go by, in the order of the file.
type Quote struct {
	Input         scenario.Input // "rate:USD/EUR"
	Moved         bool           // by the day's rates; else it stays as typed
	FromStatement bool           // so that what the card adds may be in it
	typed         scenario.Rate
	rates         []exact.Fraction // of each day; nil unless Moved
}

// AsTyped are the quotes that do not move.
func (h *History) AsTyped() (list []scenario.Input) {
	for _, q := range h.Quotes {
		if !q.Moved {
			list = append(list, q.Input)
		}
	}
	return list
}

// Offer is one way to buy over the days.
type Offer struct {
	Name          string
	Kind          scenario.Kind
	Today         exact.Fraction // a roll at the scenario's own quotes
	First, Last   Point
	Low, High     Point // the earliest of equals
	P10, P50, P90 exact.Fraction
	DaysCheaper   *int // on how many days it is below the baseline; nil on that and without one
	cost          *compare.RollCost
	landed        []exact.Fraction // of an order on each day
}

// Point is what a roll cost on a day.
type Point struct {
	Date  scenario.Date
	Total exact.Fraction
}

// Baseline is the offer the others are compared with; nil where it could not be computed.
func (h *History) Baseline() *Offer {
	if h.base < 0 {
		return nil
	}
	return &h.Offers[h.base]
}

// LeftOut is an offer that cannot be computed.
type LeftOut struct {
	Name  string
	Kind  scenario.Kind
	Fault *compare.Fault
}

// Total is what a roll of the offer cost on day i of History.Dates.
func (o *Offer) Total(i int) exact.Fraction { return o.cost.PerRoll(o.landed[i]) }

// Find is the offer of that name, nil where there is none.
func (h *History) Find(name string) *Offer {
	for i := range h.Offers {
		if h.Offers[i].Name == name {
			return &h.Offers[i]
		}
	}
	return nil
}

// Empty is the error of a span in which no day can be used.
type Empty struct {
	Span Span
	// Of the file.
	Oldest, Newest scenario.Date
	// Days of the span; 0 where the file has none in it.
	Days int
	// Missing are the pairs that its days lack, such as "USD/EUR".
	Missing []string
}

func (e *Empty) Error() string { return "history: no day of the span can be used" }

// Progress is told now and then how many days of all are done; nil for nobody.
type Progress func(done, of int)

// Of costs a scenario at the rates of every day of a span. faults are those of
// compare.Compare. It tells progress from goroutines of its own, one call at a time.
// Errors: *Empty; ctx's, when that is done before it is.
func Of(ctx context.Context, s scenario.Scenario, faults []scenario.Fault, f *rates.File, span Span, progress Progress) (*History, error) {
	h := &History{Scenario: s, Span: span, base: -1}
	costs, baseline := compare.RollCosts(s, faults)
	for i := range costs {
		if c := &costs[i]; c.Fault != nil {
			h.LeftOut = append(h.LeftOut, LeftOut{c.Name, c.Kind, c.Fault})
		} else {
			if i == baseline {
				h.base = len(h.Offers)
			}
			h.Offers = append(h.Offers, Offer{Name: c.Name, Kind: c.Kind, Today: c.PerRoll(c.Landed(c.Rate())), cost: c})
		}
	}
	w := work{history: h, file: f}
	if err := w.pick(span); err != nil {
		return nil, err
	}
	if err := w.cost(ctx, progress); err != nil {
		return nil, err
	}
	h.sumUp()
	return h, ctx.Err()
}
