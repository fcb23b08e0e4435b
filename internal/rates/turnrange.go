package rates

import (
	"slices"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// TurnRanges has the ranges of a quote go along when it was replaced by one between the
// same currencies the other way round: what was the lowest becomes the inverse of the
// highest. A range that no numbers of a scenario can hold stays as it was.
func TurnRanges(s *scenario.Scenario, was, now scenario.Rate) {
	from, to := scenario.RateInput(was), scenario.RateInput(now)
	if was.One != now.In || was.In != now.One || from == to || slices.Contains(s.Inputs(), from) {
		return // another quote of the same kind has them
	}
	for i, g := range s.Ranges {
		taken := slices.ContainsFunc(s.Ranges, func(o scenario.Range) bool { return o.Input == to && o.Offer == g.Offer })
		if turned, ok := turnRange(g); ok && g.Input == from && !taken {
			turned.Input = to
			s.Ranges[i] = turned
		}
	}
}

// turnRange is a range of a quote for that quote turned round. It holds at least what it
// held, to twelve figures, and turned round again it is what it was.
func turnRange(g scenario.Range) (turned scenario.Range, ok bool) {
	low, lowOK := outerInverse(g.High, false)
	high, highOK := outerInverse(g.Low, true)
	turned = g
	turned.Low, turned.High = low, high
	return turned, lowOK && highOK && low.Cmp(high) < 0
}

// outerInverse is the shorter number that d is the outer inverse of, if it is one's, else
// the inverse of d, rounded up or down.
func outerInverse(d decimal.Decimal, up bool) (decimal.Decimal, bool) {
	if d.Sign() <= 0 {
		return d, false
	}
	exactly := exact.Int(1).Quo(exact.FromDecimal(d))
	for n := 1; n < min(typedFigures+1, figuresOf(d)); n++ {
		short, ok := figures(exactly, n)
		if !ok {
			continue
		}
		if again, ok := outward(exact.Int(1).Quo(exact.FromDecimal(short)), !up); ok && again.Equal(d) {
			return short, true
		}
	}
	return outward(exactly, up)
}

// figuresOf is how many significant figures a number has.
func figuresOf(d decimal.Decimal) int {
	return len(strings.TrimRight(d.Coefficient().String(), "0"))
}

// outward is a number above 0 to the figures of an inverse, rounded up or down; ok is
// false where a scenario could not hold it.
func outward(f exact.Fraction, up bool) (d decimal.Decimal, ok bool) {
	if f.Sign() <= 0 || !f.Less(tens[mostPlaces]) {
		return d, false
	}
	places := placesOf(f, inverseFigures)
	rounded, step := f.Round(places), exact.Int(1).Quo(tens[places])
	switch {
	case up && rounded.Less(f):
		rounded = rounded.Add(step)
	case !up && f.Less(rounded):
		rounded = rounded.Sub(step)
	}
	d, ok = plain(rounded)
	return d, ok && d.Sign() > 0
}
