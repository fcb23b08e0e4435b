package desk

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/figure"
)

// tableView is a chart's twin in cells: a line of headings and rows, the first column
// to the left, numbers to the right.
type tableView struct {
	widget.BaseWidget
	title *prose
	copy  *link
	table figure.Table
	cells [][]*prose
	rules []*canvas.Rectangle
}

const tableRow float32 = 24

func newTableView(copied func(text string)) *tableView {
	t := &tableView{title: newProse(sizeText).atMost(1)}
	t.copy = newLink("Copy", func() { copied(t.plain()) })
	t.ExtendBaseWidget(t)
	return t
}

// plain is the table with tabs between its cells, as spreadsheets take it.
func (t *tableView) plain() string {
	lines := []string{strings.Join(t.table.Header, "\t")}
	for _, row := range t.table.Rows {
		lines = append(lines, strings.Join(row, "\t"))
	}
	return strings.Join(lines, "\n") + "\n"
}

func (t *tableView) show(title string, table figure.Table) {
	t.table = table
	t.title.set(span{text: title, bold: true})
	all := append([][]string{table.Header}, table.Rows...)
	t.cells = t.cells[:0]
	for len(t.rules) < len(all) {
		t.rules = append(t.rules, canvas.NewRectangle(theme.Color(colRule)))
	}
	t.rules = t.rules[:len(all)]
	for r, row := range all {
		var line []*prose
		for c, text := range row {
			s := span{text: text}
			if r == 0 {
				s.color = colMuted
			}
			p := newProse(sizeSmall+1, s).atMost(1)
			if r == 0 {
				p.maxLines = 2
			}
			if c > 0 {
				p.trailing()
			}
			p.centred = true
			line = append(line, p)
		}
		t.cells = append(t.cells, line)
	}
	t.Refresh()
}

func (t *tableView) heightFor(float32) float32 {
	return 26*textFactor + tableRow*textFactor*float32(len(t.cells)+1)
}

// The least widths of the first column and of the others.
const tableFirst, tableEach float32 = 150, 66

func (t *tableView) leastWidth() float32 {
	if len(t.cells) == 0 {
		return 0
	}
	return textFactor * (tableFirst + tableEach*float32(len(t.cells[0])-1))
}

func (t *tableView) MinSize() fyne.Size {
	t.ExtendBaseWidget(t)
	return fyne.NewSize(t.leastWidth(), t.heightFor(0))
}

func (t *tableView) CreateRenderer() fyne.WidgetRenderer { return &tableRenderer{t} }

type tableRenderer struct{ t *tableView }

func (r *tableRenderer) Layout(size fyne.Size) {
	t := r.t
	copyWidth := t.copy.MinSize().Width
	place(t.copy, 0, 0, copyWidth, t.copy.MinSize().Height)
	place(t.title, copyWidth+14, 0, size.Width-copyWidth-14, t.title.lineHeight())
	if len(t.cells) == 0 {
		return
	}
	columns := len(t.cells[0])
	first := max(tableFirst*textFactor, size.Width*0.24)
	each := (size.Width - first) / float32(max(1, columns-1))
	y := 26 * textFactor
	for i, line := range t.cells {
		h := tableRow * textFactor
		if i == 0 {
			h *= 2
		}
		for c, cell := range line {
			x, w := float32(0), first-6
			if c > 0 {
				x, w = first+float32(c-1)*each+4, each-4
			}
			place(cell, x, y, w, h-1)
		}
		y += h
		place(t.rules[i], 0, y-1, size.Width, 1)
	}
}

func (r *tableRenderer) MinSize() fyne.Size { return r.t.MinSize() }

func (r *tableRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.t.title, r.t.copy}
	for _, line := range r.t.cells {
		o = append(o, toObjects(line...)...)
	}
	return append(o, toObjects(r.t.rules...)...)
}

func (r *tableRenderer) Destroy() {}

func (r *tableRenderer) Refresh() {
	for _, rule := range r.t.rules {
		rule.FillColor = theme.Color(colRule)
	}
	for _, o := range r.Objects() {
		o.Refresh()
	}
	r.Layout(r.t.Size())
	canvas.Refresh(r.t)
}
