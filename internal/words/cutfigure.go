package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// Cutting is what is said of a reel cut into cassettes of other exposures.
type Cutting struct {
	voice
	c     *compare.Comparison
	name  string
	own   int // exposures in a cassette as the scenario has it; 0 for no reel that is computed
	sizes []compare.CutSize
}

// CuttingOf speaks about the cut sizes of a reel of a comparison.
func CuttingOf(c *compare.Comparison, offer string, sizes []compare.CutSize, l money.Locale) Cutting {
	k := Cutting{voice: voiceOf(c, l), c: c, name: offer, sizes: sizes}
	if o := c.Find(offer); o != nil && o.Yield.Cut != nil {
		k.own = o.Yield.Cut.Reel.Exposures
	}
	return k
}

// CutCaution stands beside the sizes: the cheapest is no advice.
const CutCaution = "This is cost alone. How many exposures you like to finish before you develop is yours to say, " +
	"and more than 36 not every camera, tank and sleeve takes."

// CutsTitle heads the tables of cut sizes.
const CutsTitle = "The reel cut into rolls of other lengths"

// What stands in the figure of cut sizes.
const (
	LeastCost    = "costs least"
	CutLeft      = "left over"
	CutRolls     = "rolls"
	CutExposures = "exposures"
)

// Title is the finding, without a full stop.
func (k Cutting) Title() string {
	best, own := k.best(), k.Own()
	switch {
	case k.c.Find(k.name) == nil:
		return notComputedTitle(k.c, k.name)
	case best == nil:
		return "No other cut of a reel to compare"
	case own == nil:
		return fmt.Sprintf("%s of %d cost least: %s", k.rollsAmong(), best.Exposures, k.cost(best))
	case k.IsOwn(best):
		return fmt.Sprintf("%s of %d, as today, cost least: %s", k.rollsAmong(), best.Exposures, k.cost(best))
	case k.Roll(best) == k.Roll(own): // to the last digit said
		return fmt.Sprintf("Rolls of %d and of %d, as today, cost about the same: %s", best.Exposures, own.Exposures, k.cost(best))
	}
	return fmt.Sprintf("%s of %d cost least: %s, of %d as today %s", k.rollsAmong(), best.Exposures, k.amount(best.TotalPerRoll), own.Exposures, k.Roll(own))
}

// rollsAmong begins what is said of the cheapest: "Rolls", or "Up to 36 exposures, rolls"
// where longer ones cost still less.
func (k Cutting) rollsAmong() string {
	if among := k.among(); among > 0 {
		return fmt.Sprintf("Up to %s, rolls", k.exposures(among))
	}
	return "Rolls"
}

// among is up to how many exposures the cheapest is looked for, where one beyond costs less
// still; 0 where none does.
func (k Cutting) among() int {
	best := k.best()
	if best == nil {
		return 0
	}
	for i := range k.sizes {
		if k.sizes[i].TotalPerRoll.Less(best.TotalPerRoll) {
			return compare.MostCutFor(k.own)
		}
	}
	return 0
}

// least marks the cheapest: "costs least", "costs least up to 36".
func (k Cutting) least() string {
	if among := k.among(); among > 0 {
		return fmt.Sprintf("%s up to %d", LeastCost, among)
	}
	return LeastCost
}

// cost is what a standard roll costs: "EUR 14.27 for 36 exposures".
func (k Cutting) cost(size *compare.CutSize) string {
	return k.amount(size.TotalPerRoll) + " for " + k.exposures(k.s.RollExposures)
}

func (k Cutting) exposures(n int) string { return k.counted(exact.Int(int64(n)), "exposure") }

func (k Cutting) best() *compare.CutSize {
	for i := range k.sizes {
		if k.sizes[i].Best {
			return &k.sizes[i]
		}
	}
	return nil
}

// Own is the size that the reel is cut to as the scenario has it, nil where it is not
// among them.
func (k Cutting) Own() *compare.CutSize {
	for i := range k.sizes {
		if k.IsOwn(&k.sizes[i]) {
			return &k.sizes[i]
		}
	}
	return nil
}

// IsOwn says whether a size is that of the scenario.
func (k Cutting) IsOwn(size *compare.CutSize) bool { return size.Exposures == k.own }

// Under is the line under the title: what is drawn.
func (k Cutting) Under() string {
	return fmt.Sprintf("%s for %d exposures from %s, by the exposures in a cassette; below, film left over at the end of it",
		k.shown(), k.s.RollExposures, Called(k.s, k.name))
}

// Number, Roll, Rolls and Left are a size's exposures, what a standard roll costs, how many
// cassettes come of a reel, and the metres left over.
func (k Cutting) Number(size *compare.CutSize) string { return fmt.Sprint(size.Exposures) }
func (k Cutting) Roll(size *compare.CutSize) string   { return k.home(size.TotalPerRoll) }
func (k Cutting) Rolls(size *compare.CutSize) string {
	return k.l.Number(exact.Int(int64(size.Yield.Cassettes)), 0)
}
func (k Cutting) Left(size *compare.CutSize) string {
	return k.l.Number(metresLeft(size), 2)
}

// metresLeft is what is left over of a cut, in metres.
func metresLeft(size *compare.CutSize) exact.Fraction {
	return size.Yield.Cut.LeftOver.Quo(exact.Int(1000))
}

// Metres is the film that a size leaves over, for drawing.
func (k Cutting) Metres(size *compare.CutSize) float64 { return metresLeft(size).Float() }

// Marks are what sets a size apart: "costs least up to 36", "today", both, or neither.
func (k Cutting) Marks(size *compare.CutSize) string {
	switch {
	case size.Best && k.IsOwn(size):
		return TodaysSize + ", " + k.least()
	case size.Best:
		return k.least()
	case k.IsOwn(size):
		return TodaysSize
	}
	return ""
}

// Tag is what stands over a size that is set apart: "35 costs least up to 36: 14.27"; "" over the
// others.
func (k Cutting) Tag(size *compare.CutSize) string {
	switch {
	case size.Best && k.IsOwn(size):
		return fmt.Sprintf("%d, %s, %s: %s", size.Exposures, TodaysSize, k.least(), k.Roll(size))
	case size.Best:
		return fmt.Sprintf("%d %s: %s", size.Exposures, k.least(), k.Roll(size))
	case k.IsOwn(size):
		return fmt.Sprintf("%d %s: %s", size.Exposures, TodaysSize, k.Roll(size))
	}
	return ""
}

// pieces are the rolls that come of a reel: "18 rolls of 35 and one of 24".
func (k Cutting) pieces(size *compare.CutSize) string {
	cut := size.Yield.Cut
	text := fmt.Sprintf("%s of %d", k.counted(exact.Int(cut.FullRolls), "roll"), size.Exposures)
	switch {
	case cut.ShortRollExposures == 0:
		return text
	case cut.FullRolls == 0:
		return fmt.Sprintf("one roll of %d", cut.ShortRollExposures)
	}
	return fmt.Sprintf("%s and one of %d", text, cut.ShortRollExposures)
}

// Readout says what a size comes to.
func (k Cutting) Readout(size *compare.CutSize) string {
	text := fmt.Sprintf("%s: %s, %s m left over, %s", k.exposures(size.Exposures), k.pieces(size), k.Left(size), k.cost(size))
	if marks := k.Marks(size); marks != "" {
		text += "; " + marks
	}
	return text
}

// Header heads the table of the sizes.
func (k Cutting) Header() []string {
	return []string{"exposures", "rolls", "of them short", "left over, m", fmt.Sprintf("%s for %d exposures", k.shown(), k.s.RollExposures), ""}
}

// Row is one size in the table.
func (k Cutting) Row(size *compare.CutSize) []string {
	short := ""
	if n := size.Yield.Cut.ShortRollExposures; n > 0 {
		short = fmt.Sprintf("one of %d", n)
	}
	return []string{k.Number(size), k.Rolls(size), short, k.Left(size), k.Roll(size), k.Marks(size)}
}
