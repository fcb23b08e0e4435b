package figure

import (
	"reelworth/internal/compare"
)

// tags say over the costs which size costs least and which is today's, each tied to its
// dot.
func (ch *cutsChart) tags() {
	var told []int // places of sizes
	for _, i := range ch.order[:min(len(ch.order), 2)] {
		if ch.say.Tag(&ch.sizes[i]) != "" {
			told = append(told, i)
		}
	}
	for n, i := range told {
		x := ch.middle(i)
		text := endName.fit(ch.say.Tag(&ch.sizes[i]), ch.W)
		w := endName.width(text)
		left := x - w/2
		if len(told) == 2 { // away from the other
			left = x - w + 4
			if i > told[1-n] {
				left = x - 4
			}
		}
		ch.tag(i, text, max(min(left, ch.W-w), 0))
	}
}

// tag writes a tag from x on, over what stands there already, and ties it to its dot.
func (ch *cutsChart) tag(i int, text string, x float64) {
	s, colour := &ch.sizes[i], ch.style.Theme.Ink
	if s.Best {
		colour = ch.style.Theme.Accent
	}
	box := textBox(endName, x, ch.plot.Y-6, text, colour)
	if !ch.clear(box.Rect.grow(1)) {
		box = textBox(endName, x, ch.plot.Y-20, text, colour)
	}
	if !ch.clear(box.Rect) {
		return
	}
	top := box.Rect.bottom() + 2
	for _, other := range ch.texts { // the line begins below all that is written over it
		if r := other.Rect; r.Y >= box.Rect.Y && r.bottom() < ch.plot.Y && r.X-2 < ch.middle(i) && ch.middle(i) < r.right()+2 {
			top = max(top, r.bottom()+2)
		}
	}
	ch.texts = append(ch.texts, box)
	if end := ch.py(s.TotalPerRoll.Float()) - 6; end > top {
		ch.line(colour, 1, []float64{1, 3}, ch.middle(i), top, ch.middle(i), end)
	}
}

// labels sets the exposures and the rolls under their sizes, as many as there is room for,
// with a name for each line.
func (ch *cutsChart) labels() {
	t := ch.style.Theme
	y := ch.left.bottom()
	if ch.left.H < 1 {
		y = ch.plot.bottom()
	}
	for n, row := range ch.rows {
		y += cutLine
		name := smallFace
		if n == 0 {
			name = endName
		}
		ch.write(name, 0, y, name.fit(row.name, ch.plot.X-8), t.Muted)
		for _, i := range ch.order {
			ch.label(&ch.sizes[i], ch.middle(i), y, row.text(&ch.sizes[i]), n == 0)
		}
	}
}

// label writes what is said of a size, centred on x, unless another is in the way.
func (ch *cutsChart) label(s *compare.CutSize, x, y float64, text string, first bool) {
	f, colour := smallFace, ch.style.Theme.Muted
	if first {
		f, colour = endName, ch.style.Theme.Ink
	}
	if s.Best {
		f.bold, colour = true, ch.style.Theme.Accent
	}
	w := f.width(text)
	at := max(min(x-w/2, ch.W-w), ch.plot.X-6)
	if box := textBox(f, at, y, text, colour); at+w <= ch.W && ch.clear(box.Rect.grow(2)) {
		ch.texts = append(ch.texts, box)
	}
}
