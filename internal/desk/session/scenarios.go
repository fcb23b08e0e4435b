package session

import (
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Add puts a scenario behind the one that is looked at and turns to it.
func (s *Session) Add(name string, sc scenario.Scenario) {
	sc.Name = scenario.FreeName(s.Draft.File(), sc.Name)
	s.Draft.Insert(name, s.At+1, sc)
	s.goTo(s.At + 1)
}

// FreeName is a name like the one given that no scenario of the file has.
func (s *Session) FreeName(name string) string { return scenario.FreeName(s.Draft.File(), name) }

// AddNew adds a scenario without a figure in it and turns to what it needs first.
func (s *Session) AddNew(first scenario.Month) {
	s.Add(words.StepNewScenario, scenario.New(words.NewScenarioName, s.Current().Home, first))
	s.Chosen.Topic = TopicStart
}

// Begin is work on a new scenario, as AddNew adds one, in a file of its own.
func Begin(home string, first scenario.Month) *Session {
	s := New(scenario.File{Schema: scenario.Schema, Scenarios: []scenario.Scenario{scenario.New(words.NewScenarioName, home, first)}})
	s.Draft.Unsaved()
	s.Chosen.Topic = TopicStart
	return s
}

func (s *Session) AddDemo() { s.Add(words.StepNewScenario, scenario.Demo().Scenarios[0]) }

func (s *Session) Duplicate() { s.Add(words.StepDuplicate(s.Current().Name), s.Current().Clone()) }

// IsLast says whether the file has no other scenario.
func (s *Session) IsLast() bool { return len(s.Draft.File().Scenarios) < 2 }

// Remove takes the scenario that is looked at away; the last one stays.
func (s *Session) Remove() {
	if s.IsLast() {
		return
	}
	s.Draft.Remove(words.StepDelete(s.Current().Name), s.At)
	s.goTo(min(s.At, len(s.Draft.File().Scenarios)-1))
}

// Step turns to a neighbour in the file.
func (s *Session) Step(by int) {
	if i := s.At + by; i >= 0 && i < len(s.Draft.File().Scenarios) {
		s.goTo(i)
	}
}

// Rename gives the scenario that is looked at another name.
func (s *Session) Rename(name string) {
	if name != s.Current().Name {
		s.Alter(words.StepRename, func(s *scenario.Scenario) { s.Name = name })
	}
}
