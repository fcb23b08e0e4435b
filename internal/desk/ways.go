package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// ways is the left column: the scenario, its ways to buy, and what holds for all.
type ways struct {
	content  *fyne.Container
	scenario *picker
	state    *prose
	unit     *prose
	offers   []*card
	topics   map[topic]*card
	choose   func(selection)
	add      func(scenario.Kind)
	deal     func()
	locale   func() money.Locale
	sel      selection
}

// topicNames in the order of the column.
var topicNames = []struct {
	topic topic
	name  string
}{
	{topicShooting, "The year's shooting"},
	{topicLoading, "Loading"},
	{topicDeveloping, "Developing"},
	{topicBorder, "At the border"},
	{topicRates, "Exchange rates"},
}

func newWays(choose func(selection), switchTo func(string), add func(scenario.Kind), deal func(), locale func() money.Locale) *ways {
	w := &ways{choose: choose, add: add, deal: deal, locale: locale, topics: map[topic]*card{}}
	w.scenario = newPicker(nil, switchTo)
	w.scenario.plain, w.scenario.bold = true, true
	w.state = small("")
	w.unit = small("").trailing()
	w.content = inset(newStack(waysWidth, 0), 12, 14, 12, 16)
	return w
}

// build lays the column out for a scenario with so many offers.
func (w *ways) build(s *scenario.Scenario) {
	w.content.RemoveAll()
	margin := func(o fyne.CanvasObject) fyne.CanvasObject {
		return inset(newStack(waysWidth, 0, o), cardEdge, 0, cardEdge, 0)
	}
	w.content.Add(margin(w.scenario))
	w.content.Add(margin(w.state))
	w.content.Add(space(18))
	w.content.Add(margin(newSides(heading("Ways to buy"), w.unit)))
	w.content.Add(space(2))
	w.offers = w.offers[:0]
	for i := range s.Offers {
		c := newCard(func() { w.choose(selection{topicOffer, i}) }, w.move)
		c.bar = newBar()
		w.offers = append(w.offers, c)
		w.content.Add(c)
	}
	w.content.Add(space(4))
	w.content.Add(margin(newLine(16,
		newLink("+ reel", func() { w.add(scenario.KindReel) }),
		newLink("+ boxed", func() { w.add(scenario.KindBoxed) }),
		newLink("a deal?", w.deal))))
	w.content.Add(space(14))
	w.content.Add(margin(heading("For all of them")))
	w.content.Add(space(2))
	for _, t := range topicNames {
		c := newCard(func() { w.choose(selection{t.topic, w.sel.offer}) }, w.move)
		c.name.set(span{text: t.name})
		w.topics[t.topic] = c
		w.content.Add(c)
	}
}

// cards are all of them in reading order.
func (w *ways) cards() []*card {
	list := append([]*card(nil), w.offers...)
	for _, t := range topicNames {
		list = append(list, w.topics[t.topic])
	}
	return list
}

// move chooses the neighbour of the card that has the focus.
func (w *ways) move(step int) {
	list := w.cards()
	for i, c := range list {
		if c.focused {
			if j := i + step; j >= 0 && j < len(list) {
				list[j].Tapped(nil)
			}
			return
		}
	}
}

// show puts what is known without computing into the column.
func (w *ways) show(s *scenario.Scenario, names []string, state string, sel selection) {
	w.sel = sel
	var options []option
	for _, n := range names {
		options = append(options, option{n, n})
	}
	w.scenario.options = options
	w.scenario.show(s.Name)
	w.state.set(span{text: state, color: colMuted})
	w.unit.set(span{text: s.Home + " A ROLL", color: colMuted, bold: true})
	for i, c := range w.offers {
		c.chosen = sel.topic == topicOffer && sel.offer == i
		c.name.set(span{text: s.Offers[i].Name})
	}
	l := w.locale()
	for t, c := range w.topics {
		c.chosen = sel.topic == t
		c.under.set(span{text: topicSummary(t, s, l), color: colMuted})
	}
	for _, c := range w.cards() {
		c.Refresh()
	}
}

func topicSummary(t topic, s *scenario.Scenario, l money.Locale) string {
	switch t {
	case topicShooting:
		return words.ShootingSummary(s, l)
	case topicLoading:
		return words.LoadingSummary(s, l)
	case topicDeveloping:
		return words.DevelopingSummary(s)
	case topicBorder:
		return words.BorderSummary(s, l)
	case topicRates:
		return words.RatesSummary(s, l)
	}
	return ""
}

// price puts the costs into the column.
func (w *ways) price(c *compare.Comparison) {
	if len(c.Offers) != len(w.offers) {
		return
	}
	var most exact.Fraction
	for i := range c.Offers {
		most = exact.Max(most, c.Offers[i].PerRoll.Total)
	}
	places, ok := money.Digits(c.Scenario.Home)
	if !ok {
		places = 2
	}
	l := w.locale()
	for i, card := range w.offers {
		o := &c.Offers[i]
		under := []span{{text: words.OfferSubtitle(&c.Scenario, &c.Scenario.Offers[i]), color: colMuted}}
		if len(warningsAbout(c, selection{topicOffer, i}, l)) > 0 {
			under = append(under, span{text: " !", bold: true, color: colAccent})
		}
		card.under.set(under...)
		if o.Fault != nil {
			card.total.set(span{text: "–", color: colFault, bold: true})
			card.bar.set(0)
		} else {
			card.total.set(span{text: l.Number(o.PerRoll.Total, places), bold: true})
			card.bar.set(share(o.PerRoll.Total, most))
		}
		card.Refresh()
	}
	w.content.Refresh()
}

// share is how long a cost's line is beside the longest.
func share(cost, most exact.Fraction) float32 {
	if most.Sign() <= 0 {
		return 0
	}
	return float32(cost.Float() / most.Float())
}

// offerNamed is the offer of that name as it was typed.
func offerNamed(c *compare.Comparison, name string) *scenario.Offer {
	for i := range c.Scenario.Offers {
		if c.Scenario.Offers[i].Name == name {
			return &c.Scenario.Offers[i]
		}
	}
	return &scenario.Offer{}
}
