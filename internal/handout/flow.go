package handout

import (
	"reelworth/internal/palette"
	"reelworth/internal/paper"
)

// Millimetres.
const (
	margin = 16.0
	foot   = 7.0 // above the margin at the bottom
	gutter = 8.0 // between two columns
)

// The faces, in points.
var (
	findingFace = paper.Face{Bold: true, Size: 15}
	headFace    = paper.Face{Bold: true, Size: 10}
	bodyFace    = paper.Face{Size: 9}
	strongFace  = paper.Face{Bold: true, Size: 9}
	smallFace   = paper.Face{Size: 8}
)

// flow fills pages from top to bottom.
type flow struct {
	size  paper.Size
	theme palette.Theme
	pages []*paper.Page
	y     float64 // where the next line's top is
}

func (f *flow) page() *paper.Page { return f.pages[len(f.pages)-1] }

func (f *flow) newPage() {
	f.pages = append(f.pages, paper.NewPage(f.size))
	f.y = margin
}

// width is that of the text.
func (f *flow) width() float64 { return f.size.W - 2*margin }

// bottom is where the text ends.
func (f *flow) bottom() float64 { return f.size.H - margin - foot }

func (f *flow) room() float64 { return f.bottom() - f.y }

// pitch is the height of a line of a face.
func pitch(face paper.Face) float64 { return face.Size * 1.35 / paper.PointsPerMillimetre }

// block is where a piece of text stands: its left edge and width.
type block struct{ x, w float64 }

func (f *flow) whole() block { return block{margin, f.width()} }

// halves are two columns side by side.
func (f *flow) halves() (left, right block) {
	w := (f.width() - gutter) / 2
	return block{margin, w}, block{margin + w + gutter, w}
}

// text sets text in at most lines lines.
func (f *flow) text(b block, face paper.Face, text string, lines int, quiet bool) {
	c := f.theme.Ink
	if quiet {
		c = f.theme.Muted
	}
	for _, line := range face.Wrap(text, b.w, lines) {
		f.y += pitch(face)
		f.page().Text(b.x, f.y-pitch(face)*0.28, face, line, c)
	}
}

// heading sets the title of a section over a hairline.
func (f *flow) heading(b block, title string) {
	f.y += 3
	f.text(b, headFace, title, 1, false)
	f.page().Line(b.x, f.y+0.4, b.x+b.w, f.y+0.4, 0.2, f.theme.Rule)
	f.y += 1.4
}

// Lines that a text among others may take; cautions are never cut where that can be helped.
const itemLines, cautionLines = 3, 8

// items sets texts, of at most most lines each, below one another as far as room, in millimetres, allows; what does
// not fit is counted by more.
func (f *flow) items(b block, texts []string, most int, room float64, more func(n int) string) {
	end := f.y + room
	for i, text := range texts {
		lines := len(bodyFace.Wrap(text, b.w-3, most))
		needed := float64(lines) * pitch(bodyFace)
		if left := len(texts) - i; f.y+needed > end || left > 1 && f.y+needed+pitch(smallFace) > end {
			f.text(b, smallFace, more(left), 1, true)
			return
		}
		f.page().Text(b.x, f.y+pitch(bodyFace)*0.72, bodyFace, "·", f.theme.Accent)
		f.text(block{b.x + 3, b.w - 3}, bodyFace, text, most, false)
		f.y += 0.5
	}
}
