package scenario

import (
	"fmt"
	"slices"
)

// checkRanges sees that each range is of an input there is, goes upwards, stays
// within what the input can be, and is the only one of its kind.
func checkRanges(s *Scenario, r *reporter) {
	type of struct {
		input Input
		offer string
	}
	first := map[of]int{}
	for i, g := range s.Ranges {
		at := []step{element("range", i)}
		if !slices.Contains(s.Inputs(), g.Input) {
			r.fault(sub(at, key("input")), "there is no input "+quote(string(g.Input)), remedyForInput(s, g.Input))
		}
		if g.Offer != "" && !hasOffer(s, g.Offer) {
			r.fault(sub(at, key("offer")), "no offer is named "+quote(g.Offer), "write the name of an offer, or leave the key out for all")
		}
		checkEnds(g, at, r)
		key := of{g.Input, g.Offer}
		if j, taken := first[key]; taken {
			r.fault(at, fmt.Sprintf("range[%d] is of this input too", j+1), "keep one of the two")
		} else {
			first[key] = i
		}
	}
}

func checkEnds(g Range, at []step, r *reporter) {
	low, high := sub(at, key("low")), sub(at, key("high"))
	switch {
	case r.has(low) || r.has(high):
	case !g.Input.Allows(g.Low):
		r.fault(low, spell(g.Low)+" cannot be "+string(g.Input), "write "+allowed(g.Input))
	case !g.Input.Allows(g.High):
		r.fault(high, spell(g.High)+" cannot be "+string(g.Input), "write "+allowed(g.Input))
	case g.High.Cmp(g.Low) <= 0:
		r.fault(high, fmt.Sprintf("%s is not above low, %s", spell(g.High), spell(g.Low)), "write a number above "+spell(g.Low))
	}
}

// allowed is what an input can be.
func allowed(i Input) string {
	switch {
	case i == InputSpoiledPercent:
		return "a number from 0 to below 100"
	case i.Allows(Decimal{}):
		return "a number of at least 0"
	}
	return "a number above 0"
}

// remedyForInput names the inputs; for a quote, those the file has.
func remedyForInput(s *Scenario, wrong Input) string {
	if pair, ok := wrong.Quote(); ok && len(s.Rates) > 0 {
		return fmt.Sprintf("write a rate as it stands above, such as %q, not %q", RateInput(s.Rates[0]), RatePrefix+clip(pair))
	}
	return fmt.Sprintf("write one of %q, %q, %q, %q, %q, %q, %q, %q, %q, %q or a rate like %q",
		InputOfferPrice, InputBaselinePrice, InputOfferShipping, InputSpoiledPercent, InputHourlyValue,
		InputOfferDeveloping, InputBaselineDeveloping, InputDutyPercent, InputTaxPercent, InputRollsAYear, "rate:USD/EUR")
}

func hasOffer(s *Scenario, name string) bool {
	return slices.ContainsFunc(s.Offers, func(o Offer) bool { return o.Name == name })
}
