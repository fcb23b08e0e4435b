package form

import (
	"slices"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// currencyField is a choice among all currencies, those of the scenario first in its
// list.
func (b forms) currencyField(s *scenario.Scenario, to Binding) *Field {
	f := b.choice(kit.NumberWidth, AllCurrencies, to)
	f.Input.(*kit.Picker).First = CurrenciesOf(s)
	return f
}

// AllCurrencies are the codes to choose from, in alphabetical order, so that stepping
// through them does not change the order.
var AllCurrencies = func() (list []kit.Option) {
	for _, c := range money.Codes() {
		list = append(list, kit.Option{Value: c, Label: c, Also: money.Name(c)})
	}
	return list
}()

// CurrenciesOf are the codes in use in the scenario.
func CurrenciesOf(s *scenario.Scenario) []string {
	list := []string{s.Home}
	for _, r := range s.Rates {
		list = append(list, r.One, r.In)
	}
	for _, o := range s.Offers {
		list = append(list, o.Currency)
	}
	slices.Sort(list[1:])
	return slices.Compact(list)
}
