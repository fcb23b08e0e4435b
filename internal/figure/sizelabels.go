package figure

import (
	"cmp"
	"image/color"
	"math"
	"slices"

	"reelworth/internal/words"
)

// totals writes what a roll costs over the bars, as many as there is room for.
func (ch *sizesChart) totals() {
	t := ch.style.Theme
	for _, i := range ch.order {
		s, r := &ch.sizes[i], ch.barOf(i)
		f, colour := endName, t.Ink
		if s.Best {
			f, colour = endTotal, t.Accent
		}
		w := f.width(ch.say.Roll(s))
		y := ch.above(ch.centred(ch.middle(i), w), w) - 5
		if s.TotalPerRoll.Sign() < 0 {
			y = r.bottom() + 13
		}
		ch.writeClear(f, ch.middle(i), y, ch.say.Roll(s), colour)
	}
}

// columns writes what stands under the bars, with a name for every line.
func (ch *sizesChart) columns() {
	t := ch.style.Theme
	y := ch.plot.bottom()
	for i := range ch.sizes {
		if ch.sizes[i].TotalPerRoll.Sign() < 0 {
			y += sizeValue
			break
		}
	}
	for n, row := range ch.rows {
		y += sizeLine
		name := smallFace
		if n == 0 {
			name = endName
		}
		ch.write(name, 0, y, name.fit(row.name, ch.plot.X-8), t.Muted)
		for _, i := range ch.order {
			s, f, colour := &ch.sizes[i], smallFace, t.Muted
			if n == 0 {
				f, colour = endName, t.Ink
			}
			if s.Best {
				f.bold, colour = true, t.Accent
			}
			ch.writeClear(f, ch.middle(i), y, row.text(s), colour)
		}
	}
}

// writeClear writes text centred on x, moved as little as keeps it right of the names
// and on the canvas, unless another is in the way.
func (ch *sizesChart) writeClear(f face, x, y float64, text string, c color.NRGBA) {
	w := f.width(text)
	at := ch.centred(x, w)
	if box := textBox(f, at, y, text, c); at+w <= ch.W && ch.clear(box.Rect.grow(2)) {
		ch.texts = append(ch.texts, box)
	}
}

// centred is where a text of a width starts in the middle over x.
func (ch *sizesChart) centred(x, w float64) float64 {
	return max(min(x-w/2, ch.W-w), ch.plot.X-6)
}

// above is the top of the tallest bar under a text of a width from x on.
func (ch *sizesChart) above(x, w float64) float64 {
	y := ch.plot.bottom()
	for i := range ch.sizes {
		if r := ch.barOf(i); r.X < x+w+3 && r.right() > x-3 {
			y = min(y, r.Y)
		}
	}
	return y
}

// tag is a text above the bars: where it wants to start, and over which sizes it stands.
type tag struct {
	text   string
	x, w   float64
	colour color.NRGBA
}

func (ch *sizesChart) tagOver(x float64, text string, c color.NRGBA) tag {
	w := smallFace.width(text)
	return tag{text: text, x: x - w/2, w: w, colour: c}
}

// tags names the best size, today's, and those that last too long, above the bars.
func (ch *sizesChart) tags() {
	t := ch.style.Theme
	var tags []tag
	first, last := -1, len(ch.sizes)-1 // of those that last too long
	for i := range ch.sizes {
		switch s := &ch.sizes[i]; {
		case s.Best && ch.say.Today(s):
			tags = append(tags, ch.tagOver(ch.middle(i), words.BestSize+", "+words.TodaysSize, t.Accent))
		case s.Best:
			tags = append(tags, ch.tagOver(ch.middle(i), words.BestSize, t.Accent))
		case ch.say.Today(s):
			tags = append(tags, ch.tagOver(ch.middle(i), words.TodaysSize, t.Ink))
		}
		if first < 0 && ch.say.TooLong(&ch.sizes[i]) {
			first = i
		}
	}
	ch.placeTags(tags)
	if first < 0 {
		return
	}
	// Their own line, above all others.
	long := ch.tagOver((ch.middle(first)+ch.middle(last))/2, ch.say.TooLongText(), t.Muted)
	long.x = max(min(long.x, ch.W-long.w), 0)
	y := ch.plot.Y - sizeValue - sizeTags - 4
	ch.write(smallFace, long.x, y, long.text, t.Muted)
	x0, x1 := ch.middle(first)-ch.column()*0.31, ch.middle(last)+ch.column()*0.31
	for _, side := range [2][2]float64{{x0, long.x - 6}, {long.x + long.w + 6, x1}} {
		if side[1] > side[0] {
			ch.hairline(side[0], side[1], y-4, t.Quiet)
		}
	}
	ch.ends(first, x0, x1, long, y-4)
}

// ends closes the bracket over the sizes that last too long.
func (ch *sizesChart) ends(first int, x0, x1 float64, long tag, y float64) {
	c := ch.style.Theme.Quiet
	if x0 < long.x-6 {
		ch.box(Rect{math.Round(x0), math.Round(y), 1, 5}, c)
	}
	if x1 > long.x+long.w+6 {
		ch.box(Rect{math.Round(x1) - 1, math.Round(y), 1, 5}, c)
	}
}

// placeTags sets tags apart from each other, each above all bars and totals it spans.
func (ch *sizesChart) placeTags(tags []tag) {
	slices.SortFunc(tags, func(a, b tag) int { return cmp.Compare(a.x, b.x) })
	at := ch.plot.X - 6
	for i := range tags {
		tags[i].x = max(tags[i].x, at)
		at = tags[i].x + tags[i].w + 6
	}
	at = ch.W
	for i := len(tags) - 1; i >= 0; i-- {
		tags[i].x = min(tags[i].x, at-tags[i].w)
		at = tags[i].x - 6
	}
	for _, tg := range tags {
		y := ch.above(tg.x, tg.w) - sizeValue - 4
		box := textBox(smallFace, tg.x, y, tg.text, tg.colour)
		for !ch.clear(box.Rect.grow(1)) && y > ch.plot.Y-sizeValue-4 {
			y--
			box = textBox(smallFace, tg.x, y, tg.text, tg.colour)
		}
		if tg.x >= 0 && ch.clear(box.Rect) {
			ch.texts = append(ch.texts, box)
		}
	}
}
