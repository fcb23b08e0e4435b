package pages

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Column is the right column: the headline, and what stands behind it in tabs.
type Column struct {
	Content  *fyne.Container
	Headline *kit.Text
	Under    *kit.Text
	Status   *kit.Text // what the answer does not include
	Mend     *kit.Link // leads to where that can be mended, or takes what is offered
	mend     func()
	notices  *Notices
	withheld []string // fields whose text is not part of the answer

	Tabs    *kit.Tabs
	pages   []page
	Charts  *ChartsPage
	Receipt *ReceiptPage
	Changes *ChangesPage
	Sizes   *SizesPage
	Past    *PastPage

	locale func() money.Locale
	Shown  View
}

// NewColumn is a column without an answer yet.
func NewColumn(act Actions, loc func() money.Locale, rates *market.Market, notices *Notices) *Column {
	a := &Column{locale: loc, Shown: View{Market: rates}, mend: act.Mend, notices: notices}
	a.Headline = kit.NewText(kit.SizeAnswer).Lines(2).Shrinking(18, 15, kit.SizeText)
	a.Under = kit.NewText(kit.SizeSmall + 1).AtLeast(3).AtMost(6)
	a.Status = kit.NewText(kit.SizeSmall).AtMost(4)
	a.Mend = kit.NewLink("", act.Mend)
	a.Mend.Label.FontSize = kit.SizeSmall
	a.Mend.Hide()
	copied := func(text string) {
		fyne.CurrentApp().Clipboard().SetContent(text)
		notices.Announce(words.Copied)
	}
	a.Charts = newChartsPage(act)
	a.Receipt = newReceiptPage(act)
	a.Changes = newChangesPage(act, copied)
	a.Sizes = newSizesPage(act, copied)
	a.Past = newPastPage(act, copied)
	a.pages = []page{a.Charts, a.Receipt, a.Changes, a.Sizes, a.Past, newTablesPage(copied), newNotesPage()}
	var tabs []kit.Tab
	for _, p := range a.pages {
		tabs = append(tabs, kit.Tab{Name: p.name(a.Shown), Content: p.object()})
	}
	a.Tabs = kit.NewTabs(func() {
		a.fill()
		act.Redraw()
	}, tabs...)
	a.Content = container.New(answerLayout{}, a.Headline, a.Under, kit.NewSides(a.Status, a.Mend), a.Tabs)
	return a
}

// Names are the pages' plain names.
func (a *Column) Names() []string {
	var list []string
	for _, p := range a.pages {
		list = append(list, p.name(View{}))
	}
	return list
}

// Page turns to a page, and stays where there is none.
func (a *Column) Page(i int) { a.Tabs.Choose(i) }

// At is the page in sight.
func (a *Column) At() int { return a.Tabs.At }

// Label is the tab of the page in sight.
func (a *Column) Label() fyne.Focusable { return a.Tabs.Labels[a.Tabs.At] }

// Say puts up the headline.
func (a *Column) Say(c *compare.Comparison) {
	h := words.Verdict(c, a.locale())
	a.Headline.Set(strong(h)...)
	a.Under.Set(kit.Span{Text: h.Under, Color: kit.Muted})
}

// strong splits the headline so that a saving can have its colour.
func strong(h words.Headline) []kit.Span {
	before, after, found := strings.Cut(h.Text, h.Strong)
	if !h.Saves || !found {
		return []kit.Span{{Text: h.Text, Bold: true}}
	}
	return []kit.Span{{Text: before, Bold: true}, {Text: h.Strong, Bold: true, Color: kit.Good}, {Text: after, Bold: true}}
}

// Show puts up everything but the headline, which settles later.
func (a *Column) Show(an *answer.Answer, offer int) {
	a.Shown.answer, a.Shown.offer = an, offer
	a.Charts.put(an)
	a.Receipt.put(an)
	for i, p := range a.pages {
		a.Tabs.Rename(i, p.name(a.Shown))
	}
	if a.Charts.layout.offers(len(an.Comparison.Offers)) {
		a.Tabs.Refresh()
	}
	a.fill()
}

// Foresee takes in what would change the answer; nil for not known yet.
func (a *Column) Foresee(f *answer.Foresight) {
	a.Shown.Ahead = f
	if f != nil {
		a.fill()
	}
}

// LookBack takes in what is known of the past.
func (a *Column) LookBack(b Back) {
	a.Shown.Back = b
	a.fill()
}

// Refill shows what of the page in sight is another.
func (a *Column) Refill() { a.fill() }

// fill brings the page in sight up to date; the others wait until they are.
func (a *Column) fill() {
	if a.Shown.answer != nil {
		a.Shown.locale = a.locale()
		a.pages[a.Tabs.At].fill(a.Shown)
	}
}

// Rooms is the space of each figure that is on the screen.
func (a *Column) Rooms(scale float32) answer.Rooms { return a.pages[a.Tabs.At].rooms(scale) }

// LooksAhead says whether the page in sight is about what would change the answer.
func (a *Column) LooksAhead() bool { return a.Tabs.At == Changes || a.Tabs.At == Sizes }

// LooksBack says whether the page in sight is about the past.
func (a *Column) LooksBack() bool { return a.Tabs.At == Past }

// answerEdge is the margin of the right column.
func answerEdge() float32 { return kit.Scaled(20) }

// answerLayout stacks the headline and gives the tabs the rest.
type answerLayout struct{}

func (answerLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	w := size.Width - 2*answerEdge()
	y := float32(14)
	for _, p := range o[:3] {
		h := kit.HeightOf(p, w)
		kit.Place(p, answerEdge(), y, w, h)
		y += h + 2
	}
	kit.Place(o[3], answerEdge(), y, w+answerEdge()-14, size.Height-y-8)
}

func (answerLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(380, 400) }
