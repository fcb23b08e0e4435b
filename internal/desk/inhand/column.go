package inhand

import (
	"io"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Window is what the pages of a reel ask of the window around them.
type Window interface {
	Session() *session.Session
	Locale() money.Locale
	Today() scenario.Date
	Change(do func(*session.Session)) // the session, and lay the window out anew
	Restock()                         // what is wanted to be known is another
	Back()                            // to the answer
	Undo()                            // the last change
	Sheet() stock.Sheet               // how labels are printed
	SetSheet(stock.Sheet)             // and remember it
	// Export asks for a file of one of the endings and writes it away from the interface thread.
	Export(title, name string, endings []string, write func(w io.Writer) error)
	Plan(stock.Plan) (wishes []reels.Wish, kept bool) // that is remembered of a reel
	KeepPlan(of stock.Plan, wishes []reels.Wish, forget bool)
	Fill(whole fyne.CanvasObject, focus fyne.Focusable) // the window, in the place of its columns
	Empty()                                             // back from there
}

// Column is the right column while a reel is chosen: what is left of it, the reel drawn to
// scale, and its pages.
type Column struct {
	Content  *fyne.Container
	Headline *kit.Text
	Under    *kit.Text
	Status   *kit.Text // what is worth knowing
	warns    []kit.Span
	notices  *pages.Notices
	back     *kit.Link
	strip    *pages.FigureView
	Tabs     *kit.Tabs
	pages    []page
	log      *logPage
	plan     *planPage
	account  *accountPage
	labels   *labelsPage

	win     Window
	on      *kit.Dialogs
	thought bool // the tabs are those of an offer's reel
	shown   *stock.Stock
}

// page is one tab of a reel.
type page interface {
	name() string
	which() stock.Page
	object() fyne.CanvasObject
	fill(s *stock.Stock) // brings it up to date; called while it is in sight
}

// NewColumn is a column without a reel yet; it asks in the dialogs given.
func NewColumn(win Window, on *kit.Dialogs, notices *pages.Notices) *Column {
	c := &Column{win: win, on: on, notices: notices}
	c.Headline = kit.NewText(kit.SizeAnswer).Lines(1).Shrinking(18, 15, kit.SizeText)
	c.Under = kit.NewText(kit.SizeSmall + 1)
	c.Status = kit.NewText(kit.SizeSmall).AtMost(4)
	c.back = kit.NewLink(words.LinkBack, win.Back)
	c.strip = pages.NewFigureView(win.Restock)
	copied := func(text string) {
		fyne.CurrentApp().Clipboard().SetContent(text)
		notices.Announce(words.Copied)
	}
	c.log, c.plan, c.account = newLogPage(win, on), newPlanPage(win, copied), newAccountPage(win, copied)
	c.labels = newLabelsPage(win)
	c.Content = container.New(columnLayout{}, c.Headline, c.Under, kit.NewSides(c.Status, c.back), c.strip)
	c.lay(false)
	return c
}

// lay puts the pages up: those of a reel in hand, or of one that is only thought of.
func (c *Column) lay(thought bool) {
	c.thought = thought
	c.pages = []page{c.log, c.plan, c.account, c.labels}
	if thought {
		c.pages = []page{c.plan}
	}
	var tabs []kit.Tab
	for _, p := range c.pages {
		tabs = append(tabs, kit.Tab{Name: p.name(), Content: p.object()})
	}
	c.Tabs = kit.NewTabs(c.turned, tabs...)
	c.Content.Objects = append(c.Content.Objects[:4:4], c.Tabs)
	c.Content.Refresh()
}

// turned follows the choice of another page.
func (c *Column) turned() {
	c.fill()
	c.win.Restock()
}

// Page is the page in sight.
func (c *Column) Page() stock.Page { return c.pages[c.Tabs.At].which() }

// Turn turns to a page, and stays where there is none.
func (c *Column) Turn(to stock.Page) {
	for i, p := range c.pages {
		if p.which() == to && i != c.Tabs.At {
			c.Tabs.Choose(i)
		}
	}
}

// Label is the tab of the page in sight.
func (c *Column) Label() fyne.Focusable { return c.Tabs.Labels[c.Tabs.At] }

// Wants adds to a job what is wanted to be known of its subject.
func (c *Column) Wants(j stock.Job, scale float32) stock.Job {
	if j.Of.Thought != c.thought {
		c.lay(j.Of.Thought)
	}
	j.Page, j.Sheet = c.Page(), c.win.Sheet()
	j.Strip, j.Cuts = c.strip.Room(scale), c.plan.cuts.Room(scale)
	if of, own := j.Called(); of.Name != "" {
		c.plan.follow(subject{c.win.Session(), j.Of, of, len(j.Reels)}, j.Reels)
		if j.Page == stock.Cut {
			j.Wishes = c.plan.wishes(own)
		}
	}
	return j
}

// Show puts up what is known.
func (c *Column) Show(s *stock.Stock) {
	c.shown = s
	l := c.win.Locale()
	c.warns = nil
	switch {
	case s.Job.Of.Thought && s.Is:
		c.Headline.Set(kit.Span{Text: words.ThoughtHeadline(s.Plan, l), Bold: true})
		c.Under.Set(kit.Span{Text: words.ThoughtUnder(s.Name), Color: kit.Muted})
	case s.Job.Of.Thought:
		c.Headline.Set(kit.Span{Text: words.CannotBeCut, Bold: true})
		c.Under.Set()
	case s.Is:
		c.Headline.Set(kit.Span{Text: words.ReelHeadline(s.Standing, l), Bold: true})
		c.Under.Set(kit.Span{Text: words.ReelStock(s.Standing, l), Color: kit.Muted})
		c.warn(s.Standing.Warnings)
	case s.Standing != nil:
		c.Headline.Set(kit.Span{Text: s.Name, Bold: true})
		c.Under.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.ReelFault(s.Standing), Color: kit.Fault})
	}
	c.Tell()
	c.strip.Display(s.Strip)
	c.fill()
}

// warn keeps what is worth knowing of the reel.
func (c *Column) warn(warnings []reels.Warning) {
	for _, w := range warnings {
		if c.warns != nil {
			c.warns = append(c.warns, kit.Span{Text: " "})
		}
		c.warns = append(c.warns, kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: words.ReelWarning(w, c.win.Locale())})
	}
}

// Tell says what was done and what endangers the work, or else what is worth knowing of
// the reel.
func (c *Column) Tell() {
	c.notices.Put(c.Status, c.warns...)
	c.Content.Refresh()
}

// fill brings the page in sight up to date.
func (c *Column) fill() {
	if c.shown != nil && c.shown.Job.Of.Thought == c.thought {
		c.pages[c.Tabs.At].fill(c.shown)
	}
}

// columnLayout stacks the headline and the strip, and gives the tabs the rest.
type columnLayout struct{}

func (columnLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	edge := kit.Scaled(20)
	w := size.Width - 2*edge
	y := float32(14)
	for _, p := range o[:3] {
		h := kit.HeightOf(p, w)
		kit.Place(p, edge, y, w, h)
		y += h + 2
	}
	strip := kit.Scaled(116)
	kit.Place(o[3], edge, y+6, w, strip)
	y += strip + 14
	kit.Place(o[4], edge, y, w+edge-14, size.Height-y-8)
}

func (columnLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(380, 400) }
