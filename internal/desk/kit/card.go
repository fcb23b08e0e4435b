package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Card is one line of the left column that can be chosen: a way to buy with its cost,
// or a topic. Enter or Space chooses it, up and down go to its neighbours.
type Card struct {
	widget.BaseWidget
	Name, Total, Under *Text
	Bar                *Bar // nil on a topic
	Bare               bool // one text and no line under it
	Chosen             bool
	Focused, hovered   bool
	Choose             func()
	Step               func(step int)
	Rename             func() // F2, or the name tapped of the card that is chosen; nil for a name that stays
	naming             *TextBox
	wrong              *Text // with the name that is being typed
	ground             *canvas.Rectangle
}

// NewCard is an empty card: choose does what it is for, move goes to a neighbour.
func NewCard(choose func(), move func(step int)) *Card {
	c := &Card{Choose: choose, Step: move, ground: canvas.NewRectangle(theme.Color(Clear))}
	c.Name = NewText(SizeText).AtMost(2)
	c.Total = NewText(SizeTotal).AtMost(1)
	c.Under = Small("").AtMost(1)
	c.wrong = NewText(SizeSmall).AtMost(1)
	c.ground.CornerRadius = 5
	c.ExtendBaseWidget(c)
	return c
}

func (c *Card) Tapped(e *fyne.PointEvent) {
	if onName := e != nil && e.Position.Y < c.Name.Position().Y+c.Name.Size().Height; onName && c.Chosen && c.Focused && c.Rename != nil {
		c.Rename()
		return
	}
	if cv := fyne.CurrentApp().Driver().CanvasForObject(c); cv != nil {
		cv.Focus(c)
	}
	c.Choose()
}

func (c *Card) Cursor() desktop.Cursor         { return desktop.PointerCursor }
func (c *Card) MouseIn(*desktop.MouseEvent)    { c.hovered = true; c.Refresh() }
func (c *Card) MouseMoved(*desktop.MouseEvent) {}
func (c *Card) MouseOut()                      { c.hovered = false; c.Refresh() }
func (c *Card) FocusGained()                   { c.Focused = true; c.Refresh() }
func (c *Card) FocusLost()                     { c.Focused = false; c.Refresh() }

func (c *Card) TypedRune(r rune) {
	if r == ' ' {
		c.Choose()
	}
}

func (c *Card) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyF10:
		handOn(c, e)
	case fyne.KeyReturn, fyne.KeyEnter:
		c.Choose()
	case fyne.KeyDown:
		c.Step(1)
	case fyne.KeyUp:
		c.Step(-1)
	case fyne.KeyF2:
		if c.Rename != nil {
			c.Rename()
		}
	}
}

// TypeName lets a card be named in the place of its name: take answers why a name cannot be taken, ""
// when it was.
func (c *Card) TypeName(take func(name string) (wrong string)) {
	canvas := fyne.CurrentApp().Driver().CanvasForObject(c)
	if canvas == nil || c.naming != nil {
		return
	}
	c.naming = NewNaming(c.Name.String(), take, c.complain, func(inside bool) {
		c.naming = nil
		c.complain("")
		if inside {
			canvas.Focus(c)
		}
	})
	c.naming.Entry.Called = c.Name.String
	c.Refresh()
	canvas.Focus(c.naming.Entry)
}

// complain says what is wrong with the name that is being typed.
func (c *Card) complain(wrong string) {
	c.wrong.Set()
	if wrong != "" {
		c.wrong.Set(Span{Text: "✗ ", Color: Fault, Bold: true}, Span{Text: wrong, Color: Fault})
	}
	c.Refresh()
}

func (c *Card) totalWidth() float32 {
	if len(c.Total.spans) == 0 {
		return 0
	}
	return c.Total.NaturalWidth() + 1
}

func (c *Card) nameWidth(width float32) float32 {
	w := width - 2*CardEdge
	if t := c.totalWidth(); t > 0 {
		w -= t + 6
	}
	return w
}

func (c *Card) HeightFor(width float32) float32 {
	h := 2*cardPad + c.Name.HeightFor(c.nameWidth(width))
	if c.Bare {
		return h - cardPad
	}
	h += c.Under.LineHeight()
	if c.Bar != nil {
		h += 14
	}
	return h
}

func (c *Card) MinSize() fyne.Size {
	c.ExtendBaseWidget(c)
	return fyne.NewSize(0, c.HeightFor(max(c.Size().Width, 100)))
}

func (c *Card) CreateRenderer() fyne.WidgetRenderer { return &cardRenderer{c} }

type cardRenderer struct{ c *Card }

func (r *cardRenderer) Layout(size fyne.Size) {
	c := r.c
	c.ground.Resize(size)
	y := cardPad
	if c.Bare {
		y /= 2
	}
	w := c.nameWidth(size.Width)
	h := c.Name.HeightFor(w)
	Place(c.Name, CardEdge, y, w, h)
	if t := c.totalWidth(); t > 0 {
		Place(c.Total, size.Width-CardEdge-t, y, t, c.Total.LineHeight())
	}
	y += h
	if c.Bar != nil {
		Place(c.Bar, CardEdge, y+5, size.Width-2*CardEdge, 4)
		y += 14
	}
	Place(c.Under, CardEdge, y, size.Width-2*CardEdge, c.Under.LineHeight())
	if c.naming != nil { // in the place of the name and the bar, so that nothing moves
		Place(c.naming, 2, cardPad-4, size.Width-4, FieldHeight)
		Place(c.wrong, CardEdge, y, size.Width-2*CardEdge, c.Under.LineHeight())
	}
}

func (r *cardRenderer) MinSize() fyne.Size { return r.c.MinSize() }

func (r *cardRenderer) Objects() []fyne.CanvasObject {
	if c := r.c; c.naming != nil {
		if c.wrong.String() != "" {
			return []fyne.CanvasObject{c.ground, c.naming, c.wrong}
		}
		return []fyne.CanvasObject{c.ground, c.naming, c.Under}
	}
	o := []fyne.CanvasObject{r.c.ground, r.c.Name, r.c.Total, r.c.Under}
	if r.c.Bar != nil {
		o = append(o, r.c.Bar)
	}
	return o
}

func (r *cardRenderer) Destroy() {}

func (r *cardRenderer) Refresh() {
	c := r.c
	c.ground.FillColor = theme.Color(Clear)
	c.ground.StrokeWidth = 0
	if c.Chosen || c.hovered {
		c.ground.FillColor = theme.Color(Chosen)
	}
	if c.Focused {
		c.ground.StrokeWidth, c.ground.StrokeColor = 2, theme.Color(Accent)
	}
	for _, o := range r.Objects()[1:] {
		o.Refresh()
	}
	r.Layout(c.Size())
	canvas.Refresh(c)
}
