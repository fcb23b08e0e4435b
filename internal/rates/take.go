package rates

import "reelworth/internal/scenario"

// Take is a scenario with a day's rates in place of its own, for every quote whose two
// currencies the day has; places are those of the quotes that changed, in the scenario's
// order. s stays as it is.
func (d Day) Take(s scenario.Scenario) (taken scenario.Scenario, places []int) {
	taken = s.Clone()
	for i := range taken.Rates {
		q := &taken.Rates[i]
		cross, ok := d.Cross(q.One, q.In)
		if !ok || q.One == q.In {
			continue
		}
		equals, ok := asTyped(cross)
		if !ok {
			continue
		}
		q.Equals, q.Date, q.Source = equals, d.Date(), SourceBank
		places = append(places, i)
	}
	return taken, places
}

// Quote is the day's rate between two currencies as a scenario's quote; ok is false where
// the day does not have both.
func (d Day) Quote(one, in string) (q scenario.Rate, ok bool) {
	cross, ok := d.Cross(one, in)
	if !ok || one == in {
		return q, false
	}
	equals, ok := asTyped(cross)
	return scenario.Rate{One: one, Equals: equals, In: in, Date: d.Date(), Source: SourceBank}, ok
}
