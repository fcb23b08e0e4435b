package compare_test

import (
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// rangesFault says what is wrong with the ranges of an offer against another, "" for
// nothing: they must cover every whole number of rolls once, change at each border, and
// say at each number what the years themselves say there.
func rangesFault(s scenario.Scenario, offer, other string, ranges []compare.VolumeRange) string {
	var today exact.Fraction
	for _, rolls := range s.Shooting.RollsPerMonth {
		today = today.Add(exact.FromDecimal(rolls))
	}
	most, _ := exact.Min(exact.Int(500), today.Mul(exact.Int(10))).Floor().Int64()
	next := 1
	for i, r := range ranges {
		if r.From != next || r.To < r.From || i > 0 && ranges[i-1].Cheaper == r.Cheaper {
			return "a gap, an overlap or no border"
		}
		next = r.To + 1
		for n := r.From; n <= r.To; n++ {
			offerCost, otherCost := compare.CostsWith(s, offer, other, "shooting.rolls_a_year", exact.Int(int64(n)), false)
			saving := otherCost.Sub(offerCost)
			want := compare.CheaperOther
			switch {
			case saving.IsZero(), saving.Abs().Mul(exact.Int(20)).Less(otherCost):
				want = compare.CheaperEven
			case saving.Sign() > 0:
				want = compare.CheaperOffer
			}
			if r.Cheaper != want {
				return exact.Int(int64(n)).String() + " rolls: " + string(r.Cheaper) + ", not " + string(want) + " by " + saving.String()
			}
		}
	}
	if next-1 != int(most) {
		return "they do not reach " + exact.Int(most).String()
	}
	return ""
}

func TestVolumeRangesSayWhatTheYearsSayAtEveryNumber(t *testing.T) {
	seen := map[compare.Cheaper]int{}
	several := 0
	drawnOutlooks(t, 16_000, choose(testing.Short(), 12, 50), func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		check := func(offer, other string, ranges []compare.VolumeRange) {
			if wrong := rangesFault(s, offer, other, ranges); wrong != "" {
				t.Errorf("%s, %s against %s: %s", name, offer, other, wrong)
			}
			for _, r := range ranges {
				seen[r.Cheaper]++
			}
			if len(ranges) > 3 {
				several++
			}
		}
		for i, offer := range o.Offers {
			if c.Offers[i].Against != nil {
				check(offer.Name, s.Baseline, offer.Pair.Volumes)
			} else if offer.Pair != nil {
				t.Errorf("%s: %s has ranges against nobody", name, offer.Name)
			}
		}
		if o.Pair != nil {
			check(o.Pair.Offer, o.Pair.Other, o.Pair.Volumes)
		}
	})
	for _, cheaper := range []compare.Cheaper{compare.CheaperOffer, compare.CheaperOther, compare.CheaperEven} {
		if seen[cheaper] < 3 {
			t.Errorf("%d ranges are %s", seen[cheaper], cheaper)
		}
	}
	if several == 0 {
		t.Error("nowhere does the answer change more than twice")
	}
}

// Every cut size is what comparing with that many exposures gives.
func TestCutSizesAreTheComparisonsOfOtherExposures(t *testing.T) {
	leftOut, others := 0, 0
	drawnOutlooks(t, 17_000, choose(testing.Short(), 20, 100), func(s scenario.Scenario, c *compare.Comparison, o *compare.Outlook, name string) {
		for i, offer := range o.Offers {
			if c.Offers[i].Fault != nil || c.Offers[i].Kind == scenario.KindBoxed {
				if offer.CutSizes != nil {
					t.Errorf("%s: %s has cut sizes", name, offer.Name)
				}
				continue
			}
			own := s.Offers[i].Reel.Exposures
			sizes := map[int]compare.CutSize{}
			for n, size := range offer.CutSizes {
				if n > 0 && size.Exposures <= offer.CutSizes[n-1].Exposures {
					t.Errorf("%s, %s: not rising", name, offer.Name)
				}
				sizes[size.Exposures] = size
			}
			var best *compare.CutSize
			for n := 1; n <= 100; n++ {
				size, told := sizes[n]
				changed := s.Clone()
				changed.Offers[i].Reel.Exposures = n
				got := compare.Compare(changed, nil, scenario.Date{}).Offers[i]
				wanted := (n >= 12 && n <= 40 || n == own) && got.Fault == nil
				if told != wanted {
					t.Errorf("%s, %s: %d exposures told of: %v", name, offer.Name, n, told)
				}
				if !told {
					if n >= 12 && n <= 40 {
						leftOut++
					}
					continue
				}
				if size.Yield.Cassettes != got.Yield.Cassettes || !size.Yield.Good.Equal(got.Yield.Good) || !size.TotalPerRoll.Equal(got.PerRoll.Total) ||
					size.Yield.Cut.FullRolls != got.Yield.Cut.FullRolls || !size.Yield.Cut.LeftOver.Equal(got.Yield.Cut.LeftOver) {
					t.Errorf("%s, %s: %d exposures: %+v", name, offer.Name, n, size)
				}
				away := func(n int) int { return max(n-own, own-n) }
				if n <= 36 || n <= own {
					if best == nil || size.TotalPerRoll.Less(best.TotalPerRoll) ||
						size.TotalPerRoll.Equal(best.TotalPerRoll) && away(n) <= away(best.Exposures) {
						best = &size
					}
				}
			}
			for n, size := range sizes {
				if size.Best != (best.Exposures == n) {
					t.Errorf("%s, %s: the best is %d, %d says so: %v", name, offer.Name, best.Exposures, n, size.Best)
				}
			}
			if best.Exposures != own {
				others++
			}
		}
	})
	if !testing.Short() && leftOut == 0 || others == 0 {
		t.Errorf("%d sizes left out, %d best that are not the reel's own", leftOut, others)
	}
}
