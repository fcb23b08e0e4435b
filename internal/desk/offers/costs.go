package offers

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Price puts the costs into the column.
func (w *List) Price(c *compare.Comparison, l money.Locale) {
	if len(c.Offers) != len(w.Offers) {
		return
	}
	var most exact.Fraction
	for i := range c.Offers {
		most = exact.Max(most, c.Offers[i].PerRoll.Total)
	}
	w.priced, w.pricedIn = c.Scenario.Home, c.Currency()
	w.sayCurrency(&c.Scenario)
	places := money.Places(c.Currency())
	for i, card := range w.Offers {
		o := &c.Offers[i]
		under := []kit.Span{{Text: words.OfferSubtitle(&c.Scenario, &c.Scenario.Offers[i]), Color: kit.Muted}}
		if len(Warnings(c, session.Selection{Topic: session.TopicOffer, Offer: i}, l)) > 0 {
			under = append(under, kit.Span{Text: " !", Bold: true, Color: kit.Accent})
		}
		card.Under.Set(under...)
		if o.Fault != nil {
			color := fyne.ThemeColorName(kit.Fault)
			if words.Unpriced(c, i) {
				color = kit.Muted
			}
			card.Total.Set(kit.Span{Text: "–", Color: color, Bold: true})
			card.Bar.Set(0)
		} else {
			card.Total.Set(kit.Span{Text: l.Number(o.PerRoll.Total, places), Bold: true})
			card.Bar.Set(share(o.PerRoll.Total, most))
		}
		card.Refresh()
	}
	w.Content.Refresh()
	if w.In != nil {
		w.In.Content.Refresh() // what stands below moves when a card takes fewer lines
		w.In.Refresh()
	}
	w.revealChosen()
	w.moved = false
}

// share is how long a cost's line is beside the longest.
func share(cost, most exact.Fraction) float32 {
	if most.Sign() <= 0 {
		return 0
	}
	return float32(cost.Float() / most.Float())
}
