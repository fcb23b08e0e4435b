package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// gridRow is one row of a Grid as it is drawn.
type gridRow struct {
	ground *canvas.Rectangle
	rule   *canvas.Rectangle
	lines  []*Text             // of the cells
	unders []*Text             // under the lines
	overs  []fyne.CanvasObject // in the place of lines, nil for none
	note   *Text               // in the place of all but the first cell, nil for none
}

func newGridRow(row GridRow, columns []GridColumn) *gridRow {
	r := &gridRow{ground: canvas.NewRectangle(theme.Color(Clear)), rule: canvas.NewRectangle(theme.Color(Rule))}
	r.ground.CornerRadius = 4
	for i, c := range row.Cells {
		line := NewText(SizeText, Span{Text: c.Text, Bold: i == 0}).AtMost(1)
		under := Small(c.Under).AtMost(1)
		if columns[i].Trailing {
			line.Trailing()
			under.Trailing()
		}
		r.lines, r.unders, r.overs = append(r.lines, line), append(r.unders, under), append(r.overs, c.Over)
	}
	if row.Note != "" {
		r.note = NewText(SizeSmall+1, Span{Text: "✗ ", Bold: true, Color: Fault}, Span{Text: row.Note, Color: Muted}).AtMost(2)
		r.note.Centred = true
	}
	return r
}

// place lays the row out in columns of these widths.
func (r *gridRow) place(widths []float32, top, width float32) {
	Place(r.ground, 0, top+1, width, gridRowHeight()-3)
	Place(r.rule, 0, top+gridRowHeight()-1, width, 1)
	x, line, under := gridGap(), LineHeight(SizeText), LineHeight(SizeSmall)
	pad := (gridRowHeight() - line - under) / 2
	for i, w := range widths {
		if i == 1 && r.note != nil {
			Place(r.note, x, top, max(0, width-x-gridGap()), gridRowHeight()-1)
			return
		}
		at := top + pad
		if r.unders[i].String() == "" && r.overs[i] == nil {
			at = top + (gridRowHeight()-line)/2 // alone in the middle
		}
		Place(r.lines[i], x, at, w, line)
		Place(r.unders[i], x, top+pad+line, w, under)
		if r.overs[i] != nil {
			Place(r.overs[i], x, top+pad, w, line)
		}
		x += w + gridGap()
	}
}

func (r *gridRow) objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.ground, r.rule}
	o = append(append(o, Objects(r.lines...)...), Objects(r.unders...)...)
	for _, over := range r.overs {
		if over != nil {
			o = append(o, over)
		}
	}
	if r.note != nil {
		o = append(o, r.note)
	}
	return o
}

func (r *gridRow) paint(chosen, focused bool) {
	r.ground.FillColor, r.ground.StrokeWidth = theme.Color(Clear), 0
	if chosen {
		r.ground.FillColor = theme.Color(Chosen)
	}
	if chosen && focused {
		r.ground.StrokeWidth, r.ground.StrokeColor = 2, theme.Color(Accent)
	}
	r.rule.FillColor = theme.Color(Rule)
	for _, o := range r.objects() {
		o.Refresh()
	}
}

// gridHead is the heading of a column, by which the rows are sorted when it is tapped.
type gridHead struct {
	widget.BaseWidget
	name             *Text
	column           GridColumn
	sorted, down     bool
	sort             func()
	focused, hovered bool
	ring             *canvas.Rectangle
}

func newGridHead(sort func()) *gridHead {
	h := &gridHead{name: NewText(SizeSmall).AtMost(2), sort: sort, ring: canvas.NewRectangle(theme.Color(Clear))}
	h.ring.CornerRadius = 4
	h.ExtendBaseWidget(h)
	return h
}

func (h *gridHead) set(c GridColumn, sorted, down bool) {
	h.column, h.sorted, h.down = c, sorted, down
	if c.Trailing {
		h.name.Trailing()
	}
	h.Refresh()
}

// sign shows in which direction the rows are sorted.
func (h *gridHead) sign() string {
	switch {
	case !h.sorted:
		return ""
	case h.down:
		return noBreak + "▼"
	}
	return noBreak + "▲"
}

func (h *gridHead) Tapped(*fyne.PointEvent)        { h.sort() }
func (h *gridHead) Cursor() desktop.Cursor         { return desktop.PointerCursor }
func (h *gridHead) MouseIn(*desktop.MouseEvent)    { h.hovered = true; h.Refresh() }
func (h *gridHead) MouseMoved(*desktop.MouseEvent) {}
func (h *gridHead) MouseOut()                      { h.hovered = false; h.Refresh() }
func (h *gridHead) FocusGained()                   { h.focused = true; h.Refresh() }
func (h *gridHead) FocusLost()                     { h.focused = false; h.Refresh() }
func (h *gridHead) TypedRune(r rune) {
	if r == ' ' {
		h.sort()
	}
}

func (h *gridHead) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyReturn || e.Name == fyne.KeyEnter {
		h.sort()
	}
}

func (h *gridHead) MinSize() fyne.Size {
	h.ExtendBaseWidget(h)
	return fyne.NewSize(0, gridHeadHeight())
}

func (h *gridHead) CreateRenderer() fyne.WidgetRenderer { return &gridHeadRenderer{h} }

type gridHeadRenderer struct{ h *gridHead }

func (r *gridHeadRenderer) Layout(size fyne.Size) {
	high := r.h.name.HeightFor(size.Width)
	Place(r.h.name, 0, size.Height-high-Scaled(5), size.Width, high)
	Place(r.h.ring, -4, 2, size.Width+8, size.Height-4)
}
func (r *gridHeadRenderer) MinSize() fyne.Size { return r.h.MinSize() }
func (r *gridHeadRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.h.ring, r.h.name}
}
func (r *gridHeadRenderer) Destroy() {}
func (r *gridHeadRenderer) Refresh() {
	h := r.h
	color := fyne.ThemeColorName(Muted)
	if h.sorted || h.hovered || h.focused {
		color = Ink
	}
	h.name.Set(Span{Text: h.column.Name + h.sign(), Color: color, Bold: h.sorted})
	h.ring.StrokeWidth, h.ring.StrokeColor = 0, theme.Color(Accent)
	if h.focused {
		h.ring.StrokeWidth = 2
	}
	h.name.Refresh()
	r.Layout(h.Size())
	canvas.Refresh(h)
}
