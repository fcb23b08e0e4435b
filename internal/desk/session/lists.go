package session

import (
	"slices"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// EquipmentList is a list of equipment in a scenario: of loading, or of a process.
type EquipmentList func(*scenario.Scenario) *[]scenario.Equipment

func (s *Session) AddEquipment(list EquipmentList) {
	s.Alter(words.StepAddEquipment, func(s *scenario.Scenario) {
		l := list(s)
		*l = append(*l, scenario.NewEquipment())
	})
}

func (s *Session) RemoveEquipment(list EquipmentList, i int) {
	s.Alter(words.StepRemoveEquipment, func(s *scenario.Scenario) {
		l := list(s)
		*l = slices.Delete(*l, i, i+1)
	})
}

func (s *Session) RemoveQuote(i int) {
	s.Alter(words.StepRemoveRate, func(s *scenario.Scenario) { s.Rates = slices.Delete(s.Rates, i, i+1) })
}

func (s *Session) AddProcess(way scenario.Way) {
	s.Alter(words.StepAddProcess, func(s *scenario.Scenario) {
		s.Developing = append(s.Developing, scenario.NewProcess(s, way))
	})
}

// RemoveProcess takes a process away; the offers that name it count none.
func (s *Session) RemoveProcess(i int) {
	gone := s.Current().Developing[i].Name
	s.Alter(words.StepRemove(gone), func(s *scenario.Scenario) {
		s.Developing = slices.Delete(s.Developing, i, i+1)
		for j := range s.Offers {
			if s.Offers[j].Developing == gone {
				s.Offers[j].Developing = ""
			}
		}
	})
}

// DevelopAll has all offers developed alike.
func (s *Session) DevelopAll(process string) {
	s.Alter(words.StepDevelopAll, func(s *scenario.Scenario) {
		for i := range s.Offers {
			s.Offers[i].Developing = process
		}
	})
}

// WithRange is the scenario with how far an input swings, in the place of what it had.
func (s *Session) WithRange(r scenario.Range) scenario.Scenario {
	next := s.Current().Clone()
	dropRange(&next, r.Input)
	next.Ranges = append(next.Ranges, r)
	return next
}

// SetRange keeps how far an input swings.
func (s *Session) SetRange(r scenario.Range) {
	next := s.WithRange(r)
	s.Alter(words.StepRange, func(s *scenario.Scenario) { *s = next })
}

// UsualRange forgets it.
func (s *Session) UsualRange(input scenario.Input) {
	s.Alter(words.StepUsualRange, func(s *scenario.Scenario) { dropRange(s, input) })
}

func dropRange(s *scenario.Scenario, input scenario.Input) {
	s.Ranges = slices.DeleteFunc(s.Ranges, func(r scenario.Range) bool { return r.Input == input })
}
