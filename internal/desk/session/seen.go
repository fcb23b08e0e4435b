package session

import (
	"slices"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// WithSeen is the scenario with a price that was seen of the offer at a place.
func (s *Session) WithSeen(offer int, p scenario.Seen) scenario.Scenario {
	next := s.Current().Clone()
	next.Offers[offer].See(p)
	return next
}

// See keeps a price that was seen of the offer at a place.
func (s *Session) See(offer int, p scenario.Seen) {
	next := s.WithSeen(offer, p)
	s.Alter(words.StepSeen(next.Offers[offer].Name), func(s *scenario.Scenario) { *s = next })
}

// UseSeen makes a price that was seen the price of its offer.
func (s *Session) UseSeen(offer, seen int) {
	o := s.Current().Offers[offer]
	s.Alter(words.StepUseSeen(o.Name), func(s *scenario.Scenario) { s.Offers[offer].Price = o.Seen[seen].Price })
}

// ForgetSeen takes a price that was seen away.
func (s *Session) ForgetSeen(offer, seen int) {
	s.Alter(words.StepForgetSeen, func(s *scenario.Scenario) {
		o := &s.Offers[offer]
		o.Seen = slices.Delete(o.Seen, seen, seen+1)
	})
}
