package desk

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/offers"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
)

// heard are the sentences of our own widgets on the screen, by their types.
type heard map[string][]string

// listen collects what is said below o.
func (all heard) listen(t *testing.T, o fyne.CanvasObject) {
	t.Helper()
	if o == nil || !o.Visible() {
		return
	}
	switch w := o.(type) {
	case *fyne.Container:
		for _, c := range w.Objects {
			all.listen(t, c)
		}
	case fyne.Widget:
		if kind := reflect.TypeOf(w).Elem(); strings.HasPrefix(kind.PkgPath(), "reelworth/") {
			speaker, ok := w.(fyne.Accessible)
			if !ok {
				t.Errorf("%v is nothing to a blind person", kind)
				return
			}
			all[kind.Name()] = append(all[kind.Name()], speaker.AccessibilityLabel())
		}
		for _, c := range test.WidgetRenderer(w).Objects() {
			all.listen(t, c)
		}
	}
}

// listenAround listens to every page, every form, a dialog and an open list.
func (h *Harness) listenAround(t *testing.T) heard {
	t.Helper()
	all := heard{}
	look := func() {
		all.listen(t, h.root)
		for _, o := range h.win.Canvas().Overlays().List() {
			all.listen(t, o)
		}
	}
	for page := range h.answer.Tabs.Pages {
		h.Page(page)
		look()
	}
	for _, topic := range offers.Topics {
		h.choose(session.Selection{Topic: topic.Topic})
		h.unfoldAll()
		look()
	}
	h.Topic("offer", 2)
	h.mustType(t, "offer[3].price", "x")
	h.Settle()
	look()
	h.OpenList("offer[3].currency", "s")
	look()
	h.win.Canvas().Overlays().Top().Hide()
	h.Deal("30")
	look()
	h.win.Canvas().Overlays().Top().Hide()
	h.Put(Shelf())
	for page := stock.Log; page <= stock.Labels; page++ {
		h.Reel(0, page)
		look()
	}
	return all
}

// forTheEye are the widgets that say nothing, and need not.
var forTheEye = []string{"tinted", "Wheel", "Spark", "Readout"}

func TestEveryWidgetSpeaks(t *testing.T) {
	h := open(t)
	all := h.listenAround(t)
	if len(all) < 15 {
		t.Fatalf("only %d kinds of widgets were heard", len(all))
	}
	for kind, said := range all {
		if !slices.ContainsFunc(said, func(s string) bool { return s != "" }) && !slices.Contains(forTheEye, kind) {
			t.Errorf("no %s says anything", kind)
		}
	}
	for _, want := range []struct{ kind, sentence string }{
		{"Row", "Price of a reel: x, "},
		{"Entry", "Price of a reel: x"},
		{"Card", "chosen"},
		{"Picker", "Import tax: "},
		{"Picker", "Price of a reel, unit: USD"},
		{"Picker", "Scenario: "},
		{"Tabs", "page "},
		{"FigureView", "a roll"},
	} {
		if !slices.ContainsFunc(all[want.kind], func(s string) bool { return strings.Contains(s, want.sentence) }) {
			t.Errorf("no %s says %q: %q", want.kind, want.sentence, all[want.kind])
		}
	}
}

// A row says all that is seen of it, also what is wrong.
func TestARowIsReadOutWhole(t *testing.T) {
	h := open(t)
	h.Topic("offer", 2)
	h.mustType(t, "offer[3].price", "x")
	h.Settle()
	for _, f := range h.form.Fields() {
		if said := f.Row.AccessibilityLabel(); !strings.Contains(said, f.Row.Label.String()) || !strings.Contains(said, f.Row.Meaning.String()) {
			t.Errorf("%s: %q", f.Key, said)
		}
	}
}

// The receipt, and each figure by its caption, are read out with their page.
func TestAPageIsReadOut(t *testing.T) {
	h := open(t)
	h.Page(1)
	said := kit.Spoken(h.root)
	for _, row := range h.answer.Receipt.Table.Shown() {
		if label := row.AccessibilityLabel(); !strings.Contains(said, strings.TrimRight(label, ".")) {
			t.Errorf("%q is not said", label)
		}
	}
	h.Page(0)
	if said, caption := kit.Spoken(h.root), h.answer.Charts.Cost.Drawing.Title(); caption == "" || !strings.Contains(said, strings.TrimRight(caption, ".")) {
		t.Errorf("%q is not said in %q", caption, said)
	}
}

var (
	drawn  = regexp.MustCompile(`(?m)^func \(\w+ \*(\w+)\) CreateRenderer\(`)
	speaks = regexp.MustCompile(`(?m)^func \(\w+ \*(\w+)\) AccessibilityLabel\(`)
)

// Widgets that no test brings on the screen speak too.
func TestWhateverIsDrawnSpeaks(t *testing.T) {
	widgets, speakers := map[string]bool{}, map[string]bool{}
	err := filepath.WalkDir(".", func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		source, err := os.ReadFile(path)
		for list, pattern := range map[*map[string]bool]*regexp.Regexp{&widgets: drawn, &speakers: speaks} {
			for _, m := range pattern.FindAllStringSubmatch(string(source), -1) {
				(*list)[fmt.Sprint(filepath.Dir(path), ".", m[1])] = true
			}
		}
		return err
	})
	if err != nil || len(widgets) < 15 {
		t.Fatal(len(widgets), err)
	}
	for w := range widgets {
		if !speakers[w] {
			t.Errorf("%s is nothing to a blind person", w)
		}
	}
}
