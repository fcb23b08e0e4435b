package prints

import (
	"slices"

	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// Labels lays labels out on sheets, the first on the first free place, with a line to
// measure the print by. The fault is that of the grid.
func Labels(list []reels.Label, g paper.Grid, firstFree int) ([]*paper.Page, paper.GridFault) {
	if f := g.Check(firstFree); f != paper.GridFine {
		return nil, f
	}
	var pages []*paper.Page
	measured := g.Bottom >= calibrationRoom
	for i := range list {
		sheet, x, y := g.Place(i, firstFree)
		if sheet == len(pages) {
			p := paper.NewPage(g.Size)
			if measured {
				calibration(p, p.Size.H-calibrationFoot, words.LabelsClear)
			}
			pages = append(pages, p)
		}
		p := pages[sheet]
		if g.Cut {
			p.Frame(x, y, g.Label().W, g.Label().H, 0.1, faint)
		}
		drawLabel(p, &list[i], x, y, g.Label())
	}
	if !measured && len(pages) > 0 {
		p := paper.NewPage(g.Size)
		calibration(p, 40, words.LabelsClear)
		pages = append(pages, p)
	}
	return pages, paper.GridFine
}

// Label is a single label on a page of its own.
func Label(l reels.Label, size paper.Size) *paper.Page {
	p := paper.NewPage(size)
	drawLabel(p, &l, 0, 0, size)
	return p
}

// Lacking are the letters of a label that are printed as boxes.
func Lacking(list []reels.Label) []rune {
	var said []string
	for _, l := range list {
		for _, text := range []string{l.Name, l.Process, l.Note} {
			if !slices.Contains(said, text) {
				said = append(said, text)
			}
		}
	}
	var out []rune
	for _, text := range said {
		for _, r := range paper.Lacking(text) {
			if !slices.Contains(out, r) {
				out = append(out, r)
			}
		}
	}
	return out
}

// The calibration line, in millimetres.
const (
	calibrationLength = 100
	calibrationFoot   = 5.5 // above the sheet's edge
	calibrationRoom   = 11  // of the margin it stands in
)

// calibration draws a line of 100 mm in the middle of a page, since printers scale.
func calibration(p *paper.Page, y float64, also string) {
	x := (p.Size.W - calibrationLength) / 2
	f := paper.Face{Size: 6}
	p.Line(x, y, x+calibrationLength, y, 0.2, black)
	for _, end := range []float64{x, x + calibrationLength} {
		p.Line(end, y-1, end, y+1, 0.2, black)
	}
	p.TextMiddle(p.Size.W/2, y-1.2, f, words.CalibrationSay, black)
	if also != "" {
		p.TextMiddle(p.Size.W/2, y-3.6, f, also, black)
	}
}
