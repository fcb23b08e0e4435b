package scenario

import "slices"

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
			r.fault(sub(at, key("input")), NoInput, inputArgs(s, g.Input))
		}
		if g.Offer != "" && !hasOffer(s, g.Offer) {
			r.fault(sub(at, key("offer")), NoOffer, Args{Got: g.Offer})
		}
		checkEnds(g, at, r)
		key := of{g.Input, g.Offer}
		if j, taken := first[key]; taken {
			r.fault(at, RangeTwice, Args{Other: j + 1})
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
		r.fault(low, NotForInput, Args{Number: g.Low, Name: string(g.Input), Rule: g.Input.Rule()})
	case !g.Input.Allows(g.High):
		r.fault(high, NotForInput, Args{Number: g.High, Name: string(g.Input), Rule: g.Input.Rule()})
	case g.High.Cmp(g.Low) <= 0:
		r.fault(high, RangeNotUp, Args{Number: g.High, Bound: g.Low})
	}
}

// inputArgs names the inputs there are; where a quote is meant, one that the file has.
func inputArgs(s *Scenario, wrong Input) Args {
	args := Args{Got: string(wrong)}
	if _, ok := wrong.Quote(); ok && len(s.Rates) > 0 {
		args.Guess = string(RateInput(s.Rates[0]))
	}
	for _, i := range (&Scenario{}).Inputs() {
		args.Keys = append(args.Keys, string(i))
	}
	return args
}

func hasOffer(s *Scenario, name string) bool {
	return slices.ContainsFunc(s.Offers, func(o Offer) bool { return o.Name == name })
}
