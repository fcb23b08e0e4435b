package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// Widths as drawn: of the column of small pages, and of a large one at most, which prints
// its letters somewhat larger than on paper.
const (
	sideWidth  = 196
	sheetWidth = 880
)

// previewRoom lays out what stands over the pages, the choice of paper, the small pages
// below it, and the large one beside them.
type previewRoom struct{}

func (previewRoom) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const edge = 24
	head := kit.HeightOf(o[0], size.Width-2*edge)
	top, side := 20+head+12, kit.Scaled(sideWidth)
	kit.Place(o[0], edge, 20, size.Width-2*edge, head)
	kit.Place(o[1], edge, top, side, kit.RowHeight)
	list := top + kit.RowHeight + 8
	kit.Place(o[2], edge, list, side, max(0, size.Height-list))
	x := edge + side + 20
	kit.Place(o[3], x, top, max(0, size.Width-x), max(0, size.Height-top))
}

func (previewRoom) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(600, 400) }

// sheetRoom is that of the large page.
type sheetRoom struct{}

func (sheetRoom) width(room float32) float32 { return max(0, min(room-24, kit.Scaled(sheetWidth))) }

func (s sheetRoom) Layout(o []fyne.CanvasObject, size fyne.Size) {
	w := s.width(size.Width)
	kit.Place(o[0], 0, 0, w, kit.HeightOf(o[0], w))
}

func (s sheetRoom) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, kit.HeightOf(o[0], o[0].Size().Width)+24)
}
