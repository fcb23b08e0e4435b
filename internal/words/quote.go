package words

import (
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// QuoteMeaning is what stands beside a quote: the other direction, and the day it is
// of. "" for a quote that says nothing yet.
func QuoteMeaning(s *scenario.Scenario, i int, l money.Locale) string {
	if i >= len(s.Rates) {
		return ""
	}
	r := s.Rates[i]
	equals := exact.FromDecimal(r.Equals)
	if equals.Sign() <= 0 {
		return ""
	}
	text := voice{s, l}.quote(r.In, significant(exact.Int(1).Quo(equals)), r.One)
	if r.Date != (scenario.Date{}) {
		text += ", " + Day(r.Date)
	}
	return text
}

// significant is f with five figures, at least: enough to recognise a rate by.
func significant(f exact.Fraction) scenario.Decimal {
	places := 4
	for limit := exact.Int(1); places < 12 && f.Less(limit); places++ {
		limit = limit.Quo(exact.Int(10))
	}
	return f.Decimal(places)
}
