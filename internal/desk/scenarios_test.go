package desk

import (
	"strings"
	"testing"

	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

func TestScenariosComeAndGo(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118.50") // else the demo would make room
	h.begin()
	h.Settle()
	if s := h.session.Current(); s.Name != "New scenario" || len(h.session.Names()) != 2 {
		t.Error(s.Name, h.session.Names())
	}
	h.agrees(t, h.session.Current())
	h.change((*session.Session).Duplicate)
	h.Settle()
	if got := h.session.Current().Name; got != "New scenario (2)" {
		t.Error(got)
	}
	h.asker.DeleteScenario()
	h.Settle()
	h.asker.DeleteScenario()
	h.Settle()
	h.asker.DeleteScenario()
	h.Settle()
	h.press(t, "Close")
	if len(h.session.Names()) != 1 {
		t.Error("the last scenario is gone")
	}
	h.undo()
	h.Settle()
	h.undo()
	h.Settle()
	if got := len(h.session.Names()); got != 3 {
		t.Error(got, "scenarios after undoing two deletions")
	}
	for _, f := range faultsOf(h.session.Draft.File()) {
		if !strings.HasSuffix(f.Path, ".price") { // nobody typed them
			t.Error(f)
		}
	}
}

func TestARangeIsKept(t *testing.T) {
	h := open(t)
	h.Page(pages.Changes)
	if wrong := h.asker.SetRange("offer.price", "150", "100"); wrong == "" {
		t.Error("a range the wrong way round was taken")
	}
	if wrong := h.asker.SetRange("offer.price", "100", "150"); wrong != "" {
		t.Fatal(wrong)
	}
	h.Settle()
	saved, faults := scenario.Read(scenario.Write(h.session.Draft.File()))
	if len(faults) > 0 || len(saved.Scenarios[0].Ranges) != 1 || saved.Scenarios[0].Ranges[0].High.String() != "150" {
		t.Error(faults, saved.Scenarios[0].Ranges)
	}
	for _, s := range h.answer.Shown.Ahead.Swings() {
		if s.Input == "offer.price" && (s.Low.String() != "100" || s.High.String() != "150") {
			t.Error("the swing goes from", s.Low, "to", s.High)
		}
	}
}
