package compare

import (
	"errors"
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// maxMonths is the longest a scenario may run, by the file format.
const maxMonths = 60

// gatherer turns the scenario's offers into terms.
type gatherer struct {
	s        *scenario.Scenario
	book     money.Book
	shooting shooting
	spoilt   spoilt
}

func newGatherer(s *scenario.Scenario, faults []scenario.Fault) *gatherer {
	return &gatherer{s: s, book: s.Book(), spoilt: sortFaults(s, faults), shooting: shootingOf(s)}
}

// terms gathers what the offer at index i depends on, or says why it cannot be
// computed.
func (g *gatherer) terms(i int) (terms, *Fault) {
	if g.spoilt.whole != nil {
		return terms{}, g.spoilt.whole
	}
	t, found := g.build(&g.s.Offers[i])
	return t, sharper(g.spoilt.offers[i], found)
}

func (g *gatherer) build(o *scenario.Offer) (terms, *Fault) {
	t := terms{
		home: roundingOf(g.s.Home), seller: roundingOf(o.Currency),
		foreign: o.Currency != g.s.Home,
		asking:  askingOf(o), customs: o.Import, border: borderOf(&g.s.Border),
		units: o.Units, onHand: exact.FromDecimal(o.OnHand), keeps: spanOf(o.KeepsMonths),
		shooting: g.shooting, reel: o.Kind == scenario.KindReel,
		hourly: exact.FromDecimal(g.s.Loading.HourlyValue),
	}
	for _, step := range []func(*terms, *scenario.Offer) *Fault{checkOffer, g.addLoading, g.addDeveloping, g.addRate, addYield} {
		if f := step(&t, o); f != nil {
			return t, f
		}
	}
	return t, nil
}

// checkOffer refuses numbers no figure can be made of, for callers whose scenario
// was never checked.
func checkOffer(t *terms, o *scenario.Offer) *Fault {
	switch {
	case !t.reel && o.Kind != scenario.KindBoxed:
		return badInput("kind", `the kind is neither "reel" nor "boxed"`)
	case o.Currency == "":
		return badInput("currency", "no currency is given")
	case t.units < 1:
		return badInput("units", "an order needs at least 1 unit")
	case t.keeps.set && t.keeps.months.Sign() <= 0:
		return badInput("keeps_months", "the film must keep longer than 0 months")
	case t.shooting.months < 1 || t.shooting.months > maxMonths:
		return badInput("months", fmt.Sprintf("the months are not from 1 to %d", maxMonths))
	case t.shooting.rollExposures.Sign() <= 0:
		return badInput("roll_exposures", "a standard roll needs at least 1 exposure")
	}
	return nil
}

func (g *gatherer) addLoading(t *terms, _ *scenario.Offer) (fault *Fault) {
	if !t.reel {
		return nil
	}
	if g.spoilt.loading != nil {
		return g.spoilt.loading
	}
	l := &g.s.Loading
	if l.CassetteLoads < 1 || l.CassettePack < 1 {
		return badInput("loading", "a cassette must take at least 1 load, a pack hold at least 1 cassette")
	}
	t.loading = loading{
		cassettePrice: exact.FromDecimal(l.CassettePrice),
		loads:         exact.Int(int64(l.CassetteLoads)), pack: exact.Int(int64(l.CassettePack)),
		owned:          exact.Int(int64(l.CassettesOwned)),
		consumables:    exact.FromDecimal(l.ConsumablesPerRoll),
		minutesPerReel: exact.FromDecimal(l.MinutesPerReel),
		minutesPerRoll: exact.FromDecimal(l.MinutesPerRoll),
	}
	t.loading.equipment, fault = gearOf(l.Equipment, "loading.equipment.lasts_rolls")
	return fault
}

func (g *gatherer) addDeveloping(t *terms, o *scenario.Offer) (fault *Fault) {
	if o.Developing == "" {
		return nil
	}
	d := findDeveloping(g.s, o.Developing)
	if d == nil {
		return &Fault{FaultDeveloping, "developing", fmt.Sprintf("no developing is named %q", o.Developing)}
	}
	if f := g.spoilt.developing[d.Name]; f != nil {
		return f
	}
	t.developing = developing{name: d.Name, way: d.Way}
	switch d.Way {
	case scenario.Lab:
		t.developing.perCassette = exact.FromDecimal(d.Price)
	case scenario.Home:
		if d.ChemistryRolls < 1 {
			return badInput("developing.chemistry_rolls", fmt.Sprintf("%s: a set of chemistry must develop at least 1 roll", d.Name))
		}
		t.developing.perCassette = exact.FromDecimal(d.ExtraPerRoll)
		t.developing.chemistryPrice = exact.FromDecimal(d.ChemistryPrice)
		t.developing.chemistryRolls = exact.Int(int64(d.ChemistryRolls))
		t.developing.keeps = spanOf(d.ChemistryKeepsMonth)
		t.developing.minutes = exact.FromDecimal(d.MinutesPerRoll)
	default:
		return badInput("developing.way", fmt.Sprintf(`%s: the way is neither "lab" nor "home"`, d.Name))
	}
	t.developing.equipment, fault = gearOf(d.Equipment, "developing.equipment.lasts_rolls")
	return fault
}

func (g *gatherer) addRate(t *terms, o *scenario.Offer) *Fault {
	route, fault := g.route(o.Currency, g.s.Home)
	if fault != nil {
		return fault
	}
	t.route, t.rate = route, route.Convert(exact.Int(1))
	return nil
}

// route is the way from one currency to another by quotes that are sound.
func (g *gatherer) route(from, to string) (money.Route, *Fault) {
	route, err := g.book.Route(from, to)
	var none *money.NoRate
	switch {
	case errors.As(err, &none):
		return nil, &Fault{FaultNoRate, "currency", err.Error()}
	case err != nil:
		return nil, badInput("rate", err.Error())
	}
	for _, step := range route {
		if f := g.spoilt.rates[step.Index]; f != nil {
			return nil, f
		}
		if step.Quote.Equals.Sign() <= 0 {
			return nil, badInput("rate", fmt.Sprintf("the rate from %s to %s is not above 0", step.Quote.One, step.Quote.In))
		}
	}
	return route, nil
}

func addYield(t *terms, o *scenario.Offer) (fault *Fault) {
	if t.reel {
		t.yield, fault = reelYield(o.Reel)
		t.remjet = o.Reel != nil && o.Reel.Remjet
	} else {
		t.yield, fault = boxedYield(o.Boxed)
	}
	return fault
}

func findDeveloping(s *scenario.Scenario, name string) *scenario.Developing {
	for i := range s.Developing {
		if s.Developing[i].Name == name {
			return &s.Developing[i]
		}
	}
	return nil
}

// roundingOf is to the minor unit of a currency; 2 places where it is unknown, which
// only a scenario that was never checked can bring about.
func roundingOf(code string) rounding {
	places, ok := money.Digits(code)
	if !ok {
		places = 2
	}
	return rounding{places: places}
}

func spanOf(m scenario.Maybe) span {
	return span{months: exact.FromDecimal(m.Decimal), set: m.Set}
}

func shootingOf(s *scenario.Scenario) shooting {
	sh := shooting{months: s.Months, rollExposures: exact.Int(int64(s.RollExposures))}
	for i, rolls := range s.Shooting.RollsPerMonth {
		sh.demand[i] = exact.FromDecimal(rolls).Mul(sh.rollExposures)
	}
	return sh
}

func askingOf(o *scenario.Offer) asking {
	return asking{
		price:    exact.FromDecimal(o.Price),
		discount: exact.FromDecimal(o.DiscountPercent),
		shipping: exact.FromDecimal(o.Shipping), eachExtra: exact.FromDecimal(o.ShippingEachExtra),
		freeFrom: exact.FromDecimal(o.FreeShippingFrom.Decimal), freeSet: o.FreeShippingFrom.Set,
		salesTax: exact.FromDecimal(o.SalesTaxPercent), salesTaxOnShipping: o.SalesTaxOnShipping,
		cardFee:    exact.FromDecimal(o.CardFeePercent),
		riseYearly: exact.FromDecimal(o.PriceRisePercent),
	}
}

func borderOf(b *scenario.Border) border {
	return border{
		duty: exact.FromDecimal(b.DutyPercent), dutyFree: exact.FromDecimal(b.DutyFreeUpTo),
		tax: exact.FromDecimal(b.TaxPercent), taxFree: exact.FromDecimal(b.TaxFreeUpTo),
		dutyOnShipping: b.DutyOnShipping, taxOnShipping: b.TaxOnShipping,
		handling: exact.FromDecimal(b.HandlingFee),
	}
}

// gearOf is the equipment that is not owned yet.
func gearOf(list []scenario.Equipment, key string) (gears []gear, fault *Fault) {
	for _, e := range list {
		if e.Owned {
			continue
		}
		if e.LastsRolls < 1 {
			return nil, badInput(key, fmt.Sprintf("%s must last at least 1 roll", e.Name))
		}
		gears = append(gears, gear{
			price: exact.FromDecimal(e.Price), resale: exact.FromDecimal(e.Resale),
			lasts: exact.Int(int64(e.LastsRolls)),
		})
	}
	return gears, nil
}
