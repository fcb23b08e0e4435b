package figure

import (
	"image/color"
	"math"
	"slices"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// Swings draws how far the saving of an offer goes with each input alone, the widest
// first, on a canvas of w by h pixels. Where nothing is moved the drawing says why.
func Swings(c *compare.Comparison, offer string, swings []compare.Swing, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := swingsOf(c, offer, swings, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// swingsFinding is an offer's swings before they are drawn.
type swingsFinding struct {
	title, under string
	c            *compare.Comparison
	offer        string
	swings       []compare.Swing // the widest first; none where there is nothing to draw
	saving       exact.Fraction  // today's
	say          words.Swinging
}

func swingsOf(c *compare.Comparison, offer string, swings []compare.Swing, s Style) swingsFinding {
	f := swingsFinding{c: c, offer: offer, say: words.SwingingOf(c, offer, swings, s.Locale)}
	f.title, f.under = f.say.Title(), f.say.Under()
	if o := c.Find(offer); o != nil && o.Against != nil && len(swings) > 0 {
		f.saving = o.Against.Saving
		f.swings = slices.Clone(swings)
		slices.SortStableFunc(f.swings, func(a, b compare.Swing) int { return b.Spread().Cmp(a.Spread()) })
	}
	return f
}

// swingsChart is the chart of the swings in the making.
type swingsChart struct {
	*sheet
	swingsFinding
	rows    []swingRow
	largest exact.Fraction // of all savings, by size
	today   float64
	axis    axis
	bars    Rect // where the bars are
	pitch   float64
	above   bool // names stand above the bars, not beside them
	detail  int  // of what stands at a bar's ends
}

// swingRow is one bar: its two ends, the smaller saving first.
type swingRow struct {
	swing *compare.Swing
	ends  [2]swingEnd
}

// swingEnd is one end of a bar.
type swingEnd struct {
	saving   float64
	text, at string
}

// What stands at a bar's ends, by the room there is.
const (
	endsBare   = iota
	endsSaving // what is saved
	endsFull   // and at which value of the input
)

const (
	swingRowAbove    = 54.0 // at most, names above the bars
	leastSwingAbove  = 30.0
	leastSwingHeight = 16.0
	swingTop         = 18.0 // today's saving, above the bars
	swingGap         = 6.0  // from a bar to what stands at its end
)

// draw draws the chart below the line whose baseline is y.
func (f swingsFinding) draw(sh *sheet, _, y, bottom float64) {
	if len(f.swings) == 0 {
		return
	}
	ch := &swingsChart{sheet: sh, swingsFinding: f, today: f.saving.Float(), largest: f.saving.Abs()}
	ch.table = Table{Header: ch.say.Header()}
	for i := range ch.swings {
		w := &ch.swings[i]
		ch.table.Rows = append(ch.table.Rows, ch.say.Row(w))
		ch.largest = exact.Max(ch.largest, exact.Max(w.SavingLow.Abs(), w.SavingHigh.Abs()))
	}
	ch.collect()
	y = ch.legend(ch.keys(), 0, y+legendLine)
	dropped, ok := ch.lay(y+8, bottom)
	if !ok {
		return
	}
	ch.marks()
	for i := range ch.rows {
		ch.bar(&ch.rows[i], ch.bars.Y+float64(i)*ch.pitch)
	}
	ch.axisNames()
	if dropped > 0 {
		text := smallFace.fit(ch.say.NoRoom(dropped), ch.W)
		ch.write(smallFace, 0, ch.bars.bottom()+11, text, ch.style.Theme.Muted)
	}
}

func (ch *swingsChart) collect() {
	low, high := ch.today, ch.today
	for i := range ch.swings {
		w := &ch.swings[i]
		row := swingRow{swing: w, ends: [2]swingEnd{ch.end(w, w.Low, w.SavingLow), ch.end(w, w.High, w.SavingHigh)}}
		if row.ends[1].saving < row.ends[0].saving {
			row.ends[0], row.ends[1] = row.ends[1], row.ends[0]
		}
		low, high = min(low, row.ends[0].saving), max(high, row.ends[1].saving)
		ch.rows = append(ch.rows, row)
	}
	// The line of no saving is drawn where it is not far off.
	switch near := (high - low) / 2; {
	case low > 0 && low < near:
		low = 0
	case high < 0 && -high < near:
		high = 0
	}
	if high-low <= 0 {
		high = low + 1
	}
	ch.axis = axis{low: low, high: high}
}

func (ch *swingsChart) end(w *compare.Swing, x, saving exact.Fraction) swingEnd {
	return swingEnd{saving: saving.Float(), text: ch.say.Saving(saving, ch.largest), at: ch.say.At(w, x)}
}

// keys are what the parts of bars stand for that occur.
func (ch *swingsChart) keys() []key {
	t := ch.style.Theme
	var more, less, loses bool
	for _, r := range ch.rows {
		from, to := r.ends[0].saving, r.ends[1].saving
		more = more || to > max(ch.today, 0)
		less = less || max(from, 0) < min(to, ch.today)
		loses = loses || from < 0
	}
	var keys []key
	if more {
		keys = append(keys, key{colour: t.Good, text: words.SavesMore})
	}
	if less {
		keys = append(keys, key{colour: t.Quiet, text: words.SavesLess})
	}
	if loses {
		keys = append(keys, key{colour: t.Muted, text: words.CostsMore, hatched: true})
	}
	return keys
}

// lay shares the space out among names, bars and what stands at their ends, and says how
// many rows it had to drop; ok is false where there is no room for any.
func (ch *swingsChart) lay(top, bottom float64) (dropped int, ok bool) {
	n := len(ch.rows)
	room := bottom - top - swingTop
	if ch.hasZero() {
		room -= swingTop
	}
	ch.pitch = room / float64(n)
	ch.above = ch.W < 560 && ch.pitch >= leastSwingAbove
	if ch.pitch < leastSwingHeight {
		ch.pitch = leastSwingHeight
		kept := int((room - leastSwingHeight) / leastSwingHeight)
		if kept < 1 {
			return 0, false
		}
		dropped = n - kept
		ch.rows = ch.rows[:kept]
	}
	if ch.above {
		ch.pitch = min(ch.pitch, swingRowAbove)
	}
	ch.pitch = math.Floor(ch.pitch)
	left := 0.0
	if !ch.above {
		for _, r := range ch.rows {
			left = max(left, smallFace.width(ch.name(r.swing)))
		}
		left = math.Ceil(min(left, 0.4*ch.W)) + 12
	}
	for ch.detail = endsFull; ch.detail > endsBare; ch.detail-- {
		if ch.bars = ch.barsWithin(left, top); ch.bars.W >= max(0.2*ch.W, 50) {
			return dropped, true
		}
	}
	ch.bars = ch.barsWithin(left, top)
	return dropped, true
}

// barsWithin is where the bars are at the detail at hand: as wide as leaves room for
// every row's texts.
func (ch *swingsChart) barsWithin(left, top float64) Rect {
	var before, after float64
	for i := range ch.rows {
		before = max(before, ch.endWidth(&ch.rows[i].ends[0]))
		after = max(after, ch.endWidth(&ch.rows[i].ends[1]))
	}
	x := left + before
	return Rect{X: x, Y: top + swingTop, W: max(ch.W-x-after, 1), H: ch.pitch * float64(len(ch.rows))}
}

// name names a row, its offers in short.
func (ch *swingsChart) name(w *compare.Swing) string {
	text := ch.say.Name(w)
	short := shortNames(ch.c.Offers)
	for i := range ch.c.Offers {
		if name := ch.c.Offers[i].Name; name != "" && (name == ch.offer || name == ch.c.Scenario.Baseline) {
			text = strings.Replace(text, name, short[i], 1)
		}
	}
	return tidy(text)
}

func (ch *swingsChart) endWidth(e *swingEnd) float64 {
	switch ch.detail {
	case endsBare:
		return 1
	case endsSaving:
		return swingGap + swingFace.width(e.text)
	}
	return swingGap + swingFace.width(e.text) + 4 + smallFace.width(e.at)
}

// swingFace is of what is saved at a bar's end.
var swingFace = face{bold: true, size: 11.5}

func (ch *swingsChart) px(saving float64) float64 {
	return math.Round(ch.bars.X + ch.axis.share(saving)*ch.bars.W)
}

func (ch *swingsChart) hasZero() bool { return ch.axis.low <= 0 && ch.axis.high >= 0 }

// marks draws the line of no saving, and today's.
func (ch *swingsChart) marks() {
	t := ch.style.Theme
	if ch.hasZero() {
		ch.box(Rect{ch.px(0), ch.bars.Y - 2, 1, ch.bars.H + 6}, t.Muted)
	}
	x := ch.px(ch.today) + 0.5
	ch.line(t.Ink, 1, []float64{1, 3}, x, ch.bars.Y-4, x, ch.bars.bottom())
}

// axisNames names the two lines, today's above and the other below.
func (ch *swingsChart) axisNames() {
	t := ch.style.Theme
	text := smallFace.fit(ch.say.TodaysSaving(ch.saving, ch.largest), ch.W)
	ch.write(smallFace, ch.inside(ch.px(ch.today), text), ch.bars.Y-8, text, t.Ink)
	if !ch.hasZero() {
		return
	}
	x := ch.inside(ch.px(0), words.NoSaving)
	if len(ch.rows) < len(ch.swings) { // what is left out stands there too
		x = max(x, smallFace.width(ch.say.NoRoom(len(ch.swings)-len(ch.rows)))+12)
	}
	if box := textBox(smallFace, x, ch.bars.bottom()+14, words.NoSaving, t.Muted); box.Rect.right() <= ch.W {
		ch.texts = append(ch.texts, box)
	}
}

// bar draws one row from y on.
func (ch *swingsChart) bar(r *swingRow, y float64) {
	t := ch.style.Theme
	height := math.Round(min(max(0.55*ch.pitch, 9), max(22, 0.4*ch.pitch), ch.pitch-3))
	top := math.Round(y + (ch.pitch-height)/2)
	base := top + height/2 + 4
	name := ch.name(r.swing)
	if ch.above {
		height = math.Round(min(16, ch.pitch-16))
		top = math.Round(y + ch.pitch - height - 2)
		base = top + height/2 + 4
		ch.write(smallFace, 0, y+10, smallFace.fit(name, ch.W), t.Ink)
	} else {
		ch.write(smallFace, 0, base, smallFace.fit(name, 0.4*ch.W), t.Ink)
	}
	from, to := r.ends[0].saving, r.ends[1].saving
	cuts := []float64{from, min(max(0, from), to), min(max(ch.today, 0, from), to), to}
	slices.Sort(cuts)
	for i := 1; i < len(cuts); i++ {
		box := Rect{ch.px(cuts[i-1]), top, ch.px(cuts[i]) - ch.px(cuts[i-1]), height}
		switch middle := (cuts[i-1] + cuts[i]) / 2; {
		case middle < 0:
			ch.hatch(box, t.Muted)
		case middle > ch.today:
			ch.box(box, t.Good)
		default:
			ch.box(box, t.Quiet)
		}
	}
	x := ch.px(ch.today) + 0.5
	ch.line(t.Ink, 1, []float64{1, 3}, x, top, x, top+height)
	ch.endTexts(r, base)
	ch.hits = append(ch.hits, Hit{Rect: Rect{0, y, ch.W, ch.pitch}, Offer: ch.offer, Text: ch.say.Readout(r.swing)})
}

// endTexts sets what stands at a bar's ends: "329 at 129.80".
func (ch *swingsChart) endTexts(r *swingRow, base float64) {
	if ch.detail == endsBare {
		return
	}
	t := ch.style.Theme
	for side, x := range []float64{ch.px(r.ends[0].saving), ch.px(r.ends[1].saving)} {
		e := &r.ends[side]
		if side == 0 {
			x -= ch.endWidth(e)
		} else {
			x += swingGap
		}
		ch.box(Rect{x - 2, base - 10, ch.endWidth(e) - swingGap + 4, 13}, t.Ground) // off the lines
		x = ch.write(swingFace, x, base, e.text, t.Ink)
		if ch.detail == endsFull {
			ch.write(smallFace, x+4, base, e.at, t.Muted)
		}
	}
}

// hatch draws a rectangle as an outline with diagonals.
func (s *sheet) hatch(r Rect, c color.NRGBA) {
	if r.W <= 0 || r.H <= 0 {
		return
	}
	s.box(Rect{r.X, r.Y, r.W, 1}, c)
	s.box(Rect{r.X, r.bottom() - 1, r.W, 1}, c)
	s.box(Rect{r.X, r.Y, 1, r.H}, c)
	s.box(Rect{r.right() - 1, r.Y, 1, r.H}, c)
	const apart = 5
	for at := float64(apart); at < r.W+r.H; at += apart { // from the left or lower edge up to the right
		x0, x1 := max(at-r.H, 0), min(at, r.W)
		s.line(c, 1, nil, r.X+x0, r.Y+at-x0, r.X+x1, r.Y+at-x1)
	}
}
