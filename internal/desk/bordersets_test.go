package desk

import (
	"os"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// clickIn does what a link of the open dialog does.
func (h *Harness) clickIn(t *testing.T, label string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(h.win.Canvas().Overlays().Top()) {
		if l, ok := o.(*kit.Link); ok && l.Label.String() == label {
			l.Do()
			h.Settle()
			return
		}
	}
	t.Fatalf("the dialog has no link %q in %q", label, h.dialogText())
}

// Rules are kept from the border's form, used in one step, and that step taken back.
func TestBorderRulesAreKeptAndUsed(t *testing.T) {
	h := open(t)
	h.shelf = session.NewBorderShelf(t.TempDir())
	was := string(scenario.Write(h.session.Draft.File()))
	h.Topic("border", 2)
	h.click(t, words.LinkBorderSets)
	h.panel(t, words.BorderSetSource).Entry.SetText("asked at the counter")
	h.press(t, words.BorderSetKeep)
	if said := h.dialogText(); !strings.Contains(said, words.BorderSetNoName) {
		t.Errorf("a set without a name: %q", said)
	}
	h.panel(t, words.BorderSetName).Entry.SetText("By post")
	h.press(t, words.BorderSetKeep)
	if said := h.dialogText(); !strings.Contains(said, "By post, 24 Nov 2026") || !strings.Contains(said, words.BorderSetInUse) || !strings.Contains(said, words.BorderSetCaution) {
		t.Errorf("the set is not listed: %q", said)
	}
	h.press(t, words.BorderSetKeep)
	if said := h.dialogText(); !strings.Contains(said, words.BorderSetTwice) {
		t.Errorf("two sets of one name: %q", said)
	}
	h.press(t, words.Close)
	h.mustType(t, "border.tax_percent", "7")
	h.Settle()
	changed := string(scenario.Write(h.session.Draft.File()))
	h.menu.item(words.MenuBorderSets)()
	h.Settle()
	h.clickIn(t, words.BorderSetUse)
	if got := string(scenario.Write(h.session.Draft.File())); got != was || h.View().Asking {
		t.Errorf("the kept rules are not those in use:\n%s", got)
	}
	h.undo()
	if got := string(scenario.Write(h.session.Draft.File())); got != changed {
		t.Errorf("undo does not bring back what was there:\n%s", got)
	}
}

func TestATornFileOfBorderRulesIsSaid(t *testing.T) {
	h := open(t)
	h.shelf = session.NewBorderShelf(t.TempDir())
	if err := os.WriteFile(h.shelf.Path(), []byte("schema = 1\nset = 3\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	h.menu.item(words.MenuBorderSets)()
	h.Settle()
	h.panel(t, words.BorderSetName).Entry.SetText("By post")
	h.press(t, words.BorderSetKeep)
	if said := h.dialogText(); !strings.Contains(said, "line 2") || !strings.Contains(said, "left as it is") && !strings.Contains(said, "left as it was") {
		t.Errorf("said is %q", said)
	}
	if string(read(t, h.shelf.Path())) != "schema = 1\nset = 3\n" {
		t.Error("it was written over")
	}
}
