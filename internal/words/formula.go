package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Formula says how a line of the receipt came about, "" where there is nothing to say.
// o is the computed offer the line belongs to, offer its fields.
func Formula(line compare.Line, o *compare.Offer, offer scenario.Offer, s *scenario.Scenario, l money.Locale) string {
	return voice{s: s, l: l}.formula(line, o, offer)
}

func (v voice) formula(line compare.Line, o *compare.Offer, offer scenario.Offer) string {
	currency := v.shown()
	if line.Billed {
		currency = offer.Currency
	}
	how := line.How
	of, limit := v.bare(how.Of, currency), v.bare(how.Limit, currency)
	switch how.Op {
	case compare.OpPrice:
		text := fmt.Sprintf("%d × %s", how.Units, of)
		if !how.Percent.IsZero() {
			text += " less " + v.percent(how.Percent)
		}
		return text
	case compare.OpFree:
		return fmt.Sprintf("film %s reaches the %s it is free from", of, limit)
	case compare.OpShipping:
		if how.Units < 2 || how.Limit.IsZero() {
			return ""
		}
		return fmt.Sprintf("%s and %d × %s", of, how.Units-1, limit)
	case compare.OpPercent:
		return fmt.Sprintf("%s of %s", v.percent(how.Percent), of)
	case compare.OpWithin:
		return fmt.Sprintf("film %s is within the free %s", of, limit)
	case compare.OpSameCurrency:
		return fmt.Sprintf("none, it is charged in %s", v.s.Home)
	case compare.OpConverted:
		return v.route(o.Order.Route)
	case compare.OpUndecided:
		return "not decided, so not counted"
	case compare.OpNothingDue:
		return "nothing is due at the border"
	}
	return ""
}

// route is the quotes a conversion uses, as published, with their dates: "1 USD =
// 0.8875 EUR, 20 Nov 2026".
func (v voice) route(route money.Route) string {
	var quotes, days []string
	for _, step := range route {
		quotes = append(quotes, v.quote(step.Quote.One, step.Quote.Equals, step.Quote.In))
		days = append(days, Day(v.quoted(step)))
	}
	if len(route) == 2 && days[0] == days[1] {
		days[0] = ""
	}
	for i, day := range days {
		if day != "" {
			quotes[i] += ", " + day
		}
	}
	return strings.Join(quotes, "; ")
}

// quote is a rate as it is published, with the places it was given.
func (v voice) quote(one string, equals scenario.Decimal, in string) string {
	return fmt.Sprintf("1 %s = %s %s", one, v.l.Field(equals), in)
}

// quoted is the day of the quote a step uses.
func (v voice) quoted(step money.Step) scenario.Date {
	if step.Index < 0 || step.Index >= len(v.s.Rates) {
		return scenario.Date{}
	}
	return v.s.Rates[step.Index].Date
}
