package scenario

import "slices"

// Clone is a deep copy: changing it leaves s alone.
func (s Scenario) Clone() Scenario {
	s.Rates = slices.Clone(s.Rates)
	for i := range s.Rates {
		s.Rates[i].Extra = s.Rates[i].Extra.clone()
	}
	s.Shooting.Extra = s.Shooting.Extra.clone()
	s.Border.Extra = s.Border.Extra.clone()
	s.Loading.Equipment = cloneEquipment(s.Loading.Equipment)
	s.Loading.Extra = s.Loading.Extra.clone()
	s.Developing = slices.Clone(s.Developing)
	for i := range s.Developing {
		d := &s.Developing[i]
		d.Equipment, d.Extra = cloneEquipment(d.Equipment), d.Extra.clone()
	}
	s.Offers = slices.Clone(s.Offers)
	for i := range s.Offers {
		s.Offers[i] = s.Offers[i].clone()
	}
	s.Ranges = slices.Clone(s.Ranges)
	for i := range s.Ranges {
		s.Ranges[i].Extra = s.Ranges[i].Extra.clone()
	}
	s.Extra = s.Extra.clone()
	return s
}

func (o Offer) clone() Offer {
	if o.Reel != nil {
		reel := *o.Reel
		reel.Extra = reel.Extra.clone()
		o.Reel = &reel
	}
	if o.Boxed != nil {
		boxed := *o.Boxed
		boxed.Extra = boxed.Extra.clone()
		o.Boxed = &boxed
	}
	o.Seen = slices.Clone(o.Seen)
	for i := range o.Seen {
		o.Seen[i].Extra = o.Seen[i].Extra.clone()
	}
	o.Extra = o.Extra.clone()
	return o
}

// Clone is a deep copy: changing it leaves r alone.
func (r InHand) Clone() InHand {
	r.Loads = slices.Clone(r.Loads)
	for i := range r.Loads {
		r.Loads[i].Extra = r.Loads[i].Extra.clone()
	}
	r.Results = slices.Clone(r.Results)
	for i := range r.Results {
		r.Results[i].Extra = r.Results[i].Extra.clone()
	}
	r.Recounts = slices.Clone(r.Recounts)
	for i := range r.Recounts {
		r.Recounts[i].Extra = r.Recounts[i].Extra.clone()
	}
	r.Extra = r.Extra.clone()
	return r
}

func cloneEquipment(list []Equipment) []Equipment {
	list = slices.Clone(list)
	for i := range list {
		list[i].Extra = list[i].Extra.clone()
	}
	return list
}

func (e Extra) clone() Extra {
	if e == nil {
		return nil
	}
	return cloneAny(map[string]any(e)).(map[string]any)
}

func cloneAny(v any) any {
	switch x := v.(type) {
	case map[string]any:
		out := make(map[string]any, len(x))
		for k, e := range x {
			out[k] = cloneAny(e)
		}
		return out
	case []any:
		out := make([]any, len(x))
		for i, e := range x {
			out[i] = cloneAny(e)
		}
		return out
	}
	return v
}
