package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/reels"
)

// NoScreenIsSafe stands wherever a screen might be looked at while loading (common
// practice, no source).
const NoScreenIsSafe = "No screen is safe near open panchromatic film, whatever its colours: cover the film first."

// Metres is a length of film for reading: "12.40 m", or "84 mm" below a metre.
func Metres(mm exact.Fraction, l money.Locale) string {
	if mm.Abs().Less(exact.Int(1000)) {
		return l.Number(mm, 0) + " mm"
	}
	return l.Number(mm.Quo(exact.Int(1000)), 2) + " m"
}

// ReelWarning is a warning about a reel in hand: what it is, then what to do.
func ReelWarning(w reels.Warning, l money.Locale) string {
	switch w.Code {
	case reels.WarnEndWaste:
		return fmt.Sprintf("the loads went %s into the end waste, so nothing is left. Measure what is on the spool and note it as a recount.", Metres(w.By, l))
	case reels.WarnRecount:
		return fmt.Sprintf("more was loaded since the recount than it left, by %s. Measure again and note it.", Metres(w.By, l))
	}
	return string(w.Code)
}

// MoreRolls is what the rest of a reel gives: "4 × 36 and one of 20".
func MoreRolls(m reels.More) string {
	switch {
	case m.Rolls() == 0:
		return "nothing more"
	case m.Cassettes == 0:
		return fmt.Sprintf("one of %d", m.ShortRoll)
	case m.ShortRoll == 0:
		return fmt.Sprintf("%d × %d", m.Cassettes, m.Exposures)
	}
	return fmt.Sprintf("%d × %d and one of %d", m.Cassettes, m.Exposures, m.ShortRoll)
}

// TurnTo is what to turn the counter to: "44", or "once round, then 8" on a dial that
// comes back to its mark; "" where there is no counter.
func TurnTo(counts, rounds, rest int64, counted bool) string {
	switch {
	case !counted:
		return ""
	case rounds == 0:
		return fmt.Sprint(counts)
	case rounds == 1:
		return fmt.Sprintf("once round, then %d", rest)
	case rounds == 2:
		return fmt.Sprintf("twice round, then %d", rest)
	}
	return fmt.Sprintf("%d times round, then %d", rounds, rest)
}

// PlanOutcome says whether a plan fits: what is missing, or what the rest gives.
func PlanOutcome(p reels.Plan, l money.Locale) string {
	if p.Missing.Sign() > 0 {
		return fmt.Sprintf("%s are missing for all of it.", capital(Metres(p.Missing, l)))
	}
	return fmt.Sprintf("It fits. The rest gives %s; %s are left over.", MoreRolls(p.Rest), Metres(p.Rest.LeftOver, l))
}

// Mismeasured says what is wrong with the scraps a counter was measured by.
func Mismeasured(m film.Mismeasured) string {
	switch m {
	case film.SameCounts:
		return "both scraps are of the same counts; wind the second over more of them"
	case film.ShrinkingTurns:
		return "the film per count gets less with the counts, but a spool only grows; measure both scraps again"
	case film.NoFirstCount:
		return "by these scraps the first count winds no film; measure both again, or take one scrap"
	}
	return "a scrap needs counts and a length above 0"
}
