package compare

import (
	"context"

	"reelworth/internal/exact"
)

// MostUnits is the largest order that order sizes are told for.
const MostUnits = 12

// OrderSize is what it comes to when so many units are bought in one order.
type OrderSize struct {
	Units         int
	LandedPerUnit exact.Fraction
	TotalPerRoll  exact.Fraction  // as Offer.PerRoll.Total
	MonthsToShoot *exact.Fraction // nil where nothing is shot
	Best          bool
	Why           SizeReason
	// Amount goes with some reasons: the share of film shot before it is too old.
	Amount exact.Fraction
}

// SizeReason says why a size of order is the best, or why it is not.
type SizeReason string

// The reasons. The first group is given for the best size, the second for the others.
const (
	SizeFreeShipping SizeReason = "free-shipping" // the film is worth enough to ship free
	SizeShipping     SizeReason = "shipping"      // shipping is shared by more units
	SizeFees         SizeReason = "fees"          // card and handling fees are shared by more units
	SizeRounding     SizeReason = "rounding"      // lines round to a little less
	SizeNoCheaper    SizeReason = "no-cheaper"    // one unit: more of them bring nothing
	SizeOneLasts     SizeReason = "one-lasts"     // one unit: even that lasts longer than the months compared
	SizeNoDemand     SizeReason = "no-demand"     // one unit: nothing is shot

	SizeTooMany    SizeReason = "too-many"    // takes longer to shoot than the months compared
	SizeTooOld     SizeReason = "too-old"     // some is too old before it is shot: Amount is the share that is shot
	SizeOverLimit  SizeReason = "over-limit"  // duty or tax is due that the best size is free of
	SizePaysPost   SizeReason = "pays-post"   // too little film to ship free, as the best size does
	SizeSharesLess SizeReason = "shares-less" // shipping and fees are shared by fewer units
	SizeSame       SizeReason = "same"        // costs the same as the best, and is more at once
	SizeDearer     SizeReason = "dearer"      // each further unit brings more costs than it shares
)

// sized is an order of some size while the best is looked for.
type sized struct {
	OrderSize
	order Order
	parts PerRoll
	used  exact.Fraction // share shot before it is too old
	free  bool           // the film alone makes shipping free that would cost something
	fits  bool           // shot within the months
}

// orderSizes is the offer bought in orders of 1 to MostUnits units. Its only error is
// ctx's.
func orderSizes(ctx context.Context, t *terms) ([]OrderSize, error) {
	all := make([]sized, MostUnits)
	monthly := t.shooting.mean()
	for i := range all {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		all[i] = sizeOf(*t, i+1, monthly)
	}
	best := &all[0]
	for i := range all {
		if s := &all[i]; s.fits && (!best.fits || s.TotalPerRoll.Less(best.TotalPerRoll)) {
			best = s
		}
	}
	best.Best = true
	list := make([]OrderSize, len(all))
	for i := range all {
		all[i].explain(&all[0], best)
		list[i] = all[i].OrderSize
	}
	return list, nil
}

func sizeOf(t terms, units int, monthly exact.Fraction) sized {
	t.units = units
	s := sized{order: t.order(t.asking.price), used: t.usedShare()}
	s.parts = t.perRoll(&s.order)
	s.free = t.asking.shipsFree(s.order.Seller.Film) && t.asking.postage(units).Sign() > 0
	s.Units = units
	s.LandedPerUnit = s.order.Landed.Quo(exact.Int(int64(units)))
	s.TotalPerRoll = s.parts.Total
	if monthly.Sign() > 0 {
		months := t.orderSize().Quo(monthly)
		s.MonthsToShoot = &months
		s.fits = !exact.Int(int64(t.shooting.months)).Less(months)
	}
	return s
}

// explain gives a size its reason.
func (s *sized) explain(one, best *sized) {
	switch {
	case s.Best && s.MonthsToShoot == nil:
		s.Why = SizeNoDemand
	case s.Best && !s.fits:
		s.Why = SizeOneLasts
	case s.Best && s.Units == 1:
		s.Why = SizeNoCheaper
	case s.Best:
		s.Why = s.gain(one)
	case s.MonthsToShoot == nil:
		s.Why = SizeNoDemand
	case !s.fits:
		s.Why = SizeTooMany
	default:
		s.Why = s.lack(best)
	}
	if s.Why == SizeTooOld {
		s.Amount = s.used
	}
}

// gain is what makes a size better than a single unit: the part of a roll's cost that
// falls most.
func (s *sized) gain(one *sized) SizeReason {
	if s.free && !one.free {
		return SizeFreeShipping
	}
	why, most := SizeRounding, exact.Fraction{}
	for _, part := range []struct {
		why       SizeReason
		one, here exact.Fraction
	}{
		{SizeShipping, one.parts.Shipping, s.parts.Shipping},
		{SizeFees, one.parts.Fees, s.parts.Fees},
		{SizeRounding, one.parts.Film.Add(one.parts.Tax), s.parts.Film.Add(s.parts.Tax)},
	} {
		if fall := part.one.Sub(part.here); most.Less(fall) {
			why, most = part.why, fall
		}
	}
	return why
}

// lack is what keeps a size that would be shot in time from being the best.
func (s *sized) lack(best *sized) SizeReason {
	l, b := &s.order.Home, &best.order.Home
	switch {
	case s.TotalPerRoll.Equal(best.TotalPerRoll):
		return SizeSame
	case s.used.Less(best.used):
		return SizeTooOld
	case l.Duty.Sign() > 0 && b.Duty.IsZero(), l.ImportTax.Sign() > 0 && b.ImportTax.IsZero():
		return SizeOverLimit
	case best.free && !s.free:
		return SizePaysPost
	case s.Units < best.Units:
		return SizeSharesLess
	}
	return SizeDearer
}
