package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/figure"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Each of the window's parts knows the window by a few methods only; here they are.

// asForm is the window as the form knows it.
type asForm struct{ d *Desk }

func (w asForm) Session() *session.Session { return w.d.session }
func (w asForm) Locale() money.Locale      { return w.d.locale() }
func (w asForm) Today() scenario.Date      { return w.d.today() }
func (w asForm) Changed()                  { w.d.rebuild() }
func (w asForm) Withheld()                 { w.d.status() }
func (w asForm) Explain()                  { w.d.explain() }
func (w asForm) Redraw()                   { w.d.pipeline.redraw() }
func (w asForm) AskDayRates()              { asPages(w).TakeDayRates() }
func (w asForm) AskStatement()             { w.d.asker.AskStatement(w.d.market.File) }
func (w asForm) AskSeen(offer int)         { w.d.asker.AskSeen(offer) }
func (w asForm) InSight()                  { w.d.panes.look(atForm) }
func (w asForm) Typed() {
	w.d.show()
	if !w.d.hand.typed() {
		w.d.pipeline.compute(jobs.Settles)
	}
}
func (w asForm) PutInHand()      { w.d.hand.put() }
func (w asForm) PlanCut()        { w.d.hand.plan() }
func (w asForm) MeasureCounter() { w.d.hand.column.MeasureCounter() }
func (w asForm) RemoveReel() {
	w.d.change(func(s *session.Session) { s.RemoveReel(words.StepRemoveReel) })
}

// asOffers is the window as the left column knows it.
type asOffers struct{ d *Desk }

func (w asOffers) Choose(sel session.Selection)             { w.d.choose(sel) }
func (w asOffers) Add(kind scenario.Kind)                   { w.d.addOffer(kind) }
func (w asOffers) AskDeal()                                 { w.d.asker.AskDeal() }
func (w asOffers) Rename(i int, name string) (wrong string) { return naming(w).offer(i, name) }
func (w asOffers) RenameScenario(name string) (wrong string) {
	return naming(w).scenario(name)
}
func (w asOffers) SwitchTo(name string) {
	if w.d.session.SwitchTo(name) {
		w.d.rebuild()
	}
}

// asPages is the window as the answer's pages know it.
type asPages struct{ d *Desk }

func (w asPages) LookAtFlip(k answer.FlipKey) { w.d.pipeline.lookAtFlip(k) }
func (w asPages) Mend()                       { w.d.mend() }
func (w asPages) AskRange()                   { w.d.asker.AskRange() }
func (w asPages) Order(offer string, units int) {
	w.d.change(func(s *session.Session) { s.Order(offer, units) })
}
func (w asPages) LookAt(offer string) {
	if sel, ok := w.d.session.OfferNamed(offer); ok {
		w.d.choose(sel)
	}
}
func (w asPages) SetRange(r scenario.Range) {
	w.d.change(func(s *session.Session) { s.SetRange(r) })
	w.d.notices.Announce(words.SwingSet)
}
func (w asPages) LookBackOver(span history.Span) {
	w.d.market.Span = span
	w.d.back.look(w.d.pipeline.shown)
}

// TakeDayRates asks for a day of the published rates in use; without any it asks where to
// get them.
func (w asPages) TakeDayRates() {
	if file := w.d.market.File; file != nil {
		w.d.asker.AskDayRates(file)
		return
	}
	get := func(how func()) func() {
		return func() {
			w.d.answer.Page(pages.Past)
			how()
		}
	}
	w.d.dialogs.Ask(words.DayRatesTitle, kit.Paragraphs(words.NoMarket, 420*kit.TextFactor), nil,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.FetchRates, Do: get(w.FetchRates)}, kit.Reply{Label: words.OpenRates, Do: get(w.OpenRates)})
}
func (w asPages) OpenRates()   { askRates(w.d.dialogs, w.d.files.folder(), w.d.market) }
func (w asPages) FetchRates()  { w.d.market.Fetch() }
func (w asPages) StopWaiting() { onScreen(w).stopWaiting() }
func (w asPages) Redraw() {
	if w.d.form != nil { // not while the columns are being made
		w.d.pipeline.redraw()
	}
}

// asHost is the window as questions, files and the keeper know it.
type asHost struct{ d *Desk }

func (w asHost) Session() *session.Session        { return w.d.session }
func (w asHost) Locale() money.Locale             { return w.d.locale() }
func (w asHost) Today() scenario.Date             { return w.d.today() }
func (w asHost) Change(do func(*session.Session)) { w.d.change(do) }
func (w asHost) Take(s *session.Session)          { w.d.take(s) }
func (w asHost) Ahead() *answer.Foresight         { return w.d.answer.Shown.Ahead }
func (w asHost) Flip() answer.FlipKey             { return w.d.pipeline.flip }
func (w asHost) Past() answer.PastOf {
	return answer.PastOf{File: w.d.market.File, Span: w.d.market.Span}
}
func (w asHost) ShownIn() string        { return w.d.shownIn }
func (w asHost) ShowIn(currency string) { w.d.showIn(currency) }
func (w asHost) Letter() bool           { return w.d.settings.letter() }
func (w asHost) PrintOn(letter bool)    { w.d.settings.printOn(letter) }
func (w asHost) Folder() string         { return w.d.files.folder() }
func (w asHost) Announce(text string) {
	w.d.notices.Announce(text)
	w.d.beside.announce(text)
	w.d.preview.announce(text)
}
func (w asHost) Object(text string)       { w.d.notices.Object(text) }
func (w asHost) Report(title, why string) { w.d.dialogs.Tell(title, why) }
func (w asHost) Saved() {
	w.d.keepShown()
	w.d.show()
}
func (w asHost) Recent()  { w.d.setMenu() }
func (w asHost) Columns() { w.d.columns() }
func (w asHost) Warn(text string) {
	w.d.notices.Warn(text)
	w.d.status()
}
func (w asHost) ShowFaults(list *pages.FaultList, title string) {
	w.d.faults = list
	w.d.win.SetContent(list.Content)
	w.d.win.SetTitle(words.WindowTitle(title, false))
}

// onScreen is the window as the pipeline knows it.
type onScreen struct{ d *Desk }

func (w onScreen) Epoch() uint64 { return w.d.session.Epoch() }

func (w onScreen) question() answer.Job {
	d := w.d
	s := d.session.Current()
	style := w.style()
	style.Lit = words.PartOf(d.form.Entered())
	return answer.Job{
		Epoch: d.session.Epoch(), Scenario: s, Faults: d.session.Faults(), Today: d.today(),
		Chosen: d.session.ChosenOffer(), In: d.shownIn, Style: style, Room: d.answer.Rooms(d.win.Canvas().Scale()),
	}
}

func (w onScreen) outlook() answer.OutlookJob {
	a := w.d.answer
	return answer.OutlookJob{
		All: a.LooksAhead(), Offer: w.d.session.ChosenOffer(),
		Style: w.style(), Room: a.Rooms(w.d.win.Canvas().Scale()),
	}
}

// style is how figures look in this window.
func (w onScreen) style() figure.Style {
	return figure.Style{Theme: kit.Palette(), Locale: w.d.locale()}
}

func (w onScreen) deliver(a *answer.Answer) {
	w.d.offers.Price(a.Comparison, w.d.locale())
	w.d.answer.Show(a, w.d.session.Chosen.Offer)
	w.d.explain()
	if w.d.answer.LooksBack() {
		w.d.market.Recall()
	}
	w.d.back.look(a)
	w.d.tour.follow()
}

func (w onScreen) foresee(f *answer.Foresight) {
	w.d.answer.Foresee(f)
	w.d.tour.follow()
}

func (w onScreen) lookingBack() (j answer.PastJob, wanted bool) {
	d := w.d
	if !d.answer.LooksBack() {
		return j, false
	}
	return answer.PastJob{
		File: d.market.File, Span: d.market.Span, Style: w.style(),
		Room: d.answer.Rooms(d.win.Canvas().Scale())[answer.Days],
	}, true
}

func (w onScreen) lookBack(b pages.Back) { w.d.answer.LookBack(b) }

// ratesChanged shows that other published rates are in use, or on their way.
func (w onScreen) ratesChanged() {
	w.d.answer.Refill()
	w.d.back.look(w.d.pipeline.shown)
	w.d.beside.ask()
}

// stopWaiting gives up what is fetched or takes long; it says whether something was.
func (w onScreen) stopWaiting() bool {
	fetching := w.d.market.Busy != market.Idle
	w.d.market.Stop()
	return w.d.back.stop() || fetching
}

// escape leaves the dialog on top, or gives up what is waited for.
func (w onScreen) escape(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyEscape && len(w.d.dialogs.Open) == 0 && w.d.tour.open() {
		w.d.tour.leave()
		return
	}
	if e.Name == fyne.KeyEscape && w.d.win.Canvas().Overlays().Top() == nil {
		if w.stopWaiting() {
			return
		}
		if w.d.beside.isOpen() || w.d.preview.isOpen() {
			w.d.columns()
			return
		}
	}
	w.d.dialogs.Escape(e)
}

func (w onScreen) settle(a *answer.Answer) {
	w.d.files.shown()
	w.d.answer.Say(a.Comparison)
	w.d.status()
	w.d.tour.follow()
}
