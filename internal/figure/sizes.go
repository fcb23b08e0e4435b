package figure

import (
	"cmp"
	"image/color"
	"math"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/words"
)

// Sizes draws what a roll of an offer costs by the units bought in one order, on a
// canvas of w by h pixels. Where there is nothing to draw the drawing says why.
func Sizes(c *compare.Comparison, offer string, sizes []compare.OrderSize, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := sizesOf(c, offer, sizes, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// sizesFinding is the sizes of an offer's order before they are drawn.
type sizesFinding struct {
	title, under string
	offer        string
	sizes        []compare.OrderSize // none where there is nothing to draw
	say          words.Sizing
}

func sizesOf(c *compare.Comparison, offer string, sizes []compare.OrderSize, s Style) sizesFinding {
	f := sizesFinding{offer: offer, say: words.SizingOf(c, offer, sizes, s.Locale)}
	f.title = f.say.Title()
	if c.Find(offer) != nil && len(sizes) > 0 {
		f.under, f.sizes = f.say.Under(), sizes
	}
	return f
}

// sizesChart is the chart of the sizes in the making.
type sizesChart struct {
	*sheet
	sizesFinding
	plot  Rect // where the bars are
	axis  axis
	rows  []sizeRow // under the bars
	order []int     // of the sizes: those first that are labelled first
}

// sizeRow is one line of labels.
type sizeRow struct {
	name string
	text func(*compare.OrderSize) string
}

const (
	sizeTags  = 16.0 // what is best, what is today's, what lasts too long, above the bars
	sizeValue = 16.0 // what a roll costs, above its bar
	sizeLine  = 16.0 // of labels under the bars
	leastBars = 24.0 // pixels
)

// draw draws the chart below the line whose baseline is y.
func (f sizesFinding) draw(sh *sheet, _, y, bottom float64) {
	if len(f.sizes) == 0 {
		return
	}
	ch := &sizesChart{sheet: sh, sizesFinding: f}
	ch.table = Table{Header: ch.say.Header()}
	for i := range ch.sizes {
		ch.table.Rows = append(ch.table.Rows, ch.say.Row(&ch.sizes[i]))
		ch.order = append(ch.order, i)
	}
	slices.SortStableFunc(ch.order, func(a, b int) int { return cmp.Compare(ch.rank(a), ch.rank(b)) })
	if !ch.lay(y+8, bottom) {
		return
	}
	for i := range ch.sizes {
		ch.bar(i)
	}
	ch.hairline(ch.plot.X, ch.plot.right(), ch.py(0), ch.style.Theme.Muted)
	ch.totals()
	ch.tags()
	ch.columns()
}

// rank is how early a size is labelled: the best, today's, the ends, the others.
func (ch *sizesChart) rank(i int) int {
	switch s := &ch.sizes[i]; {
	case s.Best:
		return 0
	case ch.say.Today(s):
		return 1
	case i == len(ch.sizes)-1, i == 0:
		return 2
	}
	return 3
}

// lay shares the space out among bars and labels, and says whether there is any for the
// bars; with little height only the units are named under them.
func (ch *sizesChart) lay(top, bottom float64) bool {
	ch.rows = []sizeRow{{ch.say.Units(), ch.say.Number}, {ch.say.Landed(), ch.say.Unit}, {ch.say.Months(), ch.say.Lasts}}
	low, high := 0.0, 0.0
	for i := range ch.sizes {
		v := ch.sizes[i].TotalPerRoll.Float()
		low, high = min(low, v), max(high, v)
	}
	if high-low <= 0 {
		high = 1
	}
	ch.axis = axis{low: low, high: high}
	bottom -= 5 // letters below the last line
	top += 2*sizeTags + sizeValue
	if low < 0 {
		bottom -= sizeValue
	}
	for len(ch.rows) > 1 && bottom-top-sizeLine*float64(len(ch.rows)) < leastBars {
		ch.rows = ch.rows[:len(ch.rows)-1]
	}
	left := 0.0
	for _, r := range ch.rows {
		left = max(left, smallFace.width(r.name))
	}
	left = math.Ceil(min(left, 0.24*ch.W)) + 14
	ch.plot = Rect{left, math.Round(top), ch.W - left, math.Round(bottom - top - sizeLine*float64(len(ch.rows)))}
	return ch.plot.H >= 4
}

func (ch *sizesChart) py(v float64) float64 {
	return math.Round(ch.plot.bottom() - ch.axis.share(v)*ch.plot.H)
}

// column is the width a size has, and middle where it stands.
func (ch *sizesChart) column() float64 { return ch.plot.W / float64(len(ch.sizes)) }

func (ch *sizesChart) middle(i int) float64 { return ch.plot.X + (float64(i)+0.5)*ch.column() }

func (ch *sizesChart) barOf(i int) Rect {
	w := math.Round(min(0.62*ch.column(), 64))
	a, b := ch.py(0), ch.py(ch.sizes[i].TotalPerRoll.Float())
	return Rect{math.Round(ch.middle(i) - w/2), min(a, b), w, math.Abs(a - b)}
}

// bar draws one size: filled where it is shot in time, else its outline.
func (ch *sizesChart) bar(i int) {
	t, s, r := ch.style.Theme, &ch.sizes[i], ch.barOf(i)
	colour := t.Quiet
	if s.Best {
		colour = t.Accent
	}
	if ch.say.TooLong(s) {
		ch.frame(r, colour)
	} else {
		ch.box(r, colour)
	}
	ch.hits = append(ch.hits, Hit{
		Rect:  Rect{ch.middle(i) - ch.column()/2, ch.plot.Y - sizeValue, ch.column(), ch.H - ch.plot.Y + sizeValue},
		Offer: ch.offer, Units: s.Units, Text: ch.say.Readout(s),
	})
}

// frame draws the outline of a rectangle.
func (s *sheet) frame(r Rect, c color.NRGBA) {
	s.box(Rect{r.X, r.Y, r.W, 1}, c)
	s.box(Rect{r.X, r.Y, 1, r.H}, c)
	s.box(Rect{r.right() - 1, r.Y, 1, r.H}, c)
	s.box(Rect{r.X, r.bottom() - 1, r.W, 1}, c)
}
