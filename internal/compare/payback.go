package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// mostPaybackMonths is as far as a month is named: 100 years.
const mostPaybackMonths = 1200

// MonthShot is the month, from 1, by whose end so many rolls have been shot at the
// scenario's pace, its twelve months coming round again and again; 0 where that takes
// longer than anybody shoots.
func MonthShot(s *scenario.Scenario, rolls exact.Fraction) int {
	var shot exact.Fraction
	for m := range mostPaybackMonths {
		shot = shot.Add(exact.FromDecimal(s.Shooting.RollsPerMonth[m%12]))
		if shot.Sign() > 0 && !shot.Less(rolls) {
			return m + 1
		}
	}
	return 0
}
