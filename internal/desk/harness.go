package desk

import (
	"context"
	"sync"
	"time"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// Harness drives a window without a screen, for pictures and tests: what would run on
// the interface thread is queued until Settle.
type Harness struct {
	*Desk
	mu    sync.Mutex
	queue []func()
}

// closed is a bank that cannot be reached.
type closed struct{}

func (closed) Kept(rates.Publication) *rates.File { return nil }
func (closed) Fetch(context.Context, rates.Publication) (rates.Fetched, error) {
	return rates.Fetched{}, &rates.Fault{Code: rates.FaultOffline}
}

// NewHarness is a window of an app that draws in memory. The clock stands still.
func NewHarness(app fyne.App, at time.Time) *Harness { return NewHarnessIn(app, at, "") }

// NewHarnessIn is NewHarness with a state folder.
func NewHarnessIn(app fyne.App, at time.Time, state string) *Harness {
	return newHarness(app, at, Options{State: state})
}

// newHarness has what else is asked for in the options.
func newHarness(app fyne.App, at time.Time, o Options) *Harness {
	h := &Harness{}
	o.App, o.Locale, o.Now = app, "en", func() time.Time { return at }
	o.Settle, o.Bank = time.Hour, closed{} // Settle ends the wait
	o.Post = func(f func()) {
		h.mu.Lock()
		defer h.mu.Unlock()
		h.queue = append(h.queue, f)
	}
	h.Desk = New(o)
	return h
}

// Help opens a page of the help by the name of its command.
func (h *Harness) Help(command string) {
	for _, i := range h.menu.main.Items[len(h.menu.main.Items)-1].Items {
		if plain(i.Label) == command {
			i.Action()
		}
	}
	h.Settle()
}

// ReadOn turns so many lines of the text that is read.
func (h *Harness) ReadOn(lines int) {
	for range lines {
		h.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	}
}

// Tour goes to a step of the tour, from 1.
func (h *Harness) Tour(step int) {
	h.tour.start()
	for range step - 1 {
		h.tour.light.On.Press()
		h.Settle()
	}
	h.Settle()
}

// Settle lets everything under way come to its end, the headline included.
func (h *Harness) Settle() {
	for range 20 {
		h.pipeline.idle()
		h.hand.idle()
		h.work.Wait()
		if !h.drain() {
			break
		}
	}
	h.pipeline.settleNow()
}

// drain runs what is queued; it says whether there was anything.
func (h *Harness) drain() bool {
	h.mu.Lock()
	queue := h.queue
	h.queue = nil
	h.mu.Unlock()
	for _, f := range queue {
		f()
	}
	return len(queue) > 0
}

// Resize gives the window a size.
func (h *Harness) Resize(width, height float32) {
	h.win.Resize(fyne.NewSize(width, height))
	h.Settle()
}

// LargestText makes the text as large as it can be.
func (h *Harness) LargestText() {
	h.setText(textSizes[len(textSizes)-1].factor)
	h.Settle()
}

// SetTheme switches to "paper" or "safelight".
func (h *Harness) SetTheme(name string) {
	h.settings.setTheme(kit.ThemeChoice(name))
	h.repaint()
	h.Settle()
}

// Page turns the answer to a page, from 0.
func (h *Harness) Page(i int) {
	h.page(i)
	h.Settle()
}

// Rates reads a file of published rates.
func (h *Harness) Rates(path string) {
	h.market.Read(path)
	h.Settle()
}

// Beside sets the scenarios side by side, with those of other files.
func (h *Harness) Beside(common string, paths ...string) {
	h.beside.open()
	h.Settle()
	if len(paths) > 0 {
		h.beside.add(paths...)
	}
	h.beside.BringTo(common)
	h.Settle()
}

// ShowIn shows figures in a currency.
func (h *Harness) ShowIn(currency string) {
	h.showIn(currency)
	h.Settle()
}

// AskRates opens the panel for a day's rates, or the one for a statement.
func (h *Harness) AskRates(statement bool) {
	if statement {
		asForm{h.Desk}.AskStatement()
	} else {
		asForm{h.Desk}.AskDayRates()
	}
	h.Settle()
}

// Topic turns the form to a topic: "offer", "shooting", "loading", "developing",
// "border" or "rates"; offer is counted from 0.
func (h *Harness) Topic(name string, offer int) {
	h.choose(session.Selection{Topic: session.Topic(name), Offer: offer})
	h.Settle()
}

// Put opens a scenario of the caller's.
func (h *Harness) Put(f scenario.File) {
	h.take(session.New(f))
	h.Settle()
}

// Type puts text into the field with that key, as typing does.
func (h *Harness) Type(key, text string) bool {
	for _, f := range h.form.Fields() {
		if f.Key == key {
			if box, ok := f.Input.(*kit.TextBox); ok {
				h.win.Canvas().Focus(box.Entry)
				box.Entry.SetText(text)
				return true
			}
		}
	}
	return false
}

// Pick chooses in the field with that key, as its list does.
func (h *Harness) Pick(key, value string) bool {
	for _, f := range h.form.Fields() {
		if p, ok := f.Input.(*kit.Picker); ok && f.Key == key {
			p.Choose(value)
			h.Settle()
			return true
		}
	}
	return false
}

// OpenList opens the list of the field with that key and types into it.
func (h *Harness) OpenList(key, typed string) {
	h.form.GoTo(key)
	for _, r := range " " + typed {
		h.win.Canvas().Focused().TypedRune(r)
	}
	h.Settle()
}

// New begins a scenario from nothing.
func (h *Harness) New() {
	h.begin()
	h.Settle()
}

// Export opens the question what to export.
func (h *Harness) Export() {
	h.asker.AskExport(answer.Cost)
	h.Settle()
}

// Preview shows the report as it will print, at a page, from 0.
func (h *Harness) Preview(page int) {
	h.preview.open()
	h.Settle()
	h.preview.view.Turn(page)
	h.Settle()
}

// Rename types a name for the way to buy at i, and Enter.
func (h *Harness) Rename(i int, name string) {
	h.offers.Rename(i)
	if box, ok := h.win.Canvas().Focused().(*kit.Entry); ok {
		box.SetText(name)
		box.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	}
	h.Settle()
}

// Deal opens the panel for something offered at a price.
func (h *Harness) Deal(price string) {
	h.asker.AskDeal()
	h.Settle()
	if box, ok := h.win.Canvas().Focused().(*kit.Entry); ok {
		box.SetText(price)
	}
	h.Settle()
}

// Announce says that something was done.
func (h *Harness) Announce(text string) { h.notices.Announce(text) }

// LookAtForm puts the form in sight where it shares its place with the answer.
func (h *Harness) LookAtForm() { h.panes.look(atForm) }

// LookAtAnswer puts the answer in sight, likewise.
func (h *Harness) LookAtAnswer() { h.panes.look(atAnswer) }

// AskSeen asks for a price that was seen of an offer, from 0.
func (h *Harness) AskSeen(offer int) {
	h.asker.AskSeen(offer)
	h.Settle()
}

// AskRange asks how far a figure may go.
func (h *Harness) AskRange() {
	h.asker.AskRange()
	h.Settle()
}
