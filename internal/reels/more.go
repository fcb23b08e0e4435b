package reels

import (
	"sort"

	"reelworth/internal/exact"
	"reelworth/internal/film"
)

// More is what a length of film gives at a reel's own exposures.
type More struct {
	Exposures int            // of a full cassette
	Cassettes int64          // full ones
	ShortRoll int            // exposures of one more; 0 for none
	LeftOver  exact.Fraction // mm, beyond the last
}

// exposures is how many the film gives.
func (m More) exposures() exact.Fraction {
	return exact.Int(m.Cassettes * int64(m.Exposures)).Add(exact.Int(int64(m.ShortRoll)))
}

// Rolls is how many cassettes the film fills, the short one included.
func (m More) Rolls() int64 {
	if m.ShortRoll > 0 {
		return m.Cassettes + 1
	}
	return m.Cassettes
}

// moreOf divides left millimetres into full cassettes and the longest short roll that is
// worth loading.
func moreOf(h *film.InHand, left exact.Fraction) More {
	m := More{Exposures: h.Exposures}
	m.Cassettes, m.LeftOver = fill(left, h.Wound(h.Exposures))
	// Film wound never gets less with the exposures, so the first that does not fit is
	// one beyond the most that does.
	short := sort.Search(h.Exposures-1, func(i int) bool { return m.LeftOver.Less(h.Wound(i + 1)) })
	if short >= max(h.ShortestRollWanted, 1) {
		m.ShortRoll, m.LeftOver = short, m.LeftOver.Sub(h.Wound(short))
	}
	return m
}

// fill is how many cassettes of a length fit, and what is left of the film.
func fill(film, each exact.Fraction) (n int64, left exact.Fraction) {
	n, _ = film.Quo(each).Floor().Int64()
	return n, film.Sub(exact.Int(n).Mul(each))
}
