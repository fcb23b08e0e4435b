package compare

import "reelworth/internal/exact"

// monthsValued is how long after the scenario's months what is left still counts, if
// it would be used by then.
const monthsValued = 24

// worth is what is left of the supply's one batch: the batch's cost is borne by what was
// used of it and what the months after the scenario would still use before it is too old,
// so that what is never used makes the rest dearer. need is the use in each month of the
// scenario's year, from is the first month after the scenario. The supply stays as it is.
func (s *supply) worth(need *[12]exact.Fraction, from int) exact.Fraction {
	if len(s.batches) == 0 {
		return exact.Fraction{}
	}
	last := s.batches[0]
	rest := supply{keeps: s.keeps, batches: []batch{last}}
	var willUse exact.Fraction
	for m := from; m < from+monthsValued && len(rest.batches) > 0; m++ {
		rest.discard(m)
		willUse = willUse.Add(rest.use(need[m%len(need)]))
	}
	if willUse.IsZero() {
		return exact.Fraction{}
	}
	return last.cost.Mul(willUse.Quo(last.used.Add(willUse)))
}

// lastsLong says whether the supply is more than the months after the scenario use.
func (s *supply) lastsLong(need *[12]exact.Fraction) bool {
	const years = monthsValued / len(need)
	return exact.Sum(need[:]...).Mul(exact.Int(int64(years))).Less(s.left())
}
