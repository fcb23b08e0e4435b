package form

import (
	"slices"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// startForm asks what a new scenario needs before there is an answer: home, how much is
// shot, and what boxed film and a reel cost. Each field stands in its own form too.
func (b forms) startForm(s *scenario.Scenario) *Form {
	f := &Form{
		title:    func(s *scenario.Scenario) string { return s.Name },
		subtitle: always(words.UnderStart),
		caution:  words.StartElse,
	}
	f.groups = append(f.groups, group{heading: words.GroupAtHome, fields: []*Field{
		b.currencyField(s, movingHome()),
		b.monthField(),
	}})
	for _, kind := range []scenario.Kind{scenario.KindBoxed, scenario.KindReel} {
		i := slices.IndexFunc(s.Offers, func(o scenario.Offer) bool { return o.Kind == kind })
		if i >= 0 {
			f.groups = append(f.groups, b.startOffer(s, i))
		}
	}
	return f
}

// startOffer is what is needed of a way to buy.
func (b forms) startOffer(s *scenario.Scenario, i int) group {
	at := func(s *scenario.Scenario) *scenario.Offer { return &s.Offers[i] }
	of := offerBindings{i, at, words.UnitName(at(s))}
	g := group{heading: of.at(s).Name, fields: []*Field{b.priceField(s, of)}}
	film := b.filmGroup(s, of).fields
	g.fields = append(g.fields, film[0]) // the length, or the rolls in a pack
	g.fields = append(g.fields, b.quoteFields(s, of.code(s))...)
	g.fields = append(g.fields, b.shippingField(of))
	if of.code(s) != s.Home {
		g.fields = append(g.fields, b.importField(of))
	}
	return g
}

// movingHome is the home currency, which offers without a price follow.
func movingHome() Binding {
	home := texts("home", func(s *scenario.Scenario) *string { return &s.Home })
	set := home.set
	home.set = func(s *scenario.Scenario, text string, l money.Locale) error {
		was := s.Home
		for i := range s.Offers {
			if o := &s.Offers[i]; o.Currency == was && o.Price.IsZero() {
				o.Currency = text
			}
		}
		return set(s, text, l)
	}
	return home
}
