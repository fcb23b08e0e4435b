package stock

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/desk/answer"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
)

// Sizes are what other cuts of a whole reel come to.
type Sizes struct {
	Offer   string // it is bought as
	Picture answer.Picture
}

// sizesOf are the cut sizes of the offer that the subject is, or was bought as; nil where
// the scenario has none that can be computed.
func sizesOf(ctx context.Context, j Job) *Sizes {
	name := offerOf(j)
	if name == "" {
		return nil
	}
	c := compare.Compare(j.Scenario, scenario.Check(j.Scenario), j.Today)
	sizes, err := compare.CutSizesOf(ctx, &c, name)
	if err != nil || len(sizes) == 0 {
		return nil
	}
	return &Sizes{name, answer.Draw(j.Cuts, func(w, h float64) *figure.Drawing {
		return figure.CutSizes(&c, name, sizes, w, h, j.Style)
	})}
}

// offerOf is the reel offer of the scenario that the subject is or was bought as, "" for
// none.
func offerOf(j Job) string {
	if j.Of.Thought {
		return j.Scenario.Offers[j.Of.Offer].Name
	}
	for i := range j.Scenario.Offers {
		if o := &j.Scenario.Offers[i]; o.Name == j.Reels[j.Of.Reel].Offer && o.Kind == scenario.KindReel {
			return o.Name
		}
	}
	return ""
}
