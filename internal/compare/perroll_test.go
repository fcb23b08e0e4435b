package compare

import (
	"testing"

	"reelworth/internal/scenario"
)

// Half a roll a month on a reel of 18 that keeps 18 months: 9 rolls are shot, half of
// it is used. Loading the reel takes 18 minutes, so 2 for each roll that is shot; a
// cassette takes 4 to load and 30 to develop: 36 minutes at 6 an hour are 3.60.
func TestRollsThatAreNeverShotCostFilmAndTimeAllTheSame(t *testing.T) {
	s := everythingReel(12)
	s.Shooting.RollsPerMonth = rolls("0.5")
	s.Offers[0].KeepsMonths = maybe("18")
	o := Compare(s, nil, scenario.Date{}).Offers[0]
	sameFigure(t, "used share", o.UsedShare, "0.5")
	sameFigure(t, "film", o.PerRoll.Film, "10")
	sameFigure(t, "time", o.PerRoll.Time, "3.60")
	// 1.25/2 + 0.151
	sameFigure(t, "loading", o.PerRoll.Loading, "0.776")
	// (40.005 − 20.004 + 35 − 10)/100; the bag is owned
	sameFigure(t, "equipment", o.PerRoll.Equipment, "0.45001")
	sameFigure(t, "an exposure", o.PerExposure.Mul(frac("36")), o.PerRoll.Total.String())
}

// A set develops 8 cassettes and keeps 2 months, at least the one it is mixed for.
func TestChemistryGoesAsFarAsItKeeps(t *testing.T) {
	for _, c := range []struct{ rolls, developing string }{
		{"5", "4.155"},    // 30.04/8 + 0.40
		{"4", "4.155"},    // exactly 8 in 2 months
		{"2", "7.91"},     // 30.04/4 + 0.40
		{"0.25", "30.44"}, // half a cassette in 2 months counts as one
		{"0", "4.155"},    // nothing is shot, so nothing goes off
	} {
		s := everythingReel(12)
		s.Shooting.RollsPerMonth = rolls(c.rolls)
		o := Compare(s, nil, scenario.Date{}).Offers[0]
		sameFigure(t, "developing at "+c.rolls+" rolls a month", o.PerRoll.Developing, c.developing)
	}
}

// Prices are for rolls of 36, whatever is on a cassette: a pack of 2 rolls of 24 at
// 12.00, developed at 9 each, holds 4/3 standard rolls.
func TestRollsOfAnotherLengthAreCountedInStandardRolls(t *testing.T) {
	pack := plainBoxed("pack", "12")
	pack.Boxed, pack.Developing = &scenario.Boxed{RollsPerPack: 2, Exposures: 24}, "lab"
	s := plain("1", 12, pack)
	s.Developing = []scenario.Developing{{Name: "lab", Way: scenario.Lab, Price: dec("9"), MinutesPerRoll: dec("60")}}
	s.Loading.HourlyValue = dec("10")
	o := Compare(s, nil, scenario.Date{}).Offers[0]
	sameFigure(t, "film", o.PerRoll.Film, "9")
	sameFigure(t, "developing", o.PerRoll.Developing, "13.50")
	sameFigure(t, "time at a lab", o.PerRoll.Time, "0")
}
