package session

import (
	"reflect"
	"strings"

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

func (s *Session) goBack(field string, step func() (index int, ok bool)) bool {
	was := s.Draft.File().Scenarios
	index, ok := step()
	if !ok {
		return false
	}
	now := s.Draft.File().Scenarios
	s.At = min(index, len(now)-1)
	s.acted = Place{Selection: s.Chosen}
	if len(was) == len(now) { // the change was inside a scenario
		s.acted = placeOf(field, &was[index], &now[index], s.Chosen)
	}
	clear(s.Withheld)
	s.Reshape()
	return true
}

// placeOf is where two states of a scenario differ: in the field that is known to have
// been changed, else in the first part that is not the same. What is chosen stays chosen
// where it is among the parts.
func placeOf(field string, was, now *scenario.Scenario, chosen Selection) Place {
	if topic := TopicOf(field); field != "" && topic != TopicOffer {
		return Place{Selection{topic, chosen.Offer}, field}
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
			return Place{Selection{TopicOffer, offerThatDiffers(was.Offers, now.Offers, chosen.Offer)}, field}
		default:
			return Place{Selection{part.topic, chosen.Offer}, field}
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
	}
	return TopicShooting
}
