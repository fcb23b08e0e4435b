package report

import (
	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// What changes the answer is written where a comparison carries its outlook.

// jsonChanges is what is added to an offer compared with the baseline.
type jsonChanges struct {
	Flips   []jsonFlip   `json:"flips"`
	Swings  []jsonSwing  `json:"swings"`
	Ceiling *jsonCeiling `json:"price_ceiling"`
	Volumes []jsonRange  `json:"volume_ranges"` // null where there is no volume to look at
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

// jsonRange is a span of rolls a year, both ends in it.
type jsonRange struct {
	From    int    `json:"from"`
	To      int    `json:"to"`
	Cheaper string `json:"cheaper"`
}

type jsonCutSize struct {
	Exposures          int    `json:"exposures"`
	Cassettes          int    `json:"cassettes"`
	FullRolls          int64  `json:"full_rolls"`
	ShortRollExposures int64  `json:"short_roll_exposures"`
	LeftOverMM         number `json:"left_over_mm"`
	Good               number `json:"good"`
	TotalPerRoll       number `json:"total_per_roll"`
	Best               bool   `json:"best"`
}

// jsonVolume is the flip of the rolls a year, which are whole rolls but for today's, and
// who is cheaper at each.
type jsonVolume struct {
	Today  number      `json:"today"`
	Below  *int64      `json:"below"`
	Above  *int64      `json:"above"`
	Ranges []jsonRange `json:"ranges"`
}

// outlookOf is the outlook of the offer at place i; nil where none was asked for.
func outlookOf(c *compare.Comparison, i int) *compare.OfferOutlook {
	if c.Outlook == nil || i >= len(c.Outlook.Offers) {
		return nil
	}
	return &c.Outlook.Offers[i]
}

func changesOf(o *compare.OfferOutlook) *jsonChanges {
	p := o.Pair
	j := &jsonChanges{Flips: make([]jsonFlip, len(p.Flips)), Swings: make([]jsonSwing, len(p.Swings))}
	for i, f := range p.Flips {
		j.Flips[i] = jsonFlip{f.Input, number(f.Today), numberOrNull(f.Below), numberOrNull(f.Above)}
	}
	for i, s := range p.Swings {
		j.Swings[i] = jsonSwing{s.Input, number(s.Low), number(s.High), number(s.SavingLow), number(s.SavingHigh)}
	}
	if o.Ceiling != nil {
		j.Ceiling = &jsonCeiling{number(o.Ceiling.SavingPercent), number(o.Ceiling.Price)}
	}
	j.Volumes = rangesOf(p.Volumes, "offer", "baseline")
	return j
}

// rangesOf are ranges of volume with the two sides called by these names.
func rangesOf(ranges []compare.VolumeRange, offer, other string) (list []jsonRange) {
	called := map[compare.Cheaper]string{compare.CheaperOffer: offer, compare.CheaperOther: other, compare.CheaperEven: "even"}
	for _, r := range ranges {
		list = append(list, jsonRange{r.From, r.To, called[r.Cheaper]})
	}
	return list
}

func cutsOf(o *compare.OfferOutlook) (list []jsonCutSize) {
	for _, c := range o.CutSizes {
		y := &c.Yield
		list = append(list, jsonCutSize{
			Exposures: c.Exposures, Cassettes: y.Cassettes, FullRolls: y.Cut.FullRolls, ShortRollExposures: y.Cut.ShortRollExposures,
			LeftOverMM: number(y.Cut.LeftOver), Good: number(y.Good), TotalPerRoll: number(c.TotalPerRoll), Best: c.Best,
		})
	}
	return list
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
	return &jsonVolume{number(v.Today), wholeOrNull(v.Below), wholeOrNull(v.Above), rangesOf(c.Outlook.Pair.Volumes, "reel", "boxed")}
}
