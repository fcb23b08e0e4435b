package form

import (
	"slices"

	"reelworth/internal/scenario"
)

// pattern remembers which months a year's figure was spread over last, so that a figure
// typed again brings the same months back: few rolls, rounded, no longer show the pattern.
type pattern struct{ months scenario.Shooting }

// spread spreads so many rolls over the months that those of now came of.
func (p *pattern) spread(now scenario.Shooting, rolls scenario.Decimal) (scenario.Shooting, error) {
	if again, err := p.months.Spread(now.RollsAYear()); err != nil || !sameMonths(again, now) {
		p.months = now // they were typed, or are another scenario's
	}
	next, err := p.months.Spread(rolls)
	next.Extra = now.Extra
	return next, err
}

func sameMonths(a, b scenario.Shooting) bool {
	return slices.EqualFunc(a.RollsPerMonth[:], b.RollsPerMonth[:], scenario.Decimal.Equal)
}
