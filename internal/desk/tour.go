package desk

import (
	"fmt"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/words"
)

// tour points at the window's real controls one after the other. It looks at things and
// changes none; at its end the window is as it was.
type tour struct {
	d     *Desk
	stops []stop
	at    int
	light *kit.Spotlight // nil while there is no tour
	from  standpoint
}

// stop is a step of the tour: what is said, how it comes into sight, and what is pointed at
// within which scroll, nil for none.
type stop struct {
	say  words.TourStop
	look func()
	ring func() (parts []fyne.CanvasObject, in *kit.Scroll)
}

// standpoint is where somebody was in the window.
type standpoint struct {
	sel     session.Selection
	thought bool
	page    int
	seen    int
	field   string // that was typed in, "" for none
	column  int    // that had the focus
}

func newTour(d *Desk) *tour {
	t := &tour{d: d}
	page := func(i int) func() { return func() { t.answer(); d.page(i) } }
	t.stops = []stop{
		{words.TourWays, t.answer, func() ([]fyne.CanvasObject, *kit.Scroll) { return kit.Objects(d.offers.Offers...), d.offers.In }},
		{words.TourPrice, t.form, t.price},
		{words.TourReceipt, page(pages.Receipt), t.page(func() []fyne.CanvasObject { return kit.Objects(d.answer.Receipt.Table) })},
		{words.TourVerdict, page(pages.Charts), func() ([]fyne.CanvasObject, *kit.Scroll) {
			return kit.Objects(d.answer.Headline, d.answer.Under), nil
		}},
		{words.TourChanges, page(pages.Changes), t.page(func() []fyne.CanvasObject { return kit.Objects(d.answer.Changes.Flips...) })},
		{words.TourHandingOn, t.answer, nil},
	}
	return t
}

// start goes to the first step.
func (t *tour) start() {
	if t.open() {
		return
	}
	d := t.d
	t.from = standpoint{d.session.Chosen, d.hand.thought, d.answer.At(), d.panes.seen.At, d.form.Focused(), d.columnOfFocus()}
	d.win.Canvas().Unfocus()
	t.light = kit.NewSpotlight(d.win,
		kit.Reply{Label: words.TourBack, Do: func() { t.goTo(t.at - 1) }},
		kit.Reply{Label: words.TourNext, Do: func() { t.goTo(t.at + 1) }},
		kit.Reply{Label: words.TourLeave, Do: t.leave})
	t.goTo(0)
}

// open says whether a tour is under way.
func (t *tour) open() bool { return t.light != nil }

// goTo goes to a step, and away from beyond the last.
func (t *tour) goTo(i int) {
	if i >= len(t.stops) {
		t.leave()
		return
	}
	t.at = max(i, 0)
	s := t.stops[t.at]
	s.look()
	card := kit.SpotlightCard{
		Title: s.say.Title, Text: s.say.Text, Place: words.TourPlace(t.at+1, len(t.stops)), On: words.TourNext, Back: t.at > 0,
	}
	if t.at == 0 {
		card.Note = t.subject()
	}
	if t.at == len(t.stops)-1 {
		card.On = words.TourDone
	}
	t.light.Show(card)
	t.follow()
}

// subject says what the tour goes through.
func (t *tour) subject() string {
	if t.d.session.IsUntouchedDemo() {
		return words.TourOfDemo
	}
	return words.TourOf(t.d.session.Called())
}

// leave ends the tour and goes back to where it began.
func (t *tour) leave() {
	if !t.open() {
		return
	}
	d, from := t.d, t.from
	t.light.Hide()
	t.light = nil
	d.choose(from.sel)
	d.hand.thought = from.thought
	d.hand.show()
	d.answer.Page(from.page)
	d.panes.look(from.seen)
	switch {
	case from.field != "" && d.form.Has(from.field):
		d.form.GoTo(from.field)
	case from.column == 0:
		d.win.Canvas().Focus(d.leftFocus())
	case from.column == 2 && !d.hand.looking():
		d.win.Canvas().Focus(d.answer.Label())
	}
}

// follow keeps the ring round what it points at, after the window was laid out anew.
func (t *tour) follow() {
	if !t.open() {
		return
	}
	const around = 4
	window := kit.Box{Size: t.d.win.Canvas().Size()}
	t.light.Ring(t.pointed().Grown(around).Within(window))
}

// pointed is where the controls of this step stand, as far as they can be seen. A step
// without any points at the menu, or where that is not in the window at the page in sight.
func (t *tour) pointed() (at kit.Box) {
	s := t.stops[t.at]
	if s.ring != nil {
		parts, in := s.ring()
		if in != nil && len(parts) > 0 {
			in.Reveal(parts[0])
		}
		for _, o := range parts {
			at = at.With(kit.BoxOf(o))
		}
		if in != nil {
			at = at.Within(kit.BoxOf(in))
		}
	} else {
		at = fileMenu(t.d.win.Canvas())
	}
	if at.IsEmpty() {
		at = kit.BoxOf(t.d.answer.Tabs)
	}
	return at
}

// answer brings the answer, to a way to buy, into sight.
func (t *tour) answer() {
	t.offer()
	t.d.panes.look(atAnswer)
}

// form brings the form of a way to buy into sight.
func (t *tour) form() {
	t.offer()
	t.d.panes.look(atForm)
}

// offer turns to the way to buy that was looked at last.
func (t *tour) offer() {
	t.d.hand.thought = false
	t.d.choose(session.Selection{Topic: session.TopicOffer, Offer: t.d.session.Chosen.Offer, Reel: t.d.session.Chosen.Reel})
	t.d.hand.show()
}

// price is the price of the way to buy in the form.
func (t *tour) price() ([]fyne.CanvasObject, *kit.Scroll) {
	key := fmt.Sprintf("offer[%d].price", t.d.session.Chosen.Offer+1)
	for _, f := range t.d.form.Fields() {
		if f.Key == key {
			return kit.Objects(f.Row), t.d.form.Scroll
		}
	}
	return kit.Objects(t.d.form.Content), nil
}

// page is what is seen of a page, which scrolls, when it shows something.
func (t *tour) page(parts func() []fyne.CanvasObject) func() ([]fyne.CanvasObject, *kit.Scroll) {
	return func() ([]fyne.CanvasObject, *kit.Scroll) {
		in, _ := t.d.answer.Tabs.Pages[t.d.answer.At()].Content.(*kit.Scroll)
		return parts(), in
	}
}
