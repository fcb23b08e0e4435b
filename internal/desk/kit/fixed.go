package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// fixed gives an object a height.
type fixed struct{ height float32 }

// FixedHeight gives an object a height.
func FixedHeight(o fyne.CanvasObject, h float32) *fyne.Container {
	return container.New(fixed{h}, o)
}

// SetHeight gives what FixedHeight made another height.
func SetHeight(c *fyne.Container, h float32) { c.Layout = fixed{h} }

func (f fixed) Layout(o []fyne.CanvasObject, size fyne.Size) { Place(o[0], 0, 0, size.Width, f.height) }
func (f fixed) MinSize([]fyne.CanvasObject) fyne.Size        { return fyne.NewSize(0, f.height) }

// exactWidth gives its object a width and the height it needs then.
type exactWidth struct{ width float32 }

func (e *exactWidth) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(size)
}

func (e *exactWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(e.width, HeightOf(o[0], e.width))
}

// AtWidth gives an object a width and the height it needs then.
func AtWidth(width float32, o fyne.CanvasObject) *fyne.Container {
	return container.New(&exactWidth{width}, o)
}
