package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// ways is the left column: the scenario, its ways to buy, and what holds for all.
type ways struct {
	content  *fyne.Container
	scenario *kit.Picker
	state    *kit.Text
	unit     *kit.Text
	offers   []*kit.Card
	topics   map[topic]*kit.Card
	choose   func(selection)
	add      func(scenario.Kind)
	deal     func()
	locale   func() money.Locale
	sel      selection
}

// waysWidth is the width of the left column.
func waysWidth() float32 { return kit.Scaled(232) }

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
	w := &ways{choose: choose, add: add, deal: deal, locale: locale, topics: map[topic]*kit.Card{}}
	w.scenario = kit.NewPicker(nil, switchTo)
	w.scenario.Plain, w.scenario.Bold = true, true
	w.state = kit.Small("")
	w.unit = kit.Small("").Trailing()
	w.content = kit.Inset(kit.NewStack(waysWidth(), 0), 12, 14, 12, 16)
	return w
}

// build lays the column out for a scenario with so many offers.
func (w *ways) build(s *scenario.Scenario) {
	w.content.RemoveAll()
	margin := func(o fyne.CanvasObject) fyne.CanvasObject {
		return kit.Inset(kit.NewStack(waysWidth(), 0, o), kit.CardEdge, 0, kit.CardEdge, 0)
	}
	w.content.Add(margin(w.scenario))
	w.content.Add(margin(w.state))
	w.content.Add(kit.Space(18))
	w.content.Add(margin(kit.NewSides(kit.Heading("Ways to buy"), w.unit)))
	w.content.Add(kit.Space(2))
	w.offers = w.offers[:0]
	for i := range s.Offers {
		c := kit.NewCard(func() { w.choose(selection{topicOffer, i}) }, w.move)
		c.Bar = kit.NewBar()
		w.offers = append(w.offers, c)
		w.content.Add(c)
	}
	w.content.Add(kit.Space(4))
	w.content.Add(margin(kit.NewLine(16,
		kit.NewLink("+ reel", func() { w.add(scenario.KindReel) }),
		kit.NewLink("+ boxed", func() { w.add(scenario.KindBoxed) }),
		kit.NewLink("a deal?", w.deal))))
	w.content.Add(kit.Space(14))
	w.content.Add(margin(kit.Heading("For all of them")))
	w.content.Add(kit.Space(2))
	for _, t := range topicNames {
		c := kit.NewCard(func() { w.choose(selection{t.topic, w.sel.offer}) }, w.move)
		c.Name.Set(kit.Span{Text: t.name})
		w.topics[t.topic] = c
		w.content.Add(c)
	}
}

// cards are all of them in reading order.
func (w *ways) cards() []*kit.Card {
	list := append([]*kit.Card(nil), w.offers...)
	for _, t := range topicNames {
		list = append(list, w.topics[t.topic])
	}
	return list
}

// move chooses the neighbour of the card that has the focus.
func (w *ways) move(step int) {
	list := w.cards()
	for i, c := range list {
		if c.Focused {
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
	var options []kit.Option
	for _, n := range names {
		options = append(options, kit.Option{Value: n, Label: n})
	}
	w.scenario.Options = options
	w.scenario.Set(s.Name)
	w.state.Set(kit.Span{Text: state, Color: kit.Muted})
	w.unit.Set(kit.Span{Text: s.Home + " A ROLL", Color: kit.Muted, Bold: true})
	for i, c := range w.offers {
		c.Chosen = sel.topic == topicOffer && sel.offer == i
		c.Name.Set(kit.Span{Text: s.Offers[i].Name})
	}
	l := w.locale()
	for t, c := range w.topics {
		c.Chosen = sel.topic == t
		c.Under.Set(kit.Span{Text: topicSummary(t, s, l), Color: kit.Muted})
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
		under := []kit.Span{{Text: words.OfferSubtitle(&c.Scenario, &c.Scenario.Offers[i]), Color: kit.Muted}}
		if len(warningsAbout(c, selection{topicOffer, i}, l)) > 0 {
			under = append(under, kit.Span{Text: " !", Bold: true, Color: kit.Accent})
		}
		card.Under.Set(under...)
		if o.Fault != nil {
			card.Total.Set(kit.Span{Text: "–", Color: kit.Fault, Bold: true})
			card.Bar.Set(0)
		} else {
			card.Total.Set(kit.Span{Text: l.Number(o.PerRoll.Total, places), Bold: true})
			card.Bar.Set(share(o.PerRoll.Total, most))
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
