package rates

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// significantFigures of a conversion rate: article 4 (1) of Council Regulation (EC)
// No 1103/97 counts six.
const significantFigures = 6

// mostPlaces is how many digits a scenario's numbers may have on either side of the point.
const mostPlaces = 12

// SixFigures is a rate above 0 to six significant figures, an exact half upwards, and to
// no more than twelve decimals. ok is false where a scenario could not hold that.
func SixFigures(rate exact.Fraction) (d decimal.Decimal, ok bool) {
	return figures(rate, significantFigures)
}

// figures is a number above 0 to n significant figures, an exact half upwards, and to no
// more than mostPlaces decimals, without noughts at its end; ok is false where it has
// more digits before the point than a scenario can hold, or nothing is left of it.
func figures(f exact.Fraction, n int) (d decimal.Decimal, ok bool) {
	if f.Sign() <= 0 || !f.Less(tens[mostPlaces]) {
		return d, false
	}
	return plain(f.Round(placesOf(f, n)))
}

// placesOf is how many decimals a number above 0 has where it is written to n significant
// figures.
func placesOf(f exact.Fraction, n int) int {
	places := n
	for limit := exact.Int(1); !f.Less(limit); places-- {
		limit = limit.Mul(tens[1])
	}
	for limit := exact.Ratio(1, 10); places < mostPlaces && f.Less(limit); places++ {
		limit = limit.Quo(tens[1])
	}
	return min(places, mostPlaces)
}

// asTyped is a rate as a scenario can hold it: as it is where it has no more than twelve
// decimals, else to six significant figures.
func asTyped(rate exact.Fraction) (d decimal.Decimal, ok bool) {
	if rate.Round(mostPlaces).Equal(rate) {
		return plain(rate)
	}
	return SixFigures(rate)
}

// plain is a number of at most mostPlaces decimals, without noughts at its end; ok is
// false where a scenario could not hold it.
func plain(f exact.Fraction) (d decimal.Decimal, ok bool) {
	places := 0
	for !f.Round(places).Equal(f) {
		places++
	}
	return f.Decimal(places), f.Sign() > 0 && f.Less(tens[mostPlaces])
}
