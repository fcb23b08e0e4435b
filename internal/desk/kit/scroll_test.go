package kit

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// large is something of a size that does not fit.
func large(width, height float32) fyne.CanvasObject {
	r := canvas.NewRectangle(nil)
	r.SetMinSize(fyne.NewSize(width, height))
	return r
}

func turned(dx, dy float32) *fyne.ScrollEvent {
	return &fyne.ScrollEvent{Scrolled: fyne.Delta{DX: dx, DY: dy}}
}

func TestTheWheelMovesAlongItsOwnAxis(t *testing.T) {
	for _, c := range []struct {
		name          string
		make          func(fyne.CanvasObject) *Scroll
		width, height float32
		dx, dy        float32
		x, y          float32 // where it is then
		atX, atY      float32 // and where the one around it is
	}{
		{"down in a list", NewScroll, 100, 900, 0, -40, 0, 40, 0, 0},
		{"sideways in a list", NewScroll, 100, 900, -40, 0, 0, 0, 0, 0},
		{"down over a wide table", NewSideways, 900, 50, 0, -40, 0, 0, 0, 40},
		{"sideways over a wide table", NewSideways, 900, 50, -40, 0, 40, 0, 0, 0},
		{"down over a page that is only wide", NewBothWays, 900, 50, 0, -40, 0, 0, 0, 40},
		{"down over a page too large both ways", NewBothWays, 900, 900, 0, -40, 0, 40, 0, 0},
		{"aslant over a wide table", NewSideways, 900, 50, -30, -40, 30, 0, 0, 40},
	} {
		inner := c.make(large(c.width, c.height))
		outer := NewScroll(NewStack(200, 0, FixedHeight(inner, 100), large(100, 900)))
		inner.Around = outer
		on(t, outer, 200, 300)
		inner.Scrolled(turned(c.dx, c.dy))
		if inner.Offset != fyne.NewPos(c.x, c.y) || outer.Offset != fyne.NewPos(c.atX, c.atY) {
			t.Errorf("%s: at %v, the one around at %v", c.name, inner.Offset, outer.Offset)
		}
	}
}
