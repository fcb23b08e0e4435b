package figure

import (
	"image/color"
	"math"

	"reelworth/internal/words"
)

// TermHeight is the height of a term's picture, in pixels.
const TermHeight = 120

// Term draws what a word of the trade means, where a drawing says more than words: the part
// meant stands out among those around it. It suggests; it is not to scale. Its title describes it for whoever
// cannot see it.
func Term(p words.TermPicture, w float64, s Style) *Drawing {
	t := &termSheet{newSheet(w, TermHeight, s), p}
	t.title = words.TermDrawn(p)
	switch p {
	case words.DrawnLeader, words.DrawnFogged, words.DrawnTrailer:
		t.roll()
	case words.DrawnPitch, words.DrawnFrame:
		t.edge()
	case words.DrawnRemjet:
		t.layers()
	case words.DrawnShortRoll, words.DrawnWaste:
		t.reel()
	}
	return t.Drawing
}

// termSheet is the picture of a term in the making.
type termSheet struct {
	*sheet
	meant words.TermPicture
}

// termPart is a length of film with its name below it; row 1 is the lower of two rows of names.
type termPart struct {
	is     words.TermPicture // "" for none that a word is about
	name   string
	share  float64 // of the width
	colour color.NRGBA
	row    int
	faint  bool // told from the ground by its edges
}

// roll is one roll from its start to its end.
func (t *termSheet) roll() {
	c := t.style.Theme
	t.strip([]termPart{
		{is: words.DrawnLeader, name: words.DrawnAsLeader, share: 0.24, colour: c.Fees},
		{name: words.DrawnAsExposures, share: 0.46, colour: c.Film},
		{is: words.DrawnFogged, name: words.DrawnAsFogged, share: 0.12, colour: c.Shipping, row: 1},
		{is: words.DrawnTrailer, name: words.DrawnAsTrailer, share: 0.18, colour: c.Tax},
	})
}

// reel is a whole reel as it is cut.
func (t *termSheet) reel() {
	c := t.style.Theme
	t.strip([]termPart{
		{is: words.DrawnWaste, name: words.DrawnAsStart, share: 0.08, colour: c.Rule, row: 1, faint: true},
		{name: words.DrawnAsFull, share: 0.22, colour: c.Film},
		{name: words.DrawnAsFull, share: 0.22, colour: c.Film},
		{name: words.DrawnAsFull, share: 0.22, colour: c.Film},
		{is: words.DrawnShortRoll, name: words.DrawnAsShort, share: 0.13, colour: c.Shipping, row: 1},
		{is: words.DrawnWaste, name: words.DrawnAsEnd, share: 0.13, colour: c.Rule, faint: true},
	})
}

// strip draws parts of film side by side, with gaps between, and names below.
func (t *termSheet) strip(parts []termPart) {
	const top, height = 8, 46
	x := 0.0
	for _, p := range parts {
		to := math.Round(x + p.share*t.W)
		r := Rect{x, top, to - x - 1, height}
		if p.faint {
			t.box(r, t.style.Theme.Quiet)
			r = Rect{r.X + 1, r.Y + 1, r.W - 2, r.H - 2}
		}
		t.box(r, t.fill(p))
		t.name(p, x, to-1, top+height)
		x = to
	}
	t.holes(Rect{0, top, x - 1, height})
}

func (t *termSheet) fill(p termPart) color.NRGBA {
	if p.is == t.meant {
		return t.style.Theme.Accent
	}
	return p.colour
}

// name brackets a part from below and sets its name under the bracket.
func (t *termSheet) name(p termPart, x0, x1, y float64) {
	f, c := smallFace, t.style.Theme.Muted
	if p.is == t.meant {
		f, c = face{bold: true, size: smallFace.size}, t.style.Theme.Ink
	}
	low := y + 8 + 18*float64(p.row)
	t.span(x0, x1, y+3, low, c)
	t.centred(f, (x0+x1)/2, low+14, p.name, c)
}

// span is a bracket open to above: its arms begin at y, its line is at low.
func (t *termSheet) span(x0, x1, y, low float64, c color.NRGBA) {
	t.line(c, 1, nil, x0+1, y, x0+1, low, x1-1, low, x1-1, y)
}

// centred sets text with its middle at x, within the drawing.
func (t *termSheet) centred(f face, x, y float64, text string, c color.NRGBA) {
	text = f.fit(text, t.W)
	w := f.width(text)
	t.write(f, min(max(0, x-w/2), t.W-w), y, text, c)
}

// edge is the edge of the film, much enlarged: its perforations, the distance between two,
// and the frame of eight.
func (t *termSheet) edge() {
	const top, height, count, first = 30, 54, 10, 1
	c := t.style.Theme
	pitch := math.Floor(t.W / count)
	t.box(Rect{0, top, count * pitch, height}, c.Film)
	hole := func(n float64) float64 { return n*pitch + pitch*0.28 }
	for n := range count {
		t.box(Rect{hole(float64(n)), top + 6, pitch * 0.44, 13}, c.Ground)
	}
	frame := Rect{hole(first), top + 25, 8*pitch - pitch*0.3, height - 31}
	t.box(frame, t.lit(words.DrawnFrame, c.Tax))
	strong := func(p words.TermPicture) (face, color.NRGBA) {
		if p == t.meant {
			return face{bold: true, size: smallFace.size}, c.Ink
		}
		return smallFace, c.Muted
	}
	f, ink := strong(words.DrawnPitch)
	t.line(t.lit(words.DrawnPitch, ink), 2, nil, hole(first), top-4, hole(first), top-10, hole(first+1), top-10, hole(first+1), top-4)
	t.write(f, hole(first+1)+8, top-7, f.fit(words.DrawnAsPitch, t.W-hole(first+1)-8), ink)
	f, ink = strong(words.DrawnFrame)
	below := float64(top + height)
	t.span(hole(first), hole(first+8), below+4, below+10, ink)
	t.centred(f, hole(first+4), below+25, words.DrawnAsFrame, ink)
}

func (t *termSheet) lit(p words.TermPicture, otherwise color.NRGBA) color.NRGBA {
	if p == t.meant {
		return t.style.Theme.Accent
	}
	return otherwise
}

// layers is the film cut through, much enlarged.
func (t *termSheet) layers() {
	c := t.style.Theme
	wide := math.Round(t.W * 0.45)
	y := 16.0
	for _, l := range []struct {
		is     words.TermPicture
		name   string
		height float64
		colour color.NRGBA
	}{
		{"", words.DrawnAsEmulsion, 22, c.Film},
		{"", words.DrawnAsBase, 40, c.Tax},
		{words.DrawnRemjet, words.DrawnAsRemjet, 22, c.Ink},
	} {
		f, ink := smallFace, c.Muted
		if l.is == t.meant {
			f, ink = face{bold: true, size: smallFace.size}, c.Ink
		}
		t.box(Rect{0, y, wide, l.height - 1}, t.lit(l.is, l.colour))
		t.hairline(wide+4, wide+16, y+l.height/2, ink)
		t.write(f, wide+20, y+l.height/2+4, f.fit(l.name, t.W-wide-20), ink)
		y += l.height
	}
}
