package figure

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/history"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// The figures that can be exported.
const (
	FigureCost  = "cost-per-roll"
	FigureSpend = "spend"
	// These show a part of an outlook.
	FigureFlip   = "flip"
	FigureSwings = "swings"
	FigureVolume = "volumes"
	FigureSizes  = "order-size"
	FigureCuts   = "cut-sizes"
	// This is of a history, and this of scenarios beside each other.
	FigureHistory    = "history"
	FigureSideBySide = "side-by-side"
)

// Formats are the formats an Export can be written in.
func Formats() []string { return []string{"png", "svg", "pdf"} }

// Figures are the figures an Export can be of that are drawn from a comparison alone.
func Figures() []string { return []string{FigureCost, FigureSpend} }

// OutlookFigures are those that need its outlook, or a Curve, Swings, Sizes or Cuts beside it.
func OutlookFigures() []string {
	return []string{FigureFlip, FigureSwings, FigureVolume, FigureSizes, FigureCuts}
}

// The size of an export in pixels at 1× where it says none.
const exportWidth, exportHeight = 960, 600

// Export is a figure that can stand alone: with its finding as the title, the
// scenario's name, the rates used, the main assumptions, and a date.
type Export struct {
	Figure     string              // one of Figures or OutlookFigures, FigureHistory or FigureSideBySide
	Comparison *compare.Comparison // nil for the last two
	History    *history.History    // of a FigureHistory
	Scenarios  []sidebyside.Entry  // of a FigureSideBySide
	Chosen     string              // offer; "" for none
	Curve      *compare.Curve      // of a FigureFlip
	Swings     []compare.Swing     // of the chosen offer, for a FigureSwings
	Sizes      []compare.OrderSize // of the chosen offer, for a FigureSizes
	Cuts       []compare.CutSize   // of the chosen offer, for a FigureCuts
	Style      Style
	Date       scenario.Date // of the date line; unset says none
	Scale      float64       // of a PNG; 0 is 1
	W, H       float64       // pixels at 1×; 0 is 960 × 600
}

// margin is around an export, in pixels.
const margin = 28

// Drawing lays the export out. It fails on an unknown figure.
func (e Export) Drawing() (*Drawing, error) {
	f, ok := e.finding()
	if !ok {
		return nil, fmt.Errorf("figure: none is called %q, but %s", e.Figure, strings.Join(slices.Concat(Figures(), OutlookFigures(), []string{FigureHistory, FigureSideBySide}), ", "))
	}
	w, h := e.W, e.H
	if w <= 0 {
		w = exportWidth
	}
	if h <= 0 {
		h = exportHeight
	}
	sh := newSheet(max(w-2*margin, 1), max(h-2*margin, 1), e.Style)
	e.lay(sh, f)
	sh.inset(margin)
	sh.made = e.Date
	return sh.Drawing, nil
}

// Write writes the export as "png", "svg" or "pdf". It fails on any other format, on an
// unknown figure, and where w does.
func (e Export) Write(w io.Writer, format string) error {
	d, err := e.Drawing()
	if err != nil {
		return err
	}
	switch format {
	case "png":
		return d.WritePNG(w, e.Scale)
	case "svg":
		return d.WriteSVG(w)
	case "pdf":
		return d.WritePDF(w)
	}
	return fmt.Errorf("figure: there is no format %q, but %s", format, strings.Join(Formats(), ", "))
}

// exportTitle is larger than on the screen: an export stands alone.
var exportTitle = face{bold: true, size: 20}

// finding is a figure of an export: what is said over it, and how it is drawn below the
// line that ends at x, y.
type finding struct {
	title, under string
	draw         func(sh *sheet, x, y, bottom float64)
	subject      string   // whose it is
	notes        []string // at its foot
}

func (e Export) finding() (f finding, ok bool) {
	switch e.Figure {
	case FigureHistory:
		f := historyOf(e.History, e.Chosen, e.Style)
		if f.h == nil {
			return finding{title: f.title, draw: f.draw}, true
		}
		return finding{f.title, f.under, f.draw, f.h.Scenario.Name, words.HistoryNotes(f.h)}, true
	case FigureSideBySide:
		f := sideOf(e.Scenarios, e.Style)
		return finding{f.title, f.under, f.draw, words.SideBySideName, words.SideBySideNotes(e.Scenarios)}, true
	}
	if f, ok = e.comparisonFinding(); ok {
		f.subject, f.notes = e.Comparison.Scenario.Name, words.Assumptions(e.Comparison, e.Style.Locale)
	}
	return f, ok
}

// comparisonFinding is a figure that is drawn of a comparison.
func (e Export) comparisonFinding() (f finding, ok bool) {
	c, l := e.Comparison, e.Style.Locale
	switch e.Figure {
	case FigureCost:
		return finding{title: words.CostTitle(c, l), under: words.CostUnder(c), draw: func(sh *sheet, x, y, bottom float64) {
			drawCost(sh, c, e.Chosen, Rect{x, y, sh.W - x, bottom - y}, exportRow)
		}}, true
	case FigureSpend:
		return finding{title: words.SpendTitle(c, l), under: words.SpendUnder(c), draw: func(sh *sheet, _, y, bottom float64) {
			drawSpend(sh, c, e.Chosen, y, bottom)
		}}, true
	case FigureFlip:
		f := flipOf(c, e.Curve, e.Style)
		return finding{title: f.title, under: f.under, draw: f.draw}, true
	case FigureSwings:
		f := swingsOf(c, e.Chosen, e.Swings, e.Style)
		return finding{title: f.title, under: f.under, draw: f.draw}, true
	case FigureVolume:
		f := volumesOf(c, e.Chosen, e.Style)
		return finding{title: f.title, under: f.under, draw: f.draw}, true
	case FigureSizes:
		f := sizesOf(c, e.Chosen, e.Sizes, e.Style)
		return finding{title: f.title, under: f.under, draw: f.draw}, true
	case FigureCuts:
		f := cutsOf(c, e.Chosen, e.Cuts, e.Style)
		return finding{title: f.title, under: f.under, draw: f.draw}, true
	}
	return f, false
}

// lay sets head, figure and foot of the export.
func (e Export) lay(sh *sheet, f finding) {
	t := e.Style.Theme
	sh.title = f.title
	y := sh.lines(exportTitle, f.title, 0, 20) + 16
	sh.write(nameFace, 0, y, nameFace.fit(tidy(f.subject), sh.W), t.Ink)
	foot := e.foot(sh, f.notes)
	x, y := sh.underLine(f.under, y+28)
	f.draw(sh, x, y, foot-16)
}

// foot sets the notes and the date from the bottom up and returns where they begin.
func (e Export) foot(sh *sheet, notes []string) float64 {
	const line = 17
	var lines []string
	for _, text := range notes {
		lines = append(lines, smallFace.wrap(tidy(text), sh.W, 2)...)
	}
	lines = append(lines, words.DrawnOn(e.Date))
	top := sh.H - float64(len(lines))*line
	sh.hairline(0, sh.W, top-8, e.Style.Theme.Rule)
	for i, text := range lines {
		sh.write(smallFace, 0, top+float64(i)*line+13, text, e.Style.Theme.Muted)
	}
	return top - 8
}
