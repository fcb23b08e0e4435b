package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
)

// tall is what knows its height for a width.
type tall interface{ HeightFor(width float32) float32 }

// TallLayout is a layout that knows its height for a width.
type TallLayout interface {
	HeightFor(objects []fyne.CanvasObject, width float32) float32
}

// stack lays objects one under another, each as wide as the stack, inside margins.
type stack struct {
	gap                      float32
	left, top, right, bottom float32
	width                    float32 // the last one laid out
}

// NewStack is objects under one another; width is what to reckon with before the first layout.
func NewStack(width, gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(&stack{gap: gap, width: width}, objects...)
}

// Inset gives a stack margins.
func Inset(c *fyne.Container, left, top, right, bottom float32) *fyne.Container {
	s := c.Layout.(*stack)
	s.left, s.top, s.right, s.bottom = left, top, right, bottom
	return c
}

func (s *stack) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	if size.Width > 0 { // the toolkit lays out what is added before it has a size, too
		s.width = size.Width
	}
	inner := size.Width - s.left - s.right
	y := s.top
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		h := HeightOf(o, inner)
		o.Move(fyne.NewPos(s.left, y))
		o.Resize(fyne.NewSize(inner, h))
		y += h + s.gap
	}
}

func (s *stack) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(s.LeastWidth(objects), s.HeightFor(objects, s.width))
}

// LeastWidth is what the objects need that know how wide they must be.
func (s *stack) LeastWidth(objects []fyne.CanvasObject) float32 {
	var least float32
	for _, o := range objects {
		if w, ok := o.(interface{ leastWidth() float32 }); ok {
			least = max(least, w.leastWidth()+s.left+s.right)
		}
	}
	return least
}

// HeightFor is how high the objects are when the stack is that wide.
func (s *stack) HeightFor(objects []fyne.CanvasObject, width float32) float32 {
	inner := width - s.left - s.right
	h := s.top + s.bottom
	first := true
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		if !first {
			h += s.gap
		}
		first = false
		h += HeightOf(o, inner)
	}
	return h
}

// HeightOf is how high o is when it is that wide.
func HeightOf(o fyne.CanvasObject, width float32) float32 {
	if t, ok := o.(tall); ok {
		return t.HeightFor(width)
	}
	if c, ok := o.(*fyne.Container); ok {
		if l, ok := c.Layout.(TallLayout); ok {
			return l.HeightFor(c.Objects, width)
		}
	}
	return o.MinSize().Height
}

// Space is empty room of a height.
func Space(h float32) fyne.CanvasObject {
	r := canvas.NewRectangle(color.Transparent)
	r.SetMinSize(fyne.NewSize(0, h))
	return r
}

// Objects are widgets as the toolkit takes them.
func Objects[T fyne.CanvasObject](list ...T) []fyne.CanvasObject {
	var out []fyne.CanvasObject
	for _, o := range list {
		out = append(out, o)
	}
	return out
}
