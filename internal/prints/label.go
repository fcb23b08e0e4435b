package prints

import (
	"image/color"

	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

var (
	black = color.NRGBA{A: 255}
	grey  = color.NRGBA{R: 110, G: 110, B: 110, A: 255}
	faint = color.NRGBA{R: 190, G: 190, B: 190, A: 255}
)

const (
	padding   = 1.6  // mm around a label's text
	leastSize = 5.5  // points; smaller cannot be read on a cassette
	leading   = 1.24 // of a line, in ems
	leastZoom = 0.6  // of a label's type, before something is left out
)

// line is one line of a label.
type line struct {
	text  string
	right string // at the right edge, never cut
	face  paper.Face
	tall  float64 // of the line, in ems
	keep  int     // what is kept longest has the highest; the lowest goes first
	blank bool    // to write on: text and right are what for
}

// What a label keeps longest. Parts of the note go before anything else.
const (
	keepNote = iota
	keepBlanks
	keepProcess
	keepHome
	keepDates
	keepSpeed
	keepName
	keepRemjet
)

// linesOf is a label from top to bottom, its type enlarged by zoom, its note on at most
// so many lines.
func linesOf(l *reels.Label, width, zoom float64, note int) []line {
	face := func(bold bool, size float64) paper.Face { return paper.Face{Bold: bold, Size: size * zoom} }
	lines := []line{
		{text: l.Name, right: words.LabelNumber(*l), face: face(true, 9), keep: keepName},
		{text: words.LabelSpeed(*l), face: face(true, 13), keep: keepSpeed, tall: 1.15},
		{text: words.LabelDates(*l), face: face(false, 7.5), keep: keepDates},
	}
	if l.Process != "" {
		lines = append(lines, line{text: l.Process, face: face(false, 7.5), keep: keepProcess})
	}
	for _, text := range face(false, 7.5).Wrap(l.Note, width, note) {
		lines = append(lines, line{text: text, face: face(false, 7.5), keep: keepNote})
	}
	if l.Remjet {
		lines = append(lines, line{text: words.RemjetLine, face: face(true, 8), keep: keepRemjet})
	}
	return append(lines,
		line{text: words.LoadedAtHome, face: face(false, 7), keep: keepHome},
		line{text: words.CameraBlank, right: words.ShotBlank, face: face(false, 7), tall: 1.8, keep: keepBlanks, blank: true})
}

func (l line) height() float64 {
	tall := l.tall
	if tall == 0 {
		tall = leading
	}
	return tall * l.face.Size / paper.PointsPerMillimetre
}

func height(lines []line) (sum float64) {
	for _, l := range lines {
		sum += l.height()
	}
	return sum
}

// mostNote is on how many lines a note may stand.
const mostNote = 12

// fitted are the lines that go into a size: all of them, made smaller where they must be;
// then with less of the note; then without what matters least.
func fitted(l *reels.Label, w, h float64) []line {
	for zoom := 1.0; zoom > leastZoom; zoom -= 0.04 {
		if lines := linesOf(l, w, zoom, mostNote); height(lines) <= h {
			return lines
		}
	}
	for note := mostNote - 1; note >= 0; note-- {
		if lines := linesOf(l, w, leastZoom, note); height(lines) <= h {
			return lines
		}
	}
	lines := linesOf(l, w, leastZoom, 0)
	for height(lines) > h && len(lines) > 1 {
		least := 0
		for i := range lines {
			if lines[i].keep < lines[least].keep {
				least = i
			}
		}
		lines = append(lines[:least:least], lines[least+1:]...)
	}
	return lines
}

// drawLabel draws a label within a rectangle of the page.
func drawLabel(p *paper.Page, l *reels.Label, x, y float64, size paper.Size) {
	w := size.W - 2*padding
	foot := y + size.H - padding
	y += padding
	for _, line := range fitted(l, w, size.H-2*padding) {
		bottom := y + line.height()
		if line.blank {
			bottom = foot // where there is room, it is for writing
		}
		baseline := bottom - 0.28*line.face.Size/paper.PointsPerMillimetre
		if line.blank {
			blanks(p, line, x+padding, baseline, w)
		} else {
			oneLine(p, line, x+padding, baseline, w)
		}
		y = bottom
	}
}

// oneLine sets a line, smaller or cut where it is too long.
func oneLine(p *paper.Page, l line, x, y, w float64) {
	room := w
	if l.right != "" {
		right := l.face.Shrunk(l.right, w/2, leastSize)
		p.TextRight(x+w, y, right, l.right, black)
		room -= right.Width(l.right) + 2
	}
	face := l.face.Shrunk(l.text, room, leastSize)
	p.Text(x, y, face, face.Fit(l.text, room), black)
}

// blanks are two places to write on: which camera, and when.
func blanks(p *paper.Page, l line, x, y, w float64) {
	const gap = 1
	half := w * 0.55
	for _, part := range []struct {
		text   string
		x0, x1 float64
	}{{l.text, x, x + half - 1.5}, {l.right, x + half, x + w}} {
		if from := p.Text(part.x0, y, l.face, part.text, grey) + gap; from < part.x1 {
			p.Line(from, y+0.3, part.x1, y+0.3, 0.15, grey)
		}
	}
}
