package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// The headings of a reel in hand's form.
const (
	HeadingInHand    = "Reels in hand"
	HeadingRollsLeft = "ROLLS LEFT"
	GroupInHand      = "The reel"
	GroupOnLabels    = "On its labels"
	GroupCounter     = "The loader's counter"
	FoldReel         = "Length, leader, trailer, waste, perforation…"
)

// The links about reels in hand.
const (
	LinkPutInHand      = "Put in hand"
	LinkPlanCut        = "Plan the cut"
	LinkMeasureCounter = "Measure it by a scrap…"
	LinkRemoveReel     = "Take out of the list"
	LinkAddInHand      = "+ reel in hand"
)

// UnderReel stands under the name of a reel in hand.
func UnderReel(r *scenario.InHand) string {
	switch {
	case r.Offer != "" && r.Offer != r.Name:
		return "a reel in hand, bought as " + r.Offer
	case r.Bought != (scenario.Date{}):
		return "a reel in hand, bought on " + Day(r.Bought)
	}
	return "a reel in hand"
}

// PlannedPieces is what a plan takes, in the legend of a strip.
const PlannedPieces = "planned"

// ReelStripTitle is over a reel in hand drawn to scale: "12.40 m of 30.48 m are left".
func ReelStripTitle(length exact.Fraction, p reels.Plan, l money.Locale) string {
	return fmt.Sprintf("%s of %s are left", Metres(p.Left, l), Metres(length, l))
}

// UsedPiece is the part of a reel that is gone.
func UsedPiece(cassettes int) string {
	switch cassettes {
	case 0:
		return "used"
	case 1:
		return "used, 1 cassette loaded"
	}
	return fmt.Sprintf("used, %d cassettes loaded", cassettes)
}

// RestGives is what comes of the rest, in the legend of a strip.
func RestGives(m reels.More) string { return "the rest: " + MoreRolls(m) }

// ManyRolls are more cassettes than are drawn one by one.
func ManyRolls(n, exposures int64) string {
	return fmt.Sprintf("%d rolls of %d exposures", n, exposures)
}

// ReelUnder is the line under a reel in hand in the list: "12.40 m left · 5 undeveloped".
func ReelUnder(s *reels.Standing, l money.Locale) string {
	text := Metres(s.Left, l) + " left"
	if s.Undeveloped > 0 {
		text += fmt.Sprintf(" · %d undeveloped", s.Undeveloped)
	}
	return text
}

// The pages of a reel in hand.
const (
	PageLog     = "Log"
	PageCut     = "Cut plan"
	PageAccount = "As planned?"
	PageLabels  = "Labels"
)

// ReelHeadline is what is left of a reel: "12.40 m left: 7 × 36 and one of 20."
func ReelHeadline(s *reels.Standing, l money.Locale) string {
	if s.More.Rolls() == 0 && s.Left.IsZero() {
		return "Nothing is left on it."
	}
	return fmt.Sprintf("%s left: %s.", Metres(s.Left, l), MoreRolls(s.More))
}

// ReelStock is the line under the headline: what is loaded, and what of it is undeveloped.
func ReelStock(s *reels.Standing, l money.Locale) string {
	loaded := "Nothing is loaded yet."
	if s.Loaded > 0 {
		loaded = fmt.Sprintf("%s loaded: %d developed, %d at home undeveloped.", cassettes(s.Loaded), s.Developed, s.Undeveloped)
	}
	if s.FilmPerRoll.Known && s.Currency != "" && !s.FilmPerRoll.IsZero() {
		loaded += fmt.Sprintf(" Film comes to %s for 36 exposures.", l.Amount(s.FilmPerRoll.Fraction, s.Currency))
	}
	return loaded
}

func cassettes(n int) string {
	if n == 1 {
		return "1 cassette"
	}
	return fmt.Sprintf("%d cassettes", n)
}

// ThoughtHeadline is what there is of an offer's reel.
func ThoughtHeadline(p reels.Plan, l money.Locale) string {
	return fmt.Sprintf("%s to cut into cassettes", Metres(p.Left, l))
}

// ThoughtUnder says that nothing is bought yet.
func ThoughtUnder(offer string) string {
	return "A plan for " + offer + ", which is only offered: nothing of it is kept."
}

// CannotBeCut is said of an offer's reel that is shorter than its wastes.
const CannotBeCut = "This reel gives nothing to cut: it is shorter than its wastes."

// LinkBack leads from a reel to the answer.
const LinkBack = "Back to the answer"

// The links of the log, and the questions behind them.
const (
	LinkLoaded    = "+ loaded"
	LinkDeveloped = "+ developed"
	LinkMeasured  = "+ measured"
	AskLoaded     = "Cassettes loaded"
	AskDeveloped  = "Cassettes developed"
	AskMeasured   = "Film measured"
	ReplyCancel   = "Cancel"
	ReplyAdd      = "Add"
	ReplyChange   = "Change"
	ReplyTakeOut  = "Take out"
	LogEmpty      = "Nothing was done with this reel yet. What you load, develop or measure is written down here."
)

// NothingToDevelop is said where no cassette is undeveloped.
var NothingToDevelop = Question{
	Title: "Nothing to develop",
	Text:  "No cassette of this reel is loaded and undeveloped. Write down what was loaded first.",
}

// LogSaying is an entry of a reel's log: what was done, and when with what else is known.
type LogSaying struct{ What, Under string }

// LoadSaying is a load: "4 cassettes of 36 loaded".
func LoadSaying(x *scenario.Load) LogSaying {
	counts := ""
	if x.Counts.Set {
		counts = fmt.Sprintf("counter at %d", x.Counts.Int)
	}
	return LogSaying{fmt.Sprintf("%s of %d loaded", cassettes(x.Cassettes), x.Exposures), dotted(Day(x.Date), counts, x.Note)}
}

// ResultSaying is a result: "3 cassettes of 36 developed, 105 of 108 good".
func ResultSaying(x *scenario.Result) LogSaying {
	lost := ""
	if x.LostOtherwise > 0 {
		lost = fmt.Sprintf("%d lost otherwise", x.LostOtherwise)
	}
	return LogSaying{
		fmt.Sprintf("%s of %d developed, %d of %d good", cassettes(x.Cassettes), x.Exposures, x.Good, x.Cassettes*x.Exposures),
		dotted(Day(x.Date), lost, x.Note),
	}
}

// RecountSaying is a recount: "12.40 m measured on the reel".
func RecountSaying(x *scenario.Recount, l money.Locale) LogSaying {
	what := Metres(exact.FromDecimal(x.LeftMM), l) + " measured on the reel"
	if x.LeftMM.IsZero() {
		what = "nothing left on the reel: empty, lost or given away"
	}
	return LogSaying{what, dotted(Day(x.Date), x.Note)}
}

// dotted are the parts that say something, with dots between.
func dotted(parts ...string) string {
	text := ""
	for _, p := range parts {
		switch {
		case p == "":
		case text == "":
			text = p
		default:
			text += " · " + p
		}
	}
	return text
}

// NotInHand is said where an offer's reel cannot be put in hand.
var NotInHand = Question{
	Title: "Not put in hand",
	Text:  "Only a reel can be put in hand, and only one whose cost can be computed: mend what is said beside its fields first.",
}

// NotCut is said where the offer that is chosen is no reel.
var NotCut = Question{
	Title: "Nothing to cut",
	Text:  "Only a reel is cut. Choose one among the ways to buy first.",
}
