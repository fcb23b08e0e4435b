package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// sides lays a left and a right object on one line: the right one as wide as it wants,
// the left one with the rest.
type sides struct{ gap float32 }

// NewSides puts two objects at the ends of a line.
func NewSides(left, right fyne.CanvasObject) *fyne.Container {
	return container.New(&sides{gap: 8}, left, right)
}

func (s *sides) rightWidth(o fyne.CanvasObject) float32 {
	if !o.Visible() {
		return 0
	}
	if p, ok := o.(*Text); ok {
		return p.NaturalWidth() + 1
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

// HeightFor is how high the line is when it is that wide.
func (s *sides) HeightFor(objects []fyne.CanvasObject, width float32) float32 {
	left := max(1, width-s.rightWidth(objects[1])-s.gap)
	return max(HeightOf(objects[0], left), objects[1].MinSize().Height)
}

func (s *sides) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, max(objects[0].MinSize().Height, objects[1].MinSize().Height))
}

// side lays objects from left to right, each as wide as it wants.
type side struct{ gap float32 }

// NewLine puts objects side by side.
func NewLine(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(side{gap}, objects...)
}

func (s side) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	x := float32(0)
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		w := o.MinSize().Width
		Place(o, x, 0, w, size.Height)
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

// Place puts an object at a place in a size.
func Place(o fyne.CanvasObject, x, y, w, h float32) {
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(w, h))
}
