package session

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"reelworth/internal/library"
	"reelworth/internal/scenario"
)

// BorderShelf is the file with the sets of border rules of one's own, beside the settings.
// It is read anew for each change, since another window may have changed it. The zero
// value has no place and keeps nothing.
type BorderShelf struct{ path string }

// NewBorderShelf keeps sets in a folder, which need not be there yet; "" is nowhere.
func NewBorderShelf(folder string) BorderShelf {
	if folder == "" {
		return BorderShelf{}
	}
	return BorderShelf{filepath.Join(folder, "border-rules.toml")}
}

// TornBorderSets says that the file with the sets cannot be read, and that it was left as
// it is.
type TornBorderSets struct {
	Path  string
	Fault scenario.Fault // the first
}

func (t *TornBorderSets) Error() string { return "session: " + t.Path + ": " + string(t.Fault.Code) }

// ErrNoBorderShelf says that there is no place to keep sets in.
var ErrNoBorderShelf = errors.New("session: no folder for border rules")

// Path is where the sets are kept, "" for nowhere.
func (b BorderShelf) Path() string { return b.path }

// Sets are those kept, in the order of the file; none where there is no file yet. Errors:
// *TornBorderSets, *library.Problem.
func (b BorderShelf) Sets() ([]scenario.BorderSet, error) {
	f, _, err := b.read()
	return f.Sets, err
}

func (b BorderShelf) read() (f scenario.BorderSets, text []byte, err error) {
	if b.path == "" {
		return f, nil, nil
	}
	text, err = library.Load(b.path)
	if err != nil {
		var p *library.Problem
		if errors.As(err, &p) && (p.Cause == library.NoSuchFile || p.Cause == library.NoFolder) {
			return f, nil, nil
		}
		return f, nil, err
	}
	f, faults := scenario.ReadBorderSets(text)
	if len(faults) > 0 {
		return scenario.BorderSets{}, text, &TornBorderSets{b.path, faults[0]}
	}
	return f, text, nil
}

// BorderSetFault says what is wrong with a set that was to be kept.
type BorderSetFault struct{ Fault scenario.Fault }

func (f *BorderSetFault) Error() string { return "session: " + string(f.Fault.Code) }

// change writes the sets with a change. Errors: *BorderSetFault, and nothing is written;
// ErrNoBorderShelf, *TornBorderSets, *library.Problem, *library.Protected.
func (b BorderShelf) change(do func([]scenario.BorderSet) []scenario.BorderSet) ([]scenario.BorderSet, error) {
	if b.path == "" {
		return nil, ErrNoBorderShelf
	}
	f, text, err := b.read()
	if err != nil {
		return nil, err
	}
	f.Sets = do(slices.Clone(f.Sets))
	if faults := scenario.CheckBorderSets(f); len(faults) > 0 {
		return nil, &BorderSetFault{faults[0]}
	}
	if err := os.MkdirAll(filepath.Dir(b.path), 0o700); err != nil && !errors.Is(err, fs.ErrExist) {
		return nil, err
	}
	if _, err := library.Export(b.path, scenario.UpdateBorderSets(text, f), library.Options{}); err != nil {
		return nil, err
	}
	return f.Sets, nil
}

// Keep adds a set.
func (b BorderShelf) Keep(set scenario.BorderSet) ([]scenario.BorderSet, error) {
	return b.change(func(sets []scenario.BorderSet) []scenario.BorderSet { return append(sets, set) })
}

// Rename gives the set of a name another one.
func (b BorderShelf) Rename(name, next string) ([]scenario.BorderSet, error) {
	return b.change(func(sets []scenario.BorderSet) []scenario.BorderSet {
		for i := range sets {
			if sets[i].Name == name {
				sets[i].Name = next
			}
		}
		return sets
	})
}

// Delete takes the set of a name out.
func (b BorderShelf) Delete(name string) ([]scenario.BorderSet, error) {
	return b.change(func(sets []scenario.BorderSet) []scenario.BorderSet {
		return slices.DeleteFunc(sets, func(s scenario.BorderSet) bool { return s.Name == name })
	})
}

// UseBorderSet puts a set's rules in the place of the scenario's, in one step; it says
// whether the set is in the scenario's currency, else nothing is changed.
func (s *Session) UseBorderSet(step string, set scenario.BorderSet) (used bool) {
	if now := s.Current(); now.Home != set.Currency {
		return false
	}
	s.Alter(step, func(s *scenario.Scenario) { *s = scenario.WithBorderSet(*s, set) })
	return true
}

// BorderHeldBack says whether something that stands in the scenario's border rules is wrong,
// or was typed and could not be taken.
func (s *Session) BorderHeldBack() bool {
	const border = "border."
	for _, f := range s.Faults() {
		if strings.HasPrefix(f.Path, border) {
			return true
		}
	}
	for key := range s.Withheld {
		if strings.HasPrefix(key, border) {
			return true
		}
	}
	return false
}
