package reels

import (
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/scenario"
)

// Standing is where a reel in hand stands. With a Fault nothing but Name is filled in.
type Standing struct {
	Name  string
	Fault *scenario.Fault

	Left exact.Fraction // mm, for cassettes
	Used exact.Fraction // mm
	// Wasted is what neither was used nor is left, in mm: the end waste, as far as the
	// loads did not take it, and what the start will take while there is no load.
	Wasted exact.Fraction
	More   More // what the rest gives

	Loaded, Developed    int // cassettes
	Undeveloped          int // cassettes
	UndevelopedExposures int

	Spoiled Maybe          // percent of what was developed; none without results
	Good    exact.Fraction // exposures in all, those to come included

	// What film costs per roll of RollExposures, in Currency: as it turns out, and as it
	// was planned. None where no exposure is good.
	FilmPerRoll, Planned Maybe
	Currency             string

	Warnings []Warning
}

// RollExposures is the standard roll that film per roll is told for.
const RollExposures = 36

// TellingCassettes is how many cassettes have to be developed before what happened to
// them is taken for what will happen.
const TellingCassettes = 3

// Maybe is a figure that there may be none of.
type Maybe struct {
	exact.Fraction
	Known bool
}

// StandAll are where reels in hand stand; faults are those of their file.
func StandAll(list []scenario.InHand, faults []scenario.Fault) []Standing {
	all := make([]Standing, len(list))
	for i := range list {
		all[i] = Stand(&list[i], scenario.FaultsOfReel(faults, i))
	}
	return all
}

func known(f exact.Fraction) Maybe { return Maybe{f, true} }

// Warning is something worth knowing about a reel.
type Warning struct {
	Code WarningCode
	By   exact.Fraction // mm
}

// WarningCode names a kind of warning.
type WarningCode string

// The kinds of warnings.
const (
	// WarnEndWaste: the loads went By millimetres into the end waste.
	WarnEndWaste WarningCode = "end-waste-used"
	// WarnRecount: the loads since the latest recount took By millimetres more than it left.
	WarnRecount WarningCode = "recount-overdrawn"
)

// Stand computes where a reel stands. faults are those of this reel; the first of them
// is its fault. A reel without faults can be computed.
func Stand(r *scenario.InHand, faults []scenario.Fault) Standing {
	s := Standing{Name: r.Name}
	if len(faults) > 0 {
		s.Fault = &faults[0]
		return s
	}
	h := r.Film()
	rest, err := h.Remaining()
	if err != nil {
		// The checks of the scenario find the same, with its place: no caller that asked
		// them comes here.
		s.Fault = &scenario.Fault{}
		return s
	}
	s.Left, s.Used, s.Currency = rest.Left, rest.Used, r.Currency
	s.Wasted = h.Length.Sub(s.Used).Sub(s.Left)
	s.More = moreOf(&h, rest.Left)
	s.Warnings = warningsOf(rest)
	s.count(r)
	spoiled := exact.FromDecimal(r.SpoiledPercent)
	paid := exact.FromDecimal(r.Paid)
	s.Planned = perRoll(paid, goodOf(untouched(h).exposures(), spoiled))
	if s.Spoiled.Known && s.Developed >= TellingCassettes {
		spoiled = s.Spoiled.Fraction
	}
	s.Good = s.Good.Add(goodOf(exact.Int(int64(s.UndevelopedExposures)).Add(s.More.exposures()), spoiled))
	s.FilmPerRoll = perRoll(paid, s.Good)
	return s
}

// untouched is what the reel gives as it was bought.
func untouched(h film.InHand) More {
	h.Loads, h.Recounts = nil, nil
	rest, _ := h.Remaining()
	return moreOf(&h, rest.Left)
}

// goodOf is what is left of exposures when some percent are spoiled.
func goodOf(exposures, spoiled exact.Fraction) exact.Fraction {
	return exposures.Mul(exact.Int(100).Sub(spoiled).Percent())
}

func perRoll(paid, good exact.Fraction) Maybe {
	if good.IsZero() {
		return Maybe{}
	}
	return known(paid.Quo(good.Quo(exact.Int(RollExposures))))
}

func warningsOf(rest film.Remaining) []Warning {
	if rest.Short.IsZero() {
		return nil
	}
	code := WarnEndWaste
	if rest.Recounted {
		code = WarnRecount
	}
	return []Warning{{code, rest.Short}}
}

// count takes stock of the log: cassettes, what is undeveloped, what was spoiled, and
// the good exposures so far.
func (s *Standing) count(r *scenario.InHand) {
	loaded, developed := 0, 0 // exposures
	for _, l := range r.Loads {
		s.Loaded += l.Cassettes
		loaded += l.Cassettes * l.Exposures
	}
	good, kept := 0, 0
	for _, x := range r.Results {
		s.Developed += x.Cassettes
		developed += x.Cassettes * x.Exposures
		good += x.Good
		kept += x.Good + x.LostOtherwise
	}
	s.Undeveloped = s.Loaded - s.Developed
	s.UndevelopedExposures = loaded - developed
	s.Good = exact.Int(int64(good))
	if developed > 0 {
		share := exact.Ratio(int64(developed-kept), int64(developed)).Mul(exact.Int(100))
		s.Spoiled = known(exact.Max(share, exact.Fraction{}))
	}
}
