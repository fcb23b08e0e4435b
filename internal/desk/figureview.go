package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/figure"
)

// figureView shows a picture and, under the pointer, what it says there.
type figureView struct {
	widget.BaseWidget
	image   *canvas.Image
	drawing *figure.Drawing
	text    float32 // the window's units in one of the drawing's
	resized func()  // more or less room: the picture must be drawn again
	chosen  func(offer string)
	picked  func(units int) // an order of so many units was pointed at; nil where there are none
	note    *readout
	over    string // the offer under the pointer
}

func newFigureView(resized func(), chosen func(string)) *figureView {
	v := &figureView{resized: resized, chosen: chosen, note: newReadout()}
	v.image = &canvas.Image{FillMode: canvas.ImageFillStretch, ScaleMode: canvas.ImageScaleFastest}
	v.note.Hide()
	v.ExtendBaseWidget(v)
	return v
}

// show puts a picture up.
func (v *figureView) show(p picture) {
	if p.drawing == nil {
		return
	}
	v.drawing, v.text = p.drawing, p.text
	v.image.Image = p.image
	v.image.Refresh()
}

// showOrHide puts a picture up, or hides the view where there is none.
func (v *figureView) showOrHide(p picture) {
	v.show(p)
	if p.drawing == nil {
		v.image.Hide()
		v.drawing = nil
	} else {
		v.image.Show()
	}
}

func (v *figureView) room(scale float32) canvasSize {
	if !v.Visible() {
		return canvasSize{}
	}
	s := v.Size()
	return canvasSize{s.Width, s.Height, scale, textFactor}
}

func (v *figureView) Resize(s fyne.Size) {
	if v.Size() == s {
		return
	}
	v.BaseWidget.Resize(s)
	v.resized()
}

func (v *figureView) MinSize() fyne.Size {
	v.ExtendBaseWidget(v)
	return fyne.NewSize(200, 80)
}

func (v *figureView) MouseIn(e *desktop.MouseEvent) { v.MouseMoved(e) }
func (v *figureView) MouseOut()                     { v.over = ""; v.note.Hide() }
func (v *figureView) MouseMoved(e *desktop.MouseEvent) {
	if v.drawing == nil {
		return
	}
	hit, ok := v.at(e.Position)
	v.over = hit.Offer
	if !ok {
		v.note.Hide()
		return
	}
	v.note.say(hit.Text, e.Position, v.Size())
}

// at is what the drawing says at a place of the view.
func (v *figureView) at(p fyne.Position) (figure.Hit, bool) {
	return v.drawing.At(float64(p.X/v.text), float64(p.Y/v.text))
}

// Tapped chooses the offer under the pointer.
func (v *figureView) Tapped(e *fyne.PointEvent) {
	if v.drawing == nil {
		return
	}
	hit, ok := v.at(e.Position)
	switch {
	case ok && v.picked != nil && hit.Units > 0:
		v.picked(hit.Units)
	case ok && hit.Offer != "":
		v.chosen(hit.Offer)
	}
}

func (v *figureView) Cursor() desktop.Cursor {
	if v.over != "" {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

func (v *figureView) CreateRenderer() fyne.WidgetRenderer {
	return &figureRenderer{v}
}

type figureRenderer struct{ v *figureView }

func (r *figureRenderer) Layout(size fyne.Size) { r.v.image.Resize(size) }
func (r *figureRenderer) MinSize() fyne.Size    { return r.v.MinSize() }
func (r *figureRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.v.image, r.v.note}
}
func (r *figureRenderer) Destroy() {}
func (r *figureRenderer) Refresh() { r.v.image.Refresh(); r.v.note.Refresh() }

// readout is the little note beside the pointer.
type readout struct {
	widget.BaseWidget
	box  *canvas.Rectangle
	text *prose
}

func newReadout() *readout {
	n := &readout{box: canvas.NewRectangle(theme.Color(colField)), text: newProse(sizeSmall).atMost(4)}
	n.box.CornerRadius, n.box.StrokeWidth = 4, 1
	n.ExtendBaseWidget(n)
	return n
}

// say shows text beside a point, inside the room there is.
func (n *readout) say(text string, at fyne.Position, room fyne.Size) {
	n.text.set(span{text: text})
	const pad, widest = 8, 260
	w := min(n.text.naturalWidth()+1, widest, room.Width-2*pad)
	size := fyne.NewSize(w+2*pad, n.text.heightFor(w)+pad)
	x := at.X + 14
	if x+size.Width > room.Width {
		x = at.X - 14 - size.Width
	}
	y := at.Y + 16
	if y+size.Height > room.Height {
		y = at.Y - 8 - size.Height
	}
	n.Move(fyne.NewPos(max(0, x), max(0, y)))
	n.Resize(size)
	n.Show()
}

func (n *readout) CreateRenderer() fyne.WidgetRenderer { return &readoutRenderer{n} }

type readoutRenderer struct{ n *readout }

func (r *readoutRenderer) Layout(size fyne.Size) {
	r.n.box.Resize(size)
	r.n.text.Move(fyne.NewPos(8, 4))
	r.n.text.Resize(fyne.NewSize(size.Width-16, size.Height-8))
}
func (r *readoutRenderer) MinSize() fyne.Size { return fyne.NewSize(10, 10) }
func (r *readoutRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.n.box, r.n.text}
}
func (r *readoutRenderer) Destroy() {}
func (r *readoutRenderer) Refresh() {
	r.n.box.FillColor = theme.Color(colField)
	r.n.box.StrokeColor = theme.Color(colRule)
	r.n.box.Refresh()
	r.n.text.Refresh()
}
