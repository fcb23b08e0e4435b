package scenario

import "slices"

// See adds a price that was seen, behind those of its day and before.
func (o *Offer) See(p Seen) {
	at := len(o.Seen)
	for at > 0 && p.Date.Before(o.Seen[at-1].Date) {
		at--
	}
	o.Seen = slices.Insert(slices.Clip(o.Seen), at, p)
}

// SeenPlaces are the places of the prices seen in the order of their days; of one day
// those first that stand first.
func (o *Offer) SeenPlaces() []int {
	list := make([]int, len(o.Seen))
	for i := range list {
		list[i] = i
	}
	slices.SortStableFunc(list, func(a, b int) int { return o.Seen[a].Date.Compare(o.Seen[b].Date) })
	return list
}
