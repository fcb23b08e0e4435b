package desk

import (
	"strings"
	"time"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// Shelf is the demo with reels in hand: one half used, one as it was bought, and one with
// a long name whose loads went into its end.
func Shelf() scenario.File {
	f := scenario.Demo()
	day := func(month time.Month, day int) scenario.Date {
		return scenario.Date{Year: 2026, Month: month, Day: day}
	}
	offer := ""
	for _, o := range f.Scenarios[0].Offers {
		if o.Kind == scenario.KindReel {
			offer = o.Name
		}
	}
	reel := func(name string) scenario.InHand {
		r := scenario.NewInHand("EUR", day(time.June, 9), func(string) bool { return false })
		r.Name, r.Offer, r.Paid, r.SpoiledPercent = name, offer, decimal.New(15112, -2), decimal.New(3, 0)
		r.Speed, r.Process, r.Remjet = scenario.MaybeWhole{Int: 500, Set: true}, "at home, remjet", true
		r.KeepsUntil = day(time.December, 9)
		r.CounterMM = scenario.Maybe{Decimal: decimal.New(38, 0), Set: true}
		return r
	}
	half, fresh := reel("Tidewater 2"), reel("Tidewater 3")
	half.Loads = []scenario.Load{
		{Date: day(time.June, 12), Cassettes: 4, Exposures: 36},
		{Date: day(time.July, 3), Cassettes: 3, Exposures: 24, Note: "for the street"},
		{Date: day(time.September, 20), Cassettes: 2, Exposures: 36, Counts: scenario.MaybeWhole{Int: 45, Set: true}},
	}
	half.Results = []scenario.Result{
		{Date: day(time.July, 30), Cassettes: 3, Exposures: 36, Good: 99, LostOtherwise: 1},
		{Date: day(time.October, 2), Cassettes: 2, Exposures: 24, Good: 46, Note: "first frames fogged"},
	}
	long := reel("A reel with " + strings.Repeat("a name that goes on ", 4))
	long.Loads = []scenario.Load{{Date: day(time.August, 1), Cassettes: 18, Exposures: 36}, {Date: day(time.August, 2), Cassettes: 1, Exposures: 8}}
	f.Reels = []scenario.InHand{half, fresh, long}
	return f
}
