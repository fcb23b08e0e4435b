package form

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// seenGroup is the prices that were seen of an offer: the lowest and highest and where its
// own stands, a small line of them, and the question that adds one or puts one in use.
func (b forms) seenGroup(s *scenario.Scenario, of offerBindings) group {
	g := group{note: func(s *scenario.Scenario, l money.Locale) string { return words.SeenFinding(of.at(s), l) }}
	if line := sparkOf(of.at(s)); line != nil {
		g.actions = append(g.actions, line)
	}
	g.actions = append(g.actions, kit.NewLink(words.SawIt, func() { b.e.AskSeen(of.i) }))
	return g
}

// sparkOf draws the prices seen over their days, the lowest and the highest told apart,
// beside the price in use; nil for fewer than two.
func sparkOf(o *scenario.Offer) fyne.CanvasObject {
	places := o.SeenPlaces()
	if len(places) < 2 {
		return nil
	}
	value := func(d scenario.Decimal) float32 { return float32(exact.FromDecimal(d).Float()) }
	first, last := o.Seen[places[0]].Date, o.Seen[places[len(places)-1]].Date
	days := float32(max(first.DaysUntil(last), 1))
	low, high := value(o.Price), value(o.Price)
	lowest, highest := 0, 0
	for i, place := range places {
		v := value(o.Seen[place].Price)
		low, high = min(low, v), max(high, v)
		if v < value(o.Seen[places[lowest]].Price) {
			lowest = i
		}
		if v > value(o.Seen[places[highest]].Price) {
			highest = i
		}
	}
	span := high - low
	if span <= 0 {
		span = 1
	}
	var points []kit.SparkPoint
	for i, place := range places {
		p := &o.Seen[place]
		points = append(points, kit.SparkPoint{
			X: float32(first.DaysUntil(p.Date)) / days, Y: (value(p.Price) - low) / span, Strong: i == lowest || i == highest,
		})
	}
	return kit.NewSpark(points, (value(o.Price)-low)/span)
}
