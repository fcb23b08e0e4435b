package desk

import (
	"encoding/json"
	"slices"

	"reelworth/internal/desk/stock"
	"reelworth/internal/reels"
)

// mostPlans is how many cut plans of a file are remembered, the newest.
const mostPlans = 100

// keptPlan is a cut plan as it is remembered.
type keptPlan struct {
	Of     stock.Plan
	Wishes []reels.Wish
}

// plans are the cut plans of a file, the oldest first; what cannot be read is none.
func (s *settings) plans(path string) (list []keptPlan) {
	if json.Unmarshal([]byte(s.app.Preferences().String(keepPlans+path)), &list) != nil {
		return nil
	}
	return list
}

func (s *settings) setPlans(path string, list []keptPlan) {
	if len(list) == 0 {
		s.app.Preferences().RemoveValue(keepPlans + path)
		return
	}
	if text, err := json.Marshal(list[max(0, len(list)-mostPlans):]); err == nil { // names and whole numbers always can be
		s.app.Preferences().SetString(keepPlans+path, string(text))
	}
}

// plan is the cut plan of a reel of a file, as far as it still makes sense; ok is false
// where none is remembered.
func (s *settings) plan(path string, of stock.Plan) (wishes []reels.Wish, ok bool) {
	for _, p := range s.plans(path) {
		if p.Of == of {
			return slices.DeleteFunc(p.Wishes, func(w reels.Wish) bool { return !w.Sensible() }), true
		}
	}
	return nil, false
}

// keepPlan remembers the cut plan of a reel of a file; forget is true for one that needs no
// remembering.
func (s *settings) keepPlan(path string, of stock.Plan, wishes []reels.Wish, forget bool) {
	list := slices.DeleteFunc(s.plans(path), func(p keptPlan) bool { return p.Of == of })
	if !forget {
		list = append(list, keptPlan{of, wishes})
	}
	s.setPlans(path, list)
}

// takePlans has a file keep the cut plans of the one that it was made of; what was in no
// file is there from now on.
func (s *settings) takePlans(from, to string) {
	list := s.plans(from)
	if from == to || len(list) == 0 {
		return
	}
	s.setPlans(to, list)
	if from == "" {
		s.setPlans("", nil)
	}
}
