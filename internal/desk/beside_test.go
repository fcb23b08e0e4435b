package desk

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/compare"
	"reelworth/internal/desk/dialogs"
	"reelworth/internal/money"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
)

// abroad is a file of two scenarios: one at home in another country, and one that has a
// kind of film only.
func abroad(t *testing.T) string {
	t.Helper()
	s := demo()
	s.Name, s.Home = "Harbour year", "AUD"
	s.Rates = append(s.Rates, scenario.Rate{One: "EUR", Equals: decimalOf("1.7"), In: "AUD"})
	one := demo()
	one.Name, one.Offers = "Shop rolls alone", one.Offers[:1]
	return write(t, string(scenario.Write(scenario.File{Schema: scenario.Schema, Scenarios: []scenario.Scenario{s, one}})))
}

func (h *Harness) names() (list []string) {
	for _, e := range h.beside.view.Entries() {
		list = append(list, e.Scenario)
	}
	return list
}

func TestScenariosSideBySideAreWhatTheEngineSays(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "190") // not saved, and counts
	h.Beside("", abroad(t))
	if got := strings.Join(h.names(), "|"); got != demo().Name+"|Harbour year|Shop rolls alone" {
		t.Fatal(got)
	}
	s := demo()
	s.Offers[2].Price = decimalOf("190")
	c, _, _ := want(s)
	e := h.beside.view.Entries()[0]
	if got, said := e.Against().Saving, c.Verdict.Pair.Saving; !got.Equal(said) {
		t.Errorf("saved %s, the engine says %s", got, said)
	}
	if e := h.beside.view.Entries()[2]; e.Against() != nil || e.Boxed() == nil {
		t.Error("one kind only:", e)
	}
	h.beside.BringTo("AUD")
	h.Settle()
	if e := h.beside.view.Entries()[0]; e.Into.Factor != nil {
		t.Error("there is no rate between EUR and AUD in the first scenario")
	}
	h.Page(0) // other work is not disturbed, nor does it disturb
	if !h.beside.isOpen() {
		t.Fatal("the scenarios are gone")
	}
	h.beside.view.Grid.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if h.beside.isOpen() || h.win.Content() != h.root {
		t.Error("Esc does not go back to the columns")
	}
}

func TestFilesThatFallOnScenariosStandBesideThem(t *testing.T) {
	h := open(t)
	h.Beside("")
	broken := filepath.Join(t.TempDir(), "broken.toml")
	if err := os.WriteFile(broken, []byte("schema = 5\n[[scenario]\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	nowhere := filepath.Join(t.TempDir(), "nowhere.toml")
	h.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(abroad(t)), storage.NewFileURI(broken), storage.NewFileURI(nowhere)})
	h.Settle()
	list := h.beside.view.Entries()
	if len(list) != 5 || list[3].Fault == "" || list[4].Fault == "" || list[4].File != nowhere {
		t.Fatalf("%+v", list)
	}
	if h.session.Doc != nil {
		t.Error("the file was opened in the place of the work")
	}
	h.beside.SortBy(sidebyside.BySaving)
	h.Settle()
	if n := h.names(); n[3] != "" || n[4] != "" || len(n) != 5 {
		t.Error("what cannot be computed is not last:", n)
	}
	h.beside.OnlyThis()
	h.Settle()
	if n := h.names(); len(n) != 1 {
		t.Error(n)
	}
}

func TestAScenarioOfAnotherFileOpensAtIt(t *testing.T) {
	h := open(t)
	path := abroad(t)
	h.Beside("", path)
	grid := h.beside.view.Grid
	grid.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
	grid.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	h.Settle()
	if got := h.session.Current().Name; got != "Shop rolls alone" || h.beside.isOpen() || h.session.Doc.Path != path {
		t.Errorf("%q of %+v is open", got, h.session.Doc)
	}
	h.Beside("")
	if n := h.names(); len(n) != 2 {
		t.Error("its own file stands beside itself:", n)
	}
	grid = h.beside.view.Grid
	if grid.At != 1 {
		t.Errorf("row %d is chosen, not the scenario that is looked at", grid.At)
	}
	grid.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	grid.DoubleTapped(&fyne.PointEvent{Position: fyne.NewPos(50, grid.Top(0)+5)})
	if got := h.session.Current().Name; got != "Harbour year" {
		t.Errorf("%q is open", got)
	}
}

func TestUnsavedWorkIsAskedAboutBeforeAnotherFileOpens(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "190")
	h.Beside("", abroad(t))
	h.beside.view.Grid.Turn(1)
	h.beside.view.Grid.TypedRune(' ')
	h.Settle()
	if !h.View().Asking {
		t.Fatal("nothing is asked")
	}
	h.press(t, "Cancel")
	if !h.beside.isOpen() || h.session.Doc != nil {
		t.Error("the work is gone")
	}
}

// What is exported as cells is what the command line prints.
func TestScenariosSideBySideAreExported(t *testing.T) {
	h := open(t)
	h.Beside("USD", abroad(t))
	var list []sidebyside.Entry
	for _, src := range append([]sidebyside.Source{h.beside.own}, h.beside.others...) {
		for i := range src.File.Scenarios {
			c := compare.Compare(src.File.Scenarios[i], src.FaultsOf(i), scenario.DateOf(noon))
			e, err := sidebyside.Of(t.Context(), &c, nil, "USD", nil)
			if err != nil {
				t.Fatal(err)
			}
			e.File = src.Name
			list = append(list, e)
		}
	}
	var csv, markdown bytes.Buffer
	if report.SideBySideCSV(&csv, list) != nil || report.SideBySideMarkdown(&markdown, list, money.English) != nil {
		t.Fatal("no report")
	}
	for ending, want := range map[string][]byte{".csv": csv.Bytes(), ".md": markdown.Bytes(), ".png": []byte("\x89PNG"), ".svg": []byte("<?xml"), ".pdf": []byte("%PDF")} {
		path := filepath.Join(t.TempDir(), "side"+ending)
		h.beside.Export()
		h.answerPath(t, path)
		h.press(t, "Export")
		if got := read(t, path); !bytes.HasPrefix(got, want) || (ending == ".csv" || ending == ".md") && len(got) != len(want) {
			t.Errorf("%s: %.300s\nwant %.300s", ending, got, want)
		}
	}
	if _, err := (dialogs.BesideExport{Entries: list}).Data("txt"); err == nil {
		t.Error("an ending that is none is taken")
	}
}
