package reels

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/scenario"
)

// Experience is what the reels in hand teach about the offer they were bought as.
type Experience struct {
	Offer          string
	SpoiledPercent scenario.Decimal
	OnHand         scenario.Decimal // reels, two places
}

// takenPlaces is how fine figures are taken over.
const takenPlaces = 2

// mostSpoiled is the greatest percent an offer can have, at takenPlaces.
var mostSpoiled = decimal.New(9999, -2)

// Learn is what reel r teaches about the offer of its name in s: what was spoiled of it,
// and how much of all the offer's reels is still there. all are the reels in hand, and
// standings theirs. It is false where too little is developed, where that is as planned,
// or where the scenario has no such reel.
func Learn(s *scenario.Scenario, r int, all []scenario.InHand, standings []Standing) (e Experience, ok bool) {
	o, ok := OutcomeOf(&all[r], &standings[r])
	offer := offerOf(s, all[r].Offer)
	if !ok || !o.Departs || offer == nil {
		return e, false
	}
	cut, err := film.Divide(offer.Reel.Cutting())
	if err != nil {
		return e, false
	}
	there := exact.Fraction{}
	for i := range all {
		if st := &standings[i]; all[i].Offer == offer.Name && st.Fault == nil {
			there = there.Add(st.Left.Quo(cut.Usable)).Add(exact.Ratio(int64(st.UndevelopedExposures), cut.Exposures()))
		}
	}
	return Experience{
		Offer:          offer.Name,
		SpoiledPercent: decimal.Min(taken(o.Spoiled.Fraction), mostSpoiled),
		OnHand:         taken(there),
	}, true
}

// taken is a figure as it is written into the scenario.
func taken(f exact.Fraction) scenario.Decimal {
	return decimal.RequireFromString(f.Text(takenPlaces))
}

// Apply takes experience over into the scenario's offer: one change, which can be undone
// as one.
func (e Experience) Apply(s scenario.Scenario) scenario.Scenario {
	s = s.Clone()
	if offer := offerOf(&s, e.Offer); offer != nil {
		offer.OnHand, offer.Reel.SpoiledPercent = e.OnHand, e.SpoiledPercent
	}
	return s
}

// offerOf is the reel offered under a name, or nil.
func offerOf(s *scenario.Scenario, name string) *scenario.Offer {
	for i := range s.Offers {
		if o := &s.Offers[i]; o.Name == name && o.Kind == scenario.KindReel && o.Reel != nil {
			return o
		}
	}
	return nil
}
