package figure

import (
	"image/color"
	"math"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// CostPerRoll draws what a roll costs from each offer, part by part, on a canvas of w
// by h pixels. The chosen offer's name is set apart.
func CostPerRoll(c *compare.Comparison, chosen string, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	x, y := sh.heading(words.CostTitle(c, s.Locale), words.CostUnder(c))
	drawCost(sh, c, chosen, Rect{x, y, sh.W - x, sh.H - y}, tallestRow)
	return sh.Drawing
}

// costChart is the chart of the costs per roll in the making.
type costChart struct {
	*sheet
	c      *compare.Comparison
	chosen string
	parts  []words.CostPart
	rows   []costRow
	left   float64 // of the bars
	axis   axis
	length float64 // of the axis, pixels
	plan   rowPlan
}

// costRow is one offer's bar.
type costRow struct {
	offer     *compare.Offer
	low, high float64 // ends of the bar: the negative and the positive parts summed
	total     string
	y         float64 // top of the bar
}

// drawCost draws legend and bars below the line that ends at the top left of room; a
// row is at most tallest high.
func drawCost(sh *sheet, c *compare.Comparison, chosen string, room Rect, tallest float64) {
	ch := &costChart{sheet: sh, c: c, chosen: chosen, parts: partsThatOccur(c)}
	ch.table = costTable(c, ch.parts, sh.style)
	y := room.Y
	if len(ch.parts) > 0 {
		y = ch.legend(ch.keys(), room.X+2*legendGap, y)
	}
	ch.plan = planRows(len(c.Offers), y+14, room.bottom(), tallest, ch.compares())
	ch.collect()
	ch.scale()
	ch.bars()
	ch.compareLine()
}

func partsThatOccur(c *compare.Comparison) []words.CostPart {
	var parts []words.CostPart
	for _, p := range words.CostParts() {
		for i := range c.Offers {
			if c.Offers[i].Fault == nil && !p.Of(&c.Offers[i].PerRoll).IsZero() {
				parts = append(parts, p)
				break
			}
		}
	}
	return parts
}

func (ch *costChart) keys() []key {
	var keys []key
	for _, p := range ch.parts {
		keys = append(keys, key{colour: partColour(ch.style.Theme, p), text: p.Name()})
	}
	return keys
}

func partColour(t palette.Theme, p words.CostPart) color.NRGBA {
	switch p {
	case words.PartFilm:
		return t.Film
	case words.PartShipping:
		return t.Shipping
	case words.PartTax:
		return t.Tax
	case words.PartFees:
		return t.Fees
	case words.PartLoading:
		return t.Loading
	case words.PartEquipment:
		return t.Equipment
	case words.PartDeveloping:
		return t.Developing
	}
	return t.Time
}

// compares says whether there is a baseline to compare the others with.
func (ch *costChart) compares() bool {
	computed := 0
	for i := range ch.c.Offers {
		if ch.c.Offers[i].Fault == nil {
			computed++
		}
	}
	return computed > 1 && ch.c.Baseline() != nil
}

// collect picks the rows there is room for: all, or else without the least telling.
func (ch *costChart) collect() {
	for _, i := range mostTelling(ch.c, ch.chosen, ch.plan.rows) {
		row := costRow{offer: &ch.c.Offers[i], y: ch.plan.bar(len(ch.rows))}
		if row.offer.Fault == nil {
			row.total = ch.style.Locale.Number(row.offer.PerRoll.Total, money.Places(ch.c.Currency()))
			for _, p := range ch.parts {
				v := p.Of(&row.offer.PerRoll).Float()
				row.low, row.high = row.low+min(v, 0), row.high+max(v, 0)
			}
		}
		ch.rows = append(ch.rows, row)
	}
}

// scale fits the bars and the totals after them into the width.
func (ch *costChart) scale() {
	if ch.plan.inline {
		widest := 0.0
		for _, r := range ch.rows {
			widest = max(widest, ch.nameFace(r).width(tidy(r.offer.Name)))
		}
		ch.left = math.Ceil(min(widest, 0.36*ch.W)) + 12
	}
	low, high, label := 0.0, 0.0, 0.0
	for _, r := range ch.rows {
		low, high = min(low, r.low), max(high, r.high)
		label = max(label, ch.plan.total.width(r.total))
	}
	if high-low <= 0 {
		high = 1
	}
	ch.axis = axis{low: low, high: high}
	ch.length = ch.W - ch.left - label - 2*afterBar
}

// afterBar is the space between a bar and its total.
const afterBar = 8

// x is where a value stands on the axis.
func (ch *costChart) x(value float64) float64 {
	return ch.left + ch.axis.share(value)*ch.length
}

// nameFace sets the chosen offer's name in bold.
func (ch *costChart) nameFace(r costRow) face {
	f := ch.plan.name
	f.bold = r.offer.Name == ch.chosen
	return f
}

// costTable has the total before its parts: it is in sight however narrow the page is.
func costTable(c *compare.Comparison, parts []words.CostPart, s Style) Table {
	t := Table{Header: []string{words.CostUnder(c), "total"}}
	for _, p := range parts {
		t.Header = append(t.Header, p.Name())
	}
	digits := money.Places(c.Currency())
	for i := range c.Offers {
		o := &c.Offers[i]
		row := []string{o.Name}
		if o.Fault != nil {
			row = append(row, words.NotComputed(c, o))
		} else {
			row = append(row, s.Locale.Number(o.PerRoll.Total, digits))
			for _, p := range parts {
				row = append(row, s.Locale.Number(p.Of(&o.PerRoll), digits))
			}
		}
		for len(row) < len(t.Header) {
			row = append(row, "")
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
