package form

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// offerBindings makes bindings of the offer at a place.
type offerBindings struct {
	i     int
	at    func(*scenario.Scenario) *scenario.Offer
	piece string // what one price buys
}

func (of offerBindings) key(k string) string { return fmt.Sprintf("offer[%d].%s", of.i+1, k) }

func (of offerBindings) decimal(k string, at func(*scenario.Offer) *scenario.Decimal) Binding {
	return of.priced(decimals(of.key(k), func(s *scenario.Scenario) *scenario.Decimal { return at(of.at(s)) }))
}

func (of offerBindings) maybe(k string, at func(*scenario.Offer) *scenario.Maybe) Binding {
	return of.priced(maybes(of.key(k), func(s *scenario.Scenario) *scenario.Maybe { return at(of.at(s)) }))
}

func (of offerBindings) count(k string, at func(*scenario.Offer) *int) Binding {
	return of.priced(counts(of.key(k), func(s *scenario.Scenario) *int { return at(of.at(s)) }))
}

func (of offerBindings) flag(k string, at func(*scenario.Offer) *bool) Binding {
	return flags(of.key(k), func(s *scenario.Scenario) *bool { return at(of.at(s)) })
}

// priced says what one price buys, and of an amount in which currency.
func (of offerBindings) priced(s Binding) Binding {
	s.piece = of.piece
	if e, _ := catalogue.Of(s.Key); e.Unit == catalogue.Seller {
		return s.inCurrency(of.currency)
	}
	return s
}

func (of offerBindings) currency(s *scenario.Scenario) *string { return &of.at(s).Currency }

func (of offerBindings) code(s *scenario.Scenario) string { return of.at(s).Currency }

// offerOf is the place of the offer that a field belongs to, by its key; ok is false for a
// field of no offer.
func offerOf(key string) (i int, ok bool) {
	n, _ := fmt.Sscanf(key, "offer[%d]", &i)
	return i - 1, n == 1
}

// priceField is the price with its currency. A new offer has none.
func (b forms) priceField(s *scenario.Scenario, of offerBindings) *Field {
	price := of.decimal("price", func(o *scenario.Offer) *scenario.Decimal { return &o.Price })
	get, set := price.Get, price.set
	price.Get = func(s *scenario.Scenario, l money.Locale) string {
		if of.at(s).Price.IsZero() {
			return ""
		}
		return get(s, l)
	}
	price.set = func(s *scenario.Scenario, text string, l money.Locale) error {
		if of.at(s).Price.IsZero() && strings.TrimSpace(text) == "" {
			return nil // it was empty
		}
		return set(s, text, l)
	}
	f := b.number(price).withUnit(b.e, AllCurrencies, texts(of.key("currency"), of.currency)).offering(CurrenciesOf(s)).
		taking(takesCurrency(of.currency))
	f.wanted = words.WantedPrice
	f.prompt = func(s *scenario.Scenario) []kit.Answer {
		key := WantedQuote(s, of.code(s))
		if key == "" {
			return nil
		}
		return []kit.Answer{{Label: words.AnswerAddRate, Do: func() { b.e.GoTo(key) }}}
	}
	return f
}

func (b forms) shippingField(of offerBindings) *Field {
	return b.number(of.decimal("shipping", func(o *scenario.Offer) *scenario.Decimal { return &o.Shipping }))
}

func (b forms) importField(of offerBindings) *Field {
	choice := choices(of.key("import"), func(s *scenario.Scenario) *scenario.Import { return &of.at(s).Import })
	return b.choice(kit.WideWidth, Options(words.Imports()), choice)
}
