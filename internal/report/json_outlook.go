package report

import (
	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// What changes the answer is written where a comparison carries its outlook.

// jsonChanges is what is added to an offer held against the baseline.
type jsonChanges struct {
	Flips   []jsonFlip   `json:"flips"`
	Swings  []jsonSwing  `json:"swings"`
	Ceiling *jsonCeiling `json:"price_ceiling"`
}

type jsonFlip struct {
	Input compare.Input `json:"input"`
	Today number        `json:"today"`
	Below *number       `json:"below"`
	Above *number       `json:"above"`
}

type jsonSwing struct {
	Input      compare.Input `json:"input"`
	Low        number        `json:"low"`
	High       number        `json:"high"`
	SavingLow  number        `json:"saving_low"`
	SavingHigh number        `json:"saving_high"`
}

type jsonCeiling struct {
	SavingPercent number `json:"saving_percent"`
	Price         number `json:"price"`
}

type jsonSize struct {
	Units         int     `json:"units"`
	LandedPerUnit number  `json:"landed_per_unit"`
	TotalPerRoll  number  `json:"total_per_roll"`
	MonthsToShoot *number `json:"months_to_shoot"`
	Best          bool    `json:"best"`
	Why           string  `json:"why"`
}

// jsonVolume is the flip of the rolls a year, which are whole rolls but for today's.
type jsonVolume struct {
	Today number `json:"today"`
	Below *int64 `json:"below"`
	Above *int64 `json:"above"`
}

// outlookOf is the outlook of the offer at place i; nil where none was asked for.
func outlookOf(c *compare.Comparison, i int) *compare.OfferOutlook {
	if c.Outlook == nil || i >= len(c.Outlook.Offers) {
		return nil
	}
	return &c.Outlook.Offers[i]
}

func changesOf(o *compare.OfferOutlook) *jsonChanges {
	j := &jsonChanges{Flips: make([]jsonFlip, len(o.Flips)), Swings: make([]jsonSwing, len(o.Swings))}
	for i, f := range o.Flips {
		j.Flips[i] = jsonFlip{f.Input, number(f.Today), numberOrNull(f.Below), numberOrNull(f.Above)}
	}
	for i, s := range o.Swings {
		j.Swings[i] = jsonSwing{s.Input, number(s.Low), number(s.High), number(s.SavingLow), number(s.SavingHigh)}
	}
	if o.Ceiling != nil {
		j.Ceiling = &jsonCeiling{number(o.Ceiling.SavingPercent), number(o.Ceiling.Price)}
	}
	return j
}

func sizesOf(c *compare.Comparison, o *compare.OfferOutlook) []jsonSize {
	list := make([]jsonSize, len(o.OrderSizes))
	for i, s := range o.OrderSizes {
		list[i] = jsonSize{
			Units: s.Units, LandedPerUnit: number(s.LandedPerUnit), TotalPerRoll: number(s.TotalPerRoll),
			MonthsToShoot: numberOrNull(s.MonthsToShoot), Best: s.Best, Why: spaced(words.SizeReason(c, s, money.English)),
		}
	}
	return list
}

func volumeOf(c *compare.Comparison) *jsonVolume {
	if c.Outlook == nil || c.Outlook.Pair == nil {
		return nil
	}
	v := c.Outlook.Pair.Volume()
	if v == nil {
		return nil
	}
	return &jsonVolume{number(v.Today), wholeOrNull(v.Below), wholeOrNull(v.Above)}
}
