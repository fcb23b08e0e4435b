package figure

import (
	"math"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// amounts is how an axis of money is labelled: steps of 1, 2, 2.5 or 5 times a power of ten,
// never finer than the currency's minor unit, and labels with no more places than
// their step needs.
type amounts struct {
	most   int // steps
	digits int // of the minor unit
	locale money.Locale
}

// ticks are the labelled steps from the one at or below min to the one at or above max.
func (a amounts) ticks(low, high float64) []tick {
	step, places := a.step(high - low)
	first, last := int64(math.Floor(low/step+1e-9)), int64(math.Ceil(high/step-1e-9))
	if last <= first {
		last = first + 1
	}
	if last-first > 200 { // values beyond what a float tells apart
		return []tick{{value: low}, {value: high}}
	}
	var ticks []tick
	unit := exact.FromDecimal(decimal.NewFromFloat(step).Round(int32(a.digits)))
	for i := first; i <= last; i++ {
		value := exact.Int(i).Mul(unit)
		ticks = append(ticks, tick{value: value.Float(), label: a.locale.Number(value, places)})
	}
	return ticks
}

// step is the least nice step that covers span in the steps allowed, and the places
// its labels need.
func (a amounts) step(span float64) (step float64, places int) {
	least := math.Pow10(-a.digits)
	rough := max(span/float64(max(a.most, 1)), least)
	power := math.Floor(math.Log10(rough) + 1e-9)
	for {
		for _, nice := range []float64{1, 2, 2.5, 5} {
			step = nice * math.Pow10(int(power))
			if step >= rough*(1-1e-9) && math.Abs(step/least-math.Round(step/least)) < 1e-6 {
				return step, a.places(step)
			}
		}
		power++
	}
}

// places are none for whole steps, else those of the currency.
func (a amounts) places(step float64) int {
	if math.Abs(step-math.Round(step)) < 1e-9 {
		return 0
	}
	return a.digits
}

// plainTicks are labelled steps of a plain number between low and high, at most most,
// with the places their step needs.
func plainTicks(low, high float64, most int, l money.Locale) []tick {
	span := high - low
	if !(span > 0) {
		return nil
	}
	a := amounts{most: most, digits: min(max(3-int(math.Floor(math.Log10(span))), 0), 12), locale: l}
	step, _ := a.step(span)
	for a.digits > 0 && isWhole(step*math.Pow10(a.digits-1)) {
		a.digits--
	}
	var ticks []tick
	for _, t := range a.ticks(low, high) {
		if t.label != "" && t.value >= low-span*1e-9 && t.value <= high+span*1e-9 {
			ticks = append(ticks, t)
		}
	}
	return ticks
}

func isWhole(x float64) bool { return math.Abs(x-math.Round(x)) < 1e-6 }
