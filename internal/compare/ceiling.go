package compare

import (
	"context"

	"reelworth/internal/exact"
)

// CeilingPercent is the saving a price ceiling is told for unless another is chosen.
const CeilingPercent = 10

// Ceiling is the highest price of a unit at which an offer still saves a percent per
// roll against another, lines rounded.
type Ceiling struct {
	SavingPercent exact.Fraction
	Price         exact.Fraction // in the seller's currency, a whole number of its minor unit
	Currency      string
}

// mostDoublings is how often a price is doubled in search of one that is too high.
// A price of 12 digits in a currency of 4 takes 54.
const mostDoublings = 62

// ceiling is the highest price at which the offer still saves; nil when none does, or
// when every price does. Its only error is ctx's.
func ceiling(ctx context.Context, t *terms, other *PerRoll, percent exact.Fraction, currency string) (*Ceiling, error) {
	if other.Total.Sign() <= 0 {
		return nil, ctx.Err()
	}
	o := t.order(t.asking.price)
	p := t.perRoll(&o)
	landedPart := exact.Sum(p.Film, p.Shipping, p.Tax, p.Fees)
	most := other.Total.Mul(exact.Int(100).Sub(percent).Percent()).Sub(p.Total.Sub(landedPart))
	rolls := t.usedShare().Mul(exact.Int(int64(t.units))).Mul(t.standardRolls())
	h := priceHunt{ctx: ctx, t: t, most: most.Mul(rolls), minor: t.seller.minor()}
	n, ok := h.highest()
	if err := ctx.Err(); err != nil || !ok {
		return nil, err
	}
	return &Ceiling{SavingPercent: percent, Price: h.price(n), Currency: currency}, nil
}

// priceHunt looks for the highest price, in minor units, whose order lands at no more
// than most. Rounding makes the landed cost fall now and then where it should rise, and
// free shipping makes it fall for good, so every price is considered: whole stretches
// at once, where even the least they could cost is too much.
type priceHunt struct {
	ctx   context.Context // once it is done nothing is found any more
	t     *terms
	most  exact.Fraction
	minor exact.Fraction
}

func (h *priceHunt) price(n int64) exact.Fraction { return exact.Int(n).Mul(h.minor) }

func (h *priceHunt) highest() (n int64, ok bool) {
	// The least a price of n or more can come to is its film alone.
	tooMuch := func(n int64) bool {
		s := h.t.sellerLines(h.price(n))
		return h.most.Less(h.t.inHome(s.Film))
	}
	if tooMuch(1) {
		return 0, false
	}
	top := int64(1)
	for i := 0; !tooMuch(top); i++ {
		if i == mostDoublings {
			return 0, false
		}
		top *= 2
	}
	return h.within(1, top)
}

// within is the highest from a to b.
func (h *priceHunt) within(a, b int64) (n int64, ok bool) {
	if h.ctx.Err() != nil {
		return 0, false
	}
	if a == b {
		return a, !h.most.Less(h.t.order(h.price(a)).Landed)
	}
	if h.most.Less(h.least(a, b)) {
		return 0, false
	}
	mid := a + (b-a)/2
	if n, ok := h.within(mid+1, b); ok {
		return n, true
	}
	return h.within(a, mid)
}

// least is a bound that no price from a to b lands below: each line is taken of the
// least there can be. Where the lines of a and b are the same it is what they land at.
func (h *priceHunt) least(a, b int64) exact.Fraction {
	t := h.t
	low, high := t.sellerLines(h.price(a)), t.sellerLines(h.price(b))
	if !low.Shipping.Equal(high.Shipping) {
		return t.inHome(low.Film) // shipping becomes free on the way
	}
	charged := t.inHome(exact.Sum(low.Film, low.Shipping, low.SalesTax, low.ImportTax))
	l := Lines{Shipping: t.inHome(low.Shipping)}
	// Film is what is left of charged: least where the taxes are most.
	l.Film = charged.Sub(l.Shipping).Sub(t.inHome(high.SalesTax)).Sub(t.inHome(high.ImportTax))
	if t.foreign {
		l.CardFee = t.home.of(t.asking.cardFee.Percent().Mul(charged))
	}
	t.addBorder(&l)
	return exact.Sum(charged, l.CardFee, l.Duty, l.ImportTax, l.Handling)
}
