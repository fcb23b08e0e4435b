package compare

import "reelworth/internal/exact"

// perRoll is what one standard roll costs in the long run, given an order at today's
// price.
func (t *terms) perRoll(o *Order) PerRoll {
	l := &o.Home
	landed := t.rollsAnOrder()
	p := PerRoll{
		Film:       l.Film.Quo(landed),
		Shipping:   l.Shipping.Quo(landed),
		Tax:        exact.Sum(l.SalesTax, l.Duty, l.ImportTax).Quo(landed),
		Fees:       l.CardFee.Add(l.Handling).Quo(landed),
		Loading:    t.perStandardRoll(t.loadingPerCassette()),
		Equipment:  t.perStandardRoll(t.wearPerCassette()),
		Developing: t.perStandardRoll(t.developingPerCassette()),
		Time:       t.timePerRoll(),
	}
	p.Total = exact.Sum(p.Film, p.Shipping, p.Tax, p.Fees, p.Loading, p.Equipment, p.Developing, p.Time)
	return p
}

// rollsAnOrder is how many standard rolls an order pays for: film that is too old before
// it is shot is paid for all the same.
func (t *terms) rollsAnOrder() exact.Fraction {
	return t.usedShare().Mul(exact.Int(int64(t.units))).Mul(t.standardRolls())
}

// standardRolls is how many rolls of the length prices are quoted for one unit gives.
func (t *terms) standardRolls() exact.Fraction {
	return t.yield.Good.Quo(t.shooting.rollExposures) // as Yield.StandardRolls
}

// perStandardRoll is what a roll costs when each cassette of a unit costs that much.
func (t *terms) perStandardRoll(perCassette exact.Fraction) exact.Fraction {
	return exact.Int(int64(t.yield.Cassettes)).Mul(perCassette).Quo(t.standardRolls())
}

// usedShare is how much of an order is shot before it is too old, from above 0 to 1.
func (t *terms) usedShare() exact.Fraction {
	demand := t.shooting.mean()
	if !t.keeps.set || demand.IsZero() {
		return exact.Int(1)
	}
	return exact.Min(exact.Int(1), t.keeps.months.Mul(demand).Quo(t.orderSize()))
}

func (t *terms) loadingPerCassette() exact.Fraction {
	if !t.reel {
		return exact.Fraction{}
	}
	return t.loading.cassettePrice.Quo(t.loading.loads).Add(t.loading.consumables)
}

// wearPerCassette is what a cassette takes off the value of the equipment that has
// to be bought.
func (t *terms) wearPerCassette() exact.Fraction {
	var sum exact.Fraction
	for _, gears := range t.equipment() {
		for _, g := range gears {
			sum = sum.Add(g.price.Sub(g.resale).Quo(g.lasts))
		}
	}
	return sum
}

func (t *terms) developingPerCassette() exact.Fraction {
	d := &t.developing
	if !d.atHome() {
		return d.perCassette
	}
	return d.chemistryPrice.Quo(t.effectiveRolls()).Add(d.perCassette)
}

// effectiveRolls is how many cassettes a set of chemistry develops before it is spent
// or too old; at least one, for it is mixed to be used.
func (t *terms) effectiveRolls() exact.Fraction {
	d := &t.developing
	monthly := t.shooting.mean().Mul(t.perExposure())
	if !d.keeps.set || monthly.Sign() <= 0 {
		return d.chemistryRolls
	}
	return exact.Min(d.chemistryRolls, exact.Max(exact.Int(1), d.keeps.months.Mul(monthly)))
}

func (t *terms) timePerRoll() exact.Fraction {
	if t.hourly.IsZero() {
		return exact.Fraction{}
	}
	perReel := t.loading.minutesPerReel.Quo(t.usedShare())
	perCassette := exact.Int(int64(t.yield.Cassettes)).Mul(t.minutesPerCassette())
	return t.value(perReel.Add(perCassette)).Quo(t.standardRolls())
}

// minutesPerCassette is the time for loading and developing one cassette.
func (t *terms) minutesPerCassette() exact.Fraction {
	return t.loading.minutesPerRoll.Add(t.developing.minutes)
}

// value is what minutes are worth.
func (t *terms) value(minutes exact.Fraction) exact.Fraction {
	return t.hourly.Quo(exact.Int(60)).Mul(minutes)
}
