package figure

import (
	"cmp"
	"math"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// region is a stretch of the input over which one offer is the cheaper.
type region struct {
	from, to float64
	sign     int     // of what the offer saves; 0 only where both cost the same all along
	end      float64 // what both cost where it ends
}

// regionsOf are the stretches along a path. Where both cost the same for a while, that
// belongs to the stretch before.
func regionsOf(path []spot) []region {
	list := []region{{from: path[0].x}}
	for i, p := range path {
		r := &list[len(list)-1]
		sign := signOf(p.saving())
		switch {
		case sign == 0 || sign == r.sign:
		case r.sign == 0:
			r.sign = sign
		default:
			crossing := between(path[i-1], p)
			r.to, r.end = crossing.x, crossing.offer
			list = append(list, region{from: crossing.x, sign: sign})
		}
	}
	last := path[len(path)-1]
	list[len(list)-1].to = last.x
	return list
}

// between is where two lines cross from a to b; where they don't, the middle.
func between(a, b spot) spot {
	part := 0.5
	if d := a.saving() - b.saving(); d != 0 {
		part = min(max(a.saving()/d, 0), 1)
	}
	return spot{a.x + part*(b.x-a.x), a.offer + part*(b.offer-a.offer), a.other + part*(b.other-a.other)}
}

func signOf(x float64) int {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

// inSteps says whether an input has values in steps only.
func inSteps(i scenario.Input) bool {
	return i == scenario.InputRollsAYear || i == scenario.InputSpoiledPercent
}

// ribbon says above the lines which offer is the cheaper where, with its line's pen.
func (ch *flipChart) ribbon() {
	t := ch.style.Theme
	y := ch.plot.Y - 10
	order := make([]int, len(ch.regions))
	for i := range order {
		order[i] = i
	}
	width := func(i int) float64 { return ch.regions[i].to - ch.regions[i].from }
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(width(b), width(a)) })
	for _, i := range order {
		r := ch.regions[i]
		if r.sign == 0 {
			continue
		}
		side := 0
		if r.sign < 0 {
			side = 1
		}
		x0, x1 := ch.px(r.from), ch.px(r.to)
		if i > 0 {
			x0 += 2
		}
		if i+1 < len(ch.regions) {
			x1 -= 2
		}
		if x1-x0 < 1 {
			continue
		}
		ch.line(ch.pens[side].colour, 3, ch.pens[side].dash, x0, y, x1, y)
		// A name may reach over the ends of its stretch, where there is nothing.
		text := ch.cheaper(ch.labels[side], max(x1-x0-8, min(3*(x1-x0), 120)))
		box := textBox(smallFace, ch.inside((x0+x1)/2, text), y-8, text, t.Muted)
		if text != "" && ch.clear(box.Rect.grow(6)) {
			ch.texts = append(ch.texts, box)
		}
	}
}

// cheaper is "reel cheaper" in a width; "" where hardly a name would be left.
func (ch *flipChart) cheaper(label string, width float64) string {
	if text := words.Cheaper(label); smallFace.width(text) <= width {
		return text
	}
	room := width - smallFace.width(words.Cheaper(""))
	if room < min(smallFace.width(label), 60) {
		return ""
	}
	return words.Cheaper(smallFace.fit(label, room))
}

// today marks the value the input has.
func (ch *flipChart) today() {
	value := ch.curve.Today.Float()
	if !ch.within(value) {
		return
	}
	t := ch.style.Theme
	x := math.Round(ch.px(value)) + 0.5
	ch.line(t.Muted, 1, []float64{1, 3}, x, ch.plot.Y, x, ch.plot.bottom()+4)
	text := smallFace.fit(ch.say.Today(), ch.W)
	ch.write(smallFace, ch.inside(x, text), ch.plot.bottom()+16, text, t.Ink)
}

// inside is where text centred on x starts, moved as little as keeps it on the canvas.
func (s *sheet) inside(x float64, text string) float64 {
	w := smallFace.width(text)
	return max(min(x-w/2, s.W-w), 0)
}

// values labels the input's axis around today's value, its unit at the end.
func (ch *flipChart) values() {
	t, y := ch.style.Theme, ch.plot.bottom()+16
	x := ch.plot.right() + labelGap
	write := func(at float64, text string, apart float64) {
		if box := textBox(smallFace, at, y, text, t.Muted); text != "" && ch.clear(box.Rect.grow(apart)) {
			ch.texts = append(ch.texts, box)
		}
	}
	write(x, smallFace.fit(ch.say.Unit(), ch.W-x), 1)
	for _, tick := range ch.steps {
		ch.box(Rect{math.Round(ch.px(tick.value)), ch.plot.bottom(), 1, 4}, t.Quiet)
		if at := ch.px(tick.value) - smallFace.width(tick.label)/2; at >= 0 && at+smallFace.width(tick.label) <= ch.W {
			write(at, tick.label, 5)
		}
	}
}

// rings marks where the cheaper offer changes next to today's value.
func (ch *flipChart) rings() {
	for _, x := range compare.Crossings([]compare.Flip{ch.curve.Flip}) {
		value := x.At.Float()
		if !ch.within(value) {
			continue
		}
		at := ch.crossing(value)
		left, top := ch.px(at.x), ch.py(at.offer)
		ch.ringAt(left, top, ch.style.Theme.Accent)
		ch.hits = append(ch.hits, Hit{Rect: Rect{left - 6, top - 6, 12, 12}, Offer: ch.curve.Offer, Text: ch.say.CrossingReadout(x, ch.saves)})
		ch.ringLabel(left, top, ch.say.Crossing(x), ch.pens[0], ch.covered)
	}
}

// crossing is where the lines cross at a flip, which for an input in steps is half a step
// from it.
func (ch *flipChart) crossing(value float64) spot {
	best, at := math.Inf(1), spot{x: value}
	for _, r := range ch.every[:len(ch.every)-1] {
		if far := math.Abs(r.to - value); far < best {
			best, at = far, spot{r.to, r.end, r.end}
		}
	}
	if best <= (ch.x.high-ch.x.low)/20 {
		return at
	}
	for i := 1; i < len(ch.path); i++ {
		if a, b := ch.path[i-1], ch.path[i]; a.x <= value && value <= b.x {
			part := 0.0
			if b.x > a.x {
				part = (value - a.x) / (b.x - a.x)
			}
			return spot{value, a.offer + part*(b.offer-a.offer), 0}
		}
	}
	return at
}

// covered is how much of the lines a rectangle would cross.
func (ch *flipChart) covered(r Rect) float64 {
	if r.X < ch.plot.X || r.right() > ch.plot.right() || r.Y < ch.plot.Y || r.bottom() > ch.plot.bottom() || !ch.clear(r) {
		return outside
	}
	cost := 0.0
	if x := ch.px(ch.curve.Today.Float()); x > r.X && x < r.right() {
		cost += 2
	}
	for i := 1; i < len(ch.path); i++ {
		a, b := ch.path[i-1], ch.path[i]
		x0, x1 := ch.px(a.x), ch.px(b.x)
		if x1 < r.X || x0 > r.right() {
			continue
		}
		if crosses(r, x0, ch.py(a.offer), x1, ch.py(b.offer)) {
			cost += 2
		}
		if crosses(r, x0, ch.py(a.other), x1, ch.py(b.other)) {
			cost += 2
		}
	}
	return cost
}

// crosses says whether a line from x0, y0 to x1, y1 touches a rectangle.
func crosses(r Rect, x0, y0, x1, y1 float64) bool {
	from, to := 0.0, 1.0
	for _, d := range [4][2]float64{{x0 - x1, x0 - r.X}, {x1 - x0, r.right() - x0}, {y0 - y1, y0 - r.Y}, {y1 - y0, r.bottom() - y0}} {
		switch way, room := d[0], d[1]; {
		case way == 0 && room < 0:
			return false
		case way < 0:
			from = max(from, room/way)
		case way > 0:
			to = min(to, room/way)
		}
	}
	return from <= to
}

// leastColumn is how narrow a region to read out may be, in pixels.
const leastColumn = 4

// readouts makes every place a column from half way to its neighbours; on both sides of
// a jump one each.
func (ch *flipChart) readouts() {
	points := ch.curve.Points
	at := make([]float64, len(points))
	for i, p := range points {
		at[i] = ch.px(p.At.Float())
	}
	end := at[0]
	for i, p := range points {
		to := at[i]
		if i+1 < len(at) {
			to = (at[i] + at[i+1]) / 2
		}
		if to-end < leastColumn && i+1 < len(at) && !p.At.Equal(ch.curve.Today) {
			continue
		}
		ch.hits = append(ch.hits, Hit{
			Rect: Rect{end, ch.plot.Y, max(to-end, 1), ch.plot.H}, Offer: ch.curve.Offer, Text: ch.say.Readout(p, beside(points, i)),
		})
		end = to
	}
}

// beside is −1 for the point just below a jump, 1 for the one just above it.
func beside(points []compare.CurvePoint, i int) int {
	switch {
	case i+1 < len(points) && points[i+1].At.Equal(points[i].At):
		return -1
	case i > 0 && points[i-1].At.Equal(points[i].At):
		return 1
	}
	return 0
}

// pointTable has a row for every point of the curve.
func (ch *flipChart) pointTable() Table {
	t := Table{Header: ch.say.Header()}
	for i, p := range ch.curve.Points {
		t.Rows = append(t.Rows, ch.say.Row(p, beside(ch.curve.Points, i)))
	}
	return t
}
