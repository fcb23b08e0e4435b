package figure

import (
	"cmp"
	"math"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// CutSizes draws what a standard roll of a reel costs by the exposures in a cassette, and
// below it the film each size leaves over, on a canvas of w by h pixels. Where there is
// nothing to draw the drawing says why.
func CutSizes(c *compare.Comparison, offer string, sizes []compare.CutSize, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := cutsOf(c, offer, sizes, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// cutsFinding is the cut sizes of a reel before they are drawn.
type cutsFinding struct {
	title, under string
	offer        string
	digits       int // of the amounts' minor unit
	sizes        []compare.CutSize
	say          words.Cutting
}

func cutsOf(c *compare.Comparison, offer string, sizes []compare.CutSize, s Style) cutsFinding {
	f := cutsFinding{offer: offer, digits: money.Places(c.Currency()), say: words.CuttingOf(c, offer, sizes, s.Locale)}
	f.title = f.say.Title()
	if c.Find(offer) != nil && len(sizes) > 0 {
		f.under, f.sizes = f.say.Under(), sizes
	}
	return f
}

// cutsChart is the chart of cut sizes in the making.
type cutsChart struct {
	*sheet
	cutsFinding
	plot  Rect // of the costs
	left  Rect // of the film left over, below them; no height where there is no room
	y     axis
	ticks []tick
	most  float64  // metres left over
	rows  []cutRow // of labels, below all
	order []int    // of the sizes: those first that are labelled first
}

// cutRow is one line of labels.
type cutRow struct {
	name string
	text func(*compare.CutSize) string
}

// Heights in pixels.
const (
	cutTags   = 30.0 // what is said of the best and of today's, above the costs
	cutBars   = 26.0 // of the film left over
	cutGap    = 8.0  // above them
	cutLine   = 16.0 // of labels
	leastCuts = 36.0 // of the costs
)

// draw draws the chart below the line whose baseline is y.
func (f cutsFinding) draw(sh *sheet, _, y, bottom float64) {
	if len(f.sizes) == 0 {
		return
	}
	ch := &cutsChart{sheet: sh, cutsFinding: f}
	ch.table = Table{Header: ch.say.Header()}
	for i := range ch.sizes {
		ch.table.Rows = append(ch.table.Rows, ch.say.Row(&ch.sizes[i]))
		ch.order = append(ch.order, i)
		ch.most = max(ch.most, ch.say.Metres(&ch.sizes[i]))
	}
	slices.SortStableFunc(ch.order, func(a, b int) int { return cmp.Compare(ch.rank(a), ch.rank(b)) })
	if !ch.lay(y+6, bottom) {
		return
	}
	ch.amountLines(ch.plot, ch.y, ch.ticks, ch.py)
	ch.leftOver()
	ch.costs()
	ch.tags()
	ch.labels()
}

// rank is how early a size is labelled: the best, today's, the ends, then every sixth,
// every third, and the others.
func (ch *cutsChart) rank(i int) int {
	switch s := &ch.sizes[i]; {
	case s.Best:
		return 0
	case ch.say.IsOwn(s):
		return 1
	case i == len(ch.sizes)-1, i == 0:
		return 2
	case s.Exposures%6 == 0:
		return 3
	case s.Exposures%3 == 0:
		return 4
	}
	return 5
}

// lay shares the space out among costs, film left over and labels, and says whether there
// is any for the costs; what is least telling goes first where there is little.
func (ch *cutsChart) lay(top, bottom float64) bool {
	ch.rows = []cutRow{{words.CutExposures, ch.say.Number}, {words.CutRolls, ch.say.Rolls}}
	bottom -= 5 // letters below the last line
	top += cutTags
	bars := cutBars + cutGap
	room := func() float64 { return bottom - top - bars - cutLine*float64(len(ch.rows)) }
	if room() < leastCuts {
		bars = 0
	}
	for len(ch.rows) > 0 && room() < leastCuts {
		ch.rows = ch.rows[:len(ch.rows)-1]
	}
	height := math.Round(room())
	if height < leastCuts {
		return false
	}
	ch.scale(height)
	gutter := 0.0
	for _, t := range ch.ticks {
		gutter = max(gutter, smallFace.width(t.label))
	}
	for _, r := range ch.rows {
		gutter = max(gutter, endName.width(r.name))
	}
	if bars > 0 {
		gutter = max(gutter, smallFace.width(words.CutLeft))
	}
	gutter = math.Ceil(min(gutter, 0.24*ch.W)) + 10
	ch.plot = Rect{gutter, math.Round(top), ch.W - gutter, height}
	ch.left = Rect{gutter, ch.plot.bottom() + cutGap, ch.plot.W, max(bars-cutGap, 0)}
	return true
}

// scale takes the ticks of the costs, which need not begin at nothing: they are told apart
// by where they stand, not by how long they are.
func (ch *cutsChart) scale(height float64) {
	low, high := math.Inf(1), math.Inf(-1)
	for i := range ch.sizes {
		v := ch.sizes[i].TotalPerRoll.Float()
		low, high = min(low, v), max(high, v)
	}
	ticker := amounts{most: min(max(int(height/34), 1), 6), digits: ch.digits, locale: ch.style.Locale}
	ch.ticks = ticker.ticks(low, high)
	ch.y = axis{ch.ticks[0].value, ch.ticks[len(ch.ticks)-1].value}
	if ch.y.high <= ch.y.low {
		ch.y.high = ch.y.low + 1
	}
}

func (ch *cutsChart) py(v float64) float64 {
	return math.Round(ch.plot.bottom() - ch.y.share(v)*ch.plot.H)
}

// column is the width a size has, and middle where it stands.
func (ch *cutsChart) column() float64 { return ch.plot.W / float64(len(ch.sizes)) }

func (ch *cutsChart) middle(i int) float64 { return ch.plot.X + (float64(i)+0.5)*ch.column() }

// costs draws a dot for each size, tied to its neighbours by a quiet line.
func (ch *cutsChart) costs() {
	t := ch.style.Theme
	var xy []float64
	for i := range ch.sizes {
		xy = append(xy, ch.middle(i), ch.py(ch.sizes[i].TotalPerRoll.Float()))
	}
	if len(xy) > 2 {
		ch.line(t.Rule, 1.5, nil, xy...)
	}
	for i := range ch.sizes {
		s := &ch.sizes[i]
		x, y := xy[2*i], xy[2*i+1]
		switch {
		case s.Best:
			ch.disc(x, y, 5, t.Accent)
		case ch.say.IsOwn(s):
			ch.disc(x, y, 5, t.Ink)
			ch.disc(x, y, 3, t.Ground)
		default:
			ch.disc(x, y, min(3, 0.4*ch.column()), t.Quiet)
		}
		ch.hits = append(ch.hits, Hit{
			Rect:  Rect{ch.middle(i) - ch.column()/2, ch.plot.Y, ch.column(), ch.H - ch.plot.Y},
			Offer: ch.offer, Text: ch.say.Readout(s),
		})
	}
}

// leftOver draws the film that each size leaves over.
func (ch *cutsChart) leftOver() {
	if ch.left.H < 1 {
		return
	}
	t := ch.style.Theme
	name := smallFace.fit(words.CutLeft, ch.left.X-8)
	ch.write(smallFace, 0, ch.left.bottom()-1, name, t.Muted)
	width := math.Round(min(0.5*ch.column(), 24))
	for i := range ch.sizes {
		if ch.most <= 0 {
			break
		}
		height := math.Round(ch.say.Metres(&ch.sizes[i]) / ch.most * ch.left.H)
		ch.box(Rect{math.Round(ch.middle(i) - width/2), ch.left.bottom() - height, width, height}, t.Quiet)
	}
	ch.hairline(ch.left.X, ch.left.right(), ch.left.bottom(), t.Muted)
}
