package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// The question which day's published rates to take.
const (
	LinkDayRates  = "Take a day's rates…"
	DayRatesTitle = "Take a day's published rates"
	DayRatesDay   = "Day"
	DayRatesTake  = "Take them"
	DayRatesNone  = "The day has no rate between the currencies of this scenario."
	DayRatesNoDay = "Write a day such as 2026-11-24."
)

// LinkTakeDayRates takes those of a day from where published rates are looked at.
const LinkTakeDayRates = "Take a day's rates into the scenario…"

// DayRate is a rate that would be taken, beside what it is now: "1 USD = 0.888731 EUR, now
// 0.8875".
func DayRate(q scenario.Rate, was *scenario.Rate, l money.Locale) string {
	text := RateReading(q.One, exact.FromDecimal(q.Equals), q.In, l)
	if was == nil {
		return text + ", which is missing now"
	}
	return text + ", now " + l.Field(was.Equals)
}

// DayRatesTaken says that a day's rates are in the scenario.
func DayRatesTaken(day scenario.Date, n int) string {
	if n == 1 {
		return "One rate of " + Day(day) + " is taken"
	}
	return fmt.Sprintf("%d rates of %s are taken", n, Day(day))
}

// DayRatesMissing says that a file has no day of that date.
func DayRatesMissing(f *rates.File, date scenario.Date) string { return sentence(NoRatesOn(f, date)) }

// The question what a card was charged.
const (
	LinkStatement     = "From a card statement…"
	StatementTitle    = "A rate from a card statement"
	StatementAsked    = "The shop asked"
	StatementTook     = "The card took"
	StatementDay      = "On"
	StatementAlone    = "Take the rate, no card fee"
	StatementApart    = "Take the bank's rate and the fee"
	StatementAmounts  = "Write what the shop asked and what the card took, in two currencies."
	StatementNoMarket = "Without published rates of that day or the week before, the bank's rate and the card's fee cannot be told apart."
)

// StatementRate is what a statement comes to: "1 USD = 0.9021 EUR".
func StatementRate(w rates.Worked, l money.Locale) string {
	q := w.Alone.Quote
	return RateReading(q.One, w.Rate, q.In, l)
}

// StatementMarkup says what a card added to a published rate.
func StatementMarkup(r *rates.Reference, q scenario.Rate, l money.Locale) string {
	percent := voice{l: l}.plain(r.Markup.Abs().Round(2), 2)
	bank := RateReading(q.One, r.Rate, q.In, l) + " on " + Day(r.Day)
	if r.Markup.Sign() < 0 {
		return fmt.Sprintf("The bank's rate was %s: the card took %s %% less, so that there is no fee to take with it. %s", bank, percent, ForInformation)
	}
	return fmt.Sprintf("The bank's rate was %s: the card added %s %%. %s", bank, percent, ForInformation)
}

// StatementFee says which card fee a way of taking a statement sets, and for whom.
func StatementFee(currency string) string {
	return "The card fee of all ways to buy in " + currency + " is set with it, so that it is not counted twice."
}
