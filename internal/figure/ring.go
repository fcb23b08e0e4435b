package figure

import (
	"image/color"
	"math"

	"reelworth/internal/compare"
	"reelworth/internal/words"
)

// ring marks the month from which on the best reel has cost less cash than the best
// boxed, and says so where it covers least.
func (ch *spendChart) ring() {
	v := ch.c.Verdict
	if v.Pair == nil || v.Kind == compare.VerdictUnlike || v.Kind == compare.VerdictReelIfKept {
		return
	}
	month := v.Pair.EvenMonth
	if month < 1 || month > ch.months || !ch.anythingSpent() {
		return
	}
	for i := range ch.lines {
		if l := &ch.lines[i]; l.offer.Name == v.Reel {
			x, y := ch.px(month-1), ch.py(l.cash[month-1])
			ch.ringAt(x, y, l.pen.text)
			ch.ringLabel(x, y, words.AheadFrom(&ch.c.Scenario, month), l.pen, ch.covered)
		}
	}
}

func (ch *spendChart) anythingSpent() bool {
	for _, l := range ch.lines {
		if l.cash[ch.months-1] != 0 {
			return true
		}
	}
	return false
}

// ringAt draws a ring.
func (s *sheet) ringAt(x, y float64, c color.NRGBA) {
	s.disc(x, y, 6, c)
	s.disc(x, y, 3.9, s.style.Theme.Ground)
}

// ringLabel sets the words at the place around a ring that covers least, and ties them
// to the ring where that is not beside it. It says whether there was a place.
func (s *sheet) ringLabel(x, y float64, text string, p pen, covered func(Rect) float64) bool {
	w := endName.width(text)
	best, at := math.Inf(1), TextBox{}
	for _, dy := range []float64{24, -14, 13, -4, 38, -28, 52, -42, 70, -60} {
		for _, dx := range []float64{10, -10 - w, -w / 2, 30, -30 - w} {
			box := textBox(endName, x+dx, y+dy, text, p.text)
			far := box.Rect.distance(x, y)
			if far < 8 {
				continue
			}
			if cost := covered(box.Rect.grow(3)) + far/25; cost < best {
				best, at = cost, box
			}
		}
	}
	if best >= outside {
		return false
	}
	r := at.Rect
	if nx, ny := min(max(x, r.X), r.right()), min(max(y, r.Y-2), r.bottom()+2); r.distance(x, y) > 18 {
		length := math.Hypot(nx-x, ny-y)
		s.line(p.colour, 1, nil, x+(nx-x)*7/length, y+(ny-y)*7/length, nx, ny)
	}
	s.box(r.grow(1), s.style.Theme.Ground)
	s.texts = append(s.texts, at)
	return true
}

// outside is the cost of a place that cannot be taken.
const outside = 1000.0

// covered counts the lines a rectangle would cross.
func (ch *spendChart) covered(r Rect) float64 {
	if r.X < ch.plot.X || r.right() > ch.plot.right() || r.Y < ch.plot.Y || r.bottom() > ch.plot.bottom() {
		return outside
	}
	cost := 0.0
	for _, l := range ch.lines {
		for m := range ch.months {
			flat := Rect{ch.px(m), ch.py(l.cash[m]) - 1, ch.px(m+1) - ch.px(m), 2}
			if flat.overlaps(r) {
				cost += 1 + 2*flat.shared(r)/r.W
			}
			if m > 0 {
				top := ch.py(max(l.cash[m-1], l.cash[m]))
				rise := Rect{ch.px(m) - 1, top, 2, ch.py(min(l.cash[m-1], l.cash[m])) - top}
				if rise.overlaps(r) {
					cost += 2
				}
			}
		}
	}
	return cost
}

// shared is the width two overlapping rectangles share.
func (r Rect) shared(o Rect) float64 { return min(r.right(), o.right()) - max(r.X, o.X) }
