package desk

import (
	"strings"
	"unicode"

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
			if c > 0 && t.isNumeric(c) {
				p.trailing()
			}
			p.centred = true
			line = append(line, p)
		}
		t.cells = append(t.cells, line)
	}
	t.Refresh()
}

// isNumeric says whether a column holds figures, which are set to the right.
func (t *tableView) isNumeric(column int) bool {
	for _, row := range t.table.Rows {
		if column < len(row) && strings.ContainsFunc(row[column], unicode.IsLetter) {
			return false
		}
	}
	return true
}

func (t *tableView) heightFor(float32) float32 {
	return 26*textFactor + tableRow*textFactor*float32(len(t.cells)+1)
}

// columns are as wide as what stands in them; long headings take two lines.
func (t *tableView) columns() []float32 {
	if len(t.cells) == 0 {
		return nil
	}
	const gap, most = 16, 380
	widths := make([]float32, len(t.cells[0]))
	for i, line := range t.cells {
		for c, cell := range line {
			w := cell.naturalWidth()
			if i == 0 {
				w = max(w*0.62, cell.widestWord()) // two lines
			}
			widths[c] = max(widths[c], min(w+1, most*textFactor))
		}
	}
	for c := range widths {
		widths[c] += gap * textFactor
	}
	return widths
}

func (t *tableView) leastWidth() float32 {
	var sum float32
	for _, w := range t.columns() {
		sum += w
	}
	return sum
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
	widths := t.columns()
	if spare := size.Width - t.leastWidth(); spare > 0 {
		for c := range widths {
			widths[c] += spare / float32(len(widths))
		}
	}
	y := 26 * textFactor
	for i, line := range t.cells {
		h := tableRow * textFactor
		if i == 0 {
			h *= 2
		}
		x := float32(0)
		for c, cell := range line {
			place(cell, x, y, widths[c]-8, h-1)
			x += widths[c]
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
