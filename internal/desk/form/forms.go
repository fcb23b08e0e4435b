package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// forms builds the forms; e is told what is typed.
type forms struct {
	e       editor
	today   scenario.Date
	pattern *pattern
	further *string // the currency that a rate may be added for

	reel    func() (r scenario.InHand, chosen bool) // the reel in hand that is chosen
	reelKey string                                  // its key in the file
	acts    ReelActions
}

// build makes the form of a selection.
func (b forms) build(s *scenario.Scenario, sel session.Selection) *Form {
	switch sel.Topic {
	case session.TopicShooting:
		return b.shootingForm(s)
	case session.TopicLoading:
		return b.loadingForm(s)
	case session.TopicDeveloping:
		return b.developingForm(s)
	case session.TopicBorder:
		return b.borderForm()
	case session.TopicRates:
		return b.ratesForm(s)
	case session.TopicStart:
		return b.startForm(s)
	case session.TopicReel:
		return b.reelForm()
	}
	if sel.Offer < len(s.Offers) {
		return b.offerForm(s, sel.Offer)
	}
	return b.shootingForm(s)
}

// does is a link's deed: a change of the session.
func (b forms) does(do func(*session.Session)) func() {
	return func() { b.e.Change(do) }
}

// Options are choices with their words.
func Options(list []words.Choice) (out []kit.Option) {
	for _, c := range list {
		out = append(out, kit.Option{Value: c.Value, Label: c.Label})
	}
	return out
}

func always(text string) func(*scenario.Scenario) string {
	return func(*scenario.Scenario) string { return text }
}

func home(s *scenario.Scenario) string { return s.Home }
