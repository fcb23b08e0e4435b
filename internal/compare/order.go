package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// order is the landed cost of one order at a price per unit. Each line is something
// somebody bills, so each is rounded.
func (t *terms) order(price exact.Fraction) Order {
	return t.orderOf(t.sellerLines(price))
}

// orderOf is the landed cost of an order for which the seller bills these lines.
func (t *terms) orderOf(s SellerLines) Order {
	sum := exact.Sum(s.Film, s.Shipping, s.SalesTax, s.ImportTax)
	o := Order{Units: t.units, Seller: s, Charged: t.inHome(sum), Route: t.route}
	o.Home = Lines{
		Shipping: t.inHome(s.Shipping), SalesTax: t.inHome(s.SalesTax), ImportTax: t.inHome(s.ImportTax),
	}
	// The card statement shows one amount; film is what is left of it, so that the
	// receipt adds up.
	o.Home.Film = o.Charged.Sub(o.Home.Shipping).Sub(o.Home.SalesTax).Sub(o.Home.ImportTax)
	if t.foreign {
		o.Home.CardFee = t.home.of(t.asking.cardFee.Percent().Mul(o.Charged))
	}
	t.addBorder(&o.Home)
	l := &o.Home
	o.Landed = exact.Sum(o.Charged, l.CardFee, l.Duty, l.Handling)
	if t.customs == scenario.ImportBorder { // else it is in what the seller charges
		o.Landed = o.Landed.Add(l.ImportTax)
	}
	return o
}

// inHome converts what the seller bills, rounded.
func (t *terms) inHome(amount exact.Fraction) exact.Fraction {
	return t.home.of(amount.Mul(t.rate))
}

// sellerLines is what the seller bills, in the seller's currency.
func (t *terms) sellerLines(price exact.Fraction) SellerLines {
	a, n := &t.asking, exact.Int(int64(t.units))
	var s SellerLines
	s.Film = t.seller.of(n.Mul(price).Mul(exact.Int(100).Sub(a.discount).Percent()))
	if !a.shipsFree(s.Film) {
		s.Shipping = t.seller.of(a.postage(t.units))
	}
	s.SalesTax = t.seller.of(a.salesTax.Percent().Mul(withShipping(s.Film, s.Shipping, a.salesTaxOnShipping)))
	if t.customs == scenario.ImportPrepaid {
		s.ImportTax = t.seller.of(t.border.tax.Percent().Mul(withShipping(s.Film, s.Shipping, t.border.taxOnShipping)))
	}
	return s
}

// postage is what sending so many units costs where it is not free.
func (a *asking) postage(units int) exact.Fraction {
	return a.shipping.Add(exact.Int(int64(units - 1)).Mul(a.eachExtra))
}

func (a *asking) shipsFree(film exact.Fraction) bool {
	return a.freeSet && !film.Less(a.freeFrom)
}

// addBorder adds what is paid at the border to lines that hold film and shipping.
func (t *terms) addBorder(l *Lines) {
	b := &t.border
	atBorder := exact.Fraction{}
	switch t.customs {
	case scenario.ImportBorder:
		l.Duty = t.duty(l)
		if b.taxFree.Less(l.Film) {
			l.ImportTax = t.home.of(b.tax.Percent().Mul(t.taxBase(l)))
		}
		atBorder = l.Duty.Add(l.ImportTax)
	case scenario.ImportPrepaid:
		l.Duty = t.duty(l)
		atBorder = l.Duty
	}
	if atBorder.Sign() > 0 {
		l.Handling = t.home.of(b.handling)
	}
}

func (t *terms) duty(l *Lines) exact.Fraction {
	b := &t.border
	if !b.dutyFree.Less(l.Film) {
		return exact.Fraction{}
	}
	return t.home.of(b.duty.Percent().Mul(t.dutyBase(l)))
}

func (t *terms) dutyBase(l *Lines) exact.Fraction {
	return withShipping(l.Film, l.Shipping, t.border.dutyOnShipping)
}

// taxBase is what import tax at the border is taken of.
func (t *terms) taxBase(l *Lines) exact.Fraction {
	return withShipping(l.Film, l.Shipping, t.border.taxOnShipping).Add(l.Duty)
}

func withShipping(film, shipping exact.Fraction, counts bool) exact.Fraction {
	if counts {
		return film.Add(shipping)
	}
	return film
}

// priceIn is the price of one unit in month m: it drifts by the month, and never
// below 0.
func (t *terms) priceIn(m int) exact.Fraction {
	return t.asking.price.Mul(exact.Max(exact.Fraction{}, t.asking.drift(m)))
}

// drift is what a price of 1 has become by month m; it may be below 0.
func (a *asking) drift(m int) exact.Fraction {
	return exact.Int(1).Add(a.riseYearly.Percent().Mul(exact.Ratio(int64(m), 12)))
}
