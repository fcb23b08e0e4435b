package compare

import (
	"errors"
	"fmt"

	"github.com/shopspring/decimal"

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
		return badInput("kind", scenario.NotAmong, scenario.Args{Got: string(o.Kind), Example: `kind = "reel" or "boxed"`})
	case o.Currency == "":
		return badInput("currency", scenario.Missing, scenario.Args{Example: `currency = "EUR"`})
	case t.units < 1:
		return tooFew("units", t.units)
	case t.keeps.set && t.keeps.months.Sign() <= 0:
		return notAbove("keeps_months", o.KeepsMonths.Decimal)
	case t.shooting.months < 1:
		return tooFew("months", t.shooting.months)
	case t.shooting.months > maxMonths:
		most := decimal.New(maxMonths, 0)
		return badInput("months", scenario.AboveMax, scenario.Args{
			Number: decimal.New(int64(t.shooting.months), 0), Bound: most, Rule: &scenario.Rule{Max: &most}, Wanted: scenario.ValueWhole,
		})
	case t.shooting.rollExposures.Sign() <= 0:
		return tooFew("roll_exposures", int(toInt64(t.shooting.rollExposures)))
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
	if l.CassetteLoads < 1 {
		return tooFew("loading.cassette_loads", l.CassetteLoads)
	}
	if l.CassettePack < 1 {
		return tooFew("loading.cassette_pack", l.CassettePack)
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
		return found(FaultDeveloping, "developing", scenario.NoProcess, scenario.Args{Got: o.Developing})
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
			return tooFew("developing.chemistry_rolls", d.ChemistryRolls)
		}
		t.developing.perCassette = exact.FromDecimal(d.ExtraPerRoll)
		t.developing.chemistryPrice = exact.FromDecimal(d.ChemistryPrice)
		t.developing.chemistryRolls = exact.Int(int64(d.ChemistryRolls))
		t.developing.keeps = spanOf(d.ChemistryKeepsMonth)
		t.developing.minutes = exact.FromDecimal(d.MinutesPerRoll)
	default:
		return badInput("developing.way", scenario.NotAmong, scenario.Args{Got: string(d.Way), Example: `way = "lab" or "home"`})
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
	var twice *money.TwoRates
	switch {
	case errors.As(err, &none):
		return nil, found(FaultNoRate, "currency", scenario.NoRate, scenario.Args{From: none.From, To: none.To})
	case errors.As(err, &twice):
		return nil, badInput("rate", scenario.TwoRates, scenario.Args{From: twice.From, To: twice.To})
	}
	for _, step := range route {
		if f := g.spoilt.rates[step.Index]; f != nil {
			return nil, f
		}
		if step.Quote.Equals.Sign() <= 0 {
			return nil, notAbove(fmt.Sprintf("rate[%d].equals", step.Index+1), step.Quote.Equals)
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

// roundingOf is to the minor unit of a currency.
func roundingOf(code string) rounding { return rounding{places: money.Places(code)} }

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
			return nil, tooFew(key, e.LastsRolls)
		}
		gears = append(gears, gear{
			price: exact.FromDecimal(e.Price), resale: exact.FromDecimal(e.Resale),
			lasts: exact.Int(int64(e.LastsRolls)),
		})
	}
	return gears, nil
}
