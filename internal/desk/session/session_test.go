package session

import (
	"testing"

	"reelworth/internal/scenario"
)

func TestChangesOfTheOffersAreStepsOfUndo(t *testing.T) {
	s := NewDemo()
	was := scenario.Write(s.Draft.File())
	steps := []func(){
		func() { s.AddOffer(scenario.KindReel) },
		s.DuplicateOffer,
		func() { s.MoveOffer(-1) },
		s.CompareWith,
		s.RemoveOffer,
		func() { s.Order(s.Current().Offers[0].Name, 9) },
		func() {
			s.SetRange(scenario.Range{Input: "offer.price", Low: s.Current().Offers[0].Price, High: s.Current().Offers[0].Price})
		},
		func() { s.Rename("Another name") },
		s.Duplicate,
	}
	for i, step := range steps {
		before := s.Epoch()
		step()
		if s.Epoch() == before {
			t.Errorf("step %d left the epoch: an answer under way would be taken for its own", i)
		}
	}
	if s.Current().Name == "Another name" || len(s.Names()) != 2 {
		t.Error(s.Names())
	}
	for i := range steps {
		if !s.Undo() {
			t.Fatal("nothing to undo at step", i)
		}
	}
	if s.Undo() || string(scenario.Write(s.Draft.File())) != string(was) || s.Draft.Modified() {
		t.Error("undone to the start, but something is left")
	}
	for s.Redo() {
	}
	if len(s.Names()) != 2 {
		t.Error("redone:", s.Names())
	}
}

func TestWhatChangesNothingIsNoStep(t *testing.T) {
	s := NewDemo()
	s.Choose(offerAt(0))
	s.MoveOffer(-1)
	s.Step(1)
	s.Remove()
	s.Rename(s.Current().Name)
	s.Order("nobody's", 3)
	s.Order(s.Current().Offers[0].Name, s.Current().Offers[0].Units)
	if s.Draft.Modified() || s.Draft.UndoName() != "" || !s.IsUntouchedDemo() {
		t.Error(s.Draft.UndoName())
	}
}

// An edit starts from the state there was when its field was entered.
func TestAFieldBeginsWhereItWasEntered(t *testing.T) {
	s := NewDemo()
	s.BeginField()
	typed := s.Base().Clone()
	typed.Name = "1"
	s.Change("name", "name", typed)
	if s.Base().Name == "1" || s.Current().Name != "1" {
		t.Error("the base moved while the field was typed in")
	}
	s.EndField()
	if s.Base().Name != "1" {
		t.Error("the field was left, but the base stays")
	}
}

func TestTheChosenOfferStaysInsideTheScenario(t *testing.T) {
	s := NewDemo()
	s.Choose(offerAt(len(s.Current().Offers) - 1))
	s.RemoveOffer()
	s.Clamp()
	if s.ChosenOffer() != s.Current().Offers[len(s.Current().Offers)-1].Name {
		t.Error("chosen:", s.ChosenOffer())
	}
	if _, ok := s.OfferNamed("nobody's"); ok {
		t.Error("an offer that is not there was found")
	}
}
