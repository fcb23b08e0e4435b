package workbook

import (
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// placer places a line under its label and gives a term that refers to it.
type placer func(label string, t term, st style) term

// order are the landed lines of one order.
type order struct {
	film, shipping, salesTax, prepaid                 term // at home
	charged, cardFee, duty, tax, handling, landedCost term
}

// orderAt places the lines of an order of an offer at a price, in the order of the
// receipt: each is rounded, because somebody bills it.
func (o *offer) orderAt(price term, put placer) order {
	b, seller, home := o.b, o.inSeller(), o.b.inHome()
	units, places := o.figure("units"), money.Places(o.scenario.Currency)
	film := put(words.SheetSellerFilm, round(units.times(price).times(o.figure("discount_percent").rest()), places), seller)
	postage := o.figure("shipping").plus(units.minus(whole(1)).times(o.figure("shipping_each_extra")))
	free := both(b.in.isSet(o.prefix+"free_shipping_from"), atLeast(film, o.figure("free_shipping_from")))
	shipping := put(words.SheetSellerShipping, when(free, whole(0), round(postage, places)), seller)
	counted := when(b.in.holds(o.prefix+"sales_tax_on_shipping"), shipping, whole(0))
	salesTax := put(words.SheetSellerTax, round(o.figure("sales_tax_percent").percent().times(film.plus(counted)), places), seller)
	prepaid := put(words.SheetSellerImport, when(o.imports(scenario.ImportPrepaid),
		round(b.in.figure("border_tax_percent").percent().times(film.plus(taxed("tax", b, shipping))), places), whole(0)), seller)

	var l order
	l.charged = put(words.SheetChargedLine, round(o.converted(sum(film, shipping, salesTax, prepaid)), b.digits), home)
	l.shipping = put(words.SheetShipping, round(o.converted(shipping), b.digits), home)
	l.salesTax = put(words.SheetSalesTax, round(o.converted(salesTax), b.digits), home)
	l.prepaid = put(words.SheetPrepaid, round(o.converted(prepaid), b.digits), home)
	// Rounded only to be rid of what binary numbers leave over.
	l.film = put(words.SheetFilm, round(l.charged.minus(l.shipping).minus(l.salesTax).minus(l.prepaid), b.digits), home)
	o.addBorder(&l, put)
	return l
}

// addBorder places what comes on top of the seller's charge.
func (o *offer) addBorder(l *order, put placer) {
	b, home := o.b, o.b.inHome()
	fee := whole(0)
	if o.scenario.Currency != b.home {
		fee = round(o.figure("card_fee_percent").percent().times(l.charged), b.digits)
	}
	l.cardFee = put(words.SheetCardFee, fee, home)
	dutiable := either(o.imports(scenario.ImportBorder), o.imports(scenario.ImportPrepaid))
	l.duty = put(words.SheetDuty, when(both(dutiable, above(l.film, b.in.figure("border_duty_free_up_to"))),
		round(b.in.figure("border_duty_percent").percent().times(l.film.plus(taxed("duty", b, l.shipping))), b.digits), whole(0)), home)
	l.tax = put(words.SheetImportTax, when(both(o.imports(scenario.ImportBorder), above(l.film, b.in.figure("border_tax_free_up_to"))),
		round(b.in.figure("border_tax_percent").percent().times(sum(l.film, taxed("tax", b, l.shipping), l.duty)), b.digits), whole(0)), home)
	l.handling = put(words.SheetHandling, when(above(l.duty.plus(l.tax), whole(0)),
		round(b.in.figure("border_handling_fee"), b.digits), whole(0)), home)
	l.landedCost = put(words.SheetLanded, sum(l.charged, l.cardFee, l.duty, l.tax, l.handling), home.strong())
}

// taxed is shipping as far as duty or tax counts it.
func taxed(kind string, b *book, shipping term) term {
	return when(b.in.holds("border_"+kind+"_on_shipping"), shipping, whole(0))
}

// converted takes an amount from the seller's currency home, with or against each quote.
func (o *offer) converted(amount term) term {
	for _, step := range o.computed.Order.Route {
		rate := o.b.in.figure(rateName(o.b.s.Rates, step.Index) + "equals")
		if step.Against {
			amount = amount.over(rate)
		} else {
			amount = amount.times(rate)
		}
	}
	return amount
}

func (o *offer) imports(way scenario.Import) truth { return o.b.in.is(o.prefix+"import", string(way)) }
