package desk

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/figure"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// compute asks for the figures of the scenario as it stands.
func (d *Desk) compute(h haste) {
	d.pace.touch(h)
	d.postJob()
}

// redraw asks for the pictures again, in the room there is now.
func (d *Desk) redraw() {
	if d.worker != nil && d.form != nil {
		d.postJob()
	}
}

func (d *Desk) postJob() {
	s := d.current()
	d.answer.ahead = nil
	j := job{
		epoch: d.session.epoch(), scenario: s, faults: scenario.Check(s), today: d.today(),
		style: d.litStyle(), room: d.answer.room(d.win.Canvas().Scale()),
	}
	if d.session.sel.offer < len(s.Offers) {
		j.chosen = s.Offers[d.session.sel.offer].Name
	}
	d.worker.post(j)
}

// litStyle stresses the part of the cost that the field under the cursor moves.
func (d *Desk) litStyle() figure.Style {
	s := d.style()
	if f := d.inside; f != nil {
		s.Lit = words.PartOf(f.key)
	}
	return s
}

// deliver shows what the worker found out, unless the window has moved on.
func (d *Desk) deliver(a *answer) {
	if a.job.epoch != d.session.epoch() {
		return
	}
	d.shown = a
	d.ways.price(a.comparison)
	d.answer.show(a, d.session.sel.offer)
	d.explain()
	d.askAhead()
}

// settled lets the headline follow.
func (d *Desk) settled() {
	if d.shown == nil {
		return
	}
	d.answer.say(d.shown.comparison)
	d.status()
}

// status says what the answer does not include.
func (d *Desk) status() {
	var held []string
	for _, f := range d.form.heldFields() {
		held = append(held, f.name)
	}
	if d.shown == nil {
		return
	}
	d.answer.without(held, d.shown.comparison)
}

// explain puts beside the fields what their values come to.
func (d *Desk) explain() {
	if d.shown == nil {
		return
	}
	c := d.shown.comparison
	s := d.current()
	if d.form.note(warningsAbout(c, d.session.sel, d.Locale)) {
		d.scroll.Refresh()
	}
	d.form.explain(func(key string) string {
		var quote int
		if n, _ := fmt.Sscanf(key, "rate[%d]", &quote); n == 1 {
			return words.QuoteMeaning(&s, quote-1, d.Locale)
		}
		return words.Meaning(key, c, d.session.sel.offer, d.Locale)
	})
}

// warningsAbout are the warnings that stand beside what is chosen.
func warningsAbout(c *compare.Comparison, sel selection, l locale) []string {
	var list []string
	for _, w := range c.Warnings {
		about := sel.topic == topicOffer && sel.offer < len(c.Offers) && w.Offer == c.Offers[sel.offer].Name
		switch w.Code {
		case compare.WarnNoDemand:
			about = sel.topic == topicShooting
		case compare.WarnOldQuote:
			about = about || sel.topic == topicRates
		case compare.WarnChemistryExpires:
			about = about || sel.topic == topicDeveloping
		}
		if about {
			list = append(list, words.Warning(w, c, l))
		}
	}
	return list
}
