package figure

import (
	"cmp"
	"math"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Volumes draws who is cheaper at how many rolls a year, on a canvas of w by h pixels: a
// strip for each pair of an outlook, the chosen offer's first. c must have been looked
// ahead of. Where there is nothing to draw the drawing says why.
func Volumes(c *compare.Comparison, chosen string, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := volumesOf(c, chosen, s)
	x, y := sh.heading(f.title, f.under)
	f.draw(sh, x, y, sh.H)
	return sh.Drawing
}

// VolumesHeight is how high the strips of all pairs want to be, in pixels.
func VolumesHeight(c *compare.Comparison, chosen string) float64 {
	const head = 44 + legendLine
	return head + volumeToday + volumeAxis + (volumeName+volumeStrip+volumeGap)*float64(max(len(volumePairs(c.Outlook, chosen)), 1))
}

// volumesFinding is the ranges of pairs before they are drawn.
type volumesFinding struct {
	title, under string
	rows         []words.Ranging
	short        map[string]string // what the offers are called where there is hardly room
	reels        map[string]bool   // the offers that are reels
}

func volumesOf(c *compare.Comparison, chosen string, s Style) volumesFinding {
	f := volumesFinding{title: words.NoVolumes, short: map[string]string{}, reels: map[string]bool{}}
	for i, short := range shortNames(c.Offers) {
		f.short[c.Offers[i].Name] = short
		f.reels[c.Offers[i].Name] = c.Offers[i].Kind == scenario.KindReel
	}
	for _, p := range volumePairs(c.Outlook, chosen) {
		f.rows = append(f.rows, words.RangingOf(c, p, s.Locale))
	}
	if len(f.rows) > 0 {
		f.title, f.under = f.rows[0].Title(), words.VolumesUnder(c)
	}
	return f
}

// volumePairs are the pairs of an outlook that have ranges: the chosen offer's, the
// verdict's, then the others in the order of their offers.
func volumePairs(o *compare.Outlook, chosen string) (list []*compare.PairOutlook) {
	add := func(p *compare.PairOutlook) {
		if p != nil && len(p.Volumes) > 0 && !slices.ContainsFunc(list, func(q *compare.PairOutlook) bool {
			return q.Offer == p.Offer && q.Other == p.Other
		}) {
			list = append(list, p)
		}
	}
	if o == nil {
		return nil
	}
	add(o.PairOf(chosen))
	add(o.Pair)
	for i := range o.Offers {
		add(o.Offers[i].Pair)
	}
	return list
}

// volumesChart is the chart of ranges in the making.
type volumesChart struct {
	*sheet
	volumesFinding
	plot  Rect // of the strips
	pitch float64
	most  int // rolls a year
}

// Heights in pixels.
const (
	volumeName   = 16.0 // of a row's name, above its strip
	volumeStrip  = 24.0
	leastStrip   = 12.0
	volumeGap    = 12.0
	volumeToday  = 20.0 // what marks today, above the strips
	volumeAxis   = 34.0 // the numbers and what they count, below them
	lowStrip     = 0.65 // how high boxed film's ranges are, the reel's being 1
	leastVolumes = 1.0  // the width of a range, however narrow, to be seen and pointed at
)

// draw draws the chart below the line whose baseline is y.
func (f volumesFinding) draw(sh *sheet, x, y, bottom float64) {
	if len(f.rows) == 0 {
		return
	}
	ch := &volumesChart{sheet: sh, volumesFinding: f, most: f.rows[0].Most()}
	ch.table = Table{Header: words.RangingHeader()}
	for _, row := range f.rows {
		ch.table.Rows = append(ch.table.Rows, row.Rows()...)
	}
	dropped, ok := ch.lay(sh.legend(ch.keys(), x+legendGap, y)+8, bottom)
	if !ok {
		return
	}
	for i, row := range ch.rows {
		ch.row(row, ch.plot.Y+float64(i)*ch.pitch)
	}
	ch.axis(dropped)
	ch.today()
	slices.SortStableFunc(ch.hits, func(a, b Hit) int { return cmp.Compare(a.Rect.W, b.Rect.W) }) // a narrow one is on top
}

// lay shares the height out among the strips, and says how many pairs it had to drop; ok
// is false where there is no room for any.
func (ch *volumesChart) lay(top, bottom float64) (dropped int, ok bool) {
	const edge = 6 // half a number, at either end
	top += volumeToday
	room := bottom - volumeAxis - top
	least := volumeName + leastStrip
	kept := min(len(ch.rows), int((room+volumeGap)/(least+volumeGap)))
	if kept < 1 {
		return 0, false
	}
	dropped = len(ch.rows) - kept
	ch.rows = ch.rows[:kept]
	ch.pitch = math.Floor(min((room+volumeGap)/float64(kept), volumeName+volumeStrip+volumeGap))
	ch.plot = Rect{edge, math.Round(top), ch.W - 2*edge, ch.pitch*float64(kept) - volumeGap}
	return dropped, true
}

// px is where a number of rolls stands: equal ratios are equally far apart, so that few
// rolls can be told apart as well as many. A whole number has half a roll on both sides.
func (ch *volumesChart) px(rolls float64) float64 {
	low, high := math.Log(0.5), math.Log(float64(ch.most)+0.5)
	at := (math.Log(max(rolls, 0.5)) - low) / (high - low)
	return ch.plot.X + min(at, 1)*ch.plot.W
}

// row draws one pair's name and its strip from y on.
func (ch *volumesChart) row(r words.Ranging, y float64) {
	t := ch.style.Theme
	ch.write(nameFace, 0, y+11, nameFace.fit(tidy(r.Name()), ch.W), t.Ink)
	strip := Rect{ch.plot.X, y + volumeName, ch.plot.W, ch.pitch - volumeName - volumeGap}
	for _, span := range r.Ranges() {
		from, to := ch.px(float64(span.From)-0.5), ch.px(float64(span.To)+0.5)
		box := Rect{from, strip.Y, max(to-from, leastVolumes), strip.H}
		box.X = min(box.X, strip.right()-box.W)
		ch.span(box, span, r)
		ch.hits = append(ch.hits, Hit{Rect: box, Offer: r.Offer(), Text: r.Readout(span)})
	}
}

// span fills a range with the colour of who is cheaper in it, and names them where there is
// room.
func (ch *volumesChart) span(box Rect, span compare.VolumeRange, r words.Ranging) {
	t := ch.style.Theme
	named := t.Ink
	if span.Cheaper == compare.CheaperEven {
		ch.hatch(box, t.Muted)
	} else {
		name, against, asked := r.Offer(), r.Other(), span.Cheaper == compare.CheaperOffer
		if !asked {
			name, against = against, name
		}
		colour, high := ch.sideOf(name, against, asked)
		if !high {
			low := math.Round(box.H * lowStrip)
			box.Y, box.H = box.Y+math.Round((box.H-low)/2), low
		}
		ch.box(box, colour)
		ch.box(Rect{box.right() - 1, box.Y, min(1, box.W/2), box.H}, t.Ground) // apart from the next
		named, _ = palette.Label(colour, t)
	}
	text := r.Label(span, ch.short)
	room := ch.besideToday(box)
	if w := smallFace.width(text); w+8 <= room.W && box.H >= leastStrip {
		x, base := room.X+(room.W-w)/2, math.Round(box.Y+box.H/2+4)
		if span.Cheaper == compare.CheaperEven {
			ch.box(Rect{x - 3, base - 10, w + 6, 13}, t.Ground) // off the lines
		}
		ch.write(smallFace, x, base, text, named)
	}
}

// besideToday is what of a range lies on one side of today's line, the wider one.
func (ch *volumesChart) besideToday(box Rect) Rect {
	const line = 4
	x := ch.px(ch.rows[0].Rolls())
	left, right := box, box
	left.W = min(box.right(), x-line) - box.X
	right.X = max(box.X, x+line)
	right.W = box.right() - right.X
	if left.W > right.W {
		return left
	}
	return right
}

// axis writes the numbers of rolls under the strips, and what they count.
func (ch *volumesChart) axis(dropped int) {
	t := ch.style.Theme
	y := ch.plot.bottom()
	ch.hairline(ch.plot.X, ch.plot.right(), y+3, t.Rule)
	for _, n := range rollTicks(ch.most) {
		text := ch.rows[0].Number(n)
		x := ch.px(float64(n))
		at := max(min(x-smallFace.width(text)/2, ch.W-smallFace.width(text)), 0)
		if box := textBox(smallFace, at, y+16, text, t.Muted); ch.clear(box.Rect.grow(4)) {
			ch.texts = append(ch.texts, box)
			ch.box(Rect{math.Round(x), y + 3, 1, 3}, t.Muted)
		}
	}
	end := ch.write(smallFace, ch.plot.X, y+30, words.RollsAYear, t.Muted)
	if text := words.NoRoomForPairs(dropped); dropped > 0 {
		ch.write(smallFace, end+12, y+30, smallFace.fit(text, ch.W-end-12), t.Muted)
	}
}

// rollTicks are the numbers to write, the more telling first: the ends, then powers of ten,
// their halves and their fifths.
func rollTicks(most int) []int {
	list := []int{1, most}
	for _, first := range []int{10, 5, 2} {
		for n := first; n < most; n *= 10 {
			list = append(list, n)
		}
	}
	return list
}

// today marks today's rolls across all strips.
func (ch *volumesChart) today() {
	t := ch.style.Theme
	x := ch.px(ch.rows[0].Rolls())
	text := smallFace.fit(ch.rows[0].Today(), ch.W)
	at := max(min(x-smallFace.width(text)/2, ch.W-smallFace.width(text)), 0)
	ch.write(smallFace, at, ch.plot.Y-9, text, t.Ink)
	for i := range ch.rows {
		y := ch.plot.Y + float64(i)*ch.pitch + volumeName
		ch.line(t.Ground, 4, nil, x, y, x, y+ch.pitch-volumeName-volumeGap) // told apart from any colour
		ch.line(t.Ink, 2, nil, x, y-2, x, y+ch.pitch-volumeName-volumeGap+2)
	}
}
