package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/market"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// page is one tab of the answer.
type page interface {
	name(v View) string               // of its tab
	object() fyne.CanvasObject        // what is shown
	fill(v View)                      // brings it up to date; called while it is in sight
	rooms(scale float32) answer.Rooms // of the figures it shows
}

// View is what a page is about.
type View struct {
	answer *answer.Answer    // nil until the first is there
	Ahead  *answer.Foresight // what would change it, nil until known
	offer  int               // the one that is looked at
	locale money.Locale
	Market *market.Market // published rates
	Back
}

// Back is what is known of the past.
type Back struct {
	Past             *answer.Past // nil until the first is there
	PastDone, PastOf int          // days of one that takes long; 0 for none under way
	PastStopped      bool         // nobody waits for it any more
}

// comparison is what the page shows, nil until the first is there.
func (v View) comparison() *compare.Comparison {
	if v.answer == nil {
		return nil
	}
	return v.answer.Comparison
}

// The pages, in the order of their tabs.
const (
	Charts = iota
	Receipt
	Changes
	Sizes
	Past
	Tables
	Notes
)

// Actions are what the pages can do.
type Actions interface {
	Redraw()                       // figures have more or less room now
	LookAt(offer string)           // at another way to buy
	LookAtFlip(answer.FlipKey)     // at another place where the answer flips
	Order(offer string, units int) // buy so many units at once
	AskRange()                     // how far an input swings
	SetRange(scenario.Range)       // let an input swing so far
	LookBackOver(history.Span)     // over other days
	OpenRates()                    // published ones, from a file
	TakeDayRates()                 // of a day of the published ones, into the scenario
	FetchRates()                   // published ones, from the bank
	StopWaiting()                  // for what is fetched or takes long
	Mend()                         // go to what keeps something out of the answer
}
