package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Part is a share of a bar's length in a colour.
type Part struct {
	Share float32 // 0 to 1
	Color fyne.ThemeColorName
}

// Bar is a line of parts, drawn to scale from the left; what they leave is quiet.
type Bar struct {
	widget.BaseWidget
	parts []Part
	whole *canvas.Rectangle
	drawn []*canvas.Rectangle
}

// NewBar is a line of no length yet.
func NewBar() *Bar {
	b := &Bar{whole: canvas.NewRectangle(theme.Color(Rule))}
	b.whole.CornerRadius = 2
	b.ExtendBaseWidget(b)
	return b
}

// Set shows one share in the accent colour.
func (b *Bar) Set(share float32) { b.SetParts(Part{share, Accent}) }

// SetParts shows parts, one behind another.
func (b *Bar) SetParts(parts ...Part) {
	b.parts = parts
	b.Refresh()
}

func (b *Bar) CreateRenderer() fyne.WidgetRenderer {
	r := &barRenderer{b}
	r.Refresh()
	return r
}

type barRenderer struct{ b *Bar }

func (r *barRenderer) Layout(size fyne.Size) {
	r.b.whole.Resize(size)
	x := float32(0)
	for i, part := range r.b.parts {
		if i < len(r.b.drawn) {
			w := size.Width * part.Share
			Place(r.b.drawn[i], x, 0, w, size.Height)
			x += w
		}
	}
}
func (r *barRenderer) MinSize() fyne.Size { return fyne.NewSize(10, 4) }
func (r *barRenderer) Objects() []fyne.CanvasObject {
	return append([]fyne.CanvasObject{r.b.whole}, Objects(r.b.drawn[:len(r.b.parts)]...)...)
}
func (r *barRenderer) Destroy() {}
func (r *barRenderer) Refresh() {
	b := r.b
	for len(b.drawn) < len(b.parts) {
		part := canvas.NewRectangle(theme.Color(Accent))
		part.CornerRadius = 2
		b.drawn = append(b.drawn, part)
	}
	b.whole.FillColor = theme.Color(Rule)
	b.whole.Refresh()
	for i, part := range b.parts {
		b.drawn[i].FillColor = theme.Color(part.Color)
		b.drawn[i].Refresh()
	}
	r.Layout(b.Size())
}
