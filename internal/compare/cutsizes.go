package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// CutSize is a reel cut into cassettes of so many exposures, everything else as it is.
type CutSize struct {
	Exposures    int
	Yield        Yield          // of one reel
	TotalPerRoll exact.Fraction // as Offer.PerRoll.Total
	Best         bool
}

// The cut sizes that are told for, beside the reel's own.
const (
	fewestCut = 12
	mostCut   = 40
	// mostFitting is the most exposures that every camera, tank and sleeve takes; common
	// practice, no source.
	mostFitting = 36
)

// CutSizesOf is what other cuts of an offer's reel come to; none for an offer that is no
// reel or cannot be computed. Its only error is ctx's.
func CutSizesOf(ctx context.Context, c *Comparison, offer string) ([]CutSize, error) {
	o := c.Find(offer)
	if o == nil || o.Fault != nil || o.Kind != scenario.KindReel {
		return nil, ctx.Err()
	}
	i := c.index(o)
	outlays, err := outlaysOf(ctx, c, o)
	if err != nil {
		return nil, err
	}
	return cutSizes(ctx, &outlays[i].rounded, c.Scenario.Offers[i].Reel)
}

// cutSizes is the reel cut into cassettes of fewestCut to mostCut exposures, and its own,
// rising; sizes of which no cassette fits are left out. Its only error is ctx's.
func cutSizes(ctx context.Context, t *terms, reel *scenario.Reel) (list []CutSize, err error) {
	order := t.order(t.asking.price) // goes by no cut
	add := func(exposures int) {
		other := *reel
		other.Exposures = exposures
		cut := *t
		var fault *Fault
		if cut.yield, fault = reelYield(&other); fault == nil {
			list = append(list, CutSize{Exposures: exposures, Yield: cut.yield, TotalPerRoll: cut.perRoll(&order).Total})
		}
	}
	own := reel.Exposures
	if own < fewestCut {
		add(own)
	}
	for n := fewestCut; n <= mostCut; n++ {
		add(n)
	}
	if own > mostCut {
		add(own)
	}
	if best := bestCut(list, own); best != nil {
		best.Best = true
	}
	return list, ctx.Err()
}

// MostCutFor is the most exposures a best size may have beside a reel's own: what fits
// everywhere, or its own where that is more.
func MostCutFor(own int) int { return max(mostFitting, own) }

// bestCut is the cheapest size that fits everywhere, or up to the reel's own where that is
// more; of equals the nearest to the reel's own, then the longer. nil for none.
func bestCut(list []CutSize, own int) (best *CutSize) {
	most := MostCutFor(own)
	away := func(c *CutSize) int { return max(c.Exposures-own, own-c.Exposures) }
	for i := range list {
		c := &list[i]
		if c.Exposures > most {
			break
		}
		if best != nil {
			switch cheaper := c.TotalPerRoll.Cmp(best.TotalPerRoll); {
			case cheaper > 0, cheaper == 0 && away(c) > away(best):
				continue
			}
		}
		best = c
	}
	return best
}
