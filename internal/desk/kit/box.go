package kit

import "fyne.io/fyne/v2"

// Box is a rectangle of a window, in the toolkit's units.
type Box struct {
	At   fyne.Position
	Size fyne.Size
}

// BoxOf is where an object stands in its window; empty for one that cannot be seen.
func BoxOf(o fyne.CanvasObject) Box {
	d := fyne.CurrentApp().Driver()
	if !o.Visible() || d.CanvasForObject(o) == nil {
		return Box{}
	}
	return Box{d.AbsolutePositionForObject(o), o.Size()}
}

// IsEmpty says whether a box holds nothing.
func (b Box) IsEmpty() bool { return b.Size.Width <= 0 || b.Size.Height <= 0 }

// With is the smallest box around two.
func (b Box) With(c Box) Box {
	switch {
	case b.IsEmpty():
		return c
	case c.IsEmpty():
		return b
	}
	x, y := min(b.At.X, c.At.X), min(b.At.Y, c.At.Y)
	return Box{fyne.NewPos(x, y), fyne.NewSize(max(b.right(), c.right())-x, max(b.bottom(), c.bottom())-y)}
}

// Within is what two boxes share.
func (b Box) Within(c Box) Box {
	x, y := max(b.At.X, c.At.X), max(b.At.Y, c.At.Y)
	in := Box{fyne.NewPos(x, y), fyne.NewSize(min(b.right(), c.right())-x, min(b.bottom(), c.bottom())-y)}
	if in.IsEmpty() {
		return Box{}
	}
	return in
}

// Grown is a box with so much more on each side.
func (b Box) Grown(by float32) Box {
	if b.IsEmpty() {
		return b
	}
	return Box{b.At.SubtractXY(by, by), b.Size.AddWidthHeight(2*by, 2*by)}
}

func (b Box) right() float32  { return b.At.X + b.Size.Width }
func (b Box) bottom() float32 { return b.At.Y + b.Size.Height }

// nextTo is where a card of a size goes beside something in a room: to the right of it,
// else to the left, below or above; where there is no room beside it, into its corner.
func nextTo(of Box, card, room fyne.Size) fyne.Position {
	const gap, edge = 14, 12
	most := fyne.NewPos(room.Width-card.Width-edge, room.Height-card.Height-edge)
	inside := func(x, y float32) fyne.Position {
		return fyne.NewPos(max(edge, min(x, most.X)), max(edge, min(y, most.Y)))
	}
	if of.IsEmpty() {
		return inside((room.Width-card.Width)/2, (room.Height-card.Height)/2)
	}
	for _, at := range []fyne.Position{
		{X: of.right() + gap, Y: of.At.Y}, {X: of.At.X - gap - card.Width, Y: of.At.Y},
		{X: of.At.X, Y: of.bottom() + gap}, {X: of.At.X, Y: of.At.Y - gap - card.Height},
	} {
		if in := inside(at.X, at.Y); (Box{in, card}).Within(of.Grown(gap / 2)).IsEmpty() {
			return in
		}
	}
	return inside(of.right()-card.Width-gap, of.bottom()-card.Height-gap)
}
