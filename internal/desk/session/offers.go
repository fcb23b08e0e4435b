package session

import (
	"fmt"
	"slices"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Alter makes a change that is a step of its own.
func (s *Session) Alter(name string, do func(*scenario.Scenario)) {
	before := s.Current()
	next := before.Clone()
	do(&next)
	next.SettleAll()
	scenario.Follow(&before, &next)
	s.Change(name, "", next)
	clear(s.Withheld) // keys may name other offers now
	s.Reshape()
}

// ChosenOffer is the name of the offer that is looked at, "" where there is none.
func (s *Session) ChosenOffer() string {
	if offers := s.Current().Offers; s.Chosen.Offer < len(offers) {
		return offers[s.Chosen.Offer].Name
	}
	return ""
}

// AddOffer adds a new offer at the end and chooses it.
func (s *Session) AddOffer(kind scenario.Kind) {
	now := s.Current()
	s.TakeOffer(scenario.NewOffer(&now, kind))
}

// TakeOffer adds an offer at the end and chooses it.
func (s *Session) TakeOffer(o scenario.Offer) {
	s.Chosen = offerAt(len(s.Current().Offers))
	s.Alter(words.StepAdd(o.Name), func(s *scenario.Scenario) {
		s.Offers = append(s.Offers, o)
		if len(s.Offers) == 1 {
			s.Baseline = o.Name
		}
	})
}

// RemoveOffer takes away the offer that is chosen; the last one stays.
func (s *Session) RemoveOffer() {
	i, offers := s.Chosen.Offer, s.Current().Offers
	if s.Chosen.Topic != TopicOffer || len(offers) < 2 {
		return
	}
	gone := offers[i].Name
	s.Alter(words.StepRemove(gone), func(s *scenario.Scenario) {
		s.Offers = slices.Delete(s.Offers, i, i+1)
		if s.Baseline == gone {
			s.Baseline = s.Offers[0].Name
		}
	})
}

// CompareWith makes the chosen offer the one the others are compared with.
func (s *Session) CompareWith() {
	if name := s.ChosenOffer(); s.Current().Baseline != name {
		s.Alter(words.StepCompareWith, func(s *scenario.Scenario) { s.Baseline = name })
	}
}

// DuplicateOffer puts a copy of the chosen offer behind it.
func (s *Session) DuplicateOffer() {
	i, now := s.Chosen.Offer, s.Current()
	o := scenario.CopyOffer(&now, i)
	s.Chosen.Offer = i + 1
	s.Alter(words.StepDuplicate(now.Offers[i].Name), func(s *scenario.Scenario) {
		s.Offers = slices.Insert(s.Offers, i+1, o)
	})
}

// MoveOffer moves the chosen offer up or down the list.
func (s *Session) MoveOffer(by int) {
	i := s.Chosen.Offer
	j := i + by
	if s.Chosen.Topic != TopicOffer || j < 0 || j >= len(s.Current().Offers) {
		return
	}
	s.Chosen.Offer = j
	s.Alter(words.StepMove, func(s *scenario.Scenario) {
		s.Offers[i], s.Offers[j] = s.Offers[j], s.Offers[i]
	})
}

// Order sets how many units of an offer are bought at once.
func (s *Session) Order(offer string, units int) {
	offers := s.Current().Offers
	i := slices.IndexFunc(offers, func(o scenario.Offer) bool { return o.Name == offer })
	if i >= 0 && offers[i].Units != units {
		s.Alter(words.StepOrder, func(s *scenario.Scenario) {
			s.Offers[i].Units = units
			s.Settle(fmt.Sprintf("offer[%d].units", i+1))
		})
	}
}
