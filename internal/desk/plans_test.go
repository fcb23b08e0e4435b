package desk

import (
	"path/filepath"
	"reflect"
	"testing"

	"reelworth/internal/desk/stock"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// planned holds the plan in sight against what it should be.
func (h *Harness) planned(t *testing.T, when string, want ...reels.Wish) {
	t.Helper()
	h.Settle()
	if got := h.hand.column.Wishes(); !reflect.DeepEqual(got, want) {
		t.Errorf("%s: the plan is %v, not %v", when, got, want)
	}
}

// A cut plan is there the next time its file is opened, for the reel that it was made for
// and under the name that the reel has now; the file itself knows nothing of it.
func TestACutPlanIsThereNextTime(t *testing.T) {
	h := open(t)
	three, usual := reels.Wish{Asked: 3, Exposures: 24}, reels.Wish{Exposures: 36}
	h.Put(Shelf())
	h.Reel(0, stock.Cut)
	h.planned(t, "at first", usual)
	h.Wish("3", "24")
	h.planned(t, "with a wish", three, usual)
	path := filepath.Join(t.TempDir(), "year.toml")
	h.files.save(nil)
	h.answerPath(t, path)
	h.press(t, "Save")
	if string(read(t, path)) != string(scenario.Write(Shelf())) {
		t.Error("the plan is in the file")
	}

	next := NewHarness(h.settings.app, noon)
	next.Window().Show()
	next.Open(path)
	next.Settle()
	next.Reel(1, stock.Cut)
	next.planned(t, "of another reel", usual)
	next.Reel(0, stock.Cut)
	next.planned(t, "next time", three, usual)
	for _, name := range []string{"T", "Ti", "Tide"} { // letter by letter, as it is typed
		next.mustType(t, "reel[1].name", name)
		next.Settle()
	}
	next.Reel(1, stock.Cut)
	next.Reel(0, stock.Cut)
	next.planned(t, "renamed", three, usual)
	next.undo()
	next.planned(t, "with its name back", three, usual)
	next.click(t, "Remove")
	next.planned(t, "without the wish", usual)
	if list := next.settings.plans(path); len(list) != 0 {
		t.Errorf("the usual plan is remembered: %v", list)
	}
	next.click(t, "Remove")
	next.Reel(1, stock.Cut)
	next.Reel(0, stock.Cut)
	next.planned(t, "with nothing left of it")
}

// A plan in no file is remembered too, one of an offer's reel by its scenario; and what
// makes no sense among the preferences is no plan.
func TestACutPlanOfWhatIsInNoFile(t *testing.T) {
	h := open(t)
	h.PlanCut(2)
	h.Wish("6", "12")
	next := NewHarness(h.settings.app, noon)
	next.PlanCut(2)
	next.planned(t, "of the demo", reels.Wish{Asked: 6, Exposures: 12}, reels.Wish{Exposures: 36})
	next.PutInHand(2)
	next.Reel(0, stock.Cut)
	next.planned(t, "of the reel that the offer became", reels.Wish{Exposures: 36})
	p := h.settings.app.Preferences()
	of := `[{"Of":{"Scenario":"` + demo().Name + `","Name":"` + demo().Offers[2].Name + `"},"Wishes":`
	for odd, want := range map[string]reels.Wish{
		"[":        {Exposures: 36},
		of + `7}]`: {Exposures: 36},
		of + `[{"Exposures":0},{"Exposures":36,"Asked":-1},{"Exposures":20,"Asked":2}]}]`: {Asked: 2, Exposures: 20},
	} {
		p.SetString(keepPlans, odd)
		last := NewHarness(h.settings.app, noon)
		last.PlanCut(2)
		last.planned(t, odd, want)
	}
}
