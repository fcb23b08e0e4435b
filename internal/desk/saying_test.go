package desk

import (
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// What was done, and what endangers the work, is said in the column that is in sight: with
// a reel in hand chosen that is the reel's, not the answer's behind it.
func TestWhatWasDoneIsSaidWhereThePersonIs(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Log)
	path := filepath.Join(t.TempDir(), "costs.png")
	h.menu.item(words.MenuExport)()
	h.Settle()
	h.answerPath(t, path)
	h.press(t, words.Export)
	status := h.hand.column.Status
	if !strings.Contains(status.String(), path) || !status.Visible() || !h.hand.column.Content.Visible() {
		t.Errorf("beside the reel stands %q", status)
	}
	h.Reel(0, stock.Cut)
	h.Settle()
	if !strings.Contains(status.String(), path) {
		t.Error("looking at another page is no change, yet what was said is gone")
	}
	h.Reel(0, stock.Log)
	h.click(t, "+ loaded")
	h.press(t, "Add")
	if strings.Contains(status.String(), path) {
		t.Error("said still, after the next change:", status)
	}
	asHost{h.Desk}.Warn("Nothing is kept.")
	asHost{h.Desk}.Object("It is torn.")
	if got := status.String(); !strings.Contains(got, "! Nothing is kept. ✗ It is torn.") {
		t.Errorf("beside the reel stands %q", got)
	}
	over := Shelf()
	over.Reels[1].Recounts = []scenario.Recount{{Date: scenario.DateOf(noon), LeftMM: decimalOf("900")}}
	over.Reels[1].Loads = []scenario.Load{{Date: scenario.DateOf(noon).AddDays(1), Cassettes: 1, Exposures: 36}}
	h.Put(over)
	h.Reel(1, stock.Log)
	if got := status.String(); !strings.Contains(got, "Nothing is kept.") || !strings.Contains(got, "more was loaded since the recount") {
		t.Errorf("beside the reel stands %q", got)
	}
}

// In a window with room for the form or the answer it is said beside the switch while the
// form is in sight.
func TestWhatWasDoneIsSaidBesideTheForm(t *testing.T) {
	h := open(t)
	h.LargestText()
	t.Cleanup(func() { kit.SetTextSize(1) })
	h.Resize(1024, 700)
	asHost{h.Desk}.Announce("Done.")
	if said := h.panes.said; !said.Visible() || said.String() != "✓ Done." || said.Size().Width < 100 {
		t.Errorf("beside the switch stands %q, in sight: %v, %v", said, said.Visible(), said.Size())
	}
	h.panes.look(atAnswer)
	if h.panes.said.Visible() || h.View().Status != "✓ Done." {
		t.Errorf("said twice, or not in the answer: %q", h.View().Status)
	}
}
