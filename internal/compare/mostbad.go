package compare

import (
	"sort"

	"reelworth/internal/exact"
)

// MostBad is how much of a deal may turn out bad before a roll of it costs more than of
// what it is compared with. Bad film is developed and paid for all the same.
type MostBad struct {
	Rolls, Of int            // of the rolls of boxed film; 0 of 0 for a reel
	Percent   exact.Fraction // of a reel, a whole number of tenths; of boxed film, Rolls of Of
}

// mostBad looks for the most that may be bad; nil where a roll costs more than most with
// none bad. The fewer are good, the dearer is each: film too old in time and chemistry
// that is spent by age do not get cheaper with it, so that half of what is left can be
// ruled out at each step.
func mostBad(t *terms, o *Order, most exact.Fraction) *MostBad {
	parts := 1000
	if !t.reel {
		parts = t.units * t.yield.Cassettes
	}
	tooMany := sort.Search(parts, func(bad int) bool {
		worse := *t
		worse.yield.Good = t.yield.goodAt(exact.Ratio(int64(bad), int64(parts)).Mul(exact.Int(100)))
		return most.Less(worse.perRoll(o).Total)
	})
	if tooMany == 0 {
		return nil
	}
	m := MostBad{Percent: exact.Ratio(int64(tooMany-1), int64(parts)).Mul(exact.Int(100))}
	if !t.reel {
		m.Rolls, m.Of = tooMany-1, parts
	}
	return &m
}
