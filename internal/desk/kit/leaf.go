package kit

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Leaf is a printed page on the screen, as white as paper in every theme.
type Leaf struct {
	widget.BaseWidget
	Caption string                  // what is printed on it, for those who cannot see it
	Name    *Text                   // under it
	Choose  func()                  // what Enter, Space and a click do, nil for nothing
	Key     func(fyne.KeyName) bool // what other keys do; false for nothing
	Resized func()                  // nil, or the picture must be made again
	chosen  bool
	focused bool
	sides   float32 // height to width
	picture *canvas.Image
	ground  *canvas.Rectangle
	ring    *canvas.Rectangle
}

// NewLeaf is a page without a picture yet; sides is its height to its width.
func NewLeaf(sides float32) *Leaf {
	l := &Leaf{sides: sides, Name: NewText(SizeSmall).AtMost(1)}
	l.picture = &canvas.Image{FillMode: canvas.ImageFillStretch, ScaleMode: canvas.ImageScaleFastest}
	l.ground, l.ring = canvas.NewRectangle(theme.Color(Rule)), canvas.NewRectangle(theme.Color(Clear))
	l.ExtendBaseWidget(l)
	return l
}

// Put puts up the picture of a page whose height to width is sides.
func (l *Leaf) Put(picture image.Image, sides float32) {
	l.picture.Image = picture
	l.picture.Refresh() // of a widget that is refreshed the screen keeps the picture it has
	l.sides = sides
	l.Refresh()
}

// Image is the picture that is up, nil for none.
func (l *Leaf) Image() image.Image { return l.picture.Image }

// Mark says whether the page is the one chosen.
func (l *Leaf) Mark(chosen bool) {
	l.chosen = chosen
	l.Refresh()
}

func (l *Leaf) Tapped(*fyne.PointEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(l); c != nil {
		c.Focus(l)
	}
	if l.Choose != nil {
		l.Choose()
	}
}

func (l *Leaf) Cursor() desktop.Cursor {
	if l.Choose == nil {
		return desktop.DefaultCursor
	}
	return desktop.PointerCursor
}

func (l *Leaf) FocusGained() { l.focused = true; l.Refresh() }
func (l *Leaf) FocusLost()   { l.focused = false; l.Refresh() }

func (l *Leaf) TypedRune(r rune) {
	if r == ' ' && l.Choose != nil {
		l.Choose()
	}
}

func (l *Leaf) TypedKey(e *fyne.KeyEvent) {
	switch {
	case l.Choose != nil && (e.Name == fyne.KeyReturn || e.Name == fyne.KeyEnter):
		l.Choose()
	case l.Key == nil || !l.Key(e.Name):
		handOn(l, e)
	}
}

// leafEdge is the room around the paper, for the ring of the one with the focus; LeafEdges
// are those of both sides.
const (
	leafEdge  = 7
	LeafEdges = 2 * leafEdge
)

func (l *Leaf) HeightFor(width float32) float32 {
	h := 2*leafEdge + (width-2*leafEdge)*l.sides
	if l.Name.String() != "" {
		h += l.Name.LineHeight() + leafEdge
	}
	return h
}

func (l *Leaf) Resize(s fyne.Size) {
	if l.Size() == s {
		return
	}
	l.BaseWidget.Resize(s)
	if l.Resized != nil {
		l.Resized()
	}
}

// PaperWidth is how wide the paper is.
func (l *Leaf) PaperWidth() float32 { return max(0, l.Size().Width-LeafEdges) }

func (l *Leaf) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(0, l.HeightFor(max(l.Size().Width, 2*leafEdge)))
}

// AccessibilityLabel of a page is its name and what is printed on it.
func (l *Leaf) AccessibilityLabel() string {
	return phrase(l.Name.String(), chosenIf(l.chosen), l.Caption)
}

func (l *Leaf) AccessibilityRole() fyne.AccessibleRole {
	if l.Choose != nil {
		return button
	}
	return spoken
}

func (l *Leaf) CreateRenderer() fyne.WidgetRenderer { return &leafRenderer{l} }

type leafRenderer struct{ l *Leaf }

func (r *leafRenderer) Layout(size fyne.Size) {
	l, w := r.l, max(0, size.Width-2*leafEdge)
	h := w * l.sides
	Place(l.ring, 2, 2, size.Width-4, h+2*leafEdge-4)
	line := float32(1) // a hairline around it, or what stands out
	if l.chosen {
		line = 3
	}
	Place(l.ground, leafEdge-line, leafEdge-line, w+2*line, h+2*line)
	Place(l.picture, leafEdge, leafEdge, w, h)
	Place(l.Name, leafEdge, 2*leafEdge+h, w, l.Name.LineHeight())
}

func (r *leafRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *leafRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.l.ring, r.l.ground, r.l.picture, r.l.Name}
}
func (r *leafRenderer) Destroy() {}
func (r *leafRenderer) Refresh() {
	l := r.l
	l.ground.FillColor = theme.Color(Rule)
	if l.chosen {
		l.ground.FillColor = theme.Color(Accent)
	}
	l.ring.FillColor, l.ring.CornerRadius, l.ring.StrokeWidth = theme.Color(Clear), 4, 0
	if l.focused {
		l.ring.StrokeColor, l.ring.StrokeWidth = theme.Color(Accent), 2
	}
	r.Layout(l.Size())
	canvas.Refresh(l)
}
