package compare

import "reelworth/internal/scenario"

// Compare computes every offer of a scenario and compares them with each other.
//
// faults are those found in this very scenario (and in its file as a whole); what
// depends on a spoilt part is left out with a Fault of its own, the rest is computed.
// today decides which quotes are old; left zero, none is. Compare never fails and
// never panics, whatever s holds.
func Compare(s scenario.Scenario, faults []scenario.Fault, today scenario.Date) Comparison {
	c := Comparison{Scenario: s, Offers: make([]Offer, len(s.Offers))}
	g := newGatherer(&s, faults)
	all := make([]terms, len(s.Offers))
	var offers []costed // those that can be computed
	var leftOut []string
	for i := range s.Offers {
		o := &c.Offers[i]
		*o = Offer{Name: s.Offers[i].Name, Kind: s.Offers[i].Kind}
		if all[i], o.Fault = g.terms(i); o.Fault != nil {
			leftOut = append(leftOut, o.Name)
			continue
		}
		cost(o, &all[i])
		offers = append(offers, costed{o, &all[i]})
	}
	if !g.spoilt.baseline {
		compareWith(offers, s.Baseline)
	}
	c.Verdict = verdictOf(offers, leftOut)
	c.Warnings = warnings(&c, offers, today)
	return c
}

// cost fills in what one offer comes to by itself.
func cost(o *Offer, t *terms) {
	o.CountsDeveloping = t.developing.counted()
	o.Order = t.order(t.asking.price)
	o.Order.Receipt = t.receipt(&o.Order)
	o.Yield = t.yield
	o.UsedShare = t.usedShare()
	o.PerRoll = t.perRoll(&o.Order)
	o.PerExposure = o.PerRoll.Total.Quo(t.shooting.rollExposures)
	o.DevelopingEach = t.developingPerCassette()
	o.Year = t.year()
}

// compareWith compares every other offer with the baseline, if that was computed.
func compareWith(offers []costed, baseline string) {
	base := -1
	for i := range offers {
		if offers[i].Name == baseline {
			base = i
			break
		}
	}
	if base < 0 {
		return
	}
	for i := range offers {
		if i != base {
			offers[i].Against = against(offers[i], offers[base])
		}
	}
}
