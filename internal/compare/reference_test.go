package compare_test

import "reelworth/internal/scenario"

// The reference is the model a second time, slow and plain: every number a big.Rat,
// a loop wherever the model loops, and no code shared with the engine, nor with the
// packages below it that know quotes, cutting or fractions. Its types mirror the
// engine's field by field, which is how the two are held against each other.

type refComparison struct {
	Offers  []refOffer
	Verdict refVerdict
}

type refOffer struct {
	Name             string
	Kind             scenario.Kind
	Fault            refFault
	CountsDeveloping bool
	Order            refOrder
	Yield            refYield
	UsedShare        rat
	PerRoll          refPerRoll
	PerExposure      rat
	DevelopingEach   rat
	Year             refYear
	Against          *refAgainst
}

// refFault is the codes of what is wrong with an offer, each between strokes; "" for
// nothing. Which of several is named is left open.
type refFault string

type refOrder struct {
	Units   int
	Home    refLines
	Seller  refSellerLines
	Charged rat
	Landed  rat
	Route   []refStep
}

type refLines struct {
	Film, Shipping, SalesTax, CardFee, Duty, ImportTax, Handling rat
}

type refSellerLines struct {
	Film, Shipping, SalesTax, ImportTax rat
}

// refStep is a quote used: the how-manieth in the file, and whether against it.
type refStep struct {
	Index   int
	Against bool
}

type refYield struct {
	Exposures int
	Good      rat
	Cassettes int
	Cut       *refCut
}

type refCut struct {
	Usable, RollLength            rat
	FullRolls, ShortRollExposures int64
	LeftOver                      rat
}

type refPerRoll struct {
	Film, Shipping, Tax, Fees, Loading, Equipment, Developing, Time, Total rat
}

// reference computes a whole scenario.
func reference(s scenario.Scenario) refComparison {
	var c refComparison
	for _, o := range s.Offers {
		c.Offers = append(c.Offers, refComputeOffer(s, o))
	}
	for i := range c.Offers {
		base := refFind(c, s.Baseline)
		if base != nil && c.Offers[i].Fault == "" && c.Offers[i].Name != s.Baseline {
			against := refHoldAgainst(s, c.Offers[i], *base)
			c.Offers[i].Against = &against
		}
	}
	c.Verdict = refDecide(s, c)
	return c
}

func refFind(c refComparison, name string) *refOffer {
	for i := range c.Offers {
		if c.Offers[i].Name == name && c.Offers[i].Fault == "" {
			return &c.Offers[i]
		}
	}
	return nil
}

func refComputeOffer(s scenario.Scenario, o scenario.Offer) refOffer {
	out := refOffer{Name: o.Name, Kind: o.Kind}
	yield, enough := refYieldOf(o)
	_, quoted := refRoute(s, o.Currency)
	for code, wrong := range map[refFault]bool{"no-rate": !quoted, "no-yield": !enough,
		"unknown-developing": o.Developing != "" && refProcess(s, o) == nil} {
		if wrong {
			out.Fault += "|" + code + "|"
		}
	}
	if out.Fault != "" {
		return out
	}
	out.CountsDeveloping = o.Developing != ""
	out.Order = refLand(s, o, typed(o.Price))
	out.Yield = yield
	out.UsedShare = refUsedShare(s, o, yield)
	out.PerRoll = refPerRollOf(s, o, out.Order, yield)
	out.PerExposure = out.PerRoll.Total.over(whole(s.RollExposures))
	if d := refProcess(s, o); d != nil {
		out.DevelopingEach = refDevelopingOfOne(s, *d, yield)
	}
	out.Year = refLiveYear(s, o, yield)
	return out
}

// refProcess is the developing an offer names, nil when it names none that is there.
func refProcess(s scenario.Scenario, o scenario.Offer) *scenario.Developing {
	for i := range s.Developing {
		if o.Developing != "" && s.Developing[i].Name == o.Developing {
			return &s.Developing[i]
		}
	}
	return nil
}

// Exchange.

// refRoute is the way from a seller's currency home.
func refRoute(s scenario.Scenario, from string) ([]refStep, bool) {
	if from == s.Home {
		return nil, true
	}
	if step, ok := refQuote(s, from, s.Home); ok {
		return []refStep{step}, true
	}
	for _, r := range s.Rates {
		for _, third := range []string{r.One, r.In} {
			first, ok1 := refQuote(s, from, third)
			second, ok2 := refQuote(s, third, s.Home)
			if ok1 && ok2 {
				return []refStep{first, second}, true
			}
		}
	}
	return nil, false
}

func refQuote(s scenario.Scenario, from, to string) (refStep, bool) {
	for i, r := range s.Rates {
		if r.One == from && r.In == to {
			return refStep{i, false}, true
		}
		if r.One == to && r.In == from {
			return refStep{i, true}, true
		}
	}
	return refStep{}, false
}

func refConvert(s scenario.Scenario, route []refStep, amount rat) rat {
	for _, step := range route {
		rate := typed(s.Rates[step.Index].Equals)
		if step.Against {
			amount = amount.over(rate)
		} else {
			amount = amount.times(rate)
		}
	}
	return amount
}

// The landed cost.

// refLand is one order of the offer's units at a price a unit.
func refLand(s scenario.Scenario, o scenario.Offer, price rat) refOrder {
	var seller refSellerLines
	n := whole(o.Units)
	seller.Film = n.times(price).times(whole(1).minus(percentOf(o.DiscountPercent))).billed(o.Currency)
	seller.Shipping = typed(o.Shipping).plus(n.minus(whole(1)).times(typed(o.ShippingEachExtra))).billed(o.Currency)
	if o.FreeShippingFrom.Set && !seller.Film.below(typed(o.FreeShippingFrom.Decimal)) {
		seller.Shipping = rat{}
	}
	taxed := seller.Film.plus(flag(o.SalesTaxOnShipping, seller.Shipping))
	seller.SalesTax = percentOf(o.SalesTaxPercent).times(taxed).billed(o.Currency)
	if o.Import == scenario.ImportPrepaid {
		taxed := seller.Film.plus(flag(s.Border.TaxOnShipping, seller.Shipping))
		seller.ImportTax = percentOf(s.Border.TaxPercent).times(taxed).billed(o.Currency)
	}

	route, _ := refRoute(s, o.Currency)
	toHome := func(amount rat) rat { return refConvert(s, route, amount).billed(s.Home) }
	charged := toHome(total(seller.Film, seller.Shipping, seller.SalesTax, seller.ImportTax))

	var home refLines
	home.Shipping = toHome(seller.Shipping)
	home.SalesTax = toHome(seller.SalesTax)
	home.ImportTax = toHome(seller.ImportTax)
	home.Film = charged.minus(home.Shipping).minus(home.SalesTax).minus(home.ImportTax)
	if o.Currency != s.Home {
		home.CardFee = percentOf(o.CardFeePercent).times(charged).billed(s.Home)
	}
	refPayBorder(s, o, &home)
	landed := total(home.Film, home.Shipping, home.SalesTax, home.CardFee, home.Duty, home.ImportTax, home.Handling)
	return refOrder{Units: o.Units, Home: home, Seller: seller, Charged: charged, Landed: landed, Route: route}
}

func refPayBorder(s scenario.Scenario, o scenario.Offer, home *refLines) {
	b := s.Border
	atBorder := o.Import == scenario.ImportBorder
	if !atBorder && o.Import != scenario.ImportPrepaid {
		return
	}
	if home.Film.above(typed(b.DutyFreeUpTo)) {
		base := home.Film.plus(flag(b.DutyOnShipping, home.Shipping))
		home.Duty = percentOf(b.DutyPercent).times(base).billed(s.Home)
	}
	due := home.Duty
	if atBorder && home.Film.above(typed(b.TaxFreeUpTo)) {
		base := home.Film.plus(flag(b.TaxOnShipping, home.Shipping)).plus(home.Duty)
		home.ImportTax = percentOf(b.TaxPercent).times(base).billed(s.Home)
		due = due.plus(home.ImportTax)
	}
	if due.positive() {
		home.Handling = typed(b.HandlingFee).billed(s.Home)
	}
}

// What a reel yields.

// refYieldOf is what one unit gives; false when a reel gives no cassette.
func refYieldOf(o scenario.Offer) (refYield, bool) {
	if o.Kind == scenario.KindBoxed {
		n := o.Boxed.RollsPerPack * o.Boxed.Exposures
		good := whole(n).times(whole(1).minus(percentOf(o.Boxed.SpoiledPercent)))
		return refYield{Exposures: n, Good: good, Cassettes: o.Boxed.RollsPerPack}, true
	}
	r := *o.Reel
	cut := refCutReel(r)
	y := refYield{Cut: &cut}
	y.Exposures = int(cut.FullRolls)*r.Exposures + int(cut.ShortRollExposures)
	y.Cassettes = int(cut.FullRolls)
	if cut.ShortRollExposures > 0 {
		y.Cassettes++
	}
	y.Good = whole(y.Exposures).times(whole(1).minus(percentOf(r.SpoiledPercent)))
	return y, y.Cassettes > 0
}

func refCutReel(r scenario.Reel) refCut {
	pitch := whole(4750).over(whole(1000))
	if r.Pitch == scenario.ShortPitch {
		pitch = whole(4740).over(whole(1000))
	}
	frame := whole(8).times(pitch)
	unit := whole(1000)
	if r.LengthUnit == scenario.Feet {
		unit = whole(3048).over(whole(10))
	}
	ends := total(typed(r.LeaderMM), typed(r.TrailerMM), typed(r.FoggedMM))
	waste := total(typed(r.StartWasteMM), typed(r.EndWasteMM), whole(r.TestExposures).times(frame))

	var c refCut
	c.RollLength = ends.plus(whole(r.Exposures).times(frame))
	c.Usable = typed(r.Length).times(unit).minus(waste)
	left := c.Usable
	for !left.below(c.RollLength) {
		left = left.minus(c.RollLength)
		c.FullRolls++
	}
	for short := 1; short < r.Exposures; short++ {
		fits := !left.below(ends.plus(whole(short).times(frame)))
		if fits && short >= r.ShortRollFrom {
			c.ShortRollExposures = int64(short)
		}
	}
	c.LeftOver = left
	if c.ShortRollExposures > 0 {
		c.LeftOver = left.minus(ends).minus(whole(int(c.ShortRollExposures)).times(frame))
	}
	return c
}

// The cost per roll, in the long run.

// refMonthlyDemand is the mean of a month, in exposures.
func refMonthlyDemand(s scenario.Scenario) rat {
	var year rat
	for _, rolls := range s.Shooting.RollsPerMonth {
		year = year.plus(typed(rolls))
	}
	return year.over(whole(12)).times(whole(s.RollExposures))
}

func refUsedShare(s scenario.Scenario, o scenario.Offer, y refYield) rat {
	demand := refMonthlyDemand(s)
	if !o.KeepsMonths.Set || demand.zero() {
		return whole(1)
	}
	shot := typed(o.KeepsMonths.Decimal).times(demand)
	return least(whole(1), shot.over(whole(o.Units).times(y.Good)))
}

func refPerRollOf(s scenario.Scenario, o scenario.Offer, order refOrder, y refYield) refPerRoll {
	std := y.Good.over(whole(s.RollExposures))
	used := refUsedShare(s, o, y)
	cassettes := whole(y.Cassettes)
	ofOrder := func(lines ...rat) rat { return total(lines...).over(whole(o.Units)).over(used).over(std) }
	perCassette := func(cost rat) rat { return cassettes.times(cost).over(std) }

	var p refPerRoll
	p.Film = ofOrder(order.Home.Film)
	p.Shipping = ofOrder(order.Home.Shipping)
	p.Tax = ofOrder(order.Home.SalesTax, order.Home.Duty, order.Home.ImportTax)
	p.Fees = ofOrder(order.Home.CardFee, order.Home.Handling)
	minutes := rat{}
	if o.Kind == scenario.KindReel {
		l := s.Loading
		p.Loading = perCassette(typed(l.CassettePrice).over(whole(l.CassetteLoads)).plus(typed(l.ConsumablesPerRoll)))
		minutes = typed(l.MinutesPerReel).over(used).plus(cassettes.times(typed(l.MinutesPerRoll)))
	}
	for _, e := range refNeeds(s, o) {
		p.Equipment = p.Equipment.plus(perCassette(typed(e.Price).minus(typed(e.Resale)).over(whole(e.LastsRolls))))
	}
	if d := refProcess(s, o); d != nil {
		p.Developing = perCassette(refDevelopingOfOne(s, *d, y))
		if d.Way == scenario.Home {
			minutes = minutes.plus(cassettes.times(typed(d.MinutesPerRoll)))
		}
	}
	p.Time = typed(s.Loading.HourlyValue).over(whole(60)).times(minutes).over(std)
	p.Total = total(p.Film, p.Shipping, p.Tax, p.Fees, p.Loading, p.Equipment, p.Developing, p.Time)
	return p
}

// refNeeds is the equipment an offer needs and nobody owns yet.
func refNeeds(s scenario.Scenario, o scenario.Offer) []scenario.Equipment {
	var all []scenario.Equipment
	if o.Kind == scenario.KindReel {
		all = append(all, refNotOwned(s.Loading.Equipment)...)
	}
	if d := refProcess(s, o); d != nil {
		all = append(all, refNotOwned(d.Equipment)...)
	}
	return all
}

func refNotOwned(list []scenario.Equipment) []scenario.Equipment {
	var missing []scenario.Equipment
	for _, e := range list {
		if !e.Owned {
			missing = append(missing, e)
		}
	}
	return missing
}

// refDevelopingOfOne is what one cassette costs to develop.
func refDevelopingOfOne(s scenario.Scenario, d scenario.Developing, y refYield) rat {
	if d.Way == scenario.Lab {
		return typed(d.Price)
	}
	return typed(d.ChemistryPrice).over(refEffectiveRolls(s, d, y)).plus(typed(d.ExtraPerRoll))
}

// refEffectiveRolls is how many cassettes a set of chemistry really develops.
func refEffectiveRolls(s scenario.Scenario, d scenario.Developing, y refYield) rat {
	rolls := whole(d.ChemistryRolls)
	perMonth := refMonthlyDemand(s).times(whole(y.Cassettes)).over(y.Good)
	if !d.ChemistryKeepsMonth.Set || !perMonth.positive() {
		return rolls
	}
	return least(rolls, greatest(whole(1), typed(d.ChemistryKeepsMonth.Decimal).times(perMonth)))
}
