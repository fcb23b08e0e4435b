package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// receipt is the order line by line, each with how it came about.
func (t *terms) receipt(o *Order) []Line {
	s, h := &o.Seller, &o.Home
	lines := []Line{
		{Kind: LineFilm, Seller: s.Film, Billed: true, Home: h.Film, How: t.howFilm()},
		{Kind: LineShipping, Seller: s.Shipping, Billed: true, Home: h.Shipping, How: t.howShipping(s)},
		{Kind: LineSalesTax, Seller: s.SalesTax, Billed: true, Home: h.SalesTax,
			How: percentOf(t.asking.salesTax, withShipping(s.Film, s.Shipping, t.asking.salesTaxOnShipping))},
	}
	prepaid := t.customs == scenario.ImportPrepaid
	if prepaid {
		lines = append(lines, Line{Kind: LinePrepaid, Seller: s.ImportTax, Billed: true, Home: h.ImportTax,
			How: percentOf(t.border.tax, withShipping(s.Film, s.Shipping, t.border.taxOnShipping))})
	}
	lines = append(lines,
		Line{Kind: LineCharged, Seller: exact.Sum(s.Film, s.Shipping, s.SalesTax, s.ImportTax), Billed: true, Home: o.Charged, How: t.howCharged()},
		Line{Kind: LineCardFee, Home: h.CardFee, How: t.howCardFee(o.Charged)},
		Line{Kind: LineDuty, Home: h.Duty, How: t.howBorder(h.Film, t.border.duty, t.border.dutyFree, t.dutyBase(h))},
	)
	if !prepaid {
		lines = append(lines, Line{Kind: LineImportTax, Home: h.ImportTax,
			How: t.howBorder(h.Film, t.border.tax, t.border.taxFree, t.taxBase(h))})
	}
	return append(lines,
		Line{Kind: LineHandling, Home: h.Handling, How: t.howHandling(h)},
		Line{Kind: LineLanded, Home: o.Landed},
	)
}

func (t *terms) howFilm() Formula {
	return Formula{Op: OpPrice, Percent: t.asking.discount, Of: t.asking.price, Units: t.units}
}

func (t *terms) howShipping(s *SellerLines) Formula {
	a := &t.asking
	switch {
	case a.shipsFree(s.Film):
		return Formula{Op: OpFree, Of: s.Film, Limit: a.freeFrom}
	case a.shipping.IsZero() && a.eachExtra.IsZero():
		return Formula{}
	}
	return Formula{Op: OpShipping, Of: a.shipping, Limit: a.eachExtra, Units: t.units}
}

func (t *terms) howCharged() Formula {
	if !t.foreign {
		return Formula{}
	}
	return Formula{Op: OpConverted}
}

func (t *terms) howCardFee(charged exact.Fraction) Formula {
	if !t.foreign && !t.asking.cardFee.IsZero() {
		return Formula{Op: OpSameCurrency}
	}
	return percentOf(t.asking.cardFee, charged)
}

// howBorder is how duty or import tax at the border comes about.
func (t *terms) howBorder(film, percent, free, base exact.Fraction) Formula {
	switch {
	case t.customs == scenario.ImportUndecided:
		return Formula{Op: OpUndecided}
	case t.customs == scenario.ImportNone || percent.IsZero():
		return Formula{}
	case !free.Less(film):
		return Formula{Op: OpWithin, Of: film, Limit: free}
	}
	return percentOf(percent, base)
}

func (t *terms) howHandling(l *Lines) Formula {
	switch {
	case t.customs == scenario.ImportUndecided:
		return Formula{Op: OpUndecided}
	case t.customs != scenario.ImportNone && l.Handling.IsZero() && !t.border.handling.IsZero():
		return Formula{Op: OpNothingDue}
	}
	return Formula{}
}

func percentOf(percent, of exact.Fraction) Formula {
	if percent.IsZero() {
		return Formula{}
	}
	return Formula{Op: OpPercent, Percent: percent, Of: of}
}
