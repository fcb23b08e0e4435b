package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// What follows here are sums and shares of a result that sentences and tables tell.

// StandardRolls is how many rolls of so many exposures the good ones of a unit make.
func (y *Yield) StandardRolls(exposures int) exact.Fraction {
	return y.Good.Quo(exact.Int(int64(exposures)))
}

// Landed is the part of a roll's cost that was paid for its order.
func (p *PerRoll) Landed() exact.Fraction { return exact.Sum(p.Film, p.Shipping, p.Tax, p.Fees) }

// AtBorder is what the state takes of an order: duty and import tax.
func (l *Lines) AtBorder() exact.Fraction { return l.Duty.Add(l.ImportTax) }

// Left is what everything that is left at the end is worth.
func (y *Year) Left() exact.Fraction { return y.FilmLeftValue.Add(y.LeftBesideFilm()) }

// LeftBesideFilm is what supplies and equipment are worth at the end.
func (y *Year) LeftBesideFilm() exact.Fraction { return y.SuppliesLeftValue.Add(y.EquipmentLeftValue) }

// Saving is what the offer's year costs less than the other's.
func (p *CurvePoint) Saving() exact.Fraction { return p.Other.Sub(p.Offer) }

// SavingOver is how much less a roll costs in an order of this size than in another.
func (s *OrderSize) SavingOver(other *OrderSize) exact.Fraction {
	return other.TotalPerRoll.Sub(s.TotalPerRoll)
}

// PriceInAYear is what one unit will cost in twelve months, in the seller's currency and
// unrounded.
func PriceInAYear(o *scenario.Offer) exact.Fraction {
	t := terms{asking: askingOf(o)}
	return t.priceIn(12)
}
