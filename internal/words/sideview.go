package words

import (
	"fmt"
	"path/filepath"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
)

// What the window says where scenarios stand side by side.
const (
	SideCommon   = "Also in"
	SideNoCommon = "no other currency"
	SideAddFile  = "Add a file…"
	SideOnlyThis = "This file only"
	SideBack     = "Back"
	SideExport   = "Export…"
	SideHint     = "Let scenario files fall here to set them beside these. Enter or a double click opens the scenario that is chosen."
	SideWorking  = "Comparing …"
	SideNotFiled = "not in a file yet"
	SideEmpty    = "there is no scenario in it"
)

// SideColumn is a column of the scenarios in the window.
type SideColumn struct {
	Name   string
	By     sidebyside.Key // what it puts the scenarios in order by
	Amount bool           // set to the right
	Wide   bool           // the name of an offer stands in it
	Strip  bool           // a strip stands in it
	Into   bool           // the amounts before it, in the common currency
}

// SideCell is what stands in a cell: a line, and a quieter one under it.
type SideCell struct{ Text, Under string }

// sideView is a column with what stands in its cells.
type sideView struct {
	SideColumn
	into bool // only there where something is brought to a common currency
	cell func(e *sidebyside.Entry, v voice) SideCell
}

var sideViews = []sideView{
	{SideColumn{"scenario", sidebyside.ByName, false, false, false, false}, false, nil},
	{SideColumn{"best reel, a roll", sidebyside.ByReel, true, true, false, false}, false, func(e *sidebyside.Entry, v voice) SideCell {
		return SideCell{inHome(rollOf(e.Reel(), v), v), nameOf(e.Reel())}
	}},
	{SideColumn{"in", sidebyside.ByReel, true, false, false, false}, true, func(e *sidebyside.Entry, v voice) SideCell {
		return SideCell{Text: rollInto(e, e.Reel(), v)}
	}},
	{SideColumn{"best boxed, a roll", sidebyside.ByBoxed, true, true, false, false}, false, func(e *sidebyside.Entry, v voice) SideCell {
		return SideCell{inHome(rollOf(e.Boxed(), v), v), nameOf(e.Boxed())}
	}},
	{SideColumn{"in", sidebyside.ByBoxed, true, false, false, false}, true, func(e *sidebyside.Entry, v voice) SideCell {
		return SideCell{Text: rollInto(e, e.Boxed(), v)}
	}},
	{SideColumn{"saved a roll", sidebyside.ByPercent, true, false, false, false}, false, func(e *sidebyside.Entry, v voice) SideCell {
		if a := e.Against(); a != nil && a.SavingPercent != nil {
			return SideCell{Text: v.l.Number(*a.SavingPercent, 1) + noBreak + "%"}
		}
		return SideCell{}
	}},
	{SideColumn{"saved in all", sidebyside.BySaving, true, false, false, false}, false, func(e *sidebyside.Entry, v voice) SideCell {
		if a := e.Against(); a != nil {
			return SideCell{Text: inHome(v.home(a.Saving), v)}
		}
		return SideCell{}
	}},
	{SideColumn{"in", sidebyside.BySaving, true, false, false, false}, true, func(e *sidebyside.Entry, v voice) SideCell {
		if a := e.Against(); a != nil {
			return SideCell{Text: amountInto(e, a.Saving, v)}
		}
		return SideCell{}
	}},
	{SideColumn{"ahead from", sidebyside.ByMonth, false, false, false, false}, false, func(e *sidebyside.Entry, v voice) SideCell {
		if a := e.Against(); a != nil && a.EvenMonth > 0 {
			return SideCell{Text: MonthName(v.s, a.EvenMonth)}
		}
		return SideCell{}
	}},
	{SideColumn{"worth it", sidebyside.ByVerdict, false, false, false, false}, false, func(e *sidebyside.Entry, _ voice) SideCell {
		return SideCell{Text: VerdictName(e.Comparison.Verdict.Kind)}
	}},
	{SideColumn{"by rolls a year", sidebyside.ByRollsAYear, false, false, true, false}, false, func(e *sidebyside.Entry, _ voice) SideCell {
		return SideCell{Under: VolumesInShort(decided(e.Volumes()))}
	}},
}

// decided are the ranges in which one of the two is cheaper: the others lie between.
func decided(ranges []compare.VolumeRange) []compare.VolumeRange {
	return slices.DeleteFunc(slices.Clone(ranges), func(r compare.VolumeRange) bool { return r.Cheaper == compare.CheaperEven })
}

// SideFault says what is wrong with a scenario or its file: "line 2: …; …".
func SideFault(f scenario.Fault) string {
	wrong, remedy := Fault(f)
	text := wrong + "; " + remedy
	if f.Line > 0 {
		return fmt.Sprintf("line %d: %s", f.Line, text)
	}
	return text
}

// inHome is an amount with its currency before it, "" for none.
func inHome(amount string, v voice) string {
	if amount == "" {
		return ""
	}
	return v.s.Home + noBreak + amount
}

// sideViewsOf are the columns there are for scenarios.
func sideViewsOf(list []sidebyside.Entry) (views []sideView) {
	common := commonCurrency(list)
	if sharedHome(list) == common {
		common = ""
	}
	for _, c := range sideViews {
		if c.into && common == "" {
			continue
		}
		if c.into {
			c.Name, c.Into = c.Name+" "+common, true
		}
		views = append(views, c)
	}
	return views
}

// SideColumns are the columns of scenarios in the window. Those of the common currency are
// there only where it is not everybody's home.
func SideColumns(list []sidebyside.Entry) (columns []SideColumn) {
	for _, c := range sideViewsOf(list) {
		columns = append(columns, c.SideColumn)
	}
	return columns
}

// SideCells are the cells of one of the scenarios in the window; of one that could not be
// computed the first alone, and why.
func SideCells(list []sidebyside.Entry, at int, l money.Locale) (cells []SideCell, why string) {
	e := &list[at]
	cells = []SideCell{sideName(list, e)}
	if e.Comparison == nil {
		return cells, sentence(e.Fault)
	}
	v := voice{s: &e.Comparison.Scenario, l: l}
	for _, c := range sideViewsOf(list)[1:] {
		cells = append(cells, c.cell(e, v))
	}
	return cells, ""
}

// sideName names a scenario, and its file where there are several.
func sideName(list []sidebyside.Entry, e *sidebyside.Entry) SideCell {
	c := SideCell{Text: e.Scenario}
	for i := range list {
		if list[i].File != list[0].File {
			c.Under = SideFile(e.File)
		}
	}
	if c.Text == "" {
		c = SideCell{Text: SideFile(e.File)}
	}
	return c
}

// SideFile is what a file is called beside others; "" is work without one.
func SideFile(path string) string {
	if path == "" {
		return SideNotFiled
	}
	return filepath.Base(path)
}

// SideExported names the file that scenarios side by side are exported to.
const SideExported = "side by side"

// SideFormats are the ways to export them: the endings, and what each is.
var SideFormats = []string{".csv", ".md", ".png", ".svg", ".pdf"}
