package words

import (
	"fmt"

	"reelworth/internal/reels"
)

// The loader's sheet.
const (
	LoadingUnder = "Tick each cassette as you load it, and write its number on it."
	ReadOff      = "counter read"
)

// LoadingTitle is over the sheet.
func LoadingTitle(reel string) string { return "At the loader: " + reel }

// LoadingHeader are the columns of the sheet, the first for the box to tick.
func LoadingHeader() []string {
	return []string{"", "cassette", "exposures", "turn to", "still to load"}
}

// LoadingRow are a step's cells, the first for the box to tick.
func LoadingRow(s reels.Step) []string {
	turn := TurnTo(s.Counts, s.Rounds, s.Rest, s.Counted)
	if turn == "" {
		turn = "–"
	}
	return []string{"", fmt.Sprint(s.Number), fmt.Sprint(s.Exposures), turn, fmt.Sprint(s.After)}
}

// PageOf is at the foot of a page.
func PageOf(page, of int) string { return fmt.Sprintf("page %d of %d", page, of) }

// The parts of the speed code's template.
const (
	SpoolPost    = "spool's post"
	AreaMetal    = "bare metal"
	AreaCovered  = "covered"
	CodeTrueSize = "At its true size, to cut out or to paint by"
)

// SpeedCodeTitle is over the template.
func SpeedCodeTitle(c reels.SpeedCode) string {
	length := "other length"
	if c.Exposures > 0 {
		length = fmt.Sprintf("%d exposures", c.Exposures)
	}
	return fmt.Sprintf("Speed code %d, %s, %s", c.Speed, length, ToleranceName(c.Tolerance))
}

// AreaMeasures says how large the areas are drawn.
func AreaMeasures(w, h string) string {
	return fmt.Sprintf("Areas %s × %s mm: measure yours.", w, h)
}
