package sidebyside

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/parallel"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// Source is a file whose scenarios are set beside others.
type Source struct {
	Name   string // of the file, as entries carry it
	File   scenario.File
	Faults []scenario.Fault
	Wrong  string // why the file itself cannot be read, worded; then it has nothing else
}

// Question is what is the same for all that stand side by side.
type Question struct {
	Today    scenario.Date
	Currency string      // the common one, "" for none
	Rates    *rates.File // published ones, nil for none
	// Word says a fault as the entry is to carry it.
	Word func(Source, scenario.Fault) string
	// Empty is what is said of a file without a scenario and without a fault.
	Empty string
}

// Of has an entry for each scenario of a file, in its order; a file without one has one
// entry, which says why. It works on so many processors. Its only error is ctx's.
func (q Question) Of(ctx context.Context, workers int, src Source) ([]Entry, error) {
	scenarios := src.File.Scenarios
	if len(scenarios) == 0 {
		return []Entry{{File: src.Name, Fault: q.nothing(src)}}, nil
	}
	list := make([]Entry, len(scenarios))
	err := parallel.Each(workers, len(list), func(i int) (err error) {
		list[i], err = q.entry(ctx, src, i)
		list[i].File = src.Name
		return err
	})
	return list, err
}

// nothing is why there is no scenario of a file.
func (q Question) nothing(src Source) string {
	switch {
	case src.Wrong != "":
		return src.Wrong
	case len(src.Faults) > 0:
		return q.Word(src, src.Faults[0])
	}
	return q.Empty
}

// entry is that of the scenario at a place.
func (q Question) entry(ctx context.Context, src Source, place int) (Entry, error) {
	s, faults := src.File.Scenarios[place], src.FaultsOf(place)
	if f := fatal(faults); f != nil {
		return Entry{Scenario: s.Name, Fault: q.Word(src, *f)}, nil
	}
	c := compare.Compare(s, faults, q.Today)
	return Of(ctx, &c, faults, q.Currency, q.Rates)
}

// FaultsOf are the faults that matter to the scenario at a place: its own and those of the
// whole file.
func (src Source) FaultsOf(place int) (list []scenario.Fault) {
	for _, f := range src.Faults {
		if f.Place.Scenario == place || f.Place.Scenario < 0 && f.Place.Part != scenario.PartInHand {
			list = append(list, f)
		}
	}
	return list
}

// fatal is the first fault that leaves nothing of a scenario to compute, nil for none.
func fatal(faults []scenario.Fault) *scenario.Fault {
	for i := range faults {
		if p := faults[i].Place.Part; p == scenario.PartFile || p == scenario.PartWhole {
			return &faults[i]
		}
	}
	return nil
}
