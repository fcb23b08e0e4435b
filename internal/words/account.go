package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// What stands on the page that holds a reel against its plan.
const (
	HeadingLesson = "What it teaches"
	NoAccount     = "There is no account of this reel until its fault is mended."
)

// AccountHeader heads the table of a reel held against its plan.
func AccountHeader() []string { return []string{"", "planned", "as it turns out"} }

// AccountRows are its rows: film per roll, what is spoiled, and good rolls in all.
func AccountRows(o *reels.Outcome, currency string, l money.Locale) [][]string {
	percent := func(m reels.Maybe) string {
		if !m.Known {
			return none
		}
		return voice{l: l}.plain(m.Fraction, 2) + " %"
	}
	return [][]string{
		{"film per roll of 36 exposures", perRollOf(o.PlannedFilmPerRoll, currency, l), perRollOf(o.FilmPerRoll, currency, l)},
		{"spoiled", percent(o.PlannedSpoiled), percent(o.Spoiled)},
		{"good rolls of 36 in all", l.Number(o.PlannedRolls, 2), l.Number(o.Rolls, 2)},
	}
}

// AccountSays is what stands under the table.
func AccountSays(o *reels.Outcome, s *reels.Standing, l money.Locale) string {
	switch {
	case s.Developed == 0:
		return "Nothing is developed yet: all is as planned until it is."
	case s.Developed < reels.TellingCassettes:
		return fmt.Sprintf("%s developed. From %d on, what was spoiled is expected of the rest too.", capital(cassettes(s.Developed)), reels.TellingCassettes)
	case !o.Departs:
		return "It comes out about as planned: less than 2 points more or less is spoiled."
	}
	return "What was spoiled so far is expected of the rest too."
}

// LinkTakeOver takes what the reels taught over into an offer.
func LinkTakeOver(offer string) string { return "Take it over into " + clip(offer) }

// Lesson is what would be taken over into an offer, and what it changes in the answer.
func Lesson(before, after *compare.Comparison, was *scenario.Offer, e reels.Experience, l money.Locale) string {
	text := fmt.Sprintf("%s would count %s %% spoiled in the place of %s %%, and %s reels on hand in the place of %s.",
		was.Name, l.Field(e.SpoiledPercent), l.Field(was.Reel.SpoiledPercent), l.Field(e.OnHand), l.Field(was.OnHand))
	a, b := before.Find(e.Offer), after.Find(e.Offer)
	if a != nil && b != nil && a.Fault == nil && b.Fault == nil {
		text += fmt.Sprintf(" A roll of it would come to %s, today %s.",
			l.Amount(b.PerRoll.Total, after.Currency()), l.Amount(a.PerRoll.Total, before.Currency()))
	}
	now, then := Verdict(before, l).Text, Verdict(after, l).Text
	if now == then {
		return text + " The answer stays: " + now
	}
	return text + " The answer would be: " + then
}
