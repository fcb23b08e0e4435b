package compare

import (
	"slices"

	"reelworth/internal/exact"
)

// monthsValued is how long after the scenario's months what is left still counts, if
// it would be used by then.
const monthsValued = 24

// worth is what the supply had cost, as far as the months after the scenario would
// use it before it is too old. need is the use in each month of the calendar, from is
// the first month after the scenario. The supply stays as it is.
func (s *supply) worth(need *[12]exact.Fraction, from int) (value exact.Fraction) {
	rest := supply{keeps: s.keeps, batches: slices.Clone(s.batches)}
	for m := from; m < from+monthsValued && len(rest.batches) > 0; m++ {
		rest.discard(m)
		value = value.Add(rest.use(need[m%len(need)]))
	}
	return value
}

// lastsLong says whether the supply is more than the months after the scenario use.
func (s *supply) lastsLong(need *[12]exact.Fraction) bool {
	const years = monthsValued / len(need)
	return exact.Sum(need[:]...).Mul(exact.Int(int64(years))).Less(s.left())
}
