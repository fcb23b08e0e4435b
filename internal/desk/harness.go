package desk

import (
	"fmt"
	"strings"
	"sync"
	"time"

	"fyne.io/fyne/v2"
	"github.com/shopspring/decimal"

	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
)

// Harness drives a window without a screen, for pictures and tests: what would run on
// the interface thread is queued until Settle.
type Harness struct {
	*Desk
	mu    sync.Mutex
	queue []func()
}

// NewHarness is a window of an app that draws in memory. The clock stands still.
func NewHarness(app fyne.App, at time.Time) *Harness { return NewHarnessIn(app, at, "") }

// NewHarnessIn is NewHarness with a state folder.
func NewHarnessIn(app fyne.App, at time.Time, state string) *Harness {
	h := &Harness{}
	h.Desk = New(Options{
		App: app, Locale: "en", Now: func() time.Time { return at }, State: state,
		Settle: time.Hour, // Settle ends the wait
		Post: func(f func()) {
			h.mu.Lock()
			defer h.mu.Unlock()
			h.queue = append(h.queue, f)
		},
	})
	return h
}

// Settle lets everything under way come to its end, the headline included.
func (h *Harness) Settle() {
	for range 20 {
		h.worker.idle()
		h.ahead.idle()
		h.pending.Wait()
		if !h.drain() {
			break
		}
	}
	if h.pace.waiting {
		h.pace.touch(now)
		h.settled()
	}
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

// SetTheme switches to "paper" or "safelight".
func (h *Harness) SetTheme(name string) {
	h.setTheme(kit.ThemeChoice(name))
	h.repaint()
	h.Settle()
}

// Page turns the answer to a page, from 0.
func (h *Harness) Page(i int) {
	h.answer.tabs.Choose(i)
	h.Settle()
}

// Topic turns the form to a topic: "offer", "shooting", "loading", "developing",
// "border" or "rates"; offer is counted from 0.
func (h *Harness) Topic(name string, offer int) {
	h.choose(selection{topic(name), offer})
	h.Settle()
}

// Put opens a scenario of the caller's.
func (h *Harness) Put(f scenario.File) {
	h.session = newSession(f)
	h.rebuild()
	h.Settle()
}

// Type puts text into the field with that key, as typing does.
func (h *Harness) Type(key, text string) bool {
	for _, f := range h.form.fields {
		if f.key == key {
			if box, ok := f.input.(*kit.TextBox); ok {
				h.win.Canvas().Focus(box.Entry)
				box.Entry.SetText(text)
				return true
			}
		}
	}
	return false
}

// Deal opens the panel for something offered at a price.
func (h *Harness) Deal(price string) {
	h.askDeal()
	h.Settle()
	if box, ok := h.win.Canvas().Focused().(*kit.Entry); ok {
		box.SetText(price)
	}
	h.Settle()
}

// Crowd is the demo with eight ways to buy whose names have 60 characters.
func Crowd() scenario.File {
	f := scenario.Demo()
	s := f.Scenarios[0].Clone()
	for i := 0; len(s.Offers) < 8; i++ {
		o := s.Offers[i%3]
		o.Price = o.Price.Add(decimal.New(int64(i), 0))
		s.Offers = append(s.Offers, o)
	}
	for i := range s.Offers {
		was := s.Offers[i].Name
		name := fmt.Sprintf("%d %s %s", i+1, was, strings.Repeat("a name that goes on ", 4))[:60]
		if i < 3 && s.Baseline == was {
			s.Baseline = name
		}
		s.Offers[i].Name = name
	}
	f.Scenarios = []scenario.Scenario{s}
	return f
}
