package kit

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Reading is what a picture says at a place.
type Reading struct {
	Text  string
	Press func() // what a click there does, nil for nothing
}

// ImageView shows a picture as large as itself and, under the pointer, what it says there.
type ImageView struct {
	widget.BaseWidget
	Image   *canvas.Image
	Caption string                                 // what the picture is of, for those who cannot see it
	read    func(at fyne.Position) (Reading, bool) // nil while there is nothing to read
	resized func()                                 // more or less room: the picture must be made again
	Note    *Readout
	over    bool // something to press is under the pointer
}

// NewImageView is a view without a picture yet; resized is called when its room changes.
func NewImageView(resized func()) *ImageView {
	v := &ImageView{resized: resized, Note: newReadout()}
	v.Image = &canvas.Image{FillMode: canvas.ImageFillStretch, ScaleMode: canvas.ImageScaleFastest}
	v.Note.Hide()
	v.ExtendBaseWidget(v)
	return v
}

// Put puts a picture up, and says how it is read.
func (v *ImageView) Put(picture image.Image, read func(at fyne.Position) (Reading, bool)) {
	v.read = read
	v.Image.Image = picture
	v.Image.Refresh()
	v.Image.Show()
}

// Clear takes the picture down; its room stays.
func (v *ImageView) Clear() {
	v.read = nil
	v.Image.Hide()
	v.Note.Hide()
}

func (v *ImageView) Resize(s fyne.Size) {
	if v.Size() == s {
		return
	}
	v.BaseWidget.Resize(s)
	v.resized()
}

func (v *ImageView) MinSize() fyne.Size {
	v.ExtendBaseWidget(v)
	return fyne.NewSize(200, 80)
}

func (v *ImageView) MouseIn(e *desktop.MouseEvent) { v.MouseMoved(e) }
func (v *ImageView) MouseOut()                     { v.over = false; v.Note.Hide() }
func (v *ImageView) MouseMoved(e *desktop.MouseEvent) {
	if v.read == nil {
		return
	}
	r, ok := v.read(e.Position)
	v.over = ok && r.Press != nil
	if !ok {
		v.Note.Hide()
		return
	}
	v.Note.say(r.Text, e.Position, v.Size())
}

// Tapped does what a click there does.
func (v *ImageView) Tapped(e *fyne.PointEvent) {
	if v.read == nil {
		return
	}
	if r, ok := v.read(e.Position); ok && r.Press != nil {
		r.Press()
	}
}

func (v *ImageView) Cursor() desktop.Cursor {
	if v.over {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

func (v *ImageView) CreateRenderer() fyne.WidgetRenderer {
	return &imageRenderer{v}
}

type imageRenderer struct{ v *ImageView }

func (r *imageRenderer) Layout(size fyne.Size) { r.v.Image.Resize(size) }
func (r *imageRenderer) MinSize() fyne.Size    { return r.v.MinSize() }
func (r *imageRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.v.Image, r.v.Note}
}
func (r *imageRenderer) Destroy() {}
func (r *imageRenderer) Refresh() { r.v.Image.Refresh(); r.v.Note.Refresh() }
