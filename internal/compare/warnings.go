package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

const (
	// daysFresh is how old a quote may be before it is warned of.
	daysFresh = 30
	// nearPercent is how far below a limit an amount is near it.
	nearPercent = 5
)

// warnings is what is true and worth knowing: first about the scenario, then about
// the pair, then about each computed offer in the order of the file.
func warnings(c *Comparison, offers []costed, today scenario.Date) []Warning {
	w := oldQuotes(&c.Scenario, offers, today)
	if len(offers) > 0 && offers[0].terms.shooting.none() {
		w = append(w, Warning{Code: WarnNoDemand})
	}
	w = append(w, differingDeveloping(&c.Verdict, offers)...)
	othersCount := anyCounts(offers)
	for _, o := range offers {
		if othersCount && !o.CountsDeveloping {
			w = append(w, Warning{Code: WarnDevelopingMissing, Offer: o.Name})
		}
		w = append(w, offerWarnings(o)...)
	}
	return w
}

// oldQuotes warns of the quotes in use that are older than daysFresh, in the order of
// the file. Subject is the quote as "USD/EUR", Count its age in days.
func oldQuotes(s *scenario.Scenario, offers []costed, today scenario.Date) (w []Warning) {
	if today == (scenario.Date{}) {
		return nil
	}
	used := make([]bool, len(s.Rates))
	for _, o := range offers {
		for _, step := range o.terms.route {
			used[step.Index] = true
		}
	}
	for i, r := range s.Rates {
		if !used[i] || r.Date == (scenario.Date{}) {
			continue
		}
		if age := r.Date.DaysUntil(today); age > daysFresh {
			w = append(w, Warning{Code: WarnOldQuote, Subject: r.One + "/" + r.In, Count: age})
		}
	}
	return w
}

// differingDeveloping warns that part of the pair's saving is developing. Subject is
// the reel's process.
func differingDeveloping(v *Verdict, offers []costed) []Warning {
	reel, boxed := named(offers, v.Reel), named(offers, v.Boxed)
	if v.Pair == nil || !reel.CountsDeveloping || !boxed.CountsDeveloping ||
		reel.terms.developing.name == boxed.terms.developing.name {
		return nil
	}
	return []Warning{{Code: WarnDevelopingDiffers, Offer: v.Reel, Subject: reel.terms.developing.name}}
}

func named(offers []costed, name string) *costed {
	for i := range offers {
		if offers[i].Name == name {
			return &offers[i]
		}
	}
	return nil
}

func anyCounts(offers []costed) bool {
	for _, o := range offers {
		if o.CountsDeveloping {
			return true
		}
	}
	return false
}

// offerWarnings is what is worth knowing about one offer, whatever the others are.
func offerWarnings(o costed) (w []Warning) {
	t := o.terms
	add := func(when bool, warning Warning) {
		if when {
			warning.Offer = o.Name
			w = append(w, warning)
		}
	}
	add(t.remjet && t.developing.way == scenario.Lab, Warning{Code: WarnRemjetToLab, Subject: t.developing.name})
	add(t.foreign && t.customs == scenario.ImportUndecided, Warning{Code: WarnImportUndecided, Subject: "import"})
	if t.developing.atHome() {
		effective := t.effectiveRolls()
		add(effective.Less(t.developing.chemistryRolls), Warning{
			Code: WarnChemistryExpires, Subject: t.developing.name, Amount: effective, Limit: t.developing.chemistryRolls})
	}
	add(o.Year.ThrownAwayRolls.Sign() > 0 || o.UsedShare.Less(exact.Int(1)), Warning{
		Code: WarnFilmExpires, Amount: o.Year.ThrownAwayRolls})
	add(o.Year.Long, Warning{Code: WarnLeftLastsLong, Amount: o.Year.FilmLeftRolls})
	add(t.onHand.Sign() > 0, Warning{Code: WarnOnHandFree, Amount: t.onHand})
	for _, near := range nearLimits(o) {
		add(true, near)
	}
	add(priceStopsAtZero(t), Warning{Code: WarnPriceRiseStops})
	return w
}

// nearLimits warns of the limits an order is just below, where crossing them changes
// what is paid. Subject is the limit's field, Amount the film, Limit the limit, both
// in the home currency but for free_shipping_from, which is in the seller's.
func nearLimits(o costed) (w []Warning) {
	t, b := o.terms, &o.terms.border
	atBorder := t.customs == scenario.ImportBorder
	film := o.Order.Home.Film
	add := func(applies bool, amount, limit exact.Fraction, field string) {
		if applies && near(amount, limit) {
			w = append(w, Warning{Code: WarnNearLimit, Subject: field, Amount: amount, Limit: limit})
		}
	}
	add((atBorder || t.customs == scenario.ImportPrepaid) && b.duty.Sign() > 0, film, b.dutyFree, "duty_free_up_to")
	add(atBorder && b.tax.Sign() > 0, film, b.taxFree, "tax_free_up_to")
	add(t.asking.freeSet && o.Order.Seller.Shipping.Sign() > 0, o.Order.Seller.Film, t.asking.freeFrom, "free_shipping_from")
	return w
}

// near says whether amount is at most nearPercent below limit.
func near(amount, limit exact.Fraction) bool {
	least := exact.Int(100 - nearPercent).Percent().Mul(limit)
	return limit.Sign() > 0 && !amount.Less(least) && !limit.Less(amount)
}

// priceStopsAtZero says whether a falling price reaches 0 within the months.
func priceStopsAtZero(t *terms) bool {
	last := t.shooting.months - 1
	return last > 0 && t.asking.drift(last).Sign() <= 0
}
