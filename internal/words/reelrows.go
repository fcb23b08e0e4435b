package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/reels"
)

// NoReels is said of a file without reels in hand.
const NoReels = "No reel is in hand: write a [[reel]] table, or put an offer's reel in hand in the window."

// none stands where there is no figure.
const none = "–"

// ReelFault is what is wrong with a reel in hand, and what would do.
func ReelFault(s *reels.Standing) string {
	wrong, remedy := Fault(*s.Fault)
	if remedy == "" {
		return wrong
	}
	return wrong + "; " + remedy
}

// ReelUnsound stands below a reel's name where something is wrong with it: what, is told
// where it is looked at.
const ReelUnsound = "does not add up"

// ReelsHeader are the columns of a table of reels in hand.
func ReelsHeader() []string {
	return []string{"reel", "left", "gives", "loaded", "undeveloped", "spoiled", "film per roll", "planned"}
}

// ReelRow are a reel's cells in it.
func ReelRow(s *reels.Standing, l money.Locale) []string {
	v := voice{l: l}
	spoiled := none
	if s.Spoiled.Known {
		spoiled = v.plain(s.Spoiled.Round(1), 1) + " %"
	}
	return []string{
		s.Name, Metres(s.Left, l), MoreRolls(s.More), fmt.Sprint(s.Loaded), fmt.Sprint(s.Undeveloped), spoiled,
		perRollOf(s.FilmPerRoll, s.Currency, l), perRollOf(s.Planned, s.Currency, l),
	}
}

// perRollOf is an amount per roll, or that there is none.
func perRollOf(m reels.Maybe, currency string, l money.Locale) string {
	if !m.Known || currency == "" {
		return none
	}
	return l.Amount(m.Fraction, currency)
}

// PlanHeader are the columns of a cut plan.
func PlanHeader() []string { return []string{"exposures", "asked", "cassettes", "roll", "turn to"} }

// PlanRow are a wish's cells in it.
func PlanRow(w reels.PlannedWish, l money.Locale) []string {
	asked, turn := "as many as fit", TurnTo(w.Counts, w.Rounds, w.Rest, w.Counted)
	if w.Asked > 0 {
		asked = l.Number(exact.Int(w.Asked), 0)
	}
	if turn == "" {
		turn = none
	}
	return []string{fmt.Sprint(w.Exposures), asked, l.Number(exact.Int(w.Cassettes), 0), l.Number(w.RollLength, 1) + " mm", turn}
}

// SpeedCodeLegend explains the code drawn in letters.
const SpeedCodeLegend = "[ ] bare metal, [#] covered; the spool's post is at the left, areas 1 to 6 above 7 to 12."
