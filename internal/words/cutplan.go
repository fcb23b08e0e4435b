package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/reels"
)

// What stands on the page of a cut plan.
const (
	WishHelp  = "Cassettes and the exposures in each, served in this order. Leave the number empty for as many as fit."
	WishTimes = "× exposures"
	LinkWish  = "+ wish"
)

// WishBounds says how much may be wished.
func WishBounds(most int, none bool) string {
	if none {
		return fmt.Sprintf("a number from 1 to %d, or nothing for as many as fit", most)
	}
	return fmt.Sprintf("a number from 1 to %d", most)
}

// WishOutcome is what becomes of a wish: "6 of 6 cassettes, 738 mm each, turn to 20".
func WishOutcome(w reels.PlannedWish, l money.Locale) string {
	n := l.Number(exact.Int(w.Cassettes), 0)
	fit := choice(w.Cassettes == 1, "fits", "fit")
	text := n + " " + fit
	switch {
	case w.Asked > 0 && w.Cassettes < w.Asked:
		text = fmt.Sprintf("only %s of %s %s", n, l.Number(exact.Int(w.Asked), 0), fit)
	case w.Asked > 0 && w.Asked == 1:
		text = "it fits"
	case w.Asked > 0:
		text = "all fit"
	}
	text += fmt.Sprintf(", %s mm each", l.Number(w.Wound, 0))
	if turn := TurnTo(w.Counts, w.Rounds, w.Rest, w.Counted); turn != "" {
		text += ", turn to " + turn
	}
	return text
}
