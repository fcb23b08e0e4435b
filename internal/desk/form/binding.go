package form

import (
	"reelworth/internal/catalogue"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Binding is one value of a scenario as a form shows and changes it.
type Binding struct {
	Key  string // as faults name it: "offer[3].price"
	Name string // within a sentence, for the menu: "price"
	Get  func(s *scenario.Scenario, l money.Locale) string
	set  func(s *scenario.Scenario, text string, l money.Locale) error
	// currency is where an amount's currency stands, for amounts pasted with one.
	currency func(s *scenario.Scenario) *string
	piece    string // what one price of the offer buys, "" outside an offer
	// fixed is an amount's currency where it cannot be chosen.
	fixed func(s *scenario.Scenario) string
	// reel is the value of the reel in hand that is chosen, nil for one of a scenario: Get
	// and set are of it then.
	reel *value[scenario.InHand]
}

// calledIn is the catalogue's name of a field within a sentence.
func calledIn(key string) string {
	e, _ := catalogue.Of(key)
	return e.Called
}

// of adds to the name what the value belongs to: "price of the tank".
func (s Binding) of(name string) Binding {
	if name != "" {
		s.Name = words.Of(s.Name, name)
	}
	return s
}

// then does more after a value has been set, as part of the same change.
func (s Binding) then(do func(*scenario.Scenario)) Binding {
	set := s.set
	s.set = func(sc *scenario.Scenario, text string, l money.Locale) error {
		if err := set(sc, text, l); err != nil {
			return err
		}
		do(sc)
		return nil
	}
	return s
}

// inCurrency says where the amount's currency stands.
func (s Binding) inCurrency(at func(*scenario.Scenario) *string) Binding {
	s.currency = at
	return s
}

// code is the currency the amount is in.
func (s Binding) code(sc *scenario.Scenario) string { return *s.currency(sc) }

// atHome says that the amount is in the home currency.
func (s Binding) atHome() Binding {
	s.fixed = home
	return s
}
