package stock

import (
	"reelworth/internal/compare"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// Accounted is a reel as planned and as it turned out, and what it teaches.
type Accounted struct {
	Outcome  reels.Outcome
	Currency string
	// Lesson is what is offered to be taken over into the scenario; nil for nothing.
	Lesson *Lesson
}

// Lesson is what a reel teaches about the offer it was bought as, and the answer without
// and with it.
type Lesson struct {
	reels.Experience
	Was           *scenario.Offer // as it stands in the scenario
	Before, After compare.Comparison
}

// accountOf is the account of the reel that is looked at, nil for none.
func accountOf(j Job, standings []reels.Standing) *Accounted {
	if j.Of.Thought {
		return nil
	}
	r := &j.Reels[j.Of.Reel]
	o, ok := reels.OutcomeOf(r, &standings[j.Of.Reel])
	if !ok {
		return nil
	}
	a := &Accounted{Outcome: o, Currency: r.Currency}
	e, ok := reels.Learn(&j.Scenario, j.Of.Reel, j.Reels, standings)
	if !ok {
		return a
	}
	next := e.Apply(j.Scenario)
	l := &Lesson{Experience: e}
	for i := range j.Scenario.Offers {
		if j.Scenario.Offers[i].Name == e.Offer {
			l.Was = &j.Scenario.Offers[i]
		}
	}
	if l.Was.OnHand.Equal(e.OnHand) && l.Was.Reel.SpoiledPercent.Equal(e.SpoiledPercent) {
		return a // taken over already
	}
	l.Before = compare.Compare(j.Scenario, scenario.Check(j.Scenario), j.Today)
	l.After = compare.Compare(next, scenario.Check(next), j.Today)
	a.Lesson = l
	return a
}
