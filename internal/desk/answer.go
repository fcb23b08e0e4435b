package desk

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// answerColumn is the right column: the headline, and what stands behind it in tabs.
type answerColumn struct {
	content  *fyne.Container
	headline *prose
	under    *prose
	status   *prose // what the answer does not include
	tabs     *tabs
	cost     *figureView
	spend    *figureView
	ledger   *ledger
	receipt  *fyne.Container
	strip    *figureView
	stripOf  *fyne.Container
	tables   [2]*tableView // the charts' twins
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
	a.headline = newProse(sizeAnswer).lines(2).shrinking(18, 15, sizeText)
	a.under = newProse(sizeSmall + 1).lines(3).shrinking(sizeSmall)
	a.status = newProse(sizeSmall).lines(1)
	a.cost = newFigureView(redraw, choose)
	a.spend = newFigureView(redraw, choose)
	a.strip = newFigureView(redraw, func(string) {})
	a.ledger = newLedger()
	a.stripOf = inset(newStack(0, 0, fixedHeight(a.strip, 116)), 0, 16, 0, 0)
	a.receipt = inset(newStack(0, 0, a.ledger, a.stripOf), 0, 6, 14, 12)
	copied := func(text string) {
		fyne.CurrentApp().Clipboard().SetContent(text)
		a.announce("Copied, to paste into a spreadsheet")
	}
	a.changes = newChangesPage(redraw, ahead.lookAt, ahead.askRange)
	a.sizes = newSizesPage(redraw, ahead.order, copied)
	a.tables = [2]*tableView{newTableView(copied), newTableView(copied)}
	a.twins = inset(newStack(0, 18, a.tables[0], a.tables[1]), 0, 14, 14, 12)
	a.notes = inset(newStack(0, 10), 0, 14, 14, 12)
	charts := container.New(&chartsLayout{figure.CostHeight(3)}, a.cost, a.spend)
	a.tabs = newTabs(func() {
		a.fill()
		redraw()
	},
		tab{"Charts", charts},
		tab{"Receipt", container.NewVScroll(a.receipt)},
		tab{"What changes it", container.NewVScroll(a.changes.content)},
		tab{"Order size", container.NewVScroll(a.sizes.content)},
		tab{"Tables", container.NewScroll(a.twins)},
		tab{"Notes", container.NewVScroll(a.notes)},
	)
	a.content = container.New(answerLayout{}, a.headline, a.under, a.status, a.tabs)
	return a
}

// say puts up the headline.
func (a *answerColumn) say(c *compare.Comparison) {
	h := words.Verdict(c, a.locale())
	a.headline.set(strong(h)...)
	a.under.set(span{text: h.Under, color: colMuted})
}

// strong splits the headline so that the amount can have its colour.
func strong(h words.Headline) []span {
	before, after, found := strings.Cut(h.Text, h.Strong)
	if h.Strong == "" || !found {
		return []span{{text: h.Text, bold: true}}
	}
	return []span{{text: before, bold: true}, {text: h.Strong, bold: true, color: colGood}, {text: after, bold: true}}
}

// show puts up everything but the headline, which settles later.
func (a *answerColumn) show(an *answer, offer int) {
	c := an.comparison
	a.shown, a.offer = an, offer
	a.cost.show(an.pictures[figureCost])
	a.spend.show(an.pictures[figureSpend])
	a.strip.show(an.pictures[figureStrip])
	a.tabs.rename(pageNotes, notesName(c))
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
	switch a.tabs.at {
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
	return a.tabs.pages[pageCharts].content.(*fyne.Container).Layout.(*chartsLayout)
}

// tabulate puts up the charts' tables.
func (a *answerColumn) tabulate() {
	for i, fig := range []int{figureCost, figureSpend} {
		if d := a.shown.pictures[fig].drawing; d != nil {
			a.tables[i].show(d.Title(), d.Table())
		}
	}
	a.twins.Refresh()
}

// note lists the warnings.
func (a *answerColumn) note(c *compare.Comparison) {
	a.notes.RemoveAll()
	for _, left := range words.LeftOut(c) {
		a.notes.Add(newProse(sizeText, span{text: "✗ ", bold: true, color: colFault}, span{text: left}))
	}
	for _, w := range c.Warnings {
		a.notes.Add(newProse(sizeText, span{text: "! ", bold: true, color: colAccent}, span{text: words.Warning(w, c, a.locale())}))
	}
	if len(a.notes.Objects) == 0 {
		a.notes.Add(newProse(sizeText, span{text: "Nothing to point out.", color: colMuted}))
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
		a.status.set(span{text: "! ", color: colAccent, bold: true}, span{text: a.standing, color: colMuted})
	case len(parts) == 0:
		a.status.set()
	default:
		a.status.set(span{text: "✗ ", color: colFault, bold: true}, span{text: strings.Join(parts, " "), color: colFault})
	}
	a.content.Refresh()
}

// room is the space of each figure that is on the screen.
func (a *answerColumn) room(scale float32) [figureCount]canvasSize {
	var r [figureCount]canvasSize
	switch a.tabs.at {
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

// answerLayout stacks the headline and gives the tabs the rest.
type answerLayout struct{}

func (answerLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	w := size.Width - 2*answerEdge
	y := float32(14)
	for _, p := range o[:3] {
		p := p.(*prose)
		h := p.heightFor(w)
		place(p, answerEdge, y, w, h)
		y += h + 2
	}
	place(o[3], answerEdge, y, w+answerEdge-14, size.Height-y-8)
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
	place(o[0], 0, top, size.Width-right, h)
	place(o[1], 0, top+h+gap, size.Width-right, room-h)
}

func (l *chartsLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 260) }

// fixed gives an object a height.
type fixed struct{ height float32 }

func fixedHeight(o fyne.CanvasObject, h float32) *fyne.Container {
	return container.New(fixed{h}, o)
}

func (f fixed) Layout(o []fyne.CanvasObject, size fyne.Size) { place(o[0], 0, 0, size.Width, f.height) }
func (f fixed) MinSize([]fyne.CanvasObject) fyne.Size        { return fyne.NewSize(0, f.height) }

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
	a.status.set(span{text: "✓ ", color: colGood, bold: true}, span{text: text, color: colMuted})
	a.content.Refresh()
}

// aheadActions are what the pages about changes can do.
type aheadActions interface {
	lookAt(turnKey)
	order(offer string, units int)
	askRange()
}

// wantsAll says whether the page in sight is about what would change the answer.
func (a *answerColumn) wantsAll() bool { return a.tabs.at == pageChanges || a.tabs.at == pageSizes }

// roomAhead is the space of the figures about what would change the answer.
func (a *answerColumn) roomAhead(scale float32) [figureCount]canvasSize {
	var r [figureCount]canvasSize
	switch a.tabs.at {
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
