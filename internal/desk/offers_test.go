package desk

import (
	"regexp"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func TestAddingAndRemovingWaysToBuy(t *testing.T) {
	h := open(t)
	h.addOffer(scenario.KindReel)
	h.Settle()
	v := h.View()
	if len(v.Offers) != 4 || !v.Offers[3].Chosen || v.Form != "New reel" || v.Offers[3].PerRoll != "–" {
		t.Fatalf("%+v", v.Offers)
	}
	if f := h.field(t, "offer[4].price"); !f.Focused {
		t.Error("the price of the new reel is not entered")
	}
	h.mustType(t, "offer[4].price", "90")
	h.Settle()
	if v := h.View(); v.Offers[3].PerRoll == "–" {
		t.Errorf("%+v", v.Offers)
	}
	h.Window().Canvas().Unfocus()
	h.change((*session.Session).RemoveOffer)
	h.Settle()
	h.agrees(t, demo())
	h.Topic("offer", 0)
	h.change((*session.Session).RemoveOffer) // the baseline
	h.Settle()
	if s := h.session.Current(); s.Baseline != s.Offers[0].Name || len(s.Offers) != 2 {
		t.Error("compared with", s.Baseline)
	}
	h.agrees(t, h.session.Current())
}

func TestRenamingKeepsTheBaseline(t *testing.T) {
	h := open(t)
	h.Topic("offer", 0)
	for _, f := range h.form.Fields() {
		if f.Key == "offer[1].name" {
			h.form.Edit(f, "Corner shop")
		}
	}
	h.Settle()
	if s := h.session.Current(); s.Baseline != "Corner shop" || s.Offers[0].Name != "Corner shop" {
		t.Error(s.Baseline)
	}
}

func TestMovingAndDuplicating(t *testing.T) {
	h := open(t)
	h.change(func(s *session.Session) { s.MoveOffer(-1) })
	h.Settle()
	if v := h.View(); v.Offers[1].Name != "Lanternlight 500, 100 ft reel" || !v.Offers[1].Chosen {
		t.Errorf("%+v", v.Offers)
	}
	h.change((*session.Session).DuplicateOffer)
	h.Settle()
	if v := h.View(); v.Offers[2].Name != "Lanternlight 500, 100 ft reel (2)" || !v.Offers[2].Chosen || v.Offers[2].PerRoll != v.Offers[1].PerRoll {
		t.Errorf("%+v", v.Offers)
	}
	h.change((*session.Session).CompareWith)
	h.Settle()
	if got := h.session.Current().Baseline; got != "Lanternlight 500, 100 ft reel (2)" {
		t.Error(got)
	}
}

func TestIsItADeal(t *testing.T) {
	h := open(t)
	h.asker.AskDeal()
	h.Settle()
	h.panel(t, dialogs.DealPrice).Entry.SetText("7.40")
	h.Settle()
	if text := h.dialogText(); !strings.Contains(text, "Worth it.") || !strings.Contains(text, "EUR\u00a011.41 a roll") {
		t.Error(text)
	}
	h.panel(t, dialogs.DealBad).Entry.SetText("5o")
	h.Settle()
	if !h.panel(t, dialogs.DealBad).Faulty {
		t.Error("5o % is taken")
	}
	h.panel(t, dialogs.DealBad).Entry.SetText("50")
	h.Settle()
	if text := h.dialogText(); !strings.Contains(text, "Not worth it.") {
		t.Error("half of it bad, but", text)
	}
	h.press(t, "Close")
	h.agrees(t, demo())
	if h.session.Draft.Modified() {
		t.Error("asking left a trace")
	}
	h.asker.AskDeal()
	h.Settle()
	h.panel(t, dialogs.DealPrice).Entry.SetText("7.40")
	h.Settle()
	h.panel(t, dialogs.DealRolls).Entry.SetText("4")
	h.panel(t, dialogs.DealBad).Entry.SetText("1 of 4")
	h.Settle()
	said := regexp.MustCompile(`EUR\x{a0}([\d.]+) a roll, dev`).FindStringSubmatch(h.dialogText())
	if said == nil {
		t.Fatal(h.dialogText())
	}
	h.press(t, "Keep as a way to buy")
	h.Settle()
	if v := h.View(); len(v.Offers) != 4 || v.Offers[3].PerRoll != said[1] {
		t.Errorf("%q was said, but %+v", said[1], v.Offers)
	}
	if o := h.session.Current().Offers[3]; o.Boxed.SpoiledPercent.String() != "25" || o.Developing == "" {
		t.Errorf("%+v", o)
	}
}

// A deal is typed, judged and kept without the mouse, and costs in the list what was said.
func TestADealByKeysCostsInTheListWhatWasSaid(t *testing.T) {
	h := open(t)
	h.asker.AskDeal()
	h.Settle()
	canvas := h.Window().Canvas()
	box := func(label string) *kit.TextBox {
		want := h.panel(t, label)
		for range 20 {
			if canvas.Focused() == fyne.Focusable(want.Entry) {
				return want
			}
			canvas.FocusNext()
		}
		t.Fatalf("no way by Tab to %q", label)
		return nil
	}
	for label, text := range map[string]string{dialogs.DealPrice: "31.50", dialogs.DealRolls: "10", dialogs.DealBad: "3 of 10"} {
		entry := box(label).Entry
		entry.SelectAll()
		for _, r := range text {
			canvas.Focused().TypedRune(r)
		}
	}
	h.Settle()
	text := h.dialogText()
	said := regexp.MustCompile(`EUR\x{a0}([\d.]+) a roll, dev`).FindStringSubmatch(text)
	if said == nil || !regexp.MustCompile(`\d of its 10 rolls may be bad`).MatchString(text) {
		t.Fatal(text)
	}
	for range 20 {
		if b, ok := canvas.Focused().(*kit.ReplyButton); ok && b.Text == words.DealKeep {
			break
		}
		canvas.FocusNext()
	}
	canvas.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	h.Settle()
	if v := h.View(); len(v.Offers) != 4 || v.Offers[3].PerRoll != said[1] {
		t.Errorf("%q was said, but %+v", said[1], v.Offers)
	}
	if o := h.session.Current().Offers[3]; o.Boxed.SpoiledPercent.String() != "30" {
		t.Errorf("%s %% of it is bad", o.Boxed.SpoiledPercent)
	}
}
