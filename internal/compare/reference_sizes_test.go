package compare_test

import (
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// refSizes asks the reference after the order sizes, the cut sizes and the price ceiling of
// the offer at i.
func refSizes(t *testing.T, name string, s scenario.Scenario, i int, o *compare.OfferOutlook, asked map[string]int) {
	t.Helper()
	refOrderSizes(t, name, s, s.Offers[i], o.OrderSizes, asked)
	if s.Offers[i].Kind != scenario.KindReel {
		return
	}
	refCutSizes(t, name, s, s.Offers[i], o.CutSizes, asked)
	if base := refFind(reference(s), s.Baseline); base != nil && s.Offers[i].Name != s.Baseline {
		refCeiling(t, name, s, s.Offers[i], base.PerRoll.Total, o.Ceiling, asked)
	}
}

func refOrderSizes(t *testing.T, name string, s scenario.Scenario, o scenario.Offer, sizes []compare.OrderSize, asked map[string]int) {
	t.Helper()
	monthly := refMonthlyDemand(s)
	best, bestTotal := 0, rat{}
	for n := 1; n <= 12; n++ {
		asked["order sizes"]++
		o.Units = n
		got, size := refComputeOffer(s, o), sizes[n-1]
		landed := got.Order.Landed.over(whole(n))
		lasts := whole(n).times(got.Yield.Good).over(monthly)
		if size.Units != n || !same(size.LandedPerUnit, landed) || !same(size.TotalPerRoll, got.PerRoll.Total) || !same(*size.MonthsToShoot, lasts) {
			t.Errorf("%s, %s: %d units: %+v, want %s a unit, %s a roll, %s months", name, o.Name, n, size, landed, got.PerRoll.Total, lasts)
		}
		if !lasts.above(whole(s.Months)) && (best == 0 || got.PerRoll.Total.below(bestTotal)) {
			best, bestTotal = n, got.PerRoll.Total
		}
	}
	for n, size := range sizes {
		if size.Best != (n+1 == max(best, 1)) {
			t.Errorf("%s, %s: best is %d, and %d says so: %v", name, o.Name, best, n+1, size.Best)
		}
	}
	if best > 1 {
		asked["best sizes"]++
	}
}

func refCutSizes(t *testing.T, name string, s scenario.Scenario, o scenario.Offer, sizes []compare.CutSize, asked map[string]int) {
	t.Helper()
	own := o.Reel.Exposures
	told := map[int]compare.CutSize{}
	for _, size := range sizes {
		told[size.Exposures] = size
	}
	for n := 12; n <= 40; n++ {
		asked["cuts"]++
		reel := *o.Reel
		reel.Exposures = n
		o.Reel = &reel
		got, size := refComputeOffer(s, o), told[n]
		if (got.Fault == "") != (size.Exposures == n) {
			t.Errorf("%s, %s cut to %d: told of %v, the reference says %q", name, o.Name, n, size.Exposures == n, got.Fault)
		}
		if got.Fault == "" && (!same(size.TotalPerRoll, got.PerRoll.Total) || size.Yield.Cassettes != got.Yield.Cassettes || !same(size.Yield.Good, got.Yield.Good)) {
			t.Errorf("%s, %s cut to %d: %+v, want %s a roll", name, o.Name, n, size, got.PerRoll.Total)
		}
	}
	if _, there := told[own]; !there {
		t.Errorf("%s, %s: its own %d exposures are not told of", name, o.Name, own)
	}
}

// refCeiling asks at the ceiling, one minor unit above it, and at many prices beyond.
func refCeiling(t *testing.T, name string, s scenario.Scenario, o scenario.Offer, base rat, c *compare.Ceiling, asked map[string]int) {
	t.Helper()
	most := base.times(whole(9)).over(whole(10))
	saves := func(price scenario.Decimal) bool {
		o.Price = price
		return base.positive() && !refComputeOffer(s, o).PerRoll.Total.above(most)
	}
	minor := decimal.New(1, -int32(minorDigits[o.Currency]))
	price := scenario.Decimal{}
	if c != nil {
		asked["ceilings"]++
		price = c.Price.Decimal(8)
		if !saves(price) {
			t.Errorf("%s, %s does not save ten percent at its ceiling of %s", name, o.Name, price)
		}
	} else if o.DiscountPercent.Equal(dec("100")) {
		return // every price saves as much
	}
	for step := range 40 {
		if price = price.Add(minor); saves(price) {
			t.Errorf("%s, %s still saves ten percent at %s, above its ceiling %v", name, o.Name, price, c)
			return
		}
		if step > 10 {
			minor = minor.Add(minor)
		}
	}
}

func same(got exact.Fraction, want rat) bool { return got.Text(20) == exactly(want).Text(20) }
