package desk

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/software"
	"fyne.io/fyne/v2/test"
	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

var noon = time.Date(2026, 11, 24, 12, 0, 0, 0, time.UTC)

// open is a window on the demo, settled.
func open(t *testing.T) *Harness {
	t.Helper()
	return openWith(t, "")
}

// openWith is a window that keeps unsaved work in a state folder, "" for none. It ends with
// the test. It has its theme from the start: the toolkit reads all fonts again for another.
func openWith(t *testing.T, state string) *Harness {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	app.Preferences().SetString(keepTheme, "paper")
	h := NewHarnessIn(app, noon, state)
	h.files.home = t.TempDir()
	alive[h] = app
	t.Cleanup(h.end)
	h.Window().Show()
	h.Resize(1280, 800)
	return h
}

// alive are the windows of tests that have not ended, with their programs.
var alive = map[*Harness]fyne.App{}

// end lets go of a window: of those who work for it, and of what the toolkit keeps of it. It
// does nothing the second time.
func (h *Harness) end() {
	app, is := alive[h]
	if !is {
		return
	}
	delete(alive, h)
	h.work.Wait()
	h.keeper.End()
	h.pipeline.stop()
	h.hand.stop()
	if slices.Contains(app.Driver().AllWindows(), h.win) {
		h.win.Close()
	}
	if len(alive) == 0 {
		// Drawing anything clears away what nobody has drawn for a minute; the toolkit's
		// windows for tests never do, and would be kept with all that is in them.
		software.NewCanvas().Capture()
	}
}

// want is what the engine says about a scenario.
func want(s scenario.Scenario) (c compare.Comparison, headline string, totals []string) {
	c = compare.Compare(s, scenario.Check(s), scenario.DateOf(noon))
	for _, o := range c.Offers {
		if o.Fault != nil {
			totals = append(totals, "–")
			continue
		}
		totals = append(totals, money.English.Number(o.PerRoll.Total, 2))
	}
	return c, words.Verdict(&c, "en").Text, totals
}

// agrees holds the window against the engine.
func (h *Harness) agrees(t *testing.T, s scenario.Scenario) {
	t.Helper()
	_, headline, totals := want(s)
	v := h.View()
	if v.Headline != headline {
		t.Errorf("headline %q, the engine says %q", v.Headline, headline)
	}
	for i, o := range v.Offers {
		if o.PerRoll != totals[i] {
			t.Errorf("%s costs %s a roll, the engine says %s", o.Name, o.PerRoll, totals[i])
		}
	}
}

func demo() scenario.Scenario { return scenario.Demo().Scenarios[0] }

func (h *Harness) mustType(t *testing.T, key, text string) {
	t.Helper()
	if !h.Type(key, text) {
		t.Fatalf("there is no field %s", key)
	}
}

func (h *Harness) field(t *testing.T, key string) FieldView {
	t.Helper()
	f, ok := h.View().Field(key)
	if !ok {
		t.Fatalf("there is no field %s", key)
	}
	return f
}

// pick chooses in a picker, as its list does.
func (h *Harness) pick(t *testing.T, key, value string) {
	t.Helper()
	if !h.Pick(key, value) {
		t.Fatalf("there is no choice %s", key)
	}
}

// press taps the button of the dialog that is open.
func (h *Harness) press(t *testing.T, label string) {
	t.Helper()
	top := h.Window().Canvas().Overlays().Top()
	if top == nil {
		t.Fatalf("no dialog is open to press %q in", label)
	}
	for _, o := range test.LaidOutObjects(top) {
		if b, ok := o.(*kit.ReplyButton); ok && b.Text == label {
			b.Press()
			h.Settle()
			return
		}
	}
	t.Fatalf("the dialog has no button %q", label)
}

// answerPath types a path into the dialog that asks for one.
func (h *Harness) answerPath(t *testing.T, path string) {
	t.Helper()
	box, ok := h.Window().Canvas().Focused().(*kit.Entry)
	if !ok {
		t.Fatal("no path is asked for")
	}
	box.SetText(path)
}

func read(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func write(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "file.toml")
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

func faultsOf(f scenario.File) []scenario.Fault {
	_, faults := scenario.Read(scenario.Write(f))
	return faults
}

// panel finds the open dialog's fields by their labels.
func (h *Harness) panel(t *testing.T, label string) *kit.TextBox {
	t.Helper()
	for _, o := range test.LaidOutObjects(h.Window().Canvas().Overlays().Top()) {
		if r, ok := o.(*kit.Row); ok && r.Label.String() == label {
			return r.Field.(*kit.TextBox)
		}
	}
	t.Fatalf("the dialog has no field %s", label)
	return nil
}

func decimalOf(s string) decimal.Decimal { return decimal.RequireFromString(s) }

// dialogText is all words of the dialog that is open.
func (h *Harness) dialogText() string {
	var b strings.Builder
	for _, o := range test.LaidOutObjects(h.win.Canvas().Overlays().Top()) {
		if p, ok := o.(*kit.Text); ok {
			b.WriteString(p.String() + "\n")
		}
	}
	return b.String()
}

// blank says whether a picture is all of one colour.
func blank(c *canvas.Image) bool {
	if c.Image == nil {
		return true
	}
	b := c.Image.Bounds()
	first := c.Image.At(b.Min.X, b.Min.Y)
	for y := b.Min.Y; y < b.Max.Y; y += 3 {
		for x := b.Min.X; x < b.Max.X; x += 3 {
			if c.Image.At(x, y) != first {
				return false
			}
		}
	}
	return true
}

// item is what the menu's item of that label does.
func (m *menu) item(label string) func() {
	for _, menu := range m.main.Items {
		for _, i := range menu.Items {
			if plain(i.Label) == label {
				return i.Action
			}
		}
	}
	return nil
}
