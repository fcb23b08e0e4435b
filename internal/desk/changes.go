package desk

import (
	"slices"

	"reelworth/internal/scenario"
)

// alter makes a change that is a step of its own and lays the window out anew.
func (d *Desk) alter(name string, do func(s *scenario.Scenario)) {
	next := d.current().Clone()
	do(&next)
	d.session.change(name, "", next)
	clear(d.session.held) // keys may name other offers now
	d.session.reshaped()
	d.rebuild()
}

func (d *Desk) addOffer(kind scenario.Kind) {
	s := d.current()
	o := scenario.NewOffer(&s, kind)
	d.session.sel = selection{topicOffer, len(s.Offers)}
	d.alter("adding "+o.Name, func(s *scenario.Scenario) {
		s.Offers = append(s.Offers, o)
		if len(s.Offers) == 1 {
			s.Baseline = o.Name
		}
	})
	d.focusFirst()
}

// removeOffer takes away the offer that is chosen; the last one stays.
func (d *Desk) removeOffer() {
	s := d.current()
	i := d.session.sel.offer
	if d.session.sel.topic != topicOffer || len(s.Offers) < 2 {
		return
	}
	gone := s.Offers[i].Name
	d.alter("removing "+gone, func(s *scenario.Scenario) {
		s.Offers = slices.Delete(s.Offers, i, i+1)
		if s.Baseline == gone {
			s.Baseline = s.Offers[0].Name
		}
	})
}

// compareWith makes the chosen offer the one the others are compared with.
func (d *Desk) compareWith() {
	s := d.current()
	name := s.Offers[d.session.sel.offer].Name
	if s.Baseline != name {
		d.alter("what is compared with", func(s *scenario.Scenario) { s.Baseline = name })
	}
}

// duplicateOffer puts a copy of the chosen offer behind it.
func (d *Desk) duplicateOffer() {
	i := d.session.sel.offer
	s := d.current()
	o := scenario.CopyOffer(&s, i)
	d.session.sel.offer = i + 1
	d.alter("duplicating "+s.Offers[i].Name, func(s *scenario.Scenario) {
		s.Offers = slices.Insert(s.Offers, i+1, o)
	})
}

// moveOffer moves the chosen offer up or down the list.
func (d *Desk) moveOffer(by int) {
	i := d.session.sel.offer
	j := i + by
	if d.session.sel.topic != topicOffer || j < 0 || j >= len(d.current().Offers) {
		return
	}
	d.session.sel.offer = j
	d.alter("order of the ways to buy", func(s *scenario.Scenario) {
		s.Offers[i], s.Offers[j] = s.Offers[j], s.Offers[i]
	})
}

// order sets how many units of an offer are bought at once.
func (d *Desk) order(offer string, units int) {
	s := d.current()
	i := slices.IndexFunc(s.Offers, func(o scenario.Offer) bool { return o.Name == offer })
	if i >= 0 && s.Offers[i].Units != units {
		d.alter("order", func(s *scenario.Scenario) { s.Offers[i].Units = units })
	}
}

func (d *Desk) removeQuote(i int) {
	d.alter("removing a quote", func(s *scenario.Scenario) { s.Rates = slices.Delete(s.Rates, i, i+1) })
}

// removeProcess takes a process away; the offers that name it count none.
func (d *Desk) removeProcess(i int) {
	gone := d.current().Developing[i].Name
	d.alter("removing "+gone, func(s *scenario.Scenario) {
		s.Developing = slices.Delete(s.Developing, i, i+1)
		for j := range s.Offers {
			if s.Offers[j].Developing == gone {
				s.Offers[j].Developing = ""
			}
		}
	})
}

func (d *Desk) addEquipment(list func(*scenario.Scenario) *[]scenario.Equipment) {
	d.alter("adding equipment", func(s *scenario.Scenario) {
		l := list(s)
		*l = append(*l, scenario.NewEquipment())
	})
}

func (d *Desk) removeEquipment(list func(*scenario.Scenario) *[]scenario.Equipment, i int) {
	d.alter("removing equipment", func(s *scenario.Scenario) {
		l := list(s)
		*l = slices.Delete(*l, i, i+1)
	})
}

func (d *Desk) addProcess(way scenario.Way) {
	d.alter("adding a process", func(s *scenario.Scenario) {
		s.Developing = append(s.Developing, scenario.NewProcess(s, way))
	})
}

// focusFirst enters the first field of the form.
func (d *Desk) focusFirst() {
	if len(d.form.fields) > 0 {
		d.win.Canvas().Focus(d.form.fields[0].focus)
	}
}
