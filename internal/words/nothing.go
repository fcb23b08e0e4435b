package words

import (
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// nothing is said when no offer could be computed, perhaps for want of prices only.
func (p pair) nothing(unpriced bool) Headline {
	if len(p.s.Offers) == 0 {
		return Headline{Text: "Nothing to compare yet. Add a reel and boxed rolls."}
	}
	text := "Nothing to compare yet."
	if unpriced {
		if hasBothKinds(p.s) {
			text = "What do a reel and a boxed roll cost?"
		}
		return Headline{Text: text, Under: "Type the prices and the rolls you shoot in a month, and the answer stands here."}
	}
	return Headline{
		Text:  text,
		Under: "No way to buy could be computed: correct the fields named.",
	}
}

// Unpriced says whether the offer at place i is left out only because nobody typed its
// price yet, as of a new one.
func Unpriced(c *compare.Comparison, i int) bool {
	in := inputs(c, i)
	return in != nil && isUnpriced(c.Offers[i].Fault, in)
}

func isUnpriced(f *compare.Fault, in *scenario.Offer) bool {
	return f != nil && f.Key == "price" && f.Why.Code == scenario.NotAbove && in.Price.IsZero()
}

// OnlyUnpriced says whether offers are left out, and each of them only because of that.
func OnlyUnpriced(c *compare.Comparison) bool {
	out := 0
	for i := range c.Offers {
		if c.Offers[i].Fault == nil {
			continue
		}
		if out++; !Unpriced(c, i) {
			return false
		}
	}
	return out > 0
}

// AsksForPrices says whether that is all there is to say, and the headline says it.
func AsksForPrices(c *compare.Comparison) bool {
	computed := func(o compare.Offer) bool { return o.Fault == nil }
	return OnlyUnpriced(c) && !slices.ContainsFunc(c.Offers, computed)
}

// hasBothKinds says whether a reel and boxed film stand beside each other.
func hasBothKinds(s *scenario.Scenario) bool {
	isReel := func(o scenario.Offer) bool { return o.Kind == scenario.KindReel }
	isBoxed := func(o scenario.Offer) bool { return o.Kind == scenario.KindBoxed }
	return slices.ContainsFunc(s.Offers, isReel) && slices.ContainsFunc(s.Offers, isBoxed)
}
