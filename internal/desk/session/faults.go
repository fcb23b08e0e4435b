package session

import (
	"reelworth/internal/draft"
	"reelworth/internal/scenario"
)

// checked are the faults of a state of the work.
type checked struct {
	known  bool
	mark   draft.Mark
	at     int
	faults []scenario.Fault
}

// Faults are what is wrong with the scenario in the window, as a file may be opened with
// faults in it.
func (s *Session) Faults() []scenario.Fault {
	if f := &s.faults; !f.known || f.mark != s.Draft.Mark() || f.at != s.At {
		*f = checked{true, s.Draft.Mark(), s.At, scenario.Check(s.Current())}
	}
	return s.faults.faults
}

// NameFault is what is wrong with the scenario's name beside the other names of the file,
// nil for nothing.
func (s *Session) NameFault() *scenario.Fault {
	name := s.Current().Name
	for i, other := range s.Draft.File().Scenarios {
		if other.Name == name && i != s.At {
			return &scenario.Fault{Code: scenario.NameTaken, Path: "name", Args: scenario.Args{Got: name, Table: "scenario", Other: i + 1}}
		}
	}
	return nil
}

// CountFaults is how many faults the scenario in the window has in its file.
func (s *Session) CountFaults() int {
	n := len(s.Faults())
	if s.NameFault() != nil {
		n++
	}
	return n
}

// DropRanges takes away the ranges that are at fault, and so not used.
func (s *Session) DropRanges(name string) {
	at := map[int]bool{}
	for _, f := range s.Faults() {
		if f.Place.Part == scenario.PartRange {
			at[f.Place.Index] = true
		}
	}
	s.Alter(name, func(s *scenario.Scenario) {
		kept := s.Ranges[:0]
		for i, r := range s.Ranges {
			if !at[i] {
				kept = append(kept, r)
			}
		}
		s.Ranges = kept
	})
}
