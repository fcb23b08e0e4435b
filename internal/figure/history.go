package figure

import (
	"image/color"
	"math"

	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// History draws what a roll has cost at the rates of the past, a line for each way to buy,
// on a canvas of w by h pixels. Of the chosen offer the middle four of five days are a
// band, and its dearest and cheapest day are marked. A nil history gives a drawing that
// says so.
func History(h *history.History, chosen string, w, height float64, s Style) *Drawing {
	sh := newSheet(w, height, s)
	f := historyOf(h, chosen, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// historyFinding is a history before it is drawn: what is said over it, and of whom.
type historyFinding struct {
	title, under string
	h            *history.History // nil where there is nothing to draw
	chosen       string
}

func historyOf(h *history.History, chosen string, s Style) historyFinding {
	if h == nil || len(h.Offers) == 0 || len(h.Dates) == 0 {
		return historyFinding{title: words.NoHistory}
	}
	if h.Find(chosen) == nil {
		chosen = words.MostTelling(h)
	}
	return historyFinding{words.HistoryTitle(h, chosen, s.Locale), words.HistoryDrawn(h), h, chosen}
}

// historyChart is the chart of a history in the making.
type historyChart struct {
	*sheet
	historyFinding
	lines []dayLine // the most telling first
	plot  Rect
	y     axis
	ticks []tick
	span  float64 // days from the first to the last, at least 1
}

// dayLine is one offer over the days.
type dayLine struct {
	offer   *history.Offer
	role    role
	pen     pen
	columns []column
}

// column is what of a line is within one pixel's width: the days from one place on, before
// another, and the least and the most of them.
type column struct {
	x                      float64
	from, to               int
	first, low, high, last float64
}

// draw draws the chart below the line whose baseline is y.
func (f historyFinding) draw(sh *sheet, _, y, bottom float64) {
	if f.h == nil {
		return
	}
	ch := &historyChart{sheet: sh, historyFinding: f}
	ch.table = historyTable(f.h, sh.style)
	ch.collect()
	if !ch.lay(y+18, bottom) {
		return
	}
	ch.band()
	ch.amountLines(ch.plot, ch.y, ch.ticks, ch.py)
	ch.calendar()
	for i := len(ch.lines) - 1; i >= 0; i-- { // the most telling on top
		ch.days(&ch.lines[i])
	}
	for i := len(ch.lines) - 1; i >= 0; i-- {
		ch.today(&ch.lines[i])
	}
	ch.labels()
	ch.extremes()
	ch.readouts()
}

// collect takes the offers, the most telling first.
func (ch *historyChart) collect() {
	quiet := 0
	for want := roleChosen; want <= roleQuiet; want++ {
		for i := range ch.h.Offers {
			o := &ch.h.Offers[i]
			is := roleQuiet
			switch o.Name {
			case ch.chosen:
				is = roleChosen
			case ch.h.Scenario.Baseline:
				is = roleBaseline
			}
			if is != want {
				continue
			}
			ch.lines = append(ch.lines, dayLine{offer: o, role: want, pen: ch.penFor(want, quiet, len(ch.h.Offers))})
			if want == roleQuiet {
				quiet++
			}
		}
	}
	ch.span = max(float64(ch.h.From.DaysUntil(ch.h.To)), 1)
}

// leastPlot is the least height of the lines, in pixels.
const leastPlot = 24

// lay shares the space out among axis labels, lines and end labels; false where there is
// not enough.
func (ch *historyChart) lay(top, bottom float64) bool {
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range ch.lines {
		low = min(low, l.offer.Low.Total.Float(), l.offer.Today.Float())
		high = max(high, l.offer.High.Total.Float(), l.offer.Today.Float())
	}
	room := math.Round(bottom - top - axisRow)
	if room < leastPlot {
		return false
	}
	ticker := amounts{most: min(max(int(room/34), 1), 6), digits: money.Places(ch.h.Scenario.Home), locale: ch.style.Locale}
	ch.ticks = ticker.ticks(low, high)
	ch.y = axis{ch.ticks[0].value, ch.ticks[len(ch.ticks)-1].value}
	widest := 0.0
	for _, t := range ch.ticks {
		widest = max(widest, smallFace.width(t.label))
	}
	left := math.Ceil(widest) + 8
	ch.plot = Rect{X: left, Y: math.Round(top), W: ch.W - left - ch.labelWidth() - labelGap, H: room}
	if ch.plot.W < leastLines {
		return false
	}
	for i := range ch.lines {
		ch.lines[i].columns = ch.columnsOf(ch.lines[i].offer)
	}
	return true
}

// px and py are where a day and an amount stand.
func (ch *historyChart) px(d scenario.Date) float64 {
	if len(ch.h.Dates) == 1 {
		return ch.plot.X + ch.plot.W/2
	}
	return ch.plot.X + float64(ch.h.From.DaysUntil(d))/ch.span*ch.plot.W
}

func (ch *historyChart) py(amount float64) float64 {
	return math.Round(ch.plot.bottom() - ch.y.share(amount)*ch.plot.H)
}

// columnsOf gathers an offer's days by the pixel they fall into.
func (ch *historyChart) columnsOf(o *history.Offer) (list []column) {
	for i, d := range ch.h.Dates {
		x, v := math.Floor(ch.px(d)), o.Total(i).Float()
		if n := len(list); n > 0 && list[n-1].x == x {
			c := &list[n-1]
			c.to, c.last, c.low, c.high = i+1, v, min(c.low, v), max(c.high, v)
			continue
		}
		list = append(list, column{x: x, from: i, to: i + 1, first: v, low: v, high: v, last: v})
	}
	return list
}

// days draws one line; a lone day is a dot.
func (ch *historyChart) days(l *dayLine) {
	if len(l.columns) == 1 {
		ch.disc(l.columns[0].x, ch.py(l.columns[0].last), 4, l.pen.colour)
		return
	}
	var xy []float64
	to := func(x, v float64) {
		y := ch.plot.bottom() - ch.y.share(v)*ch.plot.H
		if n := len(xy); n < 2 || xy[n-2] != x || xy[n-1] != y {
			xy = append(xy, x, y)
		}
	}
	for _, c := range l.columns {
		to(c.x, c.first)
		if c.to-c.from > 2 {
			to(c.x, c.low)
			to(c.x, c.high)
		}
		to(c.x, c.last)
	}
	if len(xy) < 4 {
		xy = append(xy, xy[0]+1, xy[1])
	}
	ch.line(l.pen.colour, l.pen.width, l.pen.dash, xy...)
}

// band is where the chosen offer was on the middle four of five days.
func (ch *historyChart) band() {
	o := ch.lines[0].offer
	top, bottom := ch.py(o.P90.Float()), ch.py(o.P10.Float())
	if ch.lines[0].role != roleChosen || bottom-top < 1 {
		return
	}
	ch.box(Rect{ch.plot.X, top, ch.plot.W, bottom - top}, mixed(ch.style.Theme.Ground, ch.style.Theme.Accent, 0.16))
}

// mixed is a share of one colour over another, opaque, since not every canvas knows
// translucency.
func mixed(under, over color.NRGBA, share float64) color.NRGBA {
	mix := func(a, b uint8) uint8 { return uint8(math.Round(float64(a)*(1-share) + float64(b)*share)) }
	return color.NRGBA{R: mix(under.R, over.R), G: mix(under.G, over.G), B: mix(under.B, over.B), A: 255}
}

// today marks at the right edge what a roll costs at the scenario's own quotes.
func (ch *historyChart) today(l *dayLine) {
	ch.disc(ch.plot.right()+4, ch.py(l.offer.Today.Float()), 3.2, l.pen.colour)
}
