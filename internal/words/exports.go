package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

// What the pieces of a reel are called.
const (
	Leader          = "leader"
	TrailerAndFog   = "trailer and fogged end"
	TestPiece       = "test exposures"
	StartWaste      = "waste at the start"
	EndWaste        = "waste at the end"
	LeftOverPiece   = "left over"
	StripUnder      = "drawn to scale, from its start"
	OnlyReelsAreCut = "Only a reel is cut"
)

// StripTitle is over the reel drawn to scale: "The reel, 30.48 m".
func StripTitle(cut *film.Cut, l money.Locale) string {
	return "The reel, " + voice{l: l}.metres(cut.Reel.Length)
}

// ExposuresEach is the full rolls in a legend: "36 exposures each".
func ExposuresEach(cut *film.Cut) string { return fmt.Sprintf("%d exposures each", cut.Reel.Exposures) }

// ShortRoll is the short roll in a legend: "short roll of 14".
func ShortRoll(cut *film.Cut) string { return fmt.Sprintf("short roll of %d", cut.ShortRollExposures) }

// WasteOver is the waste in a legend: "waste, 0.53 m over".
func WasteOver(cut *film.Cut, l money.Locale) string {
	return WasteOf(cut.LeftOver, l)
}

// WasteOf is WasteOver of a length left over.
func WasteOf(over exact.Fraction, l money.Locale) string {
	if over.Round(0).IsZero() {
		return "waste"
	}
	return fmt.Sprintf("waste, %s over", voice{l: l}.metres(over))
}

// RollPiece is one cassette's exposures: "roll 7: 36 exposures".
func RollPiece(number, exposures int64) string {
	return fmt.Sprintf("roll %d: %d exposures", number, exposures)
}

// Piece is a piece of the reel with its length: "leader, 160 mm".
func Piece(name string, mm exact.Fraction, l money.Locale) string {
	return fmt.Sprintf("%s, %s mm", name, voice{l: l}.plain(mm, 1))
}

// PiecesHeader heads the table of a reel's pieces.
func PiecesHeader() []string { return []string{"piece", "how many", "mm each", "mm"} }

// Assumptions are the lines under an exported figure: what is shot, what is due at the
// border, the rates used, each a sentence or more.
func Assumptions(c *compare.Comparison, l money.Locale) []string {
	v := voiceOf(c, l)
	return []string{
		join(v.shooting(), v.developing(c)),
		v.border(c),
		v.ratesUsed(c),
	}
}

// shooting says how much is shot and from when on.
func (v voice) shooting() string {
	return fmt.Sprintf("%s a year of %d exposures, %s from %s on.", v.counted(yearShot(v.s), "roll"),
		v.s.RollExposures, v.counted(exact.Int(int64(v.s.Months)), "month"), MonthAndYear(v.s, 1))
}

// developing says which offers count it.
func (v voice) developing(c *compare.Comparison) string {
	var with, without []string
	for i := range c.Offers {
		o := &c.Offers[i]
		switch {
		case o.Fault != nil:
		case o.CountsDeveloping:
			with = append(with, Called(v.s, o.Name))
		default:
			without = append(without, Called(v.s, o.Name))
		}
	}
	switch {
	case len(with)+len(without) == 0:
		return ""
	case len(without) == 0:
		return "Developing is counted."
	case len(with) == 0:
		return "Developing is not counted."
	}
	return sentence("Developing is counted only for " + strings.Join(with, "; "))
}

// border says what is due on what is imported, and where that is not decided.
func (v voice) border(c *compare.Comparison) string {
	b := &v.s.Border
	imported, undecided := false, []string(nil)
	for i := range c.Offers {
		o := inputs(c, i)
		if o == nil || c.Offers[i].Fault != nil {
			continue
		}
		switch {
		case o.Import == scenario.ImportBorder || o.Import == scenario.ImportPrepaid:
			imported = true
		case o.Import == scenario.ImportUndecided && o.Currency != v.s.Home:
			undecided = append(undecided, Called(v.s, o.Name))
		}
	}
	text := "No import tax or duty."
	if imported {
		due := []string{v.due("Import tax", b.TaxPercent, b.TaxFreeUpTo), v.due("duty", b.DutyPercent, b.DutyFreeUpTo)}
		if !b.HandlingFee.IsZero() {
			due = append(due, "handling "+v.amount(v.typed(b.HandlingFee)))
		}
		text = strings.Join(due, ", ") + "."
	}
	if len(undecided) > 0 {
		text = join(text, sentence("Import is not decided for "+strings.Join(undecided, "; ")))
	}
	return text
}

// due is a percentage with its free limit: "duty 4.2 % above EUR 150.00".
func (v voice) due(name string, percent, free scenario.Decimal) string {
	text := name + " " + v.percent(exact.FromDecimal(percent))
	if !free.IsZero() && !percent.IsZero() {
		text += " above " + v.amount(v.typed(free))
	}
	return text
}

// ratesUsed are the quotes that the computed offers use, with their dates.
func (v voice) ratesUsed(c *compare.Comparison) string {
	var quotes []string
	seen := map[int]bool{}
	for i := range c.Offers {
		if c.Offers[i].Fault != nil {
			continue
		}
		for _, step := range c.Offers[i].Order.Route {
			if !seen[step.Index] {
				seen[step.Index] = true
				quotes = append(quotes, v.route(money.Route{step}))
			}
		}
	}
	if len(quotes) == 0 {
		return "No exchange rates used."
	}
	return "Rates: " + strings.Join(quotes, "; ") + "."
}

// DrawnOn is the date line of an export: "Drawn by Reelworth 0.1.0 on 20 Nov 2026"; an
// unset date is not told.
func DrawnOn(d scenario.Date) string {
	text := "Drawn by Reelworth " + version.String()
	if day := Day(d); day != "" {
		text += " on " + day
	}
	return text
}
