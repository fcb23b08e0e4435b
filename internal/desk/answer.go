package desk

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// answerColumn is the right column: the headline, and what stands behind it in tabs.
type answerColumn struct {
	content  *fyne.Container
	headline *kit.Text
	under    *kit.Text
	status   *kit.Text // what the answer does not include
	tabs     *kit.Tabs
	cost     *figureView
	spend    *figureView
	ledger   *ledger
	receipt  *fyne.Container
	strip    *figureView
	stripOf  *fyne.Container
	tables   [2]*kit.Table // the charts' twins
	twins    *fyne.Container
	changes  *changesPage
	sizes    *sizesPage
	notes    *fyne.Container
	locale   func() locale

	standing string // true until further notice, "" for nothing

	ahead *foresight // what would change it, nil until known
	shown *answer    // what the pages are about
	offer int        // whose receipt it is
}

// The pages of the answer.
const (
	pageCharts = iota
	pageReceipt
	pageChanges
	pageSizes
	pageTables
	pageNotes
)

func newAnswerColumn(redraw func(), choose func(offer string), loc func() locale, ahead aheadActions) *answerColumn {
	a := &answerColumn{locale: loc}
	a.headline = kit.NewText(kit.SizeAnswer).Lines(2).Shrinking(18, 15, kit.SizeText)
	a.under = kit.NewText(kit.SizeSmall + 1).Lines(3).Shrinking(kit.SizeSmall)
	a.status = kit.NewText(kit.SizeSmall).Lines(1)
	a.cost = newFigureView(redraw, choose)
	a.spend = newFigureView(redraw, choose)
	a.strip = newFigureView(redraw, nil)
	a.ledger = newLedger()
	a.stripOf = kit.Inset(kit.NewStack(0, 0, kit.FixedHeight(a.strip, 116)), 0, 16, 0, 0)
	a.receipt = kit.Inset(kit.NewStack(0, 0, a.ledger, a.stripOf), 0, 6, 14, 12)
	copied := func(text string) {
		fyne.CurrentApp().Clipboard().SetContent(text)
		a.announce("Copied, to paste into a spreadsheet")
	}
	a.changes = newChangesPage(redraw, ahead.lookAt, ahead.askRange)
	a.sizes = newSizesPage(redraw, ahead.order, copied)
	a.tables = [2]*kit.Table{kit.NewTable(copied), kit.NewTable(copied)}
	a.twins = kit.Inset(kit.NewStack(0, 18, a.tables[0], a.tables[1]), 0, 14, 14, 12)
	a.notes = kit.Inset(kit.NewStack(0, 10), 0, 14, 14, 12)
	charts := container.New(&chartsLayout{figure.CostHeight(3)}, a.cost, a.spend)
	a.tabs = kit.NewTabs(func() {
		a.fill()
		redraw()
	},
		kit.Tab{Name: "Charts", Content: charts},
		kit.Tab{Name: "Receipt", Content: container.NewVScroll(a.receipt)},
		kit.Tab{Name: "What changes it", Content: container.NewVScroll(a.changes.content)},
		kit.Tab{Name: "Order size", Content: container.NewVScroll(a.sizes.content)},
		kit.Tab{Name: "Tables", Content: container.NewScroll(a.twins)},
		kit.Tab{Name: "Notes", Content: container.NewVScroll(a.notes)},
	)
	a.content = container.New(answerLayout{}, a.headline, a.under, a.status, a.tabs)
	return a
}

// say puts up the headline.
func (a *answerColumn) say(c *compare.Comparison) {
	h := words.Verdict(c, a.locale())
	a.headline.Set(strong(h)...)
	a.under.Set(kit.Span{Text: h.Under, Color: kit.Muted})
}

// strong splits the headline so that the amount can have its colour.
func strong(h words.Headline) []kit.Span {
	before, after, found := strings.Cut(h.Text, h.Strong)
	if h.Strong == "" || !found {
		return []kit.Span{{Text: h.Text, Bold: true}}
	}
	return []kit.Span{{Text: before, Bold: true}, {Text: h.Strong, Bold: true, Color: kit.Good}, {Text: after, Bold: true}}
}

// show puts up everything but the headline, which settles later.
func (a *answerColumn) show(an *answer, offer int) {
	c := an.comparison
	a.shown, a.offer = an, offer
	a.cost.put(an.pictures[figureCost])
	a.spend.put(an.pictures[figureSpend])
	a.strip.put(an.pictures[figureStrip])
	a.tabs.Rename(pageNotes, notesName(c))
	if l := a.charts(); l.offers(len(c.Offers)) {
		a.tabs.Refresh()
	}
	a.fill()
}

// fill brings the page in sight up to date; the others wait until they are.
func (a *answerColumn) fill() {
	if a.shown == nil {
		return
	}
	switch a.tabs.At {
	case pageReceipt:
		a.itemise(a.shown.comparison, a.offer)
	case pageChanges:
		if a.ahead != nil && a.ahead.job.all {
			a.changes.show(a.ahead, a.locale())
		}
	case pageSizes:
		if a.ahead != nil && a.ahead.job.all {
			a.sizes.show(a.ahead, a.locale())
		}
	case pageTables:
		a.tabulate()
	case pageNotes:
		a.note(a.shown.comparison)
	}
}

// itemise puts up the receipt of an offer.
func (a *answerColumn) itemise(c *compare.Comparison, offer int) {
	seller, home := words.ReceiptColumns(c, offer)
	a.ledger.show(seller, home, words.Receipt(c, offer, a.locale()))
	isReel := offer < len(c.Offers) && c.Offers[offer].Fault == nil && c.Offers[offer].Kind == scenario.KindReel
	if isReel {
		a.stripOf.Show()
	} else {
		a.stripOf.Hide()
	}
	a.receipt.Refresh()
}

func (a *answerColumn) charts() *chartsLayout {
	return a.tabs.Pages[pageCharts].Content.(*fyne.Container).Layout.(*chartsLayout)
}

// tabulate puts up the charts' tables.
func (a *answerColumn) tabulate() {
	for i, fig := range []int{figureCost, figureSpend} {
		if d := a.shown.pictures[fig].drawing; d != nil {
			table := d.Table()
			a.tables[i].Set(d.Title(), table.Header, table.Rows)
		}
	}
	a.twins.Refresh()
}

// note lists the warnings.
func (a *answerColumn) note(c *compare.Comparison) {
	a.notes.RemoveAll()
	for _, left := range words.LeftOut(c) {
		a.notes.Add(kit.NewText(kit.SizeText, kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: left}))
	}
	for _, w := range c.Warnings {
		a.notes.Add(kit.NewText(kit.SizeText, kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: words.Warning(w, c, a.locale())}))
	}
	if len(a.notes.Objects) == 0 {
		a.notes.Add(kit.NewText(kit.SizeText, kit.Span{Text: "Nothing to point out.", Color: kit.Muted}))
	}
	a.notes.Refresh()
}

// notesName is the page's name with how many notes there are.
func notesName(c *compare.Comparison) string {
	if n := len(c.Warnings) + len(c.Verdict.LeftOut); n > 0 {
		return fmt.Sprintf("Notes (%d)", n)
	}
	return "Notes"
}

// without says what is not part of the answer: fields held back, offers left out.
func (a *answerColumn) without(held []string, c *compare.Comparison) {
	var parts []string
	if len(held) > 0 {
		parts = append(parts, "The answer does not include what stands in: "+strings.Join(held, ", ")+".")
	}
	if c != nil {
		parts = append(parts, words.LeftOut(c)...)
	}
	switch {
	case len(parts) == 0 && a.standing != "":
		a.status.Set(kit.Span{Text: "! ", Color: kit.Accent, Bold: true}, kit.Span{Text: a.standing, Color: kit.Muted})
	case len(parts) == 0:
		a.status.Set()
	default:
		a.status.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: strings.Join(parts, " "), Color: kit.Fault})
	}
	a.content.Refresh()
}

// room is the space of each figure that is on the screen.
func (a *answerColumn) room(scale float32) [figureCount]canvasSize {
	var r [figureCount]canvasSize
	switch a.tabs.At {
	case pageCharts:
		r[figureCost], r[figureSpend] = a.cost.room(scale), a.spend.room(scale)
	case pageTables: // drawn small, for their tables
		r[figureCost] = canvasSize{600, 300, 0.1, 1}
		r[figureSpend] = r[figureCost]
	case pageReceipt:
		r[figureStrip] = a.strip.room(scale)
	}
	return r
}

// answerEdge is the margin of the right column.
func answerEdge() float32 { return kit.Scaled(20) }

// answerLayout stacks the headline and gives the tabs the rest.
type answerLayout struct{}

func (answerLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	w := size.Width - 2*answerEdge()
	y := float32(14)
	for _, p := range o[:3] {
		p := p.(*kit.Text)
		h := p.HeightFor(w)
		kit.Place(p, answerEdge(), y, w, h)
		y += h + 2
	}
	kit.Place(o[3], answerEdge(), y, w+answerEdge()-14, size.Height-y-8)
}

func (answerLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(380, 400) }

// chartsLayout gives the cost per roll the room its offers need, and the year the rest.
type chartsLayout struct{ costs float64 }

// offers adapts to a number of offers; it says whether that changes anything.
func (l *chartsLayout) offers(n int) bool {
	was := l.costs
	l.costs = figure.CostHeight(n)
	return was != l.costs
}

func (l *chartsLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const top, gap, right = 14, 16, 6
	room := size.Height - top - gap
	h := min(float32(l.costs), room*0.55)
	kit.Place(o[0], 0, top, size.Width-right, h)
	kit.Place(o[1], 0, top+h+gap, size.Width-right, room-h)
}

func (l *chartsLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 260) }

// warn says something that stays true until warn is called again; "" ends it. It is seen
// when nothing more pressing stands there.
func (a *answerColumn) warn(text string) {
	a.standing = text
	if a.shown != nil {
		a.without(nil, a.shown.comparison)
	}
}

// announce says that something was done, until the next change.
func (a *answerColumn) announce(text string) {
	a.status.Set(kit.Span{Text: "✓ ", Color: kit.Good, Bold: true}, kit.Span{Text: text, Color: kit.Muted})
	a.content.Refresh()
}

// aheadActions are what the pages about changes can do.
type aheadActions interface {
	lookAt(turnKey)
	order(offer string, units int)
	askRange()
}

// wantsAll says whether the page in sight is about what would change the answer.
func (a *answerColumn) wantsAll() bool { return a.tabs.At == pageChanges || a.tabs.At == pageSizes }

// roomAhead is the space of the figures about what would change the answer.
func (a *answerColumn) roomAhead(scale float32) [figureCount]canvasSize {
	var r [figureCount]canvasSize
	switch a.tabs.At {
	case pageChanges:
		r[figureFlip], r[figureSwings] = a.changes.flip.room(scale), a.changes.swings.room(scale)
	case pageSizes:
		r[figureSizes] = a.sizes.figure.room(scale)
	}
	return r
}

// foresee takes in what would change the answer.
func (a *answerColumn) foresee(f *foresight) {
	a.ahead = f
	a.fill()
}
