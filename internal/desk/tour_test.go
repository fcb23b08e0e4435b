package desk

import (
	"bytes"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// typeKey types a key into what has the focus.
func (h *Harness) typeKey(key fyne.KeyName) {
	h.win.Canvas().Focused().TypedKey(press(key))
	h.Settle()
}

// pointsAt holds the ring of the step that is on against the controls it is about.
func (h *Harness) pointsAt(t *testing.T, what string, controls ...fyne.CanvasObject) {
	t.Helper()
	h.Settle()
	ring, window := h.tour.light.Ringed(), kit.Box{Size: h.win.Canvas().Size()}
	leaves := func(b kit.Box) bool {
		return b.Within(window).Size.Subtract(b.Size).Width < -1 || b.Within(window).Size.Subtract(b.Size).Height < -1
	}
	if ring.IsEmpty() || leaves(ring) {
		t.Fatalf("%s: the ring is at %v in a window of %v", what, ring, window.Size)
	}
	for _, o := range controls {
		if at := kit.BoxOf(o); at.IsEmpty() || at.Within(ring).IsEmpty() {
			t.Errorf("%s: %T at %v is not in the ring at %v", what, o, at, ring)
		}
	}
	if card := h.tour.light.Card(); leaves(card) {
		t.Errorf("%s: the card at %v leaves the window", what, card)
	}
}

// toured are what each step points at, the last one at the menu.
func (h *Harness) toured(step int) []fyne.CanvasObject {
	switch step {
	case 0:
		return kit.Objects(h.offers.Offers[0])
	case 1:
		row, _ := h.tour.price()
		return row
	case 2:
		return kit.Objects(h.answer.Receipt.Table)
	case 3:
		return kit.Objects(h.answer.Headline, h.answer.Under)
	case 4:
		return kit.Objects(h.answer.Changes.Flips[0])
	}
	return nil
}

// By the keys alone, to the end and at any step away: each step rings the real control, and
// the window and the file are as they were.
func TestTheTourPointsAndChangesNothing(t *testing.T) {
	h := open(t)
	h.form.GoTo("offer[3].shipping")
	h.Page(pages.Tables)
	h.form.GoTo("offer[3].shipping")
	was, file := h.View(), scenario.Write(h.session.Draft.File())
	for end := range 6 {
		h.menu.item(words.MenuTour)()
		for step := range end + 1 {
			said := h.tour.light.Said()
			if !strings.Contains(said, words.TourPlace(step+1, 6)) || !strings.Contains(said, h.tour.stops[step].say.Text) {
				t.Errorf("step %d says %q", step+1, said)
			}
			if step == 0 && !strings.Contains(said, words.TourOfDemo) {
				t.Error("it does not say that this is the demo")
			}
			h.pointsAt(t, h.tour.stops[step].say.Title, h.toured(step)...)
			if ring, card := h.tour.light.Ringed(), h.tour.light.Card(); step < 5 && !ring.Within(card).IsEmpty() {
				t.Errorf("step %d: the card at %v hides the ring at %v", step+1, card, ring)
			}
			if step < end {
				h.typeKey(fyne.KeyReturn)
			}
		}
		if end == 5 {
			h.typeKey(fyne.KeyReturn) // done
		} else {
			h.typeKey(fyne.KeyEscape)
		}
		if now := h.View(); h.tour.open() || now.Asking || now.Page != was.Page || now.Form != was.Form || !h.field(t, "offer[3].shipping").Focused {
			t.Fatalf("after step %d the window is not as it was: %+v", end+1, now)
		}
	}
	if h.session.Draft.Modified() || h.session.Draft.UndoName() != "" || !bytes.Equal(scenario.Write(h.session.Draft.File()), file) {
		t.Error("the file was changed")
	}
}

// In a small window with large text and eight ways to buy, after another size too, what is
// pointed at is in sight. It says whose figures these are.
func TestTheTourFindsWhatIsHidden(t *testing.T) {
	h := open(t)
	h.LargestText()
	t.Cleanup(func() { kit.SetTextSize(1) })
	h.Put(Crowd())
	h.Topic("rates", 7)
	h.Resize(1024, 700)
	h.tour.start()
	if said := h.tour.light.Said(); !strings.Contains(said, words.TourOf(h.session.Current().Name)) {
		t.Error(said)
	}
	for step := range 6 {
		for _, size := range []fyne.Size{{Width: 1400, Height: 620}, {Width: 1024, Height: 700}} {
			h.Resize(size.Width, size.Height)
			h.pointsAt(t, h.tour.stops[step].say.Title, h.toured(step)...)
		}
		if step == 3 {
			h.tour.light.Back.Press()
			h.pointsAt(t, "back", h.toured(2)...)
			h.tour.light.On.Press()
		}
		h.tour.light.On.Press()
		h.Settle()
	}
	if v := h.View(); h.tour.open() || v.Form != words.TopicRates {
		t.Errorf("%+v", v)
	}
	h.tour.start()
	h.win.Canvas().Unfocus()
	h.typed(press(fyne.KeyEscape))
	if h.tour.open() {
		t.Error("it stays when nothing has the focus")
	}
}

// The last step rings the name of the first menu, where the window draws its bar.
func TestTheTourRingsTheFileMenu(t *testing.T) {
	h := open(t)
	h.Tour(6)
	h.win.Canvas().Content().Move(fyne.NewPos(0, 32))
	h.tour.follow()
	name := kit.Measure(words.MenuFile, kit.SizeText, false)
	if ring := h.tour.light.Ringed(); ring.At.Y != 0 || ring.Size.Height < 32 || ring.Size.Width < name || ring.Size.Width > 3*name {
		t.Errorf("%v", ring)
	}
}

// A scenario without anything to see has a tour all the same.
func TestTheTourOfAnEmptyScenario(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	h.tour.start()
	for step := range 6 {
		h.pointsAt(t, h.tour.stops[step].say.Title)
		h.tour.light.On.Press()
		h.Settle()
	}
}

// The tour is offered in a line at the first start, until something is done.
func TestTheTourIsOfferedOnce(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	offered := func() (*Harness, bool) {
		h := newHarness(app, noon, Options{Greet: true})
		h.Settle()
		return h, h.View().Status == words.TourOffer && h.answer.Mend.Label.String() == words.LinkTakeATour && h.answer.Mend.Visible()
	}
	h, is := offered()
	if !is {
		t.Fatal("it is not offered:", h.View().Status)
	}
	h.answer.Mend.Do()
	if !h.tour.open() || h.View().Status != "" {
		t.Error("the link takes nobody anywhere, or stays:", h.View().Status)
	}
	if h, is = offered(); is {
		t.Error("it is offered again")
	}
	h.settings.app.Preferences().RemoveValue(keepGreeted)
	h, _ = offered()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	if h.View().Status != "" {
		t.Error("it stays:", h.View().Status)
	}
}
