package words

import (
	"fmt"

	"reelworth/internal/film"
	"reelworth/internal/money"
)

// What stands in the window while somebody stands at the loader.
const (
	LinkStand      = "Stand at the loader"
	LinkSheet      = "Print the sheet…"
	StandWrite     = "write on it"
	StandExposures = "exposures"
	StandTurn      = "turn the counter to"
	StandKeys      = "Space: loaded, next · Backspace: take it back · Esc: leave"
)

// StandLeft is how many cassettes are still to load.
func StandLeft(n int) string {
	if n == 1 {
		return "The last cassette"
	}
	return fmt.Sprintf("%d cassettes to load", n)
}

// StandDone is said when all are.
func StandDone(n int) string { return fmt.Sprintf("Done: %s loaded and written down.", cassettes(n)) }

// SheetTitle is what the printed sheet's file is asked for with.
const SheetTitle = "The sheet for the loader"

// What stands in the panel that measures a counter.
const (
	AskCounter   = "The loader's counter"
	CounterHelp  = "Wind a scrap of film over some counts, frames or turns, and measure it. A second one over more counts tells how a turn grows with the spool."
	CounterWaits = "Type the counts and the length of a scrap."
	Millimetres  = "mm"
	ReplySet     = "Set"
)

// ScrapCounts and ScrapLength are the measures of a scrap.
func ScrapCounts(n int) string { return [...]string{"Counts", "of another"}[n-1] }
func ScrapLength(n int) string { return [...]string{"Length", "its length"}[n-1] }

// CounterFound is a counter as measured: "One count winds 38 mm."
func CounterFound(c film.Counter, l money.Locale) string {
	v := voice{l: l}
	if c.Growth.IsZero() {
		return fmt.Sprintf("One count winds %s mm.", v.plain(c.PerCount, 3))
	}
	return fmt.Sprintf("n counts wind n × %s mm and n × n × %s mm, as the spool grows.", v.plain(c.PerCount, 3), v.plain(c.Growth, 3))
}
