package session

import (
	"slices"

	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// WithDay is a scenario with a day's published rates in the place of its own, and behind
// them those its offers lack; places are those of the rates that are another.
func WithDay(s scenario.Scenario, d rates.Day) (next scenario.Scenario, places []int) {
	next, places = d.Take(s)
	for _, o := range s.Offers {
		if _, err := next.Book().Route(o.Currency, s.Home); err == nil || o.Currency == s.Home {
			continue
		}
		if q, ok := d.Quote(o.Currency, s.Home); ok && len(next.Rates) < scenario.MaxRates {
			places = append(places, len(next.Rates))
			next.Rates = append(next.Rates, q)
		}
	}
	return next, places
}

// TakeDay puts a day's published rates into the scenario; it says how many.
func (s *Session) TakeDay(step string, d rates.Day) int {
	next, places := WithDay(s.Current(), d)
	if len(places) > 0 {
		s.Alter(step, func(s *scenario.Scenario) { *s = next })
	}
	return len(places)
}

// WithStatement is a scenario with a way to take a card statement: its quote in the place
// of the one between the same currencies, and its card fee at all offers in the currency
// that was paid, so that what the card adds counts once.
func WithStatement(s scenario.Scenario, t rates.Taking) scenario.Scenario {
	next, q := s.Clone(), t.Quote
	at := slices.IndexFunc(next.Rates, func(r scenario.Rate) bool {
		return r.One == q.One && r.In == q.In || r.One == q.In && r.In == q.One
	})
	if at < 0 {
		next.Rates = append(next.Rates, q)
	} else {
		was := next.Rates[at]
		next.Rates[at] = q
		rates.TurnRanges(&next, was, q)
	}
	for i := range next.Offers {
		if next.Offers[i].Currency == q.One {
			next.Offers[i].CardFeePercent = t.CardFeePercent
		}
	}
	return next
}

// TakeStatement takes a card statement into the scenario.
func (s *Session) TakeStatement(step string, t rates.Taking) {
	next := WithStatement(s.Current(), t)
	s.Alter(step, func(s *scenario.Scenario) { *s = next })
}
