package figure

import (
	"math"
	"time"

	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// label is what stands at a line's end: what a roll costs today, and of what.
func (ch *historyChart) label(l *dayLine) (total, name string) {
	return ch.style.Locale.Number(l.offer.Today, money.Places(ch.h.Scenario.Home)), tidy(words.Called(&ch.h.Scenario, l.offer.Name))
}

// labelWidth is how wide the column of end labels is, under their heading.
func (ch *historyChart) labelWidth() float64 {
	widest, total := smallFace.width(words.TodayLabel), 0.0
	for i := range ch.lines {
		t, name := ch.label(&ch.lines[i])
		total = max(total, endTotal.width(t))
		widest = max(widest, endTotal.width(t)+4+endName.width(name))
	}
	return math.Ceil(min(widest, max(mostLabel*ch.W, total, smallFace.width(words.TodayLabel))))
}

// labels sets the labels beside today's marks, pushed apart, the least telling left out
// where there is no room, with a heading over them.
func (ch *historyChart) labels() {
	x := ch.plot.right() + labelGap
	top, bottom := ch.plot.Y-8, ch.plot.bottom()+8
	if bottom-top >= 3*labelRow {
		ch.write(smallFace, x, top+11, words.TodayLabel, ch.style.Theme.Muted)
		top += labelRow
	}
	var labels []endLabel
	pens := map[string]pen{}
	for i := range ch.lines {
		if float64(len(labels)+1)*labelRow > bottom-top {
			break
		}
		l := &ch.lines[i]
		total, name := ch.label(l)
		pens[total+name] = l.pen
		labels = append(labels, endLabel{total: total, name: name, height: labelRow, want: ch.py(l.offer.Today.Float())})
	}
	pushApart(labels, top, bottom)
	for _, l := range labels {
		p := pens[l.total+l.name]
		middle := l.y + labelRow/2
		if math.Abs(middle-l.want) > 3 {
			ch.line(p.colour, 1, nil, ch.plot.right()+6, l.want, x-2, middle)
		}
		end := ch.write(endTotal, x, middle+4, l.total, p.text)
		ch.write(endName, end+4, middle+4, endName.fit(l.name, ch.W-end-4), p.text)
	}
}

// extremes rings the dearest and the cheapest day of the chosen offer, with their days.
func (ch *historyChart) extremes() {
	l := &ch.lines[0]
	if l.role != roleChosen || len(ch.h.Dates) < 2 || l.offer.Low.Total.Equal(l.offer.High.Total) {
		return
	}
	for _, p := range []history.Point{l.offer.High, l.offer.Low} {
		x, y := ch.px(p.Date), ch.py(p.Total.Float())
		if ch.ringLabel(x, y, words.DayAndAmount(ch.h, p, ch.style.Locale), l.pen, ch.covered) {
			ch.ringAt(x, y, l.pen.text)
		}
	}
}

// covered counts the lines a rectangle would cross, and what is written already.
func (ch *historyChart) covered(r Rect) float64 {
	if r.X < ch.plot.X || r.right() > ch.plot.right() || r.Y < ch.plot.Y || r.bottom() > ch.plot.bottom() || !ch.clear(r) {
		return outside
	}
	cost := 0.0
	for i := range ch.lines {
		for _, c := range ch.lines[i].columns {
			if c.x >= r.X && c.x <= r.right() && ch.py(c.high) <= r.bottom() && ch.py(c.low) >= r.Y {
				cost += 2 / r.W
			}
		}
	}
	return cost
}

// readouts makes regions of the lines, a few pixels wide; of those on one another the most
// telling goes first.
func (ch *historyChart) readouts() {
	const wide = 3
	for i := range ch.lines {
		l := &ch.lines[i]
		end := math.Inf(-1)
		for n := range l.columns {
			c := &l.columns[n]
			if c.x < end && n < len(l.columns)-1 {
				continue
			}
			end = c.x + wide
			top, bottom := ch.py(c.high), ch.py(c.low)
			x := min(c.x, ch.plot.right()-wide)
			ch.hits = append(ch.hits, Hit{
				Rect: Rect{x, top - 2, wide, bottom - top + 4}, Offer: l.offer.Name,
				Text: words.DayReadout(ch.h, l.offer, c.to-1, ch.style.Locale),
			})
		}
		ch.hits = append(ch.hits, Hit{
			Rect: Rect{ch.plot.right() + 1, ch.py(l.offer.Today.Float()) - 3, 6, 6}, Offer: l.offer.Name,
			Text: words.TodayReadout(ch.h, l.offer, ch.style.Locale),
		})
	}
}

// calendarSteps are how many months apart labels may stand.
var calendarSteps = []int{1, 2, 3, 6, 12, 24, 60, 120}

// calendar labels the days below the lines: years or months where at least two fit, else
// the first and the last day.
func (ch *historyChart) calendar() {
	y := ch.plot.bottom() + 15
	for _, step := range calendarSteps {
		marks := ch.months(step)
		if step < 12 && float64(len(marks))*(smallFace.width("May 2025")+14) > ch.plot.W ||
			float64(len(marks))*(smallFace.width("2025")+14) > ch.plot.W {
			continue
		}
		if len(marks) < 2 {
			break
		}
		ch.marks(marks, step, y)
		return
	}
	t := ch.style.Theme
	first, last := words.Day(ch.h.From), words.Day(ch.h.To)
	if len(ch.h.Dates) == 1 {
		ch.write(smallFace, ch.plot.X+(ch.plot.W-smallFace.width(first))/2, y, first, t.Muted)
		return
	}
	end := ch.write(smallFace, ch.plot.X, y, smallFace.fit(first, ch.plot.W), t.Muted)
	if x := ch.plot.right() - smallFace.width(last); x > end+8 {
		ch.write(smallFace, x, y, last, t.Muted)
	}
}

// months are the first days of every so many months within the history.
func (ch *historyChart) months(step int) (list []scenario.Date) {
	at := scenario.Month{Year: ch.h.From.Year, Month: time.January}
	if step > 12 {
		at.Year -= at.Year % (step / 12)
	}
	for ; ; at = at.Add(step) {
		d := scenario.Date{Year: at.Year, Month: at.Month, Day: 1}
		if d.Compare(ch.h.To) > 0 {
			return list
		}
		if d.Compare(ch.h.From) >= 0 {
			list = append(list, d)
		}
	}
}

func (ch *historyChart) marks(list []scenario.Date, step int, y float64) {
	end := 0.0
	for _, d := range list {
		x := math.Round(ch.px(d))
		ch.box(Rect{x, ch.plot.bottom(), 1, 4}, ch.style.Theme.Muted)
		text := words.YearOrMonth(d, step >= 12)
		if start := x - 1; start >= end && start+smallFace.width(text) <= ch.plot.right()+labelGap {
			end = ch.write(smallFace, start, y, text, ch.style.Theme.Muted) + 8
		}
	}
}

// historyTable is the twin: what is told of each offer, then its last day of every month,
// or every day where there are few.
func historyTable(h *history.History, s Style) Table {
	t := Table{Header: []string{words.HistoryTableHead(h)}}
	for i := range h.Offers {
		t.Header = append(t.Header, h.Offers[i].Name)
	}
	row := func(name string, cell func(o *history.Offer) string) {
		cells := []string{name}
		for i := range h.Offers {
			cells = append(cells, cell(&h.Offers[i]))
		}
		t.Rows = append(t.Rows, cells)
	}
	for _, told := range words.HistoryTold(h, s.Locale) {
		row(told.Name, told.Of)
	}
	for i, d := range h.Dates {
		if len(h.Dates) > mostDayRows && i+1 < len(h.Dates) && h.Dates[i+1].Month == d.Month {
			continue
		}
		row(words.Day(d), func(o *history.Offer) string { return number(o, i, h, s.Locale) })
	}
	return t
}

// mostDayRows is how many days are told one by one.
const mostDayRows = 62

func number(o *history.Offer, i int, h *history.History, l money.Locale) string {
	return l.Number(o.Total(i), money.Places(h.Scenario.Home))
}
