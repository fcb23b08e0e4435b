package figure

import (
	"math"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Flip draws what the years of two offers cost over one input, and where the cheaper of
// them changes, on a canvas of w by h pixels. A nil curve, or one of offers that are not
// computed, gives a drawing that says so.
func Flip(c *compare.Comparison, curve *compare.Curve, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := flipOf(c, curve, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// flipFinding is a flip before it is drawn: what is said over it, and of what.
type flipFinding struct {
	title, under string
	c            *compare.Comparison
	curve        *compare.Curve // nil where there is nothing to draw
	say          words.Flipping
	saves        int // sign of today's saving
}

func flipOf(c *compare.Comparison, curve *compare.Curve, s Style) flipFinding {
	if curve == nil || len(curve.Points) < 2 || c.Find(curve.Offer) == nil || c.Find(curve.Other) == nil {
		return flipFinding{title: words.NoCurve, c: c}
	}
	f := flipFinding{c: c, curve: curve, say: words.FlippingOf(c, curve, s.Locale)}
	f.saves = savingToday(c, curve)
	f.title, f.under = f.say.Title(f.saves), f.say.Under()
	return f
}

// savingToday is the sign of what the offer saves with the input where it stands: from
// the curve, else, where that does not reach so far, from the years themselves.
func savingToday(c *compare.Comparison, curve *compare.Curve) int {
	for _, p := range curve.Points {
		if p.At.Equal(curve.Today) {
			return p.Other.Cmp(p.Offer)
		}
	}
	return c.Find(curve.Other).Year.Cost.Cmp(c.Find(curve.Offer).Year.Cost)
}

// flipChart is the chart of two years over an input in the making.
type flipChart struct {
	*sheet
	flipFinding
	path    []spot    // of both lines
	every   []region  // all of them
	regions []region  // those named
	labels  [2]string // what the offer and the other are called
	pens    [2]pen
	plot    Rect
	x, y    axis
	ticks   []tick // of the amounts
	steps   []tick // of the input
}

// spot is a corner of both lines; two at one place are a jump.
type spot struct{ x, offer, other float64 }

// saving is what the offer saves at a spot.
func (p spot) saving() float64 { return p.other - p.offer }

const (
	ribbonRow  = 34.0 // which offer is cheaper, above the lines
	axisRow    = 20.0 // the values of the input, below them
	leastLines = 40.0 // pixels
)

// draw draws the chart below the line whose baseline is y.
func (f flipFinding) draw(sh *sheet, _, y, bottom float64) {
	if f.curve == nil {
		return
	}
	ch := &flipChart{sheet: sh, flipFinding: f}
	ch.table = ch.pointTable()
	ch.trace()
	ch.every = regionsOf(ch.path)
	ch.regions = ch.every
	ch.name()
	if !ch.lay(y+6, bottom) {
		return
	}
	ch.amountLines(ch.plot, ch.y, ch.ticks, ch.py)
	ch.ribbon()
	ch.today()
	ch.lines()
	ch.ends()
	ch.values()
	ch.rings()
	ch.readouts()
}

// trace turns the curve into the corners of its lines. An input in steps holds its cost
// until half way to its next value.
func (ch *flipChart) trace() {
	points := ch.curve.Points
	at := make([]spot, len(points))
	for i, p := range points {
		at[i] = spot{p.At.Float(), p.Offer.Float(), p.Other.Float()}
	}
	if !inSteps(ch.curve.Input) {
		ch.path = at
		return
	}
	for i, p := range at {
		from, to := p.x, p.x
		if i > 0 {
			from = (at[i-1].x + p.x) / 2
		}
		if i+1 < len(at) {
			to = (p.x + at[i+1].x) / 2
		}
		ch.path = append(ch.path, spot{from, p.offer, p.other}, spot{to, p.offer, p.other})
	}
}

// name settles what the lines are called and how they are drawn.
func (ch *flipChart) name() {
	short := shortNames(ch.c.Offers)
	for i := range ch.c.Offers {
		for side, name := range []string{ch.curve.Offer, ch.curve.Other} {
			if ch.c.Offers[i].Name == name {
				ch.labels[side] = words.LabelName(&ch.c.Scenario, tidy(name), short[i])
			}
		}
	}
	t := ch.style.Theme
	ch.pens = [2]pen{
		{colour: t.Accent, text: t.Accent, width: 2.6},
		{colour: t.Ink, text: t.Ink, width: 2, dash: []float64{9, 4}},
	}
}

// lay shares the space out among the labels and the lines, and says whether there is any
// for these.
func (ch *flipChart) lay(top, bottom float64) bool {
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range ch.path {
		low, high = min(low, p.offer, p.other), max(high, p.offer, p.other)
	}
	room := bottom - top - ribbonRow - axisRow
	if room < leastLines { // the lines say it as well
		ch.regions, room = nil, room+ribbonRow-8
		top += 8 - ribbonRow
	}
	if room < 4 {
		return false
	}
	ticker := amounts{most: min(max(int(room/34), 1), 6), digits: money.Places(ch.c.Currency()), locale: ch.style.Locale}
	if high-low <= 0 {
		high = low + float64(ticker.most)
	}
	ch.ticks = ticker.ticks(low, high)
	widest := 0.0
	for _, t := range ch.ticks {
		widest = max(widest, smallFace.width(t.label))
	}
	ch.y = axis{low: ch.ticks[0].value, high: ch.ticks[len(ch.ticks)-1].value}
	ch.x = axis{low: ch.path[0].x, high: ch.path[len(ch.path)-1].x}
	if ch.x.high <= ch.x.low {
		ch.x.high = ch.x.low + 1
	}
	left := math.Ceil(widest) + 8
	right := max(endFace(0).width(ch.labels[0]), endFace(1).width(ch.labels[1]))
	right = math.Ceil(min(right, mostLabel*ch.W)) + labelGap
	ch.plot = Rect{X: left, Y: math.Round(top + ribbonRow), W: max(ch.W-left-right, 1), H: math.Round(room)}
	ch.steps = plainTicks(ch.x.low, ch.x.high, int(ch.plot.W/64), ch.style.Locale)
	return true
}

// px and py are where a value of the input and an amount stand.
func (ch *flipChart) px(value float64) float64 { return ch.plot.X + ch.x.share(value)*ch.plot.W }

func (ch *flipChart) py(amount float64) float64 {
	return ch.plot.bottom() - ch.y.share(amount)*ch.plot.H
}

// within says whether a value of the input is drawn.
func (ch *flipChart) within(value float64) bool { return value >= ch.x.low && value <= ch.x.high }

// lines draws both; the dashes of the other stay to be seen where they are one.
func (ch *flipChart) lines() {
	for side, p := range ch.pens {
		xy := make([]float64, 0, 2*len(ch.path))
		for _, at := range ch.path {
			amount := at.offer
			if side == 1 {
				amount = at.other
			}
			xy = append(xy, ch.px(at.x), ch.py(amount))
		}
		ch.line(p.colour, p.width, p.dash, xy...)
	}
	for _, p := range ch.curve.Points { // both as they are today
		if p.At.Equal(ch.curve.Today) {
			x := ch.px(p.At.Float())
			ch.disc(x, ch.py(p.Other.Float()), 3.2, ch.pens[1].colour)
			ch.disc(x, ch.py(p.Offer.Float()), 3.2, ch.pens[0].colour)
			return
		}
	}
}

// ends names the lines at their right ends.
func (ch *flipChart) ends() {
	last := ch.path[len(ch.path)-1]
	labels := []endLabel{
		{name: ch.labels[0], height: labelRow, want: ch.py(last.offer)},
		{name: ch.labels[1], height: labelRow, want: ch.py(last.other)},
	}
	side := map[string]int{ch.labels[1]: 1, ch.labels[0]: 0}
	pushApart(labels, ch.plot.Y-8, ch.plot.bottom()+4)
	x := ch.plot.right() + labelGap
	for i := range labels {
		l := &labels[i]
		p, f := ch.pens[side[l.name]], endFace(side[l.name])
		if middle := l.y + labelRow/2; math.Abs(middle-l.want) > 3 {
			ch.line(p.colour, 1, nil, ch.plot.right()+2, l.want, x-3, middle)
		}
		ch.write(f, x, l.y+labelRow/2+4, f.fit(l.name, ch.W-x), p.text)
	}
}

// endFace sets the offer's name in bold.
func endFace(side int) face {
	f := endName
	f.bold = side == 0
	return f
}
