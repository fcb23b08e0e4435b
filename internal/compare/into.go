package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Into is how much of a currency one of the home currency is, by the scenario's own
// quotes, exactly. faults are those of Compare. The fault says why there is no way.
func Into(s scenario.Scenario, faults []scenario.Fault, currency string) (factor exact.Fraction, fault *Fault) {
	g := newGatherer(&s, faults)
	route, fault := g.route(s.Home, currency)
	if fault != nil {
		return factor, fault
	}
	return route.Convert(exact.Int(1)), nil
}
