package rates

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// TurnRound is a quote the other way round: 1 EUR = 1.1252 USD becomes 1 USD =
// 0.888730892286 EUR. Turned round again it is what it was; ok is false where no number
// that a scenario can hold would give that.
func TurnRound(q scenario.Rate) (turned scenario.Rate, ok bool) {
	turned = q
	turned.One, turned.In = q.In, q.One
	if turned.Equals, ok = inverse(q.Equals); !ok {
		return q, false
	}
	back, ok := inverse(turned.Equals)
	if !ok || !back.Equal(q.Equals) {
		return q, false
	}
	return turned, true
}

const (
	inverseFigures = 12 // an inverse that does not come out even has so many
	typedFigures   = 9  // and what it is the inverse of no more than so many
)

// inverse is the short number that d is the inverse of, if it is one's, else its inverse.
func inverse(d decimal.Decimal) (decimal.Decimal, bool) {
	if d.Sign() <= 0 {
		return d, false
	}
	exactly := exact.Int(1).Quo(exact.FromDecimal(d))
	for n := 1; n <= typedFigures; n++ {
		short, ok := figures(exactly, n)
		if !ok {
			continue
		}
		if again, ok := figures(exact.Int(1).Quo(exact.FromDecimal(short)), inverseFigures); ok && again.Equal(d) {
			return short, true
		}
	}
	return figures(exactly, inverseFigures)
}
