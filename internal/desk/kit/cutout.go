package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// cutout veils everything but a ringed place.
type cutout struct {
	widget.BaseWidget
	hole Box
	veil [4]*canvas.Rectangle // above, left, right, below
	ring *canvas.Rectangle
}

func newCutout() *cutout {
	c := &cutout{ring: canvas.NewRectangle(theme.Color(Clear))}
	for i := range c.veil {
		c.veil[i] = canvas.NewRectangle(theme.Color(Veil))
	}
	c.ring.StrokeWidth, c.ring.CornerRadius = 2.5, 6
	c.ExtendBaseWidget(c)
	return c
}

// AccessibilityLabel of the ring and the veil is nothing: the card says what is ringed.
func (c *cutout) AccessibilityLabel() string             { return "" }
func (c *cutout) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }

func (c *cutout) CreateRenderer() fyne.WidgetRenderer { return &cutoutRenderer{c} }

type cutoutRenderer struct{ c *cutout }

func (r *cutoutRenderer) Layout(size fyne.Size) {
	v, h := r.c.veil, r.c.hole.Within(Box{Size: size})
	Place(v[0], 0, 0, size.Width, h.At.Y)
	Place(v[1], 0, h.At.Y, h.At.X, h.Size.Height)
	Place(v[2], h.right(), h.At.Y, max(0, size.Width-h.right()), h.Size.Height)
	Place(v[3], 0, h.bottom(), size.Width, max(0, size.Height-h.bottom()))
	Place(r.c.ring, h.At.X, h.At.Y, h.Size.Width, h.Size.Height)
	visible(r.c.ring, !h.IsEmpty())
}

func (r *cutoutRenderer) MinSize() fyne.Size { return fyne.Size{} }
func (r *cutoutRenderer) Objects() []fyne.CanvasObject {
	return append(Objects(r.c.veil[:]...), r.c.ring)
}
func (r *cutoutRenderer) Destroy() {}
func (r *cutoutRenderer) Refresh() {
	for _, v := range r.c.veil {
		v.FillColor = theme.Color(Veil)
	}
	r.c.ring.StrokeColor = theme.Color(Accent)
	r.Layout(r.c.Size())
	canvas.Refresh(r.c)
}

// panel is the ground of what lies over the window.
type panel struct {
	widget.BaseWidget
	box *canvas.Rectangle
}

func newPanel() *panel {
	p := &panel{box: canvas.NewRectangle(theme.Color(Field))}
	p.box.CornerRadius, p.box.StrokeWidth = 6, 1
	p.box.StrokeColor = theme.Color(Rule)
	p.ExtendBaseWidget(p)
	return p
}

// AccessibilityLabel of a ground is nothing: what lies on it speaks.
func (p *panel) AccessibilityLabel() string             { return "" }
func (p *panel) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }

func (p *panel) CreateRenderer() fyne.WidgetRenderer { return &panelRenderer{p} }

type panelRenderer struct{ p *panel }

func (r *panelRenderer) Layout(s fyne.Size)           { r.p.box.Resize(s) }
func (r *panelRenderer) MinSize() fyne.Size           { return fyne.NewSize(1, 1) }
func (r *panelRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.p.box} }
func (r *panelRenderer) Destroy()                     {}
func (r *panelRenderer) Refresh() {
	r.p.box.FillColor, r.p.box.StrokeColor = theme.Color(Field), theme.Color(Rule)
	r.p.box.Refresh()
}
