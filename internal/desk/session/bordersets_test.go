package session

import (
	"errors"
	"os"
	"path/filepath"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/scenario"
)

// What was kept of one scenario is what another has after it was used, and undo brings the
// file back byte for byte.
func TestKeptRulesAreUsedInOneStep(t *testing.T) {
	dir := t.TempDir()
	rapid.Check(t, func(t *rapid.T) {
		shelf := NewBorderShelf(filepath.Join(dir, "settings"))
		os.Remove(shelf.Path())
		other := scenario.Demo().Scenarios[0].Clone()
		other.Border.TaxPercent = decimal.New(rapid.Int64Range(0, 9999).Draw(t, "tax"), -2)
		other.Border.DutyFreeUpTo = decimal.New(rapid.Int64Range(0, 99999).Draw(t, "limit"), -1)
		other.Border.DutyOnShipping = rapid.Bool().Draw(t, "on shipping")
		sets, err := shelf.Keep(scenario.BorderSetOf(&other, "By post", scenario.Date{Year: 2026, Month: 11, Day: 24}, "asked"))
		if err != nil || len(sets) != 1 {
			t.Fatal(sets, err)
		}
		s := NewDemo()
		was := scenario.Write(s.Draft.File())
		if sets, err = shelf.Sets(); err != nil || !s.UseBorderSet("border rules", sets[0]) {
			t.Fatal(sets, err)
		}
		now := s.Current()
		if got := scenario.BorderSetOf(&now, "By post", sets[0].Date, "asked"); !scenario.HasBorderSet(&other, &got) {
			t.Fatalf("kept %+v, used %+v", other.Border, now.Border)
		}
		s.Undo()
		if string(scenario.Write(s.Draft.File())) != string(was) || s.Undo() {
			t.Fatal("one step of undo does not bring the file back")
		}
	})
}

func TestSetsAreRenamedAndDeleted(t *testing.T) {
	shelf := NewBorderShelf(t.TempDir())
	s := scenario.Demo().Scenarios[0]
	for _, name := range []string{"one", "two"} {
		if _, err := shelf.Keep(scenario.BorderSetOf(&s, name, scenario.Date{}, "")); err != nil {
			t.Fatal(err)
		}
	}
	var fault *BorderSetFault
	if _, err := shelf.Rename("one", "two"); !errors.As(err, &fault) || fault.Fault.Code != scenario.NameTaken {
		t.Error("two sets of one name:", err)
	}
	if _, err := shelf.Rename("one", "three"); err != nil {
		t.Error(err)
	}
	if sets, err := shelf.Delete("two"); err != nil || len(sets) != 1 || sets[0].Name != "three" {
		t.Error(sets, err)
	}
	if now := NewDemo(); now.UseBorderSet("x", scenario.BorderSet{Currency: "AUD"}) || now.Draft.Modified() {
		t.Error("rules in another currency are used")
	}
	if _, err := NewBorderShelf("").Keep(scenario.BorderSet{}); !errors.Is(err, ErrNoBorderShelf) {
		t.Error("kept nowhere:", err)
	}
}

// A file that cannot be read is left as it is, whatever is asked for.
func TestATornFileOfSetsIsLeft(t *testing.T) {
	shelf := NewBorderShelf(t.TempDir())
	const torn = "schema = 1\n[[set]]\nname = \"mine\"\ncurrency = \"EUR\"\n[set.border]\ntax_percent = \"much\"\n"
	if err := os.WriteFile(shelf.Path(), []byte(torn), 0o600); err != nil {
		t.Fatal(err)
	}
	s := scenario.Demo().Scenarios[0]
	for name, do := range map[string]func() ([]scenario.BorderSet, error){
		"read": shelf.Sets, "keep": func() ([]scenario.BorderSet, error) {
			return shelf.Keep(scenario.BorderSetOf(&s, "one", scenario.Date{}, ""))
		},
		"rename": func() ([]scenario.BorderSet, error) { return shelf.Rename("mine", "other") },
		"delete": func() ([]scenario.BorderSet, error) { return shelf.Delete("mine") },
	} {
		var lost *TornBorderSets
		if _, err := do(); !errors.As(err, &lost) || lost.Fault.Line != 6 {
			t.Errorf("%s: %v", name, err)
		}
		if text, err := os.ReadFile(shelf.Path()); err != nil || string(text) != torn {
			t.Errorf("%s has made it %q", name, text)
		}
	}
}
