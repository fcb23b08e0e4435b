package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// terms is one offer with everything its figures depend on, as fractions: a value to
// copy, change in one place and compute again. What is owned is already left out of
// the equipment. Money is in the home currency but for asking.
type terms struct {
	home, seller rounding
	route        money.Route
	rate         exact.Fraction // home currency for one of the seller's
	foreign      bool           // the seller's currency is not the home one
	asking       asking
	customs      scenario.Import
	border       border
	units        int
	onHand       exact.Fraction // units
	keeps        span
	yield        Yield
	shooting     shooting
	reel         bool
	remjet       bool
	loading      loading    // zero for boxed film
	developing   developing // zero when not counted
	hourly       exact.Fraction
}

// withoutRounding is t with no rounding anywhere.
func (t terms) withoutRounding() terms {
	t.home.off, t.seller.off = true, true
	return t
}

// asking is what the seller asks, in the seller's currency; percents as typed.
type asking struct {
	price              exact.Fraction
	discount           exact.Fraction
	shipping           exact.Fraction
	eachExtra          exact.Fraction
	freeFrom           exact.Fraction // counts only if freeSet
	freeSet            bool
	salesTax           exact.Fraction
	salesTaxOnShipping bool
	cardFee            exact.Fraction
	riseYearly         exact.Fraction
}

// border is what the customs authority takes; percents as typed.
type border struct {
	duty, dutyFree exact.Fraction
	tax, taxFree   exact.Fraction
	dutyOnShipping bool
	taxOnShipping  bool
	handling       exact.Fraction
}

// span is how many months something keeps; for good unless set.
type span struct {
	months exact.Fraction
	set    bool
}

// over says whether something of that age, in months, is too old.
func (s span) over(age int) bool {
	return s.set && !exact.Int(int64(age)).Less(s.months)
}

// whole is the age in months at which something is too old, ages being whole months;
// −1 where nothing here gets that old.
func (s span) whole() int {
	n, small := s.months.Ceil().Int64()
	if !s.set || !small || n >= maxMonths+monthsValued {
		return -1
	}
	return int(n)
}

// loading is what it takes to load cassettes.
type loading struct {
	cassettePrice  exact.Fraction
	loads, pack    exact.Fraction // times a cassette is loaded; cassettes in a pack
	owned          exact.Fraction // cassettes
	consumables    exact.Fraction // per cassette
	minutesPerReel exact.Fraction
	minutesPerRoll exact.Fraction // per cassette
	equipment      []gear
}

// developing is the process an offer names.
type developing struct {
	name           string // "" when developing is not counted
	way            scenario.Way
	perCassette    exact.Fraction // the lab's price, or what a cassette costs beside chemistry
	chemistryPrice exact.Fraction // of one set
	chemistryRolls exact.Fraction // cassettes one set develops while it is fresh
	keeps          span           // of one set
	minutes        exact.Fraction // per cassette, at home
	equipment      []gear
}

func (d developing) counted() bool { return d.name != "" }
func (d developing) atHome() bool  { return d.way == scenario.Home }

// gear is a piece of equipment that is not owned yet.
type gear struct{ price, resale, lasts exact.Fraction }

// shooting is how much is shot.
type shooting struct {
	months        int
	rollExposures exact.Fraction
	demand        [12]exact.Fraction // exposures in each month of the calendar
}

// mean is the exposures of an average month.
func (s shooting) mean() exact.Fraction {
	return exact.Sum(s.demand[:]...).Quo(exact.Int(int64(len(s.demand))))
}

// total is the exposures of the scenario's months.
func (s shooting) total() (sum exact.Fraction) {
	for m := range s.months {
		sum = sum.Add(s.demand[m%len(s.demand)])
	}
	return sum
}

// none says whether nothing is shot in the months of the scenario.
func (s shooting) none() bool {
	for m := range s.months {
		if s.demand[m%len(s.demand)].Sign() > 0 {
			return false
		}
	}
	return true
}

// orderSize is the good exposures in one order.
func (t *terms) orderSize() exact.Fraction {
	return exact.Int(int64(t.units)).Mul(t.yield.Good)
}

// perExposure is the cassettes filled for each good exposure: more than the
// exposures on a cassette would have it where some are spoiled.
func (t *terms) perExposure() exact.Fraction {
	return exact.Int(int64(t.yield.Cassettes)).Quo(t.yield.Good)
}

// equipment is everything that has to be bought for the offer.
func (t *terms) equipment() [2][]gear {
	return [2][]gear{t.loading.equipment, t.developing.equipment}
}
