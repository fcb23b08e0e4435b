package figure

import (
	"math"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Spend draws the cash each offer has taken so far, month by month, on a canvas of w by
// h pixels.
func Spend(c *compare.Comparison, chosen string, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	_, y := sh.heading(words.SpendTitle(c, s.Locale), words.SpendUnder(c))
	drawSpend(sh, c, chosen, y, sh.H)
	return sh.Drawing
}

// spendChart is the chart of the year's spending in the making.
type spendChart struct {
	*sheet
	c      *compare.Comparison
	lines  []spendLine
	months int
	plot   Rect // where the lines are
	x, y   axis
	ticks  []tick
}

// spendLine is one offer's steps.
type spendLine struct {
	offer *compare.Offer
	short string
	role  role
	pen   pen
	cash  []float64 // cumulative
}

// drawSpend draws the chart below the line whose baseline is y.
func drawSpend(sh *sheet, c *compare.Comparison, chosen string, y, bottom float64) {
	ch := &spendChart{sheet: sh, c: c, months: c.Scenario.Months}
	ch.table = spendTable(c, sh.style)
	ch.collect(chosen)
	bottom = ch.faults(y, bottom)
	if len(ch.lines) == 0 || ch.months < 1 {
		return
	}
	ch.lay(y+14, bottom)
	ch.grid()
	ch.calendar()
	for i := len(ch.lines) - 1; i >= 0; i-- { // the most telling on top
		ch.steps(&ch.lines[i])
	}
	for i := len(ch.lines) - 1; i >= 0; i-- {
		ch.orders(&ch.lines[i])
	}
	ch.endLabels()
	ch.ring()
	ch.readouts()
}

// collect takes the computed offers, the most telling first.
func (ch *spendChart) collect(chosen string) {
	short := shortNames(ch.c.Offers)
	computed := 0
	for i := range ch.c.Offers {
		if ch.c.Offers[i].Fault == nil {
			computed++
		}
	}
	quiet := 0
	for want := roleChosen; want <= roleQuiet; want++ {
		for i := range ch.c.Offers {
			o := &ch.c.Offers[i]
			if o.Fault != nil || roleOf(ch.c, o.Name, chosen) != want {
				continue
			}
			line := spendLine{offer: o, short: short[i], role: want, pen: ch.penFor(want, quiet, computed)}
			if want == roleQuiet {
				quiet++
			}
			for _, f := range o.Year.Cumulative {
				line.cash = append(line.cash, f.Float())
			}
			if len(line.cash) > 0 {
				ch.months = min(ch.months, len(line.cash))
				ch.lines = append(ch.lines, line)
			}
		}
	}
}

// lay shares the space out among axis labels, lines and end labels.
func (ch *spendChart) lay(top, bottom float64) {
	low, high := 0.0, 0.0
	for _, l := range ch.lines {
		for _, v := range l.cash {
			low, high = min(low, v), max(high, v)
		}
	}
	below := 20.0
	if ch.yearsMarked() {
		below += 14
	}
	room := bottom - top - below
	ticker := amounts{most: min(max(int(room/34), 1), 6), digits: money.Places(ch.c.Currency()), locale: ch.style.Locale}
	if high-low <= 0 {
		high = float64(ticker.most)
	}
	ch.ticks = ticker.ticks(low, high)
	widest := 0.0
	for _, t := range ch.ticks {
		widest = max(widest, smallFace.width(t.label))
	}
	ch.y = axis{low: ch.ticks[0].value, high: ch.ticks[len(ch.ticks)-1].value}
	ch.x = axis{low: 0, high: float64(ch.months)}
	left := math.Ceil(widest) + 8
	ch.plot = Rect{X: left, Y: math.Round(top), W: ch.W - left - ch.labelWidth() - ch.gap(), H: math.Round(room)}
}

// px and py are where a month's start and an amount stand.
func (ch *spendChart) px(month int) float64 {
	return math.Round(ch.plot.X + ch.x.share(float64(month))*ch.plot.W)
}

func (ch *spendChart) py(amount float64) float64 {
	return math.Round(ch.plot.bottom() - ch.y.share(amount)*ch.plot.H)
}

// grid draws the amounts.
func (ch *spendChart) grid() { ch.amountLines(ch.plot, ch.y, ch.ticks, ch.py) }

// amountLines draws amounts as hairlines across a plot, with their labels left of it.
func (s *sheet) amountLines(r Rect, along axis, ticks []tick, py func(float64) float64) {
	t := s.style.Theme
	for _, tick := range ticks {
		y := py(tick.value)
		s.hairline(r.X, r.right(), y, t.Rule)
		if box := textBox(smallFace, r.X-7-smallFace.width(tick.label), y+4, tick.label, t.Muted); box.Rect.X >= 0 && s.clear(box.Rect) {
			s.texts = append(s.texts, box)
		}
	}
	if along.low < 0 && along.high >= 0 {
		s.hairline(r.X, r.right(), py(0), t.Muted)
	}
}

// steps draws one line: flat through each month, up where it is paid.
func (ch *spendChart) steps(l *spendLine) {
	var xy []float64
	for m := range ch.months {
		y := ch.py(l.cash[m])
		xy = append(xy, ch.px(m), y, ch.px(m+1), y)
	}
	ch.line(l.pen.colour, l.pen.width, l.pen.dash, xy...)
}

// orders draws a dot where film is ordered, a smaller one where that is every month.
func (ch *spendChart) orders(l *spendLine) {
	count := 0
	for _, n := range l.offer.Year.Orders {
		if n > 0 {
			count++
		}
	}
	size := 3.2
	if 3*count > 2*ch.months || ch.px(1)-ch.px(0) < 12 {
		size = 1.8
	}
	for m := range min(ch.months, len(l.offer.Year.Orders)) {
		if l.offer.Year.Orders[m] > 0 {
			ch.disc(ch.px(m), ch.py(l.cash[m]), size, l.pen.colour)
		}
	}
}

// readouts makes every month of every line a region; of those on one another the most
// telling goes first.
func (ch *spendChart) readouts() {
	for i := range ch.lines {
		l := &ch.lines[i]
		for m := range ch.months {
			ch.hits = append(ch.hits, Hit{
				Rect:  Rect{X: ch.px(m), Y: ch.py(l.cash[m]) - 2, W: ch.px(m+1) - ch.px(m), H: 4},
				Offer: l.offer.Name, Month: m + 1,
				Text: words.MonthReadout(ch.c, l.offer, m+1, ch.style.Locale),
			})
		}
	}
}

// faults sets a line for every offer with a fault at the bottom, as far as there is
// room, and returns where the chart ends.
func (ch *spendChart) faults(top, bottom float64) float64 {
	var faulty []*compare.Offer
	for i := range ch.c.Offers {
		if ch.c.Offers[i].Fault != nil {
			faulty = append(faulty, &ch.c.Offers[i])
		}
	}
	const line = 18
	room := int((bottom - top) / 3 / line)
	if len(ch.lines) == 0 {
		room = int((bottom - top - 10) / line)
	}
	shown := min(len(faulty), max(room, 1))
	y := bottom - float64(shown)*line
	if len(ch.lines) == 0 {
		y = top + 10
	}
	end := y
	for i, o := range faulty[:shown] {
		text := words.FaultReadout(ch.c, o)
		if i == shown-1 && shown < len(faulty) {
			text = words.NoRoom(len(faulty) - shown + 1)
		}
		y += line
		ch.leftOut(ch.c, o, 0, y-5, ch.W, text)
	}
	return end
}

func spendTable(c *compare.Comparison, s Style) Table {
	t := Table{Header: []string{words.SpentByMonth(c)}}
	var computed []*compare.Offer
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Fault == nil {
			computed = append(computed, o)
			t.Header = append(t.Header, o.Name, words.OrdersColumn)
		}
	}
	digits := money.Places(c.Currency())
	for m := range c.Scenario.Months {
		row := []string{words.MonthAndYear(&c.Scenario, m+1)}
		for _, o := range computed {
			amount, orders := "", ""
			if m < len(o.Year.Cumulative) && m < len(o.Year.Orders) {
				amount = s.Locale.Number(o.Year.Cumulative[m], digits)
				orders = s.Locale.Number(exact.Int(o.Year.Orders[m]), 0)
			}
			row = append(row, amount, orders)
		}
		t.Rows = append(t.Rows, row)
	}
	left := []string{words.WorthLeft}
	for _, o := range computed {
		left = append(left, s.Locale.Number(o.Year.FilmLeftValue, digits), "")
	}
	t.Rows = append(t.Rows, left)
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Fault != nil {
			row := make([]string, len(t.Header))
			row[0] = words.FaultReadout(c, o)
			t.Rows = append(t.Rows, row)
		}
	}
	return t
}
