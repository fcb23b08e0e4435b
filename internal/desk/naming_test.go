package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// naming is the box that has the focus.
func (h *Harness) naming(t *testing.T) *kit.Entry {
	t.Helper()
	box, ok := h.Window().Canvas().Focused().(*kit.Entry)
	if !ok {
		t.Fatalf("%T has the focus", h.Window().Canvas().Focused())
	}
	return box
}

func press(key fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: key} }

func TestAWayToBuyIsRenamedWhereItStands(t *testing.T) {
	h := open(t)
	was := h.session.Current()
	before := h.offers.Offers[0].Size()
	h.Topic("offer", 0)
	h.Window().Canvas().Focus(h.offers.Offers[0])
	h.offers.Offers[0].TypedKey(press(fyne.KeyF2))
	box := h.naming(t)
	if box.Text != "Marigold 400, shop roll" {
		t.Error(box.Text)
	}
	if h.offers.Offers[0].Size() != before {
		t.Error("the list moved")
	}
	box.SetText(was.Offers[2].Name)
	box.TypedKey(press(fyne.KeyReturn))
	if h.Window().Canvas().Focused() != box || h.session.Draft.Modified() {
		t.Error("a name was given twice")
	}
	box.SetText("Corner shop")
	box.TypedKey(press(fyne.KeyReturn))
	h.Settle()
	s := h.session.Current()
	if s.Offers[0].Name != "Corner shop" || s.Baseline != "Corner shop" || h.View().Offers[0].Name != "Corner shop" || h.View().Form != "Corner shop" {
		t.Errorf("%q %q %+v", s.Offers[0].Name, s.Baseline, h.View().Offers[0])
	}
	if h.Window().Canvas().Focused() != h.offers.Offers[0] {
		t.Error("the focus does not come back to the card")
	}
	h.agrees(t, s)
	h.undo()
	h.Settle()
	h.agrees(t, was)
}

func TestANameIsTakenOnLeavingAndNotOnEscape(t *testing.T) {
	h := open(t)
	h.offers.Rename(2)
	h.naming(t).SetText("Another reel")
	h.naming(t).TypedKey(press(fyne.KeyEscape))
	if h.session.Draft.Modified() || h.View().Offers[2].Name == "Another reel" {
		t.Error("Esc took the name")
	}
	h.offers.Rename(2)
	h.naming(t).SetText("Another reel")
	h.offers.Offers[0].Tapped(nil)
	h.Settle()
	if v := h.View(); v.Offers[2].Name != "Another reel" || !v.Offers[0].Chosen || h.Window().Canvas().Focused() != h.offers.Offers[0] {
		t.Errorf("%+v", v.Offers)
	}
	h.agrees(t, h.session.Current())
	h.offers.Rename(1)
	h.naming(t).SetText(" ")
	h.naming(t).TypedKey(press(fyne.KeyReturn))
	if name := h.session.Current().Offers[1].Name; strings.TrimSpace(name) == "" {
		t.Error("an offer without a name")
	}
}

// A second tap on the name of what is chosen renames it, one on another chooses that.
func TestTappingTheNameOfTheChosenCard(t *testing.T) {
	h := open(t)
	tap := &fyne.PointEvent{Position: fyne.NewPos(20, 12)}
	card := h.offers.Offers[1]
	card.Tapped(tap)
	if h.Window().Canvas().Focused() != card {
		t.Fatal("the first tap does not choose")
	}
	card.Tapped(&fyne.PointEvent{Position: fyne.NewPos(20, card.Size().Height-4)})
	if h.Window().Canvas().Focused() != card {
		t.Error("below the name it renames too")
	}
	card.Tapped(tap)
	h.naming(t).SetText("By post")
	h.naming(t).TypedKey(press(fyne.KeyReturn))
	h.Settle()
	if h.View().Offers[1].Name != "By post" {
		t.Error(h.View().Offers[1].Name)
	}
}

func TestTheScenarioIsRenamedWhereItStands(t *testing.T) {
	h := open(t)
	h.Window().Canvas().Focus(h.offers.Scenario)
	h.offers.Scenario.TypedKey(press(fyne.KeyF2))
	h.naming(t).SetText("My year")
	h.naming(t).TypedKey(press(fyne.KeyReturn))
	h.Settle()
	if h.session.Current().Name != "My year" || h.offers.Scenario.Shown() != "My year" || h.Window().Canvas().Focused() != h.offers.Scenario {
		t.Error(h.session.Current().Name)
	}
	h.change((*session.Session).Duplicate)
	h.Settle()
	h.offers.RenameScenario()
	h.naming(t).SetText("My year")
	h.naming(t).TypedKey(press(fyne.KeyReturn))
	if got := h.session.Current().Name; got != "My year (2)" || !strings.Contains(h.offers.State.String(), "another scenario") {
		t.Errorf("%q, %q", got, h.offers.State.String())
	}
	h.naming(t).SetText("Next year")
	h.Window().Canvas().Unfocus()
	h.Settle()
	if got := h.session.Current().Name; got != "Next year" || strings.Contains(h.offers.State.String(), "another") {
		t.Errorf("%q, %q", got, h.offers.State.String())
	}
}

// The list goes to what was added, and to what is gone to by the keys.
func TestTheListScrollsToTheCopy(t *testing.T) {
	h := open(t)
	h.Resize(1280, 520)
	for range 5 {
		h.change((*session.Session).DuplicateOffer)
		h.Settle()
	}
	inSight := func(i int) bool {
		card := h.offers.Offers[i]
		d := fyne.CurrentApp().Driver()
		top := d.AbsolutePositionForObject(card).Y - d.AbsolutePositionForObject(h.offers.In).Y
		return top >= 0 && top+card.Size().Height <= h.offers.In.Size().Height
	}
	if at := h.session.Chosen.Offer; at != 7 || !inSight(at) || inSight(0) {
		t.Error("the last copy is out of sight, of", len(h.offers.Offers))
	}
	if name := h.View().Offers[7].Name; name != "Lanternlight 500, 100 ft reel (6)" {
		t.Error(name)
	}
	h.Topic("offer", 0)
	if !inSight(0) {
		t.Error("the first is out of sight")
	}
	h.addOffer(scenario.KindBoxed)
	h.Settle()
	if !inSight(8) {
		t.Error("what was added is out of sight")
	}
}
