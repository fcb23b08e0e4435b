package compare_test

import (
	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

type refAgainst struct {
	SavingPerRoll, Equipment, BeforeWear             rat
	SavingPercent                                    *rat
	SavingCash, Saving, SavingFilm, SavingDeveloping rat
	EvenMonth                                        int
	PaybackExact, PaybackRolls, RuinedUnits          *rat
}

type refVerdict struct {
	Kind        compare.VerdictKind
	Reel, Boxed string
	Pair        *refAgainst
	LeftOut     []string
}

// refHoldAgainst holds an offer against another, both computed.
func refHoldAgainst(s scenario.Scenario, o, base refOffer) refAgainst {
	var a refAgainst
	a.SavingPerRoll = base.PerRoll.Total.minus(o.PerRoll.Total)
	if !base.PerRoll.Total.zero() {
		a.SavingPercent = a.SavingPerRoll.over(base.PerRoll.Total).times(whole(100)).maybe()
	}
	a.SavingCash = base.Year.Total.minus(o.Year.Total)
	a.Saving = base.Year.Cost.minus(o.Year.Cost)
	a.SavingFilm = base.Year.FilmCost.minus(o.Year.FilmCost)
	a.SavingDeveloping = base.Year.DevelopingCost.minus(o.Year.DevelopingCost)
	if a.SavingCash.positive() {
		a.EvenMonth = refEvenMonth(o.Year.Cumulative, base.Year.Cumulative)
	}
	a.Equipment = refExtraEquipment(s, o, base)
	a.BeforeWear = a.SavingPerRoll.plus(o.PerRoll.Equipment).minus(base.PerRoll.Equipment)
	if a.BeforeWear.positive() {
		a.PaybackExact = a.Equipment.over(a.BeforeWear).maybe()
		a.PaybackRolls = a.PaybackExact.ceiling().maybe()
	}
	if a.Saving.positive() && !o.Order.Landed.zero() {
		a.RuinedUnits = a.Saving.over(o.Order.Landed.over(whole(o.Order.Units))).maybe()
	}
	return a
}

// refEvenMonth is the first month, from 1, from which paid stays at or below other.
func refEvenMonth(paid, other []rat) int {
	for first := range paid {
		stays := true
		for m := first; m < len(paid); m++ {
			stays = stays && !paid[m].above(other[m])
		}
		if stays {
			return first + 1
		}
	}
	return 0
}

// refExtraEquipment is what has to be bought for o and not for base.
func refExtraEquipment(s scenario.Scenario, o, base refOffer) rat {
	var cost rat
	add := func(list []scenario.Equipment) {
		for _, e := range refNotOwned(list) {
			cost = cost.plus(typed(e.Price).billed(s.Home))
		}
	}
	if o.Kind == scenario.KindReel && base.Kind != scenario.KindReel {
		add(s.Loading.Equipment)
	}
	mine, theirs := refOfferNamed(s, o.Name), refOfferNamed(s, base.Name)
	if mine.Developing != "" && mine.Developing != theirs.Developing {
		add(refProcess(s, mine).Equipment)
	}
	return cost
}

func refOfferNamed(s scenario.Scenario, name string) scenario.Offer {
	for _, o := range s.Offers {
		if o.Name == name {
			return o
		}
	}
	panic("no offer " + name)
}

func refDecide(s scenario.Scenario, c refComparison) refVerdict {
	var v refVerdict
	for _, o := range c.Offers {
		if o.Fault != "" {
			v.LeftOut = append(v.LeftOut, o.Name)
		}
	}
	reel, boxed := refBestPair(c)
	if reel != nil {
		v.Reel = reel.Name
	}
	if boxed != nil {
		v.Boxed = boxed.Name
	}
	if reel == nil || boxed == nil {
		v.Kind = compare.VerdictOneSided
		return v
	}
	pair := refHoldAgainst(s, *reel, *boxed)
	v.Pair = &pair
	five := whole(5).over(whole(100)).times(boxed.Year.Cost)
	switch {
	case reel.CountsDeveloping != boxed.CountsDeveloping:
		v.Kind = compare.VerdictUnlike
	case pair.Saving.zero(), pair.Saving.magnitude().below(five):
		v.Kind = compare.VerdictClose
	case pair.Saving.positive() && !pair.SavingCash.positive():
		v.Kind = compare.VerdictReelIfKept
	case pair.Saving.positive():
		v.Kind = compare.VerdictReel
	default:
		v.Kind = compare.VerdictBoxed
	}
	return v
}

// refBestPair is the best reel and the best boxed offer, like with like if it can be.
func refBestPair(c refComparison) (reel, boxed *refOffer) {
	for _, counting := range []bool{true, false} {
		alike := func(o refOffer) bool { return o.CountsDeveloping == counting }
		reel, boxed = refBest(c, scenario.KindReel, alike), refBest(c, scenario.KindBoxed, alike)
		if reel != nil && boxed != nil {
			return reel, boxed
		}
	}
	all := func(refOffer) bool { return true }
	return refBest(c, scenario.KindReel, all), refBest(c, scenario.KindBoxed, all)
}

func refBest(c refComparison, kind scenario.Kind, among func(refOffer) bool) (best *refOffer) {
	for i := range c.Offers {
		o := &c.Offers[i]
		if o.Fault != "" || o.Kind != kind || !among(*o) {
			continue
		}
		if best == nil || o.Year.Cost.below(best.Year.Cost) {
			best = o
		}
	}
	return best
}
