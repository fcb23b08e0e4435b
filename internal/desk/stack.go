package desk

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
)

// tall is what knows its height for a width.
type tall interface{ heightFor(width float32) float32 }

// stack lays objects one under another, each as wide as the stack, inside margins.
type stack struct {
	gap                      float32
	left, top, right, bottom float32
	width                    float32 // the last one laid out
}

func newStack(width, gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(&stack{gap: gap, width: width}, objects...)
}

// inset gives a stack margins.
func inset(c *fyne.Container, left, top, right, bottom float32) *fyne.Container {
	s := c.Layout.(*stack)
	s.left, s.top, s.right, s.bottom = left, top, right, bottom
	return c
}

func (s *stack) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	s.width = size.Width
	inner := size.Width - s.left - s.right
	y := s.top
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		h := heightOf(o, inner)
		o.Move(fyne.NewPos(s.left, y))
		o.Resize(fyne.NewSize(inner, h))
		y += h + s.gap
	}
}

func (s *stack) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(s.leastWidth(objects), s.height(objects, s.width))
}

// leastWidth is what the objects need that know how wide they must be.
func (s *stack) leastWidth(objects []fyne.CanvasObject) float32 {
	var least float32
	for _, o := range objects {
		if w, ok := o.(interface{ leastWidth() float32 }); ok {
			least = max(least, w.leastWidth()+s.left+s.right)
		}
	}
	return least
}

func (s *stack) height(objects []fyne.CanvasObject, width float32) float32 {
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
		h += heightOf(o, inner)
	}
	return h
}

// heightOf is how high o is when it is that wide.
func heightOf(o fyne.CanvasObject, width float32) float32 {
	if t, ok := o.(tall); ok {
		return t.heightFor(width)
	}
	if c, ok := o.(*fyne.Container); ok {
		if s, ok := c.Layout.(*stack); ok {
			return s.height(c.Objects, width)
		}
	}
	return o.MinSize().Height
}

// space is empty room of a height.
func space(h float32) fyne.CanvasObject {
	r := canvas.NewRectangle(color.Transparent)
	r.SetMinSize(fyne.NewSize(0, h))
	return r
}

// sides lays a left and a right object on one line: the right one as wide as it wants,
// the left one with the rest.
type sides struct{ gap float32 }

func newSides(left, right fyne.CanvasObject) *fyne.Container {
	return container.New(&sides{gap: 8}, left, right)
}

func (s *sides) rightWidth(o fyne.CanvasObject) float32 {
	if p, ok := o.(*prose); ok {
		return p.naturalWidth() + 1
	}
	return o.MinSize().Width
}

func (s *sides) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	w := s.rightWidth(objects[1])
	objects[1].Move(fyne.NewPos(size.Width-w, 0))
	objects[1].Resize(fyne.NewSize(w, size.Height))
	objects[0].Move(fyne.NewPos(0, 0))
	objects[0].Resize(fyne.NewSize(max(0, size.Width-w-s.gap), size.Height))
}

func (s *sides) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, max(objects[0].MinSize().Height, objects[1].MinSize().Height))
}

// side lays objects from left to right, each as wide as it wants.
type side struct{ gap float32 }

func newLine(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(side{gap}, objects...)
}

func (s side) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	x := float32(0)
	for _, o := range objects {
		w := o.MinSize().Width
		place(o, x, 0, w, size.Height)
		x += w + s.gap
	}
}

func (s side) MinSize(objects []fyne.CanvasObject) fyne.Size {
	var m fyne.Size
	for i, o := range objects {
		if i > 0 {
			m.Width += s.gap
		}
		m.Width += o.MinSize().Width
		m.Height = max(m.Height, o.MinSize().Height)
	}
	return m
}

func toObjects[T fyne.CanvasObject](list ...T) []fyne.CanvasObject {
	var out []fyne.CanvasObject
	for _, o := range list {
		out = append(out, o)
	}
	return out
}
