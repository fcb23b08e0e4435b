package words

import (
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/film"
)

// Two cuts cost about the same when they cost the same to the last digit that is said, not
// when their difference rounds to nothing.
func TestCutsThatCostAboutTheSame(t *testing.T) {
	c := year()
	reel := ""
	for _, o := range c.Scenario.Offers {
		if o.Reel != nil {
			reel = o.Name
		}
	}
	c.Find(reel).Yield.Cut = &film.Cut{Reel: film.Reel{Exposures: 36}}
	for _, test := range []struct{ best, own, want string }{
		{"10.474", "10.478", "Rolls of 35 cost least: EUR 10.47, of 36 as today 10.48"},
		{"10.466", "10.474", "Rolls of 35 and of 36, as today, cost about the same: EUR 10.47 for 36 exposures"},
		{"10.47", "10.47", "Rolls of 35 and of 36, as today, cost about the same: EUR 10.47 for 36 exposures"},
	} {
		sizes := []compare.CutSize{{Exposures: 35, TotalPerRoll: num(test.best), Best: true}, {Exposures: 36, TotalPerRoll: num(test.own)}}
		same(t, test.best+" and "+test.own, CuttingOf(c, reel, sizes, "en").Title(), test.want)
	}
}
