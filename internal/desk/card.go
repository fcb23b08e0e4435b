package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// card is one line of the left column that can be chosen: a way to buy with its cost,
// or a topic. Enter or Space chooses it, up and down go to its neighbours.
type card struct {
	widget.BaseWidget
	name, total, under *prose
	bar                *bar // nil on a topic
	bare               bool // one text and no line under it
	chosen             bool
	focused, hovered   bool
	choose             func()
	move               func(step int)
	ground             *canvas.Rectangle
}

func newCard(choose func(), move func(step int)) *card {
	c := &card{choose: choose, move: move, ground: canvas.NewRectangle(theme.Color(colNothing))}
	c.name = newProse(sizeText).atMost(2)
	c.total = newProse(sizeTotal).atMost(1)
	c.under = small("").atMost(1)
	c.ground.CornerRadius = 5
	c.ExtendBaseWidget(c)
	return c
}

func (c *card) Tapped(*fyne.PointEvent) {
	if cv := fyne.CurrentApp().Driver().CanvasForObject(c); cv != nil {
		cv.Focus(c)
	}
	c.choose()
}

func (c *card) Cursor() desktop.Cursor         { return desktop.PointerCursor }
func (c *card) MouseIn(*desktop.MouseEvent)    { c.hovered = true; c.Refresh() }
func (c *card) MouseMoved(*desktop.MouseEvent) {}
func (c *card) MouseOut()                      { c.hovered = false; c.Refresh() }
func (c *card) FocusGained()                   { c.focused = true; c.Refresh() }
func (c *card) FocusLost()                     { c.focused = false; c.Refresh() }

func (c *card) TypedRune(r rune) {
	if r == ' ' {
		c.choose()
	}
}

func (c *card) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		c.choose()
	case fyne.KeyDown:
		c.move(1)
	case fyne.KeyUp:
		c.move(-1)
	}
}

func (c *card) totalWidth() float32 {
	if len(c.total.spans) == 0 {
		return 0
	}
	return c.total.naturalWidth() + 1
}

func (c *card) nameWidth(width float32) float32 {
	w := width - 2*cardEdge
	if t := c.totalWidth(); t > 0 {
		w -= t + 6
	}
	return w
}

func (c *card) heightFor(width float32) float32 {
	h := 2*cardPad + c.name.heightFor(c.nameWidth(width))
	if c.bare {
		return h - cardPad
	}
	h += c.under.lineHeight()
	if c.bar != nil {
		h += 14
	}
	return h
}

func (c *card) MinSize() fyne.Size {
	c.ExtendBaseWidget(c)
	return fyne.NewSize(0, c.heightFor(max(c.Size().Width, 100)))
}

func (c *card) CreateRenderer() fyne.WidgetRenderer { return &cardRenderer{c} }

type cardRenderer struct{ c *card }

func (r *cardRenderer) Layout(size fyne.Size) {
	c := r.c
	c.ground.Resize(size)
	y := cardPad
	if c.bare {
		y /= 2
	}
	w := c.nameWidth(size.Width)
	h := c.name.heightFor(w)
	place(c.name, cardEdge, y, w, h)
	if t := c.totalWidth(); t > 0 {
		place(c.total, size.Width-cardEdge-t, y, t, c.total.lineHeight())
	}
	y += h
	if c.bar != nil {
		place(c.bar, cardEdge, y+5, size.Width-2*cardEdge, 4)
		y += 14
	}
	place(c.under, cardEdge, y, size.Width-2*cardEdge, c.under.lineHeight())
}

func place(o fyne.CanvasObject, x, y, w, h float32) {
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(w, h))
}

func (r *cardRenderer) MinSize() fyne.Size { return r.c.MinSize() }

func (r *cardRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.c.ground, r.c.name, r.c.total, r.c.under}
	if r.c.bar != nil {
		o = append(o, r.c.bar)
	}
	return o
}

func (r *cardRenderer) Destroy() {}

func (r *cardRenderer) Refresh() {
	c := r.c
	c.ground.FillColor = theme.Color(colNothing)
	c.ground.StrokeWidth = 0
	if c.chosen || c.hovered {
		c.ground.FillColor = theme.Color(colChosen)
	}
	if c.focused {
		c.ground.StrokeWidth, c.ground.StrokeColor = 2, theme.Color(colAccent)
	}
	for _, o := range r.Objects()[1:] {
		o.Refresh()
	}
	r.Layout(c.Size())
	canvas.Refresh(c)
}

// bar is a share of the greatest cost, as a line.
type bar struct {
	widget.BaseWidget
	share float32 // 0 to 1
	whole *canvas.Rectangle
	part  *canvas.Rectangle
}

func newBar() *bar {
	b := &bar{whole: canvas.NewRectangle(theme.Color(colRule)), part: canvas.NewRectangle(theme.Color(colAccent))}
	b.whole.CornerRadius, b.part.CornerRadius = 2, 2
	b.ExtendBaseWidget(b)
	return b
}

func (b *bar) set(share float32) {
	b.share = share
	b.Refresh()
}

func (b *bar) CreateRenderer() fyne.WidgetRenderer { return &barRenderer{b} }

type barRenderer struct{ b *bar }

func (r *barRenderer) Layout(size fyne.Size) {
	r.b.whole.Resize(size)
	r.b.part.Resize(fyne.NewSize(size.Width*r.b.share, size.Height))
}
func (r *barRenderer) MinSize() fyne.Size { return fyne.NewSize(10, 4) }
func (r *barRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.b.whole, r.b.part}
}
func (r *barRenderer) Destroy() {}
func (r *barRenderer) Refresh() {
	r.b.whole.FillColor, r.b.part.FillColor = theme.Color(colRule), theme.Color(colAccent)
	r.b.whole.Refresh()
	r.b.part.Refresh()
	r.Layout(r.b.Size())
}
