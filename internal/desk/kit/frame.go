package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
)

// frame is the box of a field: its ground, its edge, and whether it has the focus or
// a fault.
type frame struct{ box *canvas.Rectangle }

func newFrame() *frame {
	f := &frame{box: canvas.NewRectangle(color.Transparent)}
	f.box.CornerRadius = 4
	f.paint(false, false)
	return f
}

func (f *frame) objects() []fyne.CanvasObject { return []fyne.CanvasObject{f.box} }

func (f *frame) layout(size fyne.Size) { f.box.Resize(size) }

func (f *frame) paint(focused, faulty bool) {
	f.box.FillColor = theme.Color(Field)
	f.box.StrokeColor, f.box.StrokeWidth = theme.Color(Rule), 1
	if faulty {
		f.box.StrokeColor, f.box.StrokeWidth = theme.Color(Fault), 1.5
	}
	if focused {
		f.box.StrokeWidth = 2
		if !faulty {
			f.box.StrokeColor = theme.Color(Accent)
		}
	}
	f.box.Refresh()
}
