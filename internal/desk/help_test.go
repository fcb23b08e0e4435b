package desk

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// The help on the model works through what is open, and follows what is typed. It is read
// by the keys and copied whole.
func TestTheModelIsToldByWhatIsOpen(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99.50")
	h.Settle()
	h.Help(words.MenuModel)
	said := h.dialogText()
	for _, p := range words.Worked(h.pipeline.shown.Comparison, money.English) {
		for _, text := range append(p.Paragraphs, p.Heading) {
			if !strings.Contains(said, text) {
				t.Errorf("%q is not there", text)
			}
		}
	}
	if !strings.Contains(strings.ReplaceAll(said, "\u00a0", " "), "one reel at USD 99.50") {
		t.Error("it does not follow what was typed")
	}
	var text *kit.Scroll
	for _, o := range test.LaidOutObjects(h.win.Canvas().Overlays().Top()) {
		switch w := o.(type) {
		case *kit.Scroll:
			text = w
		case *kit.Link:
			if w.Label.String() == words.WorkedTitle {
				w.Do()
			}
		}
	}
	if text.Offset.Y == 0 {
		t.Error("the link does not go to the example")
	}
	text.ScrollToTop()
	for _, k := range []fyne.KeyName{fyne.KeyPageDown, fyne.KeyDown, fyne.KeyEnd} {
		was := text.Offset.Y
		h.typeKey(k)
		if text.Offset.Y <= was {
			t.Errorf("%s does not move the text from %g", k, was)
		}
	}
	h.press(t, words.CopyText)
	if copied := h.settings.app.Clipboard().Content(); !strings.Contains(copied, strings.ToUpper(words.WorkedTitle)) {
		t.Errorf("copied: %.80q", copied)
	}
	h.dialogs.Escape(press(fyne.KeyEscape))
	h.Put(scenario.File{Scenarios: []scenario.Scenario{oneSided()}})
	h.Help(words.MenuModel)
	if !strings.Contains(h.dialogText(), words.NoPair) {
		t.Error("it does not say that there is no pair")
	}
}

func oneSided() scenario.Scenario {
	s := demo()
	s.Offers = s.Offers[:2]
	return s
}

// The help names the folders and files that the program really uses on this system.
func TestTheHelpSaysWhereFilesAreKept(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	state := t.TempDir()
	h := NewHarnessIn(app, noon, state)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99.50")
	h.Settle()
	h.files.save(nil)
	h.Settle()
	h.Help(words.MenuFilesHelp)
	said := h.dialogText()
	for _, want := range []string{path, state, filepath.Join(state, "backups"), filepath.Join(h.settings.app.Storage().RootURI().Path(), "preferences.json")} {
		if !strings.Contains(said, want+"\n") {
			t.Errorf("%s is not named in\n%s", want, said)
		}
	}
	for _, there := range []string{path, path + ".bak", filepath.Join(state, "backups")} {
		if _, err := os.Stat(there); err != nil {
			t.Error(err)
		}
	}
}

// The words are told with their drawings, which are described.
func TestTheGlossaryIsDrawn(t *testing.T) {
	h := open(t)
	h.Help(words.MenuWords)
	var said []string
	for _, o := range test.LaidOutObjects(h.win.Canvas().Overlays().Top()) {
		if v, ok := o.(*kit.ImageView); ok && !blank(v.Image) {
			said = append(said, v.AccessibilityLabel())
		}
	}
	if len(said) != len(words.TermPictures) {
		t.Errorf("%d drawings: %q", len(said), said)
	}
	for _, p := range words.TermPictures {
		if !slices.Contains(said, words.TermDrawn(p)) {
			t.Errorf("nobody hears what the drawing of %s shows", p)
		}
	}
}
