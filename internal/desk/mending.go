package desk

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// mending leads to what is wrong.
type mending struct{ d *Desk }

// mend goes to the first thing that keeps something out of the answer: a field that holds
// what cannot be taken, else the field because of which an offer is left out.
func (m mending) mend() {
	d := m.d
	if key := d.form.FirstWithheld(); key != "" {
		d.form.GoTo(key)
		return
	}
	if d.pipeline.shown == nil {
		return
	}
	for i, o := range d.pipeline.shown.Comparison.Offers {
		if o.Fault != nil {
			s := d.session.Current()
			d.lookAt(mendedAt(&s, i, o.Fault))
			return
		}
	}
	if len(d.session.Faults()) == 0 && d.pipeline.shown.NoWay {
		d.form.WantRate(d.shownIn)
		d.lookAt(session.Place{Selection: session.Selection{Topic: session.TopicRates, Offer: d.session.Chosen.Offer}})
		return
	}
	m.mendRest()
}

// mendRest goes to the first fault that keeps no offer out; ranges that cannot be used
// have no field, and are taken away.
func (m mending) mendRest() {
	d := m.d
	for _, f := range d.session.Faults() {
		switch f.Place.Part {
		case scenario.PartRange:
			d.change(func(s *session.Session) { s.DropRanges(words.StepDropRanges) })
		case scenario.PartBaseline:
			d.lookAt(session.Place{Selection: session.Selection{Topic: session.TopicShooting, Offer: d.session.Chosen.Offer}, Key: f.Path})
		default:
			continue
		}
		return
	}
}

// mendedAt is where the fault of the offer at a place is mended.
func mendedAt(s *scenario.Scenario, offer int, f *compare.Fault) session.Place {
	at := session.Place{Selection: session.Selection{Topic: session.TopicOffer, Offer: offer}}
	switch path := f.Why.Path; {
	case f.Why.Code == scenario.NoRate && offer < len(s.Offers):
		at.Topic, at.Key = session.TopicRates, form.WantedQuote(s, s.Offers[offer].Currency)
	case f.Why.Place.Part == scenario.PartWhole:
		at.Topic, at.Key = session.TopicOf(path), path
	case strings.HasPrefix(path, "offer["):
		at.Key = path
	case session.TopicOf(path) != session.TopicShooting:
		at.Topic, at.Key = session.TopicOf(path), path
	case f.Key != "":
		at.Key = fmt.Sprintf("offer[%d].%s", offer+1, f.Key)
	}
	return at
}
