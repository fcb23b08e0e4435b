package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// QuoteMeaning is what stands beside a quote: the day it is of, and the other
// direction: "20 Nov 2026, 1.1268 USD a EUR". "" for a quote that says nothing yet.
func QuoteMeaning(s *scenario.Scenario, i int, l money.Locale) string {
	if i < 0 || i >= len(s.Rates) {
		return ""
	}
	r := s.Rates[i]
	equals := exact.FromDecimal(r.Equals)
	if equals.Sign() <= 0 {
		return ""
	}
	other := l.Field(significant(exact.Int(1).Quo(equals))) + " " + r.One + " a " + r.In
	text := strings.ReplaceAll(other, " ", noBreak)
	if r.Date != (scenario.Date{}) {
		text = strings.ReplaceAll(Day(r.Date), " ", noBreak) + ", " + text
	}
	return text
}

// noBreak is a space that no line ends at.
const noBreak = "\u00a0"

// significant is f with five figures, at least: enough to recognise a rate by.
func significant(f exact.Fraction) scenario.Decimal {
	places := 4
	for limit := exact.Int(1); places < 12 && f.Less(limit); places++ {
		limit = limit.Quo(exact.Int(10))
	}
	return f.Decimal(places)
}

// ShownIn says which currency a comparison is shown in, and at which rate; "" at home.
func ShownIn(c *compare.Comparison, l money.Locale) string {
	if c.Currency() == c.Scenario.Home {
		return ""
	}
	return fmt.Sprintf("Shown in %s at %s; the verdict and the notes are reckoned in %s.", c.Shown.Currency,
		RateReading(c.Scenario.Home, c.Shown.Factor, c.Shown.Currency, l), c.Scenario.Home)
}
