package handout

import (
	"reelworth/internal/figure"
	"reelworth/internal/words"
)

// waysInFront is how many ways to buy the first page always has room for.
const waysInFront = 8

// chartPixels is how wide a chart is laid out, so that its smallest letters print at
// some 7.5 points.
const chartPixels = 740

// front is the finding, both charts and the ways to buy.
func (m *maker) front() {
	m.newPage()
	h := words.Verdict(m.c, m.o.Locale)
	m.text(m.whole(), bodyFace, m.c.Scenario.Name, 1, true)
	m.text(m.whole(), findingFace, h.Text, 3, false)
	m.y++
	m.text(m.whole(), bodyFace, h.Under, 4, false)
	m.text(m.whole(), bodyFace, words.ShownIn(m.c, m.o.Locale), 2, true)
	out := words.LeftOut(m.c)
	m.items(m.whole(), out, itemLines, 4*pitch(bodyFace), words.MoreLeftOut)
	m.charts()
	m.heading(m.whole(), words.HandoutWays)
	m.ways()
}

// charts stand between the finding and the table of the ways to buy.
func (m *maker) charts() {
	ways := min(m.computed(), waysInFront)
	table := pitch(headFace) + 5 + pitch(smallFace) + float64(ways)*pitch(bodyFace)
	const gap, tallestBars, tallestSpend = 5.0, 82.0, 96.0
	both := m.room() - table - 2*gap
	if both < 60 || m.computed() == 0 {
		return
	}
	bars := min(both/2, tallestBars, 21+11*float64(len(m.c.Offers))) // few bars need no more
	spend := min(both-bars, tallestSpend)
	pixels := func(mm float64) float64 { return mm / m.width() * chartPixels }
	best := m.c.Verdict.Reel
	for _, d := range []*figure.Drawing{
		figure.CostPerRoll(m.c, best, chartPixels, pixels(bars), m.style()),
		figure.Spend(m.c, best, chartPixels, pixels(spend), m.style()),
	} {
		m.y += gap
		m.y += d.Print(m.page(), margin, m.y, m.width())
	}
}

// computed is how many ways to buy could be computed.
func (m *maker) computed() (n int) {
	for i := range m.c.Offers {
		if m.c.Offers[i].Fault == nil {
			n++
		}
	}
	return n
}

// ways is the table of the ways to buy.
func (m *maker) ways() {
	var rows []tableRow
	for _, w := range words.Ways(m.c, m.o.Locale) {
		rows = append(rows, tableRow{w.Cells, w.Best})
	}
	if len(rows) == 0 {
		m.text(m.whole(), bodyFace, words.NothingComputed, 1, true)
		return
	}
	m.table(m.whole(), words.WaysHead(m.c), rows)
}
