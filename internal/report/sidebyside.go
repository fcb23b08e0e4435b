package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// The shapes of SideBySideJSON. What there is none of is null.
type (
	jsonEntry struct {
		File     string `json:"file"`
		Scenario string `json:"scenario"`
		*jsonSide
		Fault string `json:"fault,omitempty"`
	}
	jsonSide struct {
		Home          string              `json:"home"`
		Kind          compare.VerdictKind `json:"kind"`
		Reel          *jsonBest           `json:"reel"`
		Boxed         *jsonBest           `json:"boxed"`
		SavingPercent *number             `json:"saving_percent"`
		Saving        *number             `json:"saving"`
		SavingIn      *number             `json:"saving_in"`
		In            *string             `json:"in"`
		InReason      *string             `json:"in_reason"`
		EvenMonth     *int                `json:"even_month"`
		VolumeRanges  []jsonRange         `json:"volume_ranges"`
	}
	jsonBest struct {
		Name      string  `json:"name"`
		PerRoll   number  `json:"per_roll"`
		PerRollIn *number `json:"per_roll_in"`
	}
)

// SideBySideJSON writes a list with one entry for each scenario, in the manner of JSON.
func SideBySideJSON(w io.Writer, list []sidebyside.Entry) error {
	out := make([]jsonEntry, len(list))
	for i := range list {
		e := &list[i]
		out[i] = jsonEntry{File: e.File, Scenario: e.Scenario, Fault: e.Fault}
		if e.Comparison != nil {
			out[i].jsonSide = sideOf(e)
		}
	}
	return writeJSON(w, out)
}

func sideOf(e *sidebyside.Entry) *jsonSide {
	c := e.Comparison
	j := &jsonSide{Home: c.Scenario.Home, Kind: c.Verdict.Kind, Reel: bestOf(e, e.Reel()), Boxed: bestOf(e, e.Boxed())}
	if e.Into.Currency != "" {
		j.In = &e.Into.Currency
		if e.Into.Factor == nil {
			reason := spaced(words.NotInto(e))
			j.InReason = &reason
		}
	}
	if a := e.Against(); a != nil {
		saving := number(a.Saving)
		j.SavingPercent, j.Saving, j.SavingIn = numberOrNull(a.SavingPercent), &saving, numberOrNull(e.Into.Of(a.Saving))
		j.EvenMonth = monthOrNull(a.EvenMonth)
		j.VolumeRanges = rangesOf(e.Volumes(), "reel", "boxed")
	}
	return j
}

func bestOf(e *sidebyside.Entry, o *compare.Offer) *jsonBest {
	if o == nil {
		return nil
	}
	return &jsonBest{o.Name, number(o.PerRoll.Total), numberOrNull(e.Into.Of(o.PerRoll.Total))}
}

// sideColumns are the columns of SideBySideCSV.
var sideColumns = []string{
	"file", "scenario", "fault", "home", "kind", "reel", "reel_per_roll", "boxed", "boxed_per_roll", "saving_percent", "saving",
	"in", "in_reason", "reel_per_roll_in", "boxed_per_roll_in", "saving_in", "even_month", "volume_ranges",
}

// SideBySideCSV writes one row for each scenario under a row of names, in the manner of
// CSV. Volume ranges read "1-15 boxed; 16-430 reel".
func SideBySideCSV(w io.Writer, list []sidebyside.Entry) error {
	out := newCells(w)
	out.row(sideColumns)
	for i := range list {
		out.row(sideRow(&list[i]))
	}
	return out.end()
}

func sideRow(e *sidebyside.Entry) []string {
	row := []string{text(e.File), text(e.Scenario), text(e.Fault)}
	if e.Comparison == nil {
		return append(row, make([]string, len(sideColumns)-len(row))...)
	}
	maybe := func(f *exact.Fraction) string {
		if f == nil {
			return ""
		}
		return plain(*f)
	}
	into := func(f *exact.Fraction) string {
		if f == nil {
			return ""
		}
		return maybe(e.Into.Of(*f))
	}
	offer := func(o *compare.Offer) (name string, total *exact.Fraction) {
		if o == nil {
			return "", nil
		}
		return text(o.Name), &o.PerRoll.Total
	}
	reel, reelTotal := offer(e.Reel())
	boxed, boxedTotal := offer(e.Boxed())
	var percent, saving *exact.Fraction
	month := ""
	if a := e.Against(); a != nil {
		percent, saving = a.SavingPercent, &a.Saving
		if a.EvenMonth > 0 {
			month = strconv.Itoa(a.EvenMonth)
		}
	}
	reason := ""
	if e.Into.Currency != "" && e.Into.Factor == nil {
		reason = spaced(words.NotInto(e))
	}
	return append(row,
		e.Comparison.Scenario.Home, string(e.Comparison.Verdict.Kind), reel, maybe(reelTotal), boxed, maybe(boxedTotal),
		maybe(percent), maybe(saving), e.Into.Currency, reason, into(reelTotal), into(boxedTotal), into(saving), month, rangesText(e))
}

func rangesText(e *sidebyside.Entry) string {
	var said []string
	for _, r := range rangesOf(e.Volumes(), "reel", "boxed") {
		said = append(said, fmt.Sprintf("%d-%d %s", r.From, r.To, r.Cheaper))
	}
	return strings.Join(said, "; ")
}

// SideBySideTable writes the scenarios to read in a terminal.
func SideBySideTable(w io.Writer, list []sidebyside.Entry, l money.Locale) error {
	out := bufio.NewWriter(w)
	out.WriteString(plainText(sideDocument(list, l)))
	return out.Flush()
}

// SideBySideMarkdown writes the scenarios as GitHub-flavoured Markdown.
func SideBySideMarkdown(w io.Writer, list []sidebyside.Entry, l money.Locale) error {
	out := bufio.NewWriter(w)
	out.WriteString(markdown(sideDocument(list, l)))
	return out.Flush()
}

func sideDocument(list []sidebyside.Entry, l money.Locale) document {
	d := document{title: words.SideBySideName, headline: words.SideBySideTitle(list, l)}
	var g grid
	g.head, g.texts = words.SideBySideColumns(list)
	for i := range list {
		if list[i].Comparison == nil {
			d.worth = append(d.worth, words.SideBySideFault(&list[i]))
			continue
		}
		g.rows = append(g.rows, gridRow{cells: words.SideBySideRow(&list[i], l)})
	}
	if len(g.rows) > 0 {
		d.sections = []section{{words.SideBySideUnder(list), []grid{g}}}
	}
	d.worth = append(d.worth, words.SideBySideNotes(list)...)
	d.mapTexts(func(text string) string { return Line(spaced(text)) })
	return d
}
