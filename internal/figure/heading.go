package figure

import (
	"image/color"
	"math"

	"reelworth/internal/compare"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// heading sets the finding and what is drawn, and returns where the second line's
// baseline is and where it ends.
func (s *sheet) heading(title, under string) (x, y float64) {
	s.title = title
	return s.underLine(under, s.lines(titleFace, title, 1, 14)+15)
}

// lines sets text on at most two lines from y on, each rise pixels below the last or as
// far as its letters reach up, and returns where the next may begin.
func (s *sheet) lines(f face, text string, y, rise float64) float64 {
	end := 0.0
	for _, line := range f.wrap(tidy(text), s.W, 2) {
		above, below := f.ink(line)
		y = max(y+rise, math.Ceil(end+above))
		s.write(f, 0, y, line, s.style.Theme.Ink)
		end = y + below
		y += 6
	}
	return y
}

// underLine sets what is drawn at a baseline.
func (s *sheet) underLine(under string, y float64) (x, baseline float64) {
	return s.write(smallFace, 0, y, smallFace.fit(tidy(under), s.W), s.style.Theme.Muted), y
}

// key is one entry of a legend.
type key struct {
	colour  color.NRGBA
	text    string
	hatched bool
}

const (
	swatch     = 10 // of a legend, pixels
	legendGap  = 16 // between entries
	legendLine = 18
)

// legend sets entries from x on along a baseline, on further lines where they don't
// fit, and returns the last line's baseline.
func (s *sheet) legend(keys []key, x, y float64) float64 {
	at, y := s.legendStart(keys, x, y)
	for _, k := range keys {
		if at > 0 && at+k.width() > s.W {
			at, y = 0, y+legendLine
		}
		if r := (Rect{at, y - 9, swatch, swatch}); k.hatched {
			s.hatch(r, k.colour)
		} else {
			s.box(r, k.colour)
		}
		text := smallFace.fit(k.text, s.W-at-swatch-5)
		at = s.write(smallFace, at+swatch+5, y, text, s.style.Theme.Muted) + legendGap
	}
	return y
}

// legendStart is where the first entry goes: on the next line when all fit there but
// not here.
func (s *sheet) legendStart(keys []key, x, y float64) (at, baseline float64) {
	all := -float64(legendGap)
	for _, k := range keys {
		all += k.width() + legendGap
	}
	if x > 0 && (x+all > s.W && all <= s.W || x+keys[0].width() > s.W) {
		return 0, y + legendLine
	}
	return x, y
}

func (k key) width() float64 { return swatch + 5 + smallFace.width(k.text) }

// legendLines is how many lines entries take that start at the left edge.
func (s *sheet) legendLines(keys []key) int {
	at, lines := 0.0, 1
	for _, k := range keys {
		if at > 0 && at+k.width() > s.W {
			at, lines = 0, lines+1
		}
		at += k.width() + legendGap
	}
	return lines
}

// sign sets the sign of a fault, a disc with a mark in it, centred on x, y.
func (s *sheet) sign(x, y float64) {
	s.disc(x, y, 6, s.style.Theme.Fault)
	mark, _ := palette.Label(s.style.Theme.Fault, s.style.Theme)
	s.box(Rect{x - 0.9, y - 3.4, 1.8, 4.2}, mark)
	s.box(Rect{x - 0.9, y + 1.7, 1.8, 1.8}, mark)
}

// leftOut sets the reason why an offer is not drawn on a baseline, a fault with its sign;
// the pointer finds it too.
func (s *sheet) leftOut(c *compare.Comparison, o *compare.Offer, x, y, width float64, text string) {
	if words.Waits(c, o) { // no fault of anybody's
		s.write(smallFace, x, y, smallFace.fit(text, width), s.style.Theme.Muted)
	} else {
		s.sign(x+6, y-4)
		s.write(smallFace, x+18, y, smallFace.fit(text, width-18), s.style.Theme.Fault)
	}
	s.hits = append(s.hits, Hit{Rect: Rect{x, y - 12, width, 16}, Offer: o.Name, Text: words.FaultReadout(c, o)})
}
