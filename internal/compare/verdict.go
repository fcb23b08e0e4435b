package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// closePercent is the share of the best boxed offer's cost below which a saving, or
// its opposite, decides nothing; one of exactly 0 never does.
const closePercent = 5

// verdictOf picks the best reel and the best boxed offer and says which it is to be.
func verdictOf(offers []costed, leftOut []string) Verdict {
	v := Verdict{LeftOut: leftOut}
	reel, boxed := bestPair(offers)
	if reel != nil {
		v.Reel = reel.Name
	}
	if boxed != nil {
		v.Boxed = boxed.Name
	}
	if reel == nil || boxed == nil {
		v.Kind = VerdictOneSided
		return v
	}
	v.Pair = against(*reel, *boxed)
	v.Kind = kindOf(reel.Offer, boxed.Offer, v.Pair)
	return v
}

func kindOf(reel, boxed *Offer, pair *Against) VerdictKind {
	switch {
	case reel.CountsDeveloping != boxed.CountsDeveloping:
		return VerdictUnlike
	case isClose(pair.Saving, boxed.Year.Cost):
		return VerdictClose
	case pair.Saving.Sign() < 0:
		return VerdictBoxed
	case pair.SavingCash.Sign() <= 0:
		return VerdictReelIfKept
	}
	return VerdictReel
}

// isClose says whether a saving against what costs so much decides nothing.
func isClose(saving, cost exact.Fraction) bool {
	return saving.IsZero() || saving.Abs().Less(exact.Int(closePercent).Percent().Mul(cost))
}

// bestPair is the best reel and the best boxed offer: among those that count
// developing where both kinds have such, else among those that do not, else among
// all. Either is nil when its kind could not be computed at all.
func bestPair(offers []costed) (reel, boxed *costed) {
	counting := func(o costed) bool { return o.CountsDeveloping }
	silent := func(o costed) bool { return !o.CountsDeveloping }
	for _, among := range []func(costed) bool{counting, silent} {
		reel, boxed = best(offers, scenario.KindReel, among), best(offers, scenario.KindBoxed, among)
		if reel != nil && boxed != nil {
			return reel, boxed
		}
	}
	all := func(costed) bool { return true }
	return best(offers, scenario.KindReel, all), best(offers, scenario.KindBoxed, all)
}

// best is the offer of a kind with the lowest cost of the year, the first of equals.
func best(offers []costed, kind scenario.Kind, among func(costed) bool) (found *costed) {
	for i := range offers {
		o := &offers[i]
		if o.Kind == kind && among(*o) && (found == nil || o.Year.Cost.Less(found.Year.Cost)) {
			found = o
		}
	}
	return found
}
