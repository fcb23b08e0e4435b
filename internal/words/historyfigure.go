package words

import (
	"fmt"
	"strconv"
	"time"

	"reelworth/internal/exact"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// What stands in and over the figure of a history.
const (
	NoHistory  = "No day to tell of: take a file of rates"
	TodayLabel = "a roll today"
)

// DayAndAmount is a day with what a roll cost: "3 Sep 2022: EUR 16.10".
func DayAndAmount(h *history.History, p history.Point, l money.Locale) string {
	return Day(p.Date) + ": " + l.Amount(p.Total, h.Scenario.Home)
}

// DayReadout is what is said of an offer on day i of the history.
func DayReadout(h *history.History, o *history.Offer, i int, l money.Locale) string {
	return fmt.Sprintf("%s: %s a roll at the rates of %s", o.Name, l.Amount(o.Total(i), h.Scenario.Home), Day(h.Dates[i]))
}

// TodayReadout is what is said of an offer today.
func TodayReadout(h *history.History, o *history.Offer, l money.Locale) string {
	return fmt.Sprintf("%s: %s a roll at today's rates; on four of five days from %s to %s", o.Name,
		l.Amount(o.Today, h.Scenario.Home), voice{s: &h.Scenario, l: l}.home(o.P10), voice{s: &h.Scenario, l: l}.home(o.P90))
}

// YearOrMonth labels the first day of a year or a month: "2022", "Jan 2025", "Apr".
func YearOrMonth(d scenario.Date, years bool) string {
	switch {
	case years:
		return strconv.Itoa(d.Year)
	case d.Month == time.January:
		return fmt.Sprintf("%s %d", d.Month.String()[:3], d.Year)
	}
	return d.Month.String()[:3]
}

// HistoryTableHead heads the first column of a history's table.
func HistoryTableHead(h *history.History) string { return h.Scenario.Home + " a roll" }

// Told is something told of every offer of a history.
type Told struct {
	Name string
	Of   func(o *history.Offer) string
}

// HistoryTold is what is told of every offer, in the order it is told. Amounts are without
// their currency.
func HistoryTold(h *history.History, l money.Locale) []Told {
	v := voice{s: &h.Scenario, l: l}
	amount := func(of func(o *history.Offer) exact.Fraction) func(*history.Offer) string {
		return func(o *history.Offer) string { return v.home(of(o)) }
	}
	point := func(of func(o *history.Offer) history.Point) func(*history.Offer) string {
		return func(o *history.Offer) string { return v.home(of(o).Total) + ", " + Day(of(o).Date) }
	}
	return []Told{
		{"today", amount(func(o *history.Offer) exact.Fraction { return o.Today })},
		{"lowest", point(func(o *history.Offer) history.Point { return o.Low })},
		{"10 % of the days below", amount(func(o *history.Offer) exact.Fraction { return o.P10 })},
		{"half of them", amount(func(o *history.Offer) exact.Fraction { return o.P50 })},
		{"90 % of them", amount(func(o *history.Offer) exact.Fraction { return o.P90 })},
		{"highest", point(func(o *history.Offer) history.Point { return o.High })},
		{"days cheaper", func(o *history.Offer) string { return DaysCheaper(h, o, l) }},
	}
}
