package session

import (
	"strconv"
	"strings"

	"reelworth/internal/scenario"
)

// Reels are the reels in hand of the file. They must not be changed.
func (s *Session) Reels() []scenario.InHand { return s.Draft.File().Reels }

// Reel is the reel in hand that is chosen; ok is false where something else is.
func (s *Session) Reel() (r scenario.InHand, ok bool) {
	if s.Chosen.Topic != TopicReel || s.Chosen.Reel >= len(s.Reels()) {
		return r, false
	}
	return s.Draft.Reel(s.Chosen.Reel), true
}

// BaseReel is the state of the chosen reel that an edit starts from.
func (s *Session) BaseReel() scenario.InHand {
	if s.handled != nil {
		return *s.handled
	}
	return s.Draft.Reel(s.Chosen.Reel)
}

// ChangeReel puts a new state of the chosen reel in the place of the old one; changes of
// one field, one after another, are one step.
func (s *Session) ChangeReel(name, field string, next scenario.InHand) {
	s.Draft.ChangeReel(name, field, s.Chosen.Reel, next)
}

// AlterReel makes a change of the chosen reel that is a step of its own. do leaves what it
// is given as it is.
func (s *Session) AlterReel(name string, do func(scenario.InHand) scenario.InHand) {
	if r, ok := s.Reel(); ok {
		s.ChangeReel(name, "", do(r))
		clear(s.Withheld)
		s.Reshape()
	}
}

// PutInHand adds a reel in hand and chooses it.
func (s *Session) PutInHand(name string, r scenario.InHand) {
	n := len(s.Reels())
	s.Draft.InsertReel(name, n, r)
	s.Choose(s.Chosen.reelAt(n))
	clear(s.Withheld)
	s.Reshape()
}

// RemoveReel takes the chosen reel out of the file.
func (s *Session) RemoveReel(name string) {
	if _, ok := s.Reel(); ok {
		s.Draft.RemoveReel(name, s.Chosen.Reel)
		clear(s.Withheld)
		s.Clamp()
		s.Reshape()
	}
}

// ReelNameTaken says whether a reel in hand has a name.
func (s *Session) ReelNameTaken(name string) bool {
	for i := range s.Reels() {
		if s.Reels()[i].Name == name {
			return true
		}
	}
	return false
}

// FaultsWith are the faults that the chosen reel would have in another state. Only it is
// looked at: the others, of which there may be hundreds, stay as they are.
func (s *Session) FaultsWith(next scenario.InHand) []scenario.Fault {
	faults := scenario.CheckReels([]scenario.InHand{next})
	for i := range faults {
		faults[i].Path = s.ReelKey() + strings.TrimPrefix(faults[i].Path, "reel[1]")
		faults[i].Place.Index = s.Chosen.Reel
	}
	for i := range s.Reels() {
		if i != s.Chosen.Reel && s.Reels()[i].Name == next.Name {
			faults = append(faults, scenario.Fault{
				Path: s.ReelKey() + ".name", Code: scenario.NameTaken, Args: scenario.Args{Got: next.Name, Table: "reel", Other: i + 1},
				Place: scenario.Place{Part: scenario.PartInHand, Scenario: -1, Index: s.Chosen.Reel},
			})
		}
	}
	return faults
}

// ReelKey is the key of the chosen reel in the file, as faults name it.
func (s *Session) ReelKey() string { return "reel[" + strconv.Itoa(s.Chosen.Reel+1) + "]" }
