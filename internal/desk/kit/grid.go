package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Grid is rows under headings by which they can be sorted. One row is chosen: up and down
// go to its neighbours, Enter or a double click opens it.
type Grid struct {
	widget.BaseWidget
	Open    func(row int) // of Rows
	Choose  func(row int) // another one is chosen; nil for nobody to tell
	Escape  func()        // nil where Esc means nothing
	At      int           // the row that is chosen
	heads   []*gridHead
	columns []GridColumn
	rows    []*gridRow
	focused bool
}

// GridColumn is a column of a Grid.
type GridColumn struct {
	Name     string
	Trailing bool // figures, set to the right
	Width    float32
	Grow     float32 // its share of room that is left over
}

// GridCell is what stands in a cell: a line, and a quieter one under it.
type GridCell struct {
	Text, Under string
	Over        fyne.CanvasObject // in the place of the line, nil for none
}

// GridRow is a row: its cells, or the first and a note in the place of the others.
type GridRow struct {
	Cells []GridCell
	Note  string
}

// NewGrid is a grid without rows.
func NewGrid(open func(row int)) *Grid {
	g := &Grid{Open: open}
	g.ExtendBaseWidget(g)
	return g
}

// Sorted says which column the rows are sorted by, −1 for none, and in which direction.
type Sorted struct {
	Column int
	Down   bool
}

// Head puts up headings; sort is asked to sort by the column that is tapped.
func (g *Grid) Head(columns []GridColumn, by Sorted, sort func(column int)) {
	if len(columns) != len(g.columns) { // else those that may have the focus stay
		g.heads = nil
		for i := range columns {
			g.heads = append(g.heads, newGridHead(func() { sort(i) }))
		}
	}
	g.columns = columns
	for i, c := range columns {
		g.heads[i].set(c, by.Column == i, by.Down)
	}
}

// Set puts up rows.
func (g *Grid) Set(rows []GridRow) {
	g.rows = nil
	for _, r := range rows {
		g.rows = append(g.rows, newGridRow(r, g.columns))
	}
	g.At = max(0, min(g.At, len(g.rows)-1))
	g.Refresh()
}

// Turn chooses a row, as far as there is one.
func (g *Grid) Turn(row int) {
	row = max(0, min(row, len(g.rows)-1))
	if row == g.At {
		return
	}
	g.At = row
	g.Refresh()
	if g.Choose != nil {
		g.Choose(row)
	}
}

func gridHeadHeight() float32 { return 2*LineHeight(SizeSmall) + Scaled(10) }
func gridRowHeight() float32  { return LineHeight(SizeText) + LineHeight(SizeSmall) + Scaled(12) }

// gridGap is between columns, and at the ends of a row.
func gridGap() float32 { return Scaled(13) }

// Top is where a row begins.
func (g *Grid) Top(row int) float32 { return gridHeadHeight() + gridRowHeight()*float32(row) }

// RowHeight is how high each row is.
func (g *Grid) RowHeight() float32 { return gridRowHeight() }

func (g *Grid) HeightFor(float32) float32 { return g.Top(len(g.rows)) }

func (g *Grid) MinSize() fyne.Size {
	g.ExtendBaseWidget(g)
	w := gridGap()
	for _, c := range g.columns {
		w += c.Width + gridGap()
	}
	return fyne.NewSize(w, g.HeightFor(0))
}

func (g *Grid) FocusGained() { g.focused = true; g.Refresh() }
func (g *Grid) FocusLost()   { g.focused = false; g.Refresh() }
func (g *Grid) TypedRune(r rune) {
	if r == ' ' {
		g.open(g.At)
	}
}

func (g *Grid) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyDown:
		g.Turn(g.At + 1)
	case fyne.KeyUp:
		g.Turn(g.At - 1)
	case fyne.KeyHome:
		g.Turn(0)
	case fyne.KeyEnd:
		g.Turn(len(g.rows) - 1)
	case fyne.KeyReturn, fyne.KeyEnter:
		g.open(g.At)
	case fyne.KeyEscape:
		if g.Escape != nil {
			g.Escape()
		}
	}
}

func (g *Grid) open(row int) {
	if row >= 0 && row < len(g.rows) {
		g.Open(row)
	}
}

// MouseDown chooses at once: the toolkit waits with a tap for whether a second one comes.
func (g *Grid) MouseDown(e *desktop.MouseEvent) {
	if row, ok := g.rowAt(e.Position.Y); ok {
		g.Turn(row)
	}
	if c := fyne.CurrentApp().Driver().CanvasForObject(g); c != nil {
		c.Focus(g)
	}
}
func (g *Grid) MouseUp(*desktop.MouseEvent) {}

func (g *Grid) DoubleTapped(e *fyne.PointEvent) {
	if row, ok := g.rowAt(e.Position.Y); ok {
		g.open(row)
	}
}

func (g *Grid) rowAt(y float32) (row int, ok bool) {
	row = int((y - gridHeadHeight()) / gridRowHeight())
	return row, y >= gridHeadHeight() && row < len(g.rows)
}

func (g *Grid) CreateRenderer() fyne.WidgetRenderer { return &gridRenderer{g} }

type gridRenderer struct{ g *Grid }

func (r *gridRenderer) Layout(size fyne.Size) {
	g := r.g
	widths := g.widths(size.Width)
	x := gridGap()
	for i, h := range g.heads {
		Place(h, x, 0, widths[i], gridHeadHeight())
		x += widths[i] + gridGap()
	}
	for i, row := range g.rows {
		row.place(widths, g.Top(i), size.Width)
	}
}

// widths are those of the columns in a grid of a width.
func (g *Grid) widths(width float32) []float32 {
	spare := max(0, width-g.MinSize().Width)
	var shares float32
	for _, c := range g.columns {
		shares += c.Grow
	}
	var list []float32
	for _, c := range g.columns {
		w := c.Width
		if shares > 0 {
			w += spare * c.Grow / shares
		}
		list = append(list, w)
	}
	return list
}

func (r *gridRenderer) MinSize() fyne.Size { return r.g.MinSize() }
func (r *gridRenderer) Objects() []fyne.CanvasObject {
	o := Objects(r.g.heads...)
	for _, row := range r.g.rows {
		o = append(o, row.objects()...)
	}
	return o
}
func (r *gridRenderer) Destroy() {}
func (r *gridRenderer) Refresh() {
	for i, row := range r.g.rows {
		row.paint(i == r.g.At, r.g.focused)
	}
	r.Layout(r.g.Size())
	canvas.Refresh(r.g)
}
