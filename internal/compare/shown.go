package compare

import (
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Shown is another currency that a comparison is shown in; the zero value is the home
// currency.
type Shown struct {
	Currency string
	Factor   exact.Fraction // of it for 1 of home
}

// Currency is the one that the comparison's figures are in.
func (c *Comparison) Currency() string {
	if c.Shown.Currency != "" {
		return c.Shown.Currency
	}
	return c.Scenario.Home
}

// AtHome is the comparison in the home currency.
func (c *Comparison) AtHome() *Comparison {
	if c.home != nil {
		return c.home
	}
	return c
}

// In is the comparison shown in another currency, of which factor make 1 of home: every
// figure in the home currency times the factor, never rounded. Who wins, the warnings, and
// what is in a seller's currency stay; c does too.
func (c *Comparison) In(currency string, factor exact.Fraction) *Comparison {
	c = c.AtHome()
	s := *c
	s.Shown, s.home = Shown{currency, factor}, c
	s.Offers = slices.Clone(c.Offers)
	for i := range s.Offers {
		s.Shown.offer(&s.Offers[i])
	}
	s.Verdict.Pair = s.Shown.against(c.Verdict.Pair)
	s.Outlook = s.Shown.outlook(c.Outlook)
	return &s
}

// of is a comparison at home in the currency; nil for none.
func (s Shown) of(c *Comparison) *Comparison {
	if c == nil {
		return nil
	}
	return c.In(s.Currency, s.Factor)
}

// all brings amounts to the currency in place.
func (s Shown) all(amounts ...*exact.Fraction) {
	for _, a := range amounts {
		*a = a.Mul(s.Factor)
	}
}

func (s Shown) list(amounts []exact.Fraction) []exact.Fraction {
	shown := slices.Clone(amounts)
	for i := range shown {
		s.all(&shown[i])
	}
	return shown
}

func (s Shown) maybe(amount *exact.Fraction) *exact.Fraction {
	if amount == nil {
		return nil
	}
	shown := amount.Mul(s.Factor)
	return &shown
}

func (s Shown) offer(o *Offer) {
	h, p, y := &o.Order.Home, &o.PerRoll, &o.Year
	s.all(&h.Film, &h.Shipping, &h.SalesTax, &h.CardFee, &h.Duty, &h.ImportTax, &h.Handling, &o.Order.Charged, &o.Order.Landed)
	s.all(&p.Film, &p.Shipping, &p.Tax, &p.Fees, &p.Loading, &p.Equipment, &p.Developing, &p.Time, &p.Total, &o.PerExposure, &o.DevelopingEach)
	s.all(&y.Total, &y.Time, &y.FilmLeftValue, &y.SuppliesLeftValue, &y.EquipmentLeftValue, &y.Cost, &y.FilmCost, &y.DevelopingCost)
	y.Cash, y.Cumulative = s.list(y.Cash), s.list(y.Cumulative)
	o.Against = s.against(o.Against)
	o.Order.Receipt = slices.Clone(o.Order.Receipt)
	for i := range o.Order.Receipt {
		line := &o.Order.Receipt[i]
		s.all(&line.Home)
		if !line.Billed {
			s.all(&line.How.Of, &line.How.Limit)
		}
	}
}

func (s Shown) against(a *Against) *Against {
	if a == nil {
		return nil
	}
	shown := *a
	s.all(&shown.SavingPerRoll, &shown.SavingCash, &shown.Saving, &shown.SavingFilm, &shown.SavingDeveloping, &shown.Equipment, &shown.BeforeWear)
	return &shown
}

func (s Shown) outlook(o *Outlook) *Outlook {
	if o == nil {
		return nil
	}
	shown := &Outlook{Offers: slices.Clone(o.Offers), Pair: s.pair(o.Pair)}
	for i := range shown.Offers {
		a := &shown.Offers[i]
		a.Pair, a.OrderSizes, a.CutSizes = s.pair(a.Pair), slices.Clone(a.OrderSizes), slices.Clone(a.CutSizes)
		for k := range a.OrderSizes {
			s.all(&a.OrderSizes[k].LandedPerUnit, &a.OrderSizes[k].TotalPerRoll)
		}
		for k := range a.CutSizes {
			s.all(&a.CutSizes[k].TotalPerRoll)
		}
	}
	return shown
}

func (s Shown) pair(p *PairOutlook) *PairOutlook {
	if p == nil {
		return nil
	}
	shown := *p
	s.all(&shown.Saving)
	shown.Flips, shown.Swings = slices.Clone(p.Flips), slices.Clone(p.Swings)
	for i := range shown.Flips {
		shown.Flips[i] = s.flip(shown.Flips[i])
	}
	for i := range shown.Swings {
		w := &shown.Swings[i]
		s.all(&w.SavingLow, &w.SavingHigh)
		if InHome(w.Input) {
			s.all(&w.Today, &w.Low, &w.High)
		}
	}
	return &shown
}

func (s Shown) flip(f Flip) Flip {
	if InHome(f.Input) {
		s.all(&f.Today)
		f.Below, f.Above, f.BelowEnd, f.AboveEnd = s.maybe(f.Below), s.maybe(f.Above), s.maybe(f.BelowEnd), s.maybe(f.AboveEnd)
	}
	return f
}

// InHome says whether an input is an amount of the home currency.
func InHome(i Input) bool {
	return i == scenario.InputHourlyValue || i == scenario.InputOfferDeveloping || i == scenario.InputBaselineDeveloping
}

func (s Shown) curve(c *Curve) *Curve {
	if c == nil {
		return nil
	}
	shown := *c
	shown.Points, shown.Flip = slices.Clone(c.Points), s.flip(c.Flip)
	for i := range shown.Points {
		s.all(&shown.Points[i].Offer, &shown.Points[i].Other)
	}
	if InHome(c.Input) {
		s.all(&shown.Today)
		shown.Breaks = s.list(c.Breaks)
		for i := range shown.Points {
			s.all(&shown.Points[i].At)
		}
	}
	return &shown
}
