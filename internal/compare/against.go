package compare

import "reelworth/internal/exact"

// costed is an offer with the terms its figures came from.
type costed struct {
	*Offer
	terms *terms
}

// against compares one offer with another.
func against(offer, other costed) *Against {
	o, b := offer.Offer, other.Offer
	a := &Against{
		SavingPerRoll:    b.PerRoll.Total.Sub(o.PerRoll.Total),
		SavingCash:       b.Year.Total.Sub(o.Year.Total),
		Saving:           b.Year.Cost.Sub(o.Year.Cost),
		SavingFilm:       b.Year.FilmCost.Sub(o.Year.FilmCost),
		SavingDeveloping: b.Year.DevelopingCost.Sub(o.Year.DevelopingCost),
	}
	if !b.PerRoll.Total.IsZero() {
		percent := a.SavingPerRoll.Quo(b.PerRoll.Total).Mul(exact.Int(100))
		a.SavingPercent = &percent
	}
	if a.SavingCash.Sign() > 0 {
		a.EvenMonth = evenMonth(o.Year.Cumulative, b.Year.Cumulative)
	}
	a.Equipment = extraEquipment(offer.terms, other.terms)
	a.BeforeWear = a.SavingPerRoll.Add(o.PerRoll.Equipment).Sub(b.PerRoll.Equipment)
	a.PaybackExact, a.PaybackRolls = payback(a.Equipment, a.BeforeWear)
	a.RuinedUnits = ruinedUnits(o, a.Saving)
	return a
}

// evenMonth is the first month, from 1, from which the offer's cash stays at or below
// the other's; 0 when it never does.
func evenMonth(offer, other []exact.Fraction) int {
	even := len(offer)
	for even > 0 && !other[even-1].Less(offer[even-1]) {
		even--
	}
	if even == len(offer) {
		return 0
	}
	return even + 1
}

// payback is how many rolls that save so much each pay for equipment; nil when no number
// of rolls does. Wear is to be taken out of the saving, since the price of the equipment is
// what is being paid back.
func payback(equipment, each exact.Fraction) (rolls, whole *exact.Fraction) {
	if each.Sign() <= 0 {
		return nil, nil
	}
	r := equipment.Quo(each)
	w := r.Ceil()
	return &r, &w
}

// extraEquipment is the price of what the offer needs and the other does not: two
// reels share what loading needs, two offers with one process what developing needs.
func extraEquipment(offer, other *terms) (sum exact.Fraction) {
	if !(offer.reel && other.reel) {
		sum = sum.Add(offer.prices(offer.loading.equipment))
	}
	if offer.developing.name != other.developing.name {
		sum = sum.Add(offer.prices(offer.developing.equipment))
	}
	return sum
}

// ruinedUnits is how many units may be ruined before the saving is gone; nil when
// there is no saving, or a unit costs nothing.
func ruinedUnits(o *Offer, saving exact.Fraction) *exact.Fraction {
	if saving.Sign() <= 0 || o.Order.Landed.IsZero() {
		return nil
	}
	units := saving.Quo(o.Order.Landed.Quo(exact.Int(int64(o.Order.Units))))
	return &units
}
