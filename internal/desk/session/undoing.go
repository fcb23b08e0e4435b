package session

import (
	"reflect"
	"strings"

	"reelworth/internal/draft"
	"reelworth/internal/scenario"
)

// Place is where in a scenario something was changed.
type Place struct {
	Selection
	Key string // of the field, "" where it was more than one
}

// Undo takes the last change back and turns to the scenario it was about; it says
// whether there was one. Acted then tells where it was.
func (s *Session) Undo() bool { return s.goBack(s.Draft.UndoField(), s.Draft.Undo) }

// Redo makes the last undone change again.
func (s *Session) Redo() bool { return s.goBack(s.Draft.RedoField(), s.Draft.Redo) }

// Acted is where the last Undo or Redo changed something.
func (s *Session) Acted() Place { return s.acted }

func (s *Session) goBack(field string, step func() (draft.At, bool)) bool {
	was := s.Draft.File()
	at, ok := step()
	if !ok {
		return false
	}
	now := s.Draft.File()
	s.acted = Place{Selection: s.Chosen}
	switch {
	case at.Scenario < 0:
		s.acted = placeOfReel(field, min(at.Reel, len(now.Reels)-1), s.Chosen)
	case len(was.Scenarios) == len(now.Scenarios): // the change was inside a scenario
		s.At = at.Scenario
		s.acted = placeOf(field, &was.Scenarios[s.At], &now.Scenarios[s.At], s.Chosen)
	default:
		s.At = min(at.Scenario, len(now.Scenarios)-1)
	}
	clear(s.Withheld)
	s.Reshape()
	return true
}

// placeOfReel is the reel in hand at i with the field that was changed in it. Without a
// reel in hand it is where the offers are.
func placeOfReel(field string, i int, chosen Selection) Place {
	if i < 0 {
		return Place{Selection: offerAt(chosen.Offer)}
	}
	return Place{chosen.reelAt(i), field}
}

// placeOf is where two states of a scenario differ: in the field that is known to have
// been changed, else in the first part that is not the same. What is chosen stays chosen
// where it is among the parts.
func placeOf(field string, was, now *scenario.Scenario, chosen Selection) Place {
	if topic := TopicOf(field); field != "" && topic != TopicOffer {
		return Place{Selection{Topic: topic, Offer: chosen.Offer}, field}
	}
	for _, part := range []struct {
		topic Topic
		same  bool
	}{
		{TopicDeveloping, reflect.DeepEqual(was.Developing, now.Developing)},
		{TopicLoading, reflect.DeepEqual(was.Loading, now.Loading)},
		{TopicBorder, reflect.DeepEqual(was.Border, now.Border)},
		{TopicOffer, reflect.DeepEqual(was.Offers, now.Offers)},
		{TopicRates, reflect.DeepEqual(was.Rates, now.Rates)},
		{TopicShooting, reflect.DeepEqual(was.Shooting, now.Shooting)},
	} {
		switch {
		case part.same:
		case part.topic == TopicOffer:
			return Place{offerAt(offerThatDiffers(was.Offers, now.Offers, chosen.Offer)), field}
		default:
			return Place{Selection{Topic: part.topic, Offer: chosen.Offer}, field}
		}
	}
	return Place{Selection: chosen, Key: field}
}

// offerThatDiffers is the place of the one to look at, the chosen one if it may be.
func offerThatDiffers(was, now []scenario.Offer, chosen int) int {
	differs := func(i int) bool {
		return i >= len(was) || i >= len(now) || !reflect.DeepEqual(was[i], now[i])
	}
	if len(was) == len(now) && chosen < len(now) && differs(chosen) {
		return chosen
	}
	for i := range now {
		if differs(i) {
			return i
		}
	}
	return len(now) - 1
}

// TopicOf is the part of a scenario that a field stands in, by its key.
func TopicOf(field string) Topic {
	table, _, _ := strings.Cut(field, ".")
	table, _, _ = strings.Cut(table, "[")
	switch table {
	case "offer":
		return TopicOffer
	case "loading":
		return TopicLoading
	case "developing":
		return TopicDeveloping
	case "border":
		return TopicBorder
	case "rate":
		return TopicRates
	case "reel":
		return TopicReel
	}
	return TopicShooting
}
