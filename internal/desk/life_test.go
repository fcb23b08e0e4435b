package desk

import (
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func TestTypedBackTheWindowIsNotEdited(t *testing.T) {
	h := open(t)
	for _, text := range []string{"5", "0"} {
		h.mustType(t, "offer[3].on_hand", text)
		h.win.Canvas().Unfocus() // a step each
		h.Settle()
		if unsaved := strings.Contains(h.View().State, "unsaved"); unsaved != (text == "5") {
			t.Errorf("%s typed, unsaved: %v", text, unsaved)
		}
	}
}

func TestAFileOfSeveralScenariosIsNotProposedUnderOnesName(t *testing.T) {
	h := open(t)
	name := h.Session().Current().Name
	proposed := func() string {
		h.files.askSaveAs(nil)
		h.Settle()
		box, ok := h.win.Canvas().Focused().(*kit.Entry)
		if !ok {
			t.Fatal("no path is asked for")
		}
		defer h.press(t, words.Cancel)
		return filepath.Base(box.Text)
	}
	if got := proposed(); !strings.HasPrefix(got, strings.Fields(name)[0]) {
		t.Errorf("one scenario, and %q is proposed", got)
	}
	h.Session().Duplicate()
	if got := proposed(); got != words.FileOfSeveral+".reelworth.toml" {
		t.Errorf("two scenarios, and %q is proposed", got)
	}
}

func TestWorkIsKeptWhenTheProgramIsEndedFromOutside(t *testing.T) {
	state := t.TempDir()
	h := openWith(t, state)
	h.mustType(t, "offer[3].price", "99.95")
	h.Ended() // at once: the clock kept nothing yet
	h.crash(t, state)
	again := openWith(t, state)
	again.Settle()
	if !again.View().Asking {
		t.Fatal("nothing is offered")
	}
	again.press(t, words.TakeUp)
	if f := again.field(t, "offer[3].price"); f.Text != "99.95" {
		t.Errorf("%+v", f)
	}
}

// A file that opens late does not ask to discard what was taken up before.
func TestWorkTakenUpBeforeAFileHasOpenedStays(t *testing.T) {
	state := t.TempDir()
	path := write(t, string(scenario.Write(scenario.Demo())))
	h := openWith(t, state)
	h.mustType(t, "offer[3].price", "99.95")
	h.Ended()
	h.crash(t, state)
	again := openWith(t, state)
	again.Settle()
	again.Open(path)
	again.work.Wait() // read, but not shown yet
	again.press(t, words.TakeUp)
	again.Settle()
	if v := again.View(); v.Asking || !strings.Contains(v.State, "unsaved") || again.field(t, "offer[3].price").Text != "99.95" {
		t.Errorf("%+v", v)
	}
}

func TestOnAListOfFaultsNothingHappensToWhatWasOpen(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	was := string(read(t, path))
	h.mustType(t, "offer[3].price", "99.95")
	h.Settle()
	bad := write(t, "schema = ")
	h.Open(bad)
	h.Settle()
	if h.View().Faults == 0 {
		t.Fatalf("%+v", h.View())
	}
	for _, label := range []string{words.MenuSave, words.MenuSaveAs, words.MenuExport, words.MenuReport, words.MenuCopySummary} {
		h.menu.item(label)()
		h.Settle()
		if v := h.View(); v.Faults == 0 || v.Asking || string(read(t, path)) != was {
			t.Errorf("%s: %+v", label, v)
		}
	}
}

func TestAFileIsRememberedOnceItIsShown(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "a\nline's end.toml")
	if err := os.WriteFile(path, scenario.Write(scenario.Demo()), 0o644); err != nil {
		t.Fatal(err)
	}
	h.Open(path)
	h.work.Wait()
	h.drain() // opened, and not computed yet
	if got := h.settings.recent(); slices.Contains(got, path) {
		t.Errorf("remembered before it is shown: %q", got)
	}
	h.Settle()
	if got := h.settings.recent(); len(got) == 0 || got[0] != path {
		t.Errorf("remembered are %q", got)
	}
	if label := words.RecentFile(path); strings.Contains(label, "\n") {
		t.Errorf("the menu says %q", label)
	}
	h.settings.app.Preferences().RemoveValue(keepRecent)
	h.settings.app.Preferences().SetString(keepRecent, "/x/one.toml\n/x/two.toml") // as it was kept before
	if got := h.settings.recent(); !slices.Equal(got, []string{"/x/one.toml", "/x/two.toml"}) {
		t.Errorf("%q", got)
	}
}

func TestPreferencesThatMakeNoSenseAreLeftOutAndSaid(t *testing.T) {
	defer kit.SetTextSize(1)
	for name, set := range map[string]func(p preferences){
		words.PreferredText + " 0":    func(p preferences) { p.SetFloat(keepText, 0) },
		words.PreferredText + " −1e9": func(p preferences) { p.SetFloat(keepText, -1e9) },
		words.PreferredSize + " wide": func(p preferences) { p.SetFloat(keepWidth, 100000) },
		words.PreferredSize + " NaN":  func(p preferences) { p.SetFloat(keepHeight, math.NaN()) },
		words.PreferredTheme + " x":   func(p preferences) { p.SetString(keepTheme, "x") },
		words.PreferredNumbers + " x": func(p preferences) { p.SetString(keepNumbers, "x") },
	} {
		t.Run(name, func(t *testing.T) {
			app := test.NewApp()
			defer app.Quit()
			set(app.Preferences())
			h := NewHarness(app, noon)
			h.Settle()
			called := name[:strings.LastIndex(name, " ")]
			if !strings.Contains(h.View().Status, called) {
				t.Error("it is not said:", h.View().Status)
			}
			if size := h.settings.size(); kit.TextFactor != 1 || size.Width != 1280 || size.Height != 800 {
				t.Error(kit.TextFactor, size)
			}
			again := NewHarness(app, noon)
			again.Settle()
			if status := again.View().Status; status != "" {
				t.Error("said again at the next start:", status)
			}
		})
	}
}

type preferences interface {
	SetFloat(string, float64)
	SetString(string, string)
}

func TestWhatThisSessionSavesOverIsKeptApart(t *testing.T) {
	state := t.TempDir()
	h := openWith(t, state)
	text := "# mine\n" + string(scenario.Write(scenario.Demo()))
	h.Open(write(t, text))
	h.Settle()
	for _, price := range []string{"99", "98"} {
		h.mustType(t, "offer[3].price", price)
		h.files.save(nil)
		h.Settle()
	}
	kept, err := filepath.Glob(filepath.Join(state, "backups", "* file.toml"))
	if err != nil || len(kept) != 1 || string(read(t, kept[0])) != text {
		t.Error(kept, err)
	}
}
