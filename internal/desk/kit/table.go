package kit

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Table is a line of headings and rows, the first column to the left, numbers to the
// right, and a link that copies it all.
type Table struct {
	widget.BaseWidget
	title *Text
	copy  *Link
	head  []string
	body  [][]string
	cells [][]*Text
	rules []*canvas.Rectangle
}

const tableRow float32 = 24

// NewTable is an empty table; copied is given it as text.
func NewTable(copied func(text string)) *Table {
	t := &Table{title: NewText(SizeText).AtMost(1)}
	t.copy = NewLink(Labels.Copy, func() { copied(t.plain()) })
	t.ExtendBaseWidget(t)
	return t
}

// plain is the table with tabs between its cells, as spreadsheets take it.
func (t *Table) plain() string {
	lines := []string{strings.Join(t.head, "\t")}
	for _, row := range t.body {
		lines = append(lines, strings.Join(row, "\t"))
	}
	return strings.Join(lines, "\n") + "\n"
}

// Set puts up rows under the headings of their columns.
func (t *Table) Set(title string, head []string, rows [][]string) {
	t.head, t.body = head, rows
	t.title.Set(Span{Text: title, Bold: true})
	all := append([][]string{head}, rows...)
	t.cells = t.cells[:0]
	for len(t.rules) < len(all) {
		t.rules = append(t.rules, canvas.NewRectangle(theme.Color(Rule)))
	}
	t.rules = t.rules[:len(all)]
	for r, row := range all {
		var line []*Text
		for c, text := range row {
			s := Span{Text: text}
			if r == 0 {
				s.Color = Muted
			}
			p := NewText(SizeSmall+1, s).AtMost(1)
			if r == 0 {
				p.MaxLines = 2
			}
			if c > 0 && t.isNumeric(c) {
				p.Trailing()
			}
			p.Centred = true
			line = append(line, p)
		}
		t.cells = append(t.cells, line)
	}
	t.Refresh()
}

// isNumeric says whether a column holds figures, which are set to the right.
func (t *Table) isNumeric(column int) bool {
	for _, row := range t.body {
		if column < len(row) && strings.ContainsFunc(row[column], unicode.IsLetter) {
			return false
		}
	}
	return true
}

func (t *Table) HeightFor(float32) float32 {
	return 26*TextFactor + tableRow*TextFactor*float32(len(t.cells)+1)
}

// columns are as wide as what stands in them; long headings take two lines.
func (t *Table) columns() []float32 {
	if len(t.cells) == 0 {
		return nil
	}
	const gap, most = 16, 380
	widths := make([]float32, len(t.cells[0]))
	for i, line := range t.cells {
		for c, cell := range line {
			w := cell.NaturalWidth()
			if i == 0 {
				w = max(w*0.62, cell.widestWord()) // two lines
			}
			widths[c] = max(widths[c], min(w+1, most*TextFactor))
		}
	}
	for c := range widths {
		widths[c] += gap * TextFactor
	}
	return widths
}

func (t *Table) LeastWidth() float32 {
	var sum float32
	for _, w := range t.columns() {
		sum += w
	}
	return sum
}

func (t *Table) MinSize() fyne.Size {
	t.ExtendBaseWidget(t)
	return fyne.NewSize(t.LeastWidth(), t.HeightFor(0))
}

func (t *Table) CreateRenderer() fyne.WidgetRenderer { return &tableRenderer{t} }

type tableRenderer struct{ t *Table }

func (r *tableRenderer) Layout(size fyne.Size) {
	t := r.t
	copyWidth := t.copy.MinSize().Width
	Place(t.copy, 0, 0, copyWidth, t.copy.MinSize().Height)
	Place(t.title, copyWidth+14, 0, size.Width-copyWidth-14, t.title.LineHeight())
	if len(t.cells) == 0 {
		return
	}
	widths := t.columns()
	if spare := size.Width - t.LeastWidth(); spare > 0 {
		for c := range widths {
			widths[c] += spare / float32(len(widths))
		}
	}
	y := 26 * TextFactor
	for i, line := range t.cells {
		h := tableRow * TextFactor
		if i == 0 {
			h *= 2
		}
		x := float32(0)
		for c, cell := range line {
			Place(cell, x, y, widths[c]-8, h-1)
			x += widths[c]
		}
		y += h
		Place(t.rules[i], 0, y-1, size.Width, 1)
	}
}

func (r *tableRenderer) MinSize() fyne.Size { return r.t.MinSize() }

func (r *tableRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.t.title, r.t.copy}
	for _, line := range r.t.cells {
		o = append(o, Objects(line...)...)
	}
	return append(o, Objects(r.t.rules...)...)
}

func (r *tableRenderer) Destroy() {}

func (r *tableRenderer) Refresh() {
	for _, rule := range r.t.rules {
		rule.FillColor = theme.Color(Rule)
	}
	for _, o := range r.Objects() {
		o.Refresh()
	}
	r.Layout(r.t.Size())
	canvas.Refresh(r.t)
}
