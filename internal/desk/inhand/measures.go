package inhand

import (
	"strconv"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/paper"
	"reelworth/internal/words"
)

// measures are the user's own sheet of labels.
type measures struct {
	win     Window
	content *fyne.Container
	boxes   []*kit.TextBox
	grid    paper.Grid
	changed func(paper.Grid)
}

// measured is one measure of a sheet.
var measured = []struct {
	label string
	count func(*paper.Grid) *int     // nil for a length
	mm    func(*paper.Grid) *float64 // nil for a count
}{
	{words.SheetColumns, func(g *paper.Grid) *int { return &g.Columns }, nil},
	{words.SheetRows, func(g *paper.Grid) *int { return &g.Rows }, nil},
	{words.SheetLeft, nil, func(g *paper.Grid) *float64 { return &g.Left }},
	{words.SheetTop, nil, func(g *paper.Grid) *float64 { return &g.Top }},
	{words.SheetRight, nil, func(g *paper.Grid) *float64 { return &g.Right }},
	{words.SheetBottom, nil, func(g *paper.Grid) *float64 { return &g.Bottom }},
	{words.SheetGapX, nil, func(g *paper.Grid) *float64 { return &g.GapX }},
	{words.SheetGapY, nil, func(g *paper.Grid) *float64 { return &g.GapY }},
}

// newMeasures tells changed when the sheet is another.
func newMeasures(win Window, changed func(paper.Grid)) *measures {
	m := &measures{win: win, content: kit.NewStack(0, 0), changed: changed}
	for i, of := range measured {
		box, unit := kit.NewTextBox(true), words.Millimetres
		if of.count != nil {
			unit = ""
		}
		box.Changed = func(text string) { m.typed(i, text) }
		m.boxes = append(m.boxes, box)
		m.content.Add(kit.NewRow(of.label, box, kit.NumberWidth, unit))
	}
	return m
}

// typed takes a measure that can be read; whether labels fit is said below.
func (m *measures) typed(i int, text string) {
	v, err := form.ReadNumber(text, m.win.Locale())
	if count := measured[i].count; err == nil && count != nil {
		n, wrong := form.ReadCount(text, m.win.Locale())
		*count(&m.grid), err = n, wrong
	} else if err == nil {
		*measured[i].mm(&m.grid) = v.InexactFloat64()
	}
	m.boxes[i].SetFaulty(err != nil)
	if err == nil {
		m.changed(m.grid)
	}
}

// show puts a sheet's measures up where it is the user's own.
func (m *measures) show(g paper.Grid) {
	m.grid = g
	if g.Name != words.OwnSheet {
		m.content.Hide()
		return
	}
	m.content.Show()
	for i, of := range measured {
		if m.boxes[i].Entry.Inside() {
			continue
		}
		if of.count != nil {
			m.boxes[i].Set(strconv.Itoa(*of.count(&g)))
		} else {
			m.boxes[i].Set(strconv.FormatFloat(*of.mm(&g), 'f', -1, 64))
		}
	}
}
