package words

import (
	"errors"
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// What the window says where it has no published rates.
const (
	NoMarket = "No published rates yet. Open the European Central Bank's file of all days as it is published (.zip, .csv or .xml), " +
		"let it fall on this window, or fetch it. Nothing is fetched unless you ask for it here, and nothing else is asked of anybody."
	ReadingRates  = "Reading the rates …"
	FetchingRates = "Asking the bank for its rates … Esc stops."
	PastStopped   = "Stopped. Nothing on this page is worked out any more."
	NoPastYet     = "No chart of the past yet"
	PastUnderWay  = "Working out the days …"
	SwingSet      = "The rate may now go as far as it went on four of five of these days"
)

// What the window's page of the past is called, and what can be done on it.
const (
	PastPage    = "The past"
	PastDays    = "Days"
	PastYear    = "the last year"
	Past3       = "the last 3 years"
	Past5       = "the last 5 years"
	PastAll     = "all days"
	PastGoOn    = "Go on"
	OpenRates   = "Open a file of rates…"
	FetchRates  = "Fetch all days from the bank"
	StopWaiting = "Stop"
	RatesUnread = "The rates were not read"
)

// RatesNotRead says why a file of rates is not in use.
func RatesNotRead(name string, err error) string {
	var own *rates.Fault
	if errors.As(err, &own) {
		return fmt.Sprintf("%s was not read: %s.", name, RatesFault(own))
	}
	return fmt.Sprintf("%s could not be read; choose a file that you may read.", name)
}

// RatesNotKept says that rates are in use which could not be kept for the next time.
const RatesNotKept = "The rates are in use, but could not be kept for the next start: the cache folder cannot be written to."

// RatesInUse says which published rates are in use. from is the name of their file, "" for
// rates that were fetched.
func RatesInUse(f *rates.File, from string) string {
	days := "of " + Day(f.Newest().Date())
	if f.Len() > 1 {
		days = fmt.Sprintf("of %d days, %s to %s", f.Len(), Day(f.Oldest().Date()), Day(f.Newest().Date()))
	}
	if from == "" {
		return fmt.Sprintf("Rates %s, as they were fetched from the bank.", days)
	}
	return fmt.Sprintf("Rates %s, from %s.", days, from)
}

// PastProgress says how far a history has come.
func PastProgress(done, of int, l money.Locale) string {
	n := func(n int) string { return l.Number(exact.Int(int64(n)), 0) }
	return fmt.Sprintf("Worked out %s of %s days. Esc stops.", n(done), n(of))
}

// PastEmpty says why a span has no day to tell of, as a sentence.
func PastEmpty(e *history.Empty) string { return sentence(HistoryEmpty(e)) }

// SwingOfPast offers the middle four of five days as the range of a quote's swing.
func SwingOfPast(r scenario.Range, l money.Locale) string {
	one, in := pairOfRate(r.Input)
	return fmt.Sprintf("On four of five of these days 1 %s was %s to %s %s. Let it go that far", one, l.Field(r.Low), l.Field(r.High), in)
}
