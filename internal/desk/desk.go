package desk

import (
	"time"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/desk/offers"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Desk is one window: what is open, the three columns that show it, and who does what.
type Desk struct {
	deeds
	undoing
	mending
	focus
	telling
	showing

	win     fyne.Window
	now     func() time.Time
	session *session.Session
	shownIn string // the currency that figures are shown in, "" for home

	offers  *offers.List
	form    *form.Column
	answer  *pages.Column
	panes   *columns
	notices *pages.Notices
	hand    *hand
	root    *fyne.Container
	faults  *pages.FaultList // shown in the place of the columns, nil otherwise

	settings *settings
	dialogs  *kit.Dialogs
	work     *jobs.Background // reading and writing under way
	pipeline *pipeline
	market   *market.Market
	back     *lookback
	beside   *beside
	tour     *tour
	preview  *preview
	keeper   *session.Keeper
	shelf    session.BorderShelf
	asker    *dialogs.Asker
	files    *files
	menu     *menu
}

// Window is the toolkit's window.
func (d *Desk) Window() fyne.Window { return d.win }

// Open reads a scenario file away from the interface thread and shows it, or what is
// wrong with it.
func (d *Desk) Open(path string) { d.files.open(path) }

// OpenLast opens the file that was open last, if it is still there.
func (d *Desk) OpenLast() { d.files.openLast() }

// Ended keeps unsaved work when the program is ended from outside, as by a signal.
func (d *Desk) Ended() { d.keeper.Last() }

// Session is what is open.
func (d *Desk) Session() *session.Session { return d.session }

// layOut makes the columns anew: at the start, and when the size of the text changes.
func (d *Desk) layOut() {
	was, page, seen := d.answer, 0, atForm
	if was != nil {
		page, seen = was.At(), d.panes.seen.At
	}
	d.offers = offers.New(asOffers{d})
	d.answer = pages.NewColumn(asPages{d}, d.locale, d.market, d.notices)
	d.form = form.NewColumn(asForm{d}, d.win.Canvas())
	d.offers.In = d.hand.layOut(d.answer.Content, d.offers.Content)
	d.panes = newColumns(d.offers.In, d.form.Content, d.hand.right)
	d.panes.laid = d.tour.follow
	d.panes.look(seen)
	d.tell()
	d.root = d.panes.root
	d.faults = nil
	d.beside.close()
	d.preview.close()
	d.answer.LookBack(d.back.back)
	d.win.SetContent(d.root)
	d.pipeline.forget()
	d.rebuild()
	d.answer.Page(page)
}

// rebuild lays everything out anew, after another thing was chosen or the scenario
// changed its shape.
func (d *Desk) rebuild() {
	d.session.Clamp()
	s := d.session.Current()
	onCard := d.columnOfFocus() == 0
	d.offers.Build(&s)
	d.form.Build()
	d.show()
	if onCard {
		d.win.Canvas().Focus(d.leftFocus())
	}
	d.pipeline.compute(jobs.Now)
}

// show puts what is known without computing into the left column and the form.
func (d *Desk) show() {
	d.notices.Now(d.session.Epoch(), uint64(d.session.Draft.Mark()))
	d.offers.Show(d.session, d.locale())
	d.hand.show()
	d.form.Show()
	d.title()
	d.menu.refresh(d.session, d.settings)
	d.keeper.Keep()
}

func (d *Desk) title() {
	d.win.SetTitle(words.WindowTitle(d.session.FileName(), d.session.Draft.Modified()))
}

// choose turns the window to another way to buy or topic.
func (d *Desk) choose(sel session.Selection) {
	d.panes.look(atForm)
	if sel == d.session.Chosen {
		return
	}
	d.hand.thought = false
	same := sel.Offer == d.session.Chosen.Offer
	d.session.Choose(sel)
	if sel.Topic == session.TopicRates {
		d.market.Recall()
	}
	d.form.Top()
	d.form.Build()
	d.show()
	d.explain()
	if !same {
		d.pipeline.compute(jobs.Now)
	}
}

// change makes a change of the session that may alter its shape, and lays the window out
// anew.
func (d *Desk) change(do func(*session.Session)) {
	do(d.session)
	d.rebuild()
}

// take works on something else.
func (d *Desk) take(s *session.Session) {
	d.columns()
	d.session = s
	d.recall()
	d.keeper.Forget()
	d.pipeline.forget()
	d.rebuild()
}

// columns goes back from what stands in their place: a list of faults, scenarios side by
// side, the report as it will print.
func (d *Desk) columns() {
	d.hand.empty()
	if d.faults != nil || d.beside.isOpen() || d.preview.isOpen() {
		d.faults = nil
		d.beside.close()
		d.preview.close()
		d.win.SetContent(d.root)
		d.title()
	}
}

// repaint follows a change of theme.
func (d *Desk) repaint() {
	d.root.Refresh()
	d.hand.restock()
	d.pipeline.compute(jobs.Now)
	d.beside.repaint()
	d.preview.repaint()
}

// explain puts beside the fields what their values come to.
func (d *Desk) explain() {
	if a := d.pipeline.shown; a != nil {
		c, sel, l := a.Comparison, d.session.Chosen, d.locale()
		d.form.Explain(offers.Warnings(c, sel, l), func(key string, offer int) string { return words.Meaning(key, c, offer, l) })
	}
}

// status says what the answer does not include.
func (d *Desk) status() {
	if d.pipeline.shown != nil {
		d.answer.Without(d.form.Withheld())
	}
}

func (d *Desk) locale() money.Locale { return d.settings.locale }

func (d *Desk) today() scenario.Date { return scenario.DateOf(d.now()) }

// dropped opens a file that was let fall on the window, one of published rates too.
func (d *Desk) dropped(_ fyne.Position, uris []fyne.URI) {
	if len(uris) == 0 {
		return
	}
	path := uris[0].Path()
	if (asBeside{d}).dropped(uris) {
		return
	}
	d.guarded(func() {
		if isRates(path) {
			d.market.Read(path)
			d.answer.Page(pages.Past)
			return
		}
		d.files.leaving(func() { d.Open(path) })
	})()
}

// close ends the program, asking about unsaved work.
func (d *Desk) close() {
	d.tour.leave()
	if d.win.Canvas().Overlays().Top() != nil {
		return // a question is open already
	}
	d.files.leaving(func() {
		d.settings.keepSize(d.win.Canvas().Size())
		d.settings.keepPlaceOf(d.session)
		d.keeper.End()
		d.pipeline.stop()
		d.hand.stop()
		d.win.SetCloseIntercept(nil)
		d.win.Close()
	})
}
