package reels

import (
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// The functions below make a changed reel of a reel, and leave the one they were given
// alone.

// WithLoad adds a load to the log.
func WithLoad(r scenario.InHand, l scenario.Load) scenario.InHand {
	r.Loads = append(slices.Clip(r.Loads), l)
	return r
}

// WithCassette logs one cassette: in the day's last load where that is of the same
// exposures and counts, else as a load of its own.
func WithCassette(r scenario.InHand, day scenario.Date, exposures int, counts scenario.MaybeWhole) scenario.InHand {
	if n := len(r.Loads) - 1; n >= 0 {
		if l := r.Loads[n]; l.Date == day && l.Exposures == exposures && l.Counts == counts && l.Cassettes < MostCassettes {
			r.Loads = slices.Clone(r.Loads)
			r.Loads[n].Cassettes++
			return r
		}
	}
	return WithLoad(r, scenario.Load{Date: day, Cassettes: 1, Exposures: exposures, Counts: counts})
}

// MostCassettes is how many cassettes one row of the log holds.
const MostCassettes = 999

// WithResult adds a result to the log.
func WithResult(r scenario.InHand, x scenario.Result) scenario.InHand {
	r.Results = append(slices.Clip(r.Results), x)
	return r
}

// WithRecount adds what was measured.
func WithRecount(r scenario.InHand, c scenario.Recount) scenario.InHand {
	r.Recounts = append(slices.Clip(r.Recounts), c)
	return r
}

// WithoutLoad, WithoutResult and WithoutRecount take a row out of the log.
func WithoutLoad(r scenario.InHand, row int) scenario.InHand {
	r.Loads = without(r.Loads, row)
	return r
}

// WithoutResult is as WithoutLoad.
func WithoutResult(r scenario.InHand, row int) scenario.InHand {
	r.Results = without(r.Results, row)
	return r
}

// WithoutRecount is as WithoutLoad.
func WithoutRecount(r scenario.InHand, row int) scenario.InHand {
	r.Recounts = without(r.Recounts, row)
	return r
}

// ChangedLoad, ChangedResult and ChangedRecount put another row in the place of one.
func ChangedLoad(r scenario.InHand, row int, l scenario.Load) scenario.InHand {
	r.Loads = with(r.Loads, row, l)
	return r
}

// ChangedResult is as ChangedLoad.
func ChangedResult(r scenario.InHand, row int, x scenario.Result) scenario.InHand {
	r.Results = with(r.Results, row, x)
	return r
}

// ChangedRecount is as ChangedLoad.
func ChangedRecount(r scenario.InHand, row int, c scenario.Recount) scenario.InHand {
	r.Recounts = with(r.Recounts, row, c)
	return r
}

func with[T any](rows []T, row int, v T) []T {
	out := slices.Clone(rows)
	out[row] = v
	return out
}

// NextResult is the likeliest result to come: one cassette of the earliest load that is
// undeveloped, all of it good. ok is false where nothing is.
func NextResult(r *scenario.InHand, day scenario.Date) (x scenario.Result, ok bool) {
	developed := map[int]int{}
	for _, x := range r.Results {
		developed[x.Exposures] += x.Cassettes
	}
	for _, l := range byDate(r.Loads) {
		if developed[l.Exposures] -= l.Cassettes; developed[l.Exposures] < 0 {
			return scenario.Result{Date: day, Cassettes: 1, Exposures: l.Exposures, Good: l.Exposures}, true
		}
	}
	return x, false
}

func without[T any](rows []T, row int) []T {
	out := slices.Delete(slices.Clone(rows), row, row+1)
	if len(out) == 0 {
		return nil
	}
	return out
}

// WithPlan logs a plan as loaded on one day, with the counts that it says.
func WithPlan(r scenario.InHand, p Plan, day scenario.Date) scenario.InHand {
	for _, w := range p.Wishes {
		for left := w.Cassettes; left > 0; left -= MostCassettes {
			r = WithLoad(r, scenario.Load{
				Date: day, Cassettes: int(min(left, MostCassettes)), Exposures: w.Exposures,
				Counts: scenario.MaybeWhole{Int: int(w.Counts), Set: w.Counted},
			})
		}
	}
	return r
}

// byDate are loads in the order they were made: of one day, as they were written down.
func byDate(loads []scenario.Load) []scenario.Load {
	loads = slices.Clone(loads)
	slices.SortStableFunc(loads, func(a, b scenario.Load) int {
		switch {
		case a.Date.Before(b.Date):
			return -1
		case b.Date.Before(a.Date):
			return 1
		}
		return 0
	})
	return loads
}

// Outcome is a reel as it was planned, and as it turns out.
type Outcome struct {
	Spoiled, PlannedSpoiled         Maybe          // percent
	Rolls, PlannedRolls             exact.Fraction // good standard rolls in all
	FilmPerRoll, PlannedFilmPerRoll Maybe
	// Departs says that enough is developed, and that it differs from the plan by enough,
	// to plan with it from now on.
	Departs bool
}

// departure is by how many points the spoiled percent has to differ to be worth saying.
var departure = exact.Int(2)

// OutcomeOf compares a reel with its plan. It has none where the reel has a fault.
func OutcomeOf(r *scenario.InHand, s *Standing) (o Outcome, ok bool) {
	if s.Fault != nil {
		return o, false
	}
	planned := exact.FromDecimal(r.SpoiledPercent)
	h := r.Film()
	roll := exact.Int(RollExposures)
	o = Outcome{
		Spoiled: s.Spoiled, PlannedSpoiled: known(planned),
		Rolls: s.Good.Quo(roll), PlannedRolls: goodOf(untouched(h).exposures(), planned).Quo(roll),
		FilmPerRoll: s.FilmPerRoll, PlannedFilmPerRoll: s.Planned,
	}
	o.Departs = s.Spoiled.Known && s.Developed >= TellingCassettes && !s.Spoiled.Sub(planned).Abs().Less(departure)
	return o, true
}
