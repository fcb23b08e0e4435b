package reels

import "reelworth/internal/scenario"

// Label is what stands on one cassette.
type Label struct {
	Name      string
	Number    int // running, from 1
	Of        int // as planned: those loaded and those the rest gives
	Speed     scenario.MaybeWhole
	Exposures int
	Loaded    scenario.Date // unset for one that is not loaded yet
	UseBy     scenario.Date // unset where the film keeps for good, as far as is known
	Process   string
	Note      string
	Remjet    bool
}

// Labels are those of a reel's cassettes: the loaded ones by date and, numbered on, those
// that the rest gives. A reel with a fault has none.
func Labels(r *scenario.InHand, s *Standing) (loaded, toCome []Label) {
	if s.Fault != nil {
		return nil, nil
	}
	of := s.Loaded + int(s.More.Rolls())
	label := func(exposures int, date scenario.Date) Label {
		return Label{
			Name: r.Name, Number: len(loaded) + len(toCome) + 1, Of: of, Speed: r.Speed, Exposures: exposures,
			Loaded: date, UseBy: r.KeepsUntil, Process: r.Process, Note: r.LabelNote, Remjet: r.Remjet,
		}
	}
	for _, l := range byDate(r.Loads) {
		for range l.Cassettes {
			loaded = append(loaded, label(l.Exposures, l.Date))
		}
	}
	for range min(s.More.Cassettes, MostLabels) {
		toCome = append(toCome, label(s.More.Exposures, scenario.Date{}))
	}
	if s.More.ShortRoll > 0 && len(toCome) < MostLabels {
		toCome = append(toCome, label(s.More.ShortRoll, scenario.Date{}))
	}
	return loaded, toCome
}

// MostLabels is how many labels of cassettes to come are made at most; a reel of more is
// a slip of the pen.
const MostLabels = 1000
