package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Bar is a share of the greatest cost, as a line.
type Bar struct {
	widget.BaseWidget
	share float32 // 0 to 1
	whole *canvas.Rectangle
	part  *canvas.Rectangle
}

// NewBar is a line of no length yet.
func NewBar() *Bar {
	b := &Bar{whole: canvas.NewRectangle(theme.Color(Rule)), part: canvas.NewRectangle(theme.Color(Accent))}
	b.whole.CornerRadius, b.part.CornerRadius = 2, 2
	b.ExtendBaseWidget(b)
	return b
}

func (b *Bar) Set(share float32) {
	b.share = share
	b.Refresh()
}

func (b *Bar) CreateRenderer() fyne.WidgetRenderer { return &barRenderer{b} }

type barRenderer struct{ b *Bar }

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
	r.b.whole.FillColor, r.b.part.FillColor = theme.Color(Rule), theme.Color(Accent)
	r.b.whole.Refresh()
	r.b.part.Refresh()
	r.Layout(r.b.Size())
}
