package inhand

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// logPage lists what was done with a reel, the newest first, and takes what was done since.
type logPage struct {
	win    Window
	ask    *entries
	scroll *kit.Scroll
	list   *fyne.Container
	none   *kit.Text
	long   *kit.Long
	rows   []logRow
}

// logRow is an entry of the log.
type logRow struct {
	kind Entry
	at   int // among those of its kind
	date scenario.Date
	says words.LogSaying
	bad  bool // the reel's fault is found here
}

// key is the entry in a fault's path.
func (r logRow) key() string {
	return fmt.Sprintf(".%s[%d].", [...]string{"load", "result", "recount"}[r.kind], r.at+1)
}

// Entry is what an entry of a log is of.
type Entry int

// The kinds of entries.
const (
	Loaded Entry = iota
	Developed
	Measured
)

func newLogPage(win Window, on *kit.Dialogs) *logPage {
	p := &logPage{win: win, ask: &entries{win: win, on: on}, none: kit.NewText(kit.SizeText, kit.Span{Text: words.LogEmpty, Color: kit.Muted})}
	links := kit.NewLine(18,
		kit.NewLink(words.LinkLoaded, func() { p.ask.load(-1) }),
		kit.NewLink(words.LinkDeveloped, func() { p.ask.result(-1) }),
		kit.NewLink(words.LinkMeasured, func() { p.ask.recount(-1) }))
	p.long = kit.NewLong(p.rowHeight, p.newRow, p.fillRow)
	p.list = kit.Inset(kit.NewStack(0, 8, links, p.none, p.long), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.list)
	p.long.Within(p.scroll, func() float32 { return p.long.Position().Y })
	return p
}

func (p *logPage) name() string              { return words.PageLog }
func (p *logPage) which() stock.Page         { return stock.Log }
func (p *logPage) object() fyne.CanvasObject { return p.scroll }

func (p *logPage) rowHeight() float32 {
	return kit.LineHeight(kit.SizeText) + kit.LineHeight(kit.SizeSmall) + kit.Scaled(14)
}

func (p *logPage) newRow() fyne.CanvasObject {
	c := kit.NewCard(nil, p.step)
	c.Name.AtMost(1)
	return c
}

func (p *logPage) fillRow(o fyne.CanvasObject, i int) {
	c, r := o.(*kit.Card), p.rows[i]
	c.Choose = func() { p.open(i) }
	name := []kit.Span{{Text: r.says.What}}
	if r.bad {
		name = []kit.Span{{Text: "✗ ", Bold: true, Color: kit.Fault}, {Text: r.says.What, Color: kit.Fault}}
	}
	c.Name.Set(name...)
	c.Under.Set(kit.Span{Text: r.says.Under, Color: kit.Muted})
	c.Refresh()
}

// open opens an entry to be changed or taken out.
func (p *logPage) open(i int) {
	switch r := p.rows[i]; r.kind {
	case Loaded:
		p.ask.load(r.at)
	case Developed:
		p.ask.result(r.at)
	case Measured:
		p.ask.recount(r.at)
	}
}

// Enter asks for a new entry of the chosen reel's log; where no reel is chosen it does
// nothing.
func (c *Column) Enter(kind Entry) {
	switch kind {
	case Loaded:
		c.log.ask.load(-1)
	case Developed:
		c.log.ask.result(-1)
	case Measured:
		c.log.ask.recount(-1)
	}
}

// Open opens an entry of the log, as a click on it does.
func (c *Column) Open(i int) { c.log.open(i) }

// step puts the focus on the neighbour of the row that has it.
func (p *logPage) step(by int) {
	to := -1
	p.long.Rows(func(o fyne.CanvasObject, i int) {
		if o.(*kit.Card).Focused {
			to = i + by
		}
	})
	if c, ok := p.long.Reveal(to).(*kit.Card); ok {
		if canvas := fyne.CurrentApp().Driver().CanvasForObject(c); canvas != nil {
			canvas.Focus(c)
		}
	}
}

func (p *logPage) fill(s *stock.Stock) {
	if s.Standing == nil {
		return
	}
	p.rows = rowsOf(&s.Job.Reels[s.Job.Of.Reel], p.win)
	for i := range p.rows {
		p.rows[i].bad = s.Fault != nil && strings.Contains(s.Fault.Path+".", p.rows[i].key())
	}
	if len(p.rows) == 0 {
		p.none.Show()
	} else {
		p.none.Hide()
	}
	p.long.SetCount(len(p.rows))
	p.list.Refresh()
	p.scroll.Refresh()
}

// rowsOf are a reel's entries, the newest first; of one day the last written first.
func rowsOf(r *scenario.InHand, win Window) (rows []logRow) {
	l := win.Locale()
	for i := range r.Loads {
		rows = append(rows, logRow{kind: Loaded, at: i, date: r.Loads[i].Date, says: words.LoadSaying(&r.Loads[i])})
	}
	for i := range r.Results {
		rows = append(rows, logRow{kind: Developed, at: i, date: r.Results[i].Date, says: words.ResultSaying(&r.Results[i])})
	}
	for i := range r.Recounts {
		rows = append(rows, logRow{kind: Measured, at: i, date: r.Recounts[i].Date, says: words.RecountSaying(&r.Recounts[i], l)})
	}
	slices.Reverse(rows)
	slices.SortStableFunc(rows, func(a, b logRow) int {
		switch {
		case b.date.Before(a.date):
			return -1
		case a.date.Before(b.date):
			return 1
		}
		return 0
	})
	return rows
}
