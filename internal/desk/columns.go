package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/offers"
	"reelworth/internal/words"
)

// What is in sight where the form and the answer have room for one of them only.
const (
	atForm = iota
	atAnswer
)

// columns lays the three columns out with rules between them: side by side, or in a window
// too narrow for that the form and the answer in one place, under a switch.
type columns struct {
	seen   *kit.Switch
	said   *kit.Text // beside the switch, while the answer is out of sight
	laid   func()    // called when they have their places
	narrow bool
	root   *fyne.Container
}

// newColumns are the left column, the form and the answer.
func newColumns(left, middle, right fyne.CanvasObject) *columns {
	c := &columns{laid: func() {}}
	c.seen = kit.NewSwitch(func() { c.root.Refresh() }, words.SeenForm, words.SeenAnswer)
	c.said = kit.NewText(kit.SizeSmall).AtMost(1).Trailing()
	c.said.Centred = true
	c.root = container.New(c, left, kit.NewRule(), middle, kit.NewRule(), right, c.seen, c.said)
	return c
}

// look puts the form or the answer in sight.
func (c *columns) look(at int) { c.seen.Choose(at) }

// least is the width that the three need side by side.
func (c *columns) least() float32 { return offers.Width() + form.Width() + kit.Scaled(380) }

func (c *columns) Layout(o []fyne.CanvasObject, size fyne.Size) {
	defer func() { c.laid() }()
	left, middle := offers.Width(), form.Width()
	c.narrow = size.Width < c.least()
	show(o[2], !c.narrow || c.seen.At == atForm)
	show(o[3], !c.narrow)
	show(o[4], !c.narrow || c.seen.At == atAnswer)
	show(o[5], c.narrow)
	show(o[6], c.narrow && c.seen.At == atForm)
	kit.Place(o[0], 0, 0, left, size.Height)
	kit.Place(o[1], left-1, 0, 1, size.Height)
	if c.narrow {
		edge, top := kit.Scaled(20), c.seen.Height()
		kit.Place(o[5], left+edge, 0, size.Width-left-2*edge, top)
		kit.Place(o[6], left+edge+c.seen.Wide(), 0, size.Width-left-2*edge-c.seen.Wide(), top)
		kit.Place(o[2], left, top, min(size.Width-left, kit.Scaled(440)), size.Height-top)
		kit.Place(o[4], left, top, size.Width-left, size.Height-top)
		return
	}
	kit.Place(o[2], left, 0, middle, size.Height)
	kit.Place(o[3], left+middle-1, 0, 1, size.Height)
	x := left + middle
	kit.Place(o[4], x, 0, max(0, size.Width-x), size.Height)
}

func (c *columns) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(offers.Width()+form.Width(), 500)
}

func show(o fyne.CanvasObject, yes bool) {
	switch {
	case yes && !o.Visible():
		o.Show()
	case !yes && o.Visible():
		o.Hide()
	}
}
