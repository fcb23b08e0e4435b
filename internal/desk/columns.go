package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/offers"
)

// columns lays the three columns out with rules between them.
type columns struct{}

func (columns) Layout(o []fyne.CanvasObject, size fyne.Size) {
	left, middle := offers.Width(), form.Width()
	kit.Place(o[0], 0, 0, left, size.Height)
	kit.Place(o[1], left-1, 0, 1, size.Height)
	kit.Place(o[2], left, 0, middle, size.Height)
	kit.Place(o[3], left+middle-1, 0, 1, size.Height)
	x := left + middle
	kit.Place(o[4], x, 0, max(0, size.Width-x), size.Height)
}

func (columns) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(offers.Width()+form.Width()+kit.Scaled(380), 500)
}
