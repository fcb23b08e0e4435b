package figure

import (
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
			ch.disc(x, y, 6, l.pen.text)
			ch.disc(x, y, 3.9, ch.style.Theme.Ground)
			ch.ringLabel(l, x, y, words.AheadFrom(&ch.c.Scenario, month))
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

// ringLabel sets the words at the place around x, y that crosses the fewest lines,
// and ties them to the ring where that is not beside it.
func (ch *spendChart) ringLabel(l *spendLine, x, y float64, text string) {
	w := endName.width(text)
	best, at := math.Inf(1), TextBox{}
	for _, dy := range []float64{24, -14, 13, -4, 38, -28, 52, -42, 70, -60} {
		for _, dx := range []float64{10, -10 - w, -w / 2, 30, -30 - w} {
			box := textBox(endName, x+dx, y+dy, text, l.pen.text)
			far := box.Rect.distance(x, y)
			if far < 8 {
				continue
			}
			if cost := ch.covered(box.Rect.grow(3)) + far/25; cost < best {
				best, at = cost, box
			}
		}
	}
	if best >= outside {
		return
	}
	r := at.Rect
	if nx, ny := min(max(x, r.X), r.right()), min(max(y, r.Y-2), r.bottom()+2); r.distance(x, y) > 18 {
		length := math.Hypot(nx-x, ny-y)
		ch.line(l.pen.colour, 1, nil, x+(nx-x)*7/length, y+(ny-y)*7/length, nx, ny)
	}
	ch.box(r.grow(1), ch.style.Theme.Ground)
	ch.texts = append(ch.texts, at)
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
