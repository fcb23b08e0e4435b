package figure

import (
	"image/color"
	"math"

	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// SideBySide draws scenarios beside each other on a canvas of w by h pixels: what a roll
// costs from the best reel and the best boxed of each, where all can be in one currency,
// else what the reel saves in percent.
func SideBySide(list []sidebyside.Entry, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	f := sideOf(list, s)
	_, y := sh.heading(f.title, f.under)
	f.draw(sh, 0, y, sh.H)
	return sh.Drawing
}

// sideFinding is the scenarios before they are drawn.
type sideFinding struct {
	title, under string
	list         []sidebyside.Entry
	bars         words.SideBars
}

func sideOf(list []sidebyside.Entry, s Style) sideFinding {
	bars := words.SideBySideBars(list, s.Locale)
	return sideFinding{words.SideBySideTitle(list, s.Locale), bars.Under, list, bars}
}

// Heights in pixels: of a bar, of a row's name, of what is between rows.
const (
	sideBar, leastSideBar = 18.0, 13.0
	sideName              = 17.0
	sideGap               = 10.0
)

// draw draws the bars below the line whose baseline is y, the first scenarios where there
// is no room for all.
func (f sideFinding) draw(sh *sheet, _, y, bottom float64) {
	sh.table = sideTable(f.list, sh.style)
	top := y + 12
	rows := f.bars.Rows
	height := func(bar float64) (sum float64) {
		for _, r := range rows {
			sum += sideName + bar*float64(max(len(r.Bars), 1)) + sideGap
		}
		return sum
	}
	bar := sideBar
	for bar > leastSideBar && top+height(bar) > bottom {
		bar--
	}
	shown := len(rows)
	for shown > 0 && top+height(bar)+sideName > bottom && top+height(bar) > bottom {
		shown--
		rows = rows[:shown]
		bottom = min(bottom, sh.H-sideName)
	}
	at := sh.sideScale(rows)
	for _, r := range rows {
		top = sh.sideRow(r, at, top, bar)
	}
	if left := len(f.bars.Rows) - shown; left > 0 && top+12 <= sh.H {
		sh.write(smallFace, 0, top+12, smallFace.fit(words.NoRoomForScenarios(left), sh.W), sh.style.Theme.Muted)
	}
}

// sideScale is where values stand: an axis, and the pixels it lies on.
type sideScale struct {
	axis        axis
	left, width float64
	names       float64 // width of the bars' own names
}

func (sc sideScale) x(v float64) float64 { return sc.left + sc.axis.share(v)*sc.width }

// sideScale fits the bars, their names and their values into the width.
func (s *sheet) sideScale(rows []words.SideRow) sideScale {
	var low, high, before, after float64
	for _, r := range rows {
		for _, b := range r.Bars {
			low, high = min(low, b.Value), max(high, b.Value)
			before = max(before, smallFace.width(tidy(b.Name)))
			after = max(after, endTotal.width(b.Text))
		}
	}
	if high-low <= 0 {
		high = low + 1
	}
	before = math.Ceil(min(before, 0.3*s.W)) + 8
	left := before
	if low < 0 {
		left += after + afterBar // a value stands left of a bar that goes there
	}
	return sideScale{axis{low, high}, left, max(s.W-left-after-2*afterBar, 1), before - 8}
}

// sideRow draws one scenario's bars under its name and returns where the next may begin.
func (s *sheet) sideRow(r words.SideRow, at sideScale, top, bar float64) float64 {
	t := s.style.Theme
	s.write(nameFace, 0, top+12, nameFace.fit(tidy(r.Name), s.W), t.Ink)
	y := top + sideName
	if len(r.Bars) == 0 {
		s.write(smallFace, 0, y+11, smallFace.fit(tidy(r.Why), s.W), t.Muted)
		return y + bar + sideGap
	}
	for _, b := range r.Bars {
		s.sideBarOf(r, b, at, y, bar)
		y += bar
	}
	zero := math.Round(at.x(0))
	s.box(Rect{zero, top + sideName, 1, y - top - sideName}, t.Muted)
	return y + sideGap
}

func (s *sheet) sideBarOf(r words.SideRow, b words.SideBar, at sideScale, y, height float64) {
	t := s.style.Theme
	var colour color.NRGBA
	switch {
	case b.Best:
		colour = t.Accent
	default:
		colour = t.Quiet
	}
	base := y + height/2 + 4
	s.write(smallFace, 0, base, smallFace.fit(tidy(b.Name), at.names), t.Muted)
	from, to := at.x(min(b.Value, 0)), at.x(max(b.Value, 0))
	box := Rect{math.Round(from), y + 1, max(math.Round(to)-math.Round(from), 1), height - 2}
	s.box(box, colour)
	x := box.right() + afterBar
	if b.Value < 0 {
		x = box.X - afterBar - endTotal.width(b.Text)
	}
	s.write(endTotal, x, base, b.Text, t.Ink)
	s.hits = append(s.hits, Hit{Rect: box, Offer: r.Name, Text: b.Readout})
}

// sideTable is the twin: the table of the scenarios.
func sideTable(list []sidebyside.Entry, s Style) Table {
	heads, _ := words.SideBySideColumns(list)
	t := Table{Header: heads}
	for i := range list {
		row := make([]string, len(heads))
		if list[i].Comparison == nil {
			row[0] = words.SideBySideFault(&list[i])
		} else {
			copy(row, words.SideBySideRow(&list[i], s.Locale))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
