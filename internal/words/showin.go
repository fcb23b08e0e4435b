package words

import "fmt"

// The question which currency figures are shown in.
const (
	ShowInTitle    = "In another currency"
	ShowInCurrency = "Show in"
	ShowInHow      = "Every amount of the answer is shown in it, by the scenario's own rates. What is worth it does not change."
	ShowInDo       = "Show"
)

// ShowInHome shows figures in the home currency again.
func ShowInHome(home string) string { return "As it is, in " + home }

// NoWayTo says that a scenario's rates do not lead from home to a currency, and what would
// do.
func NoWayTo(home, currency string) string {
	return fmt.Sprintf("No rate between %s and %s in this scenario; add one under Exchange rates.", home, currency)
}

// NotShownIn says that figures stay in the home currency, and what would do.
func NotShownIn(home, currency string) string {
	return fmt.Sprintf("Shown in %s, not in %s: no rate between the two in this scenario; add one under Exchange rates.", home, currency)
}

// LinkAddRate leads to where a rate is added.
const LinkAddRate = "Add the rate"
