package desk

import (
	"fmt"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// naming gives other names where names are shown.
type naming struct{ d *Desk }

// offer names the way to buy at i; wrong is why it cannot be called so, "" when it is.
func (n naming) offer(i int, name string) (wrong string) {
	now := n.d.session
	if wrong := now.OfferNameTaken(i, name); wrong != "" {
		return wrong
	}
	was := now.Current().Offers[i].Name
	next := now.Current().Clone()
	scenario.RenameOffer(&next, i, name)
	key := fmt.Sprintf("offer[%d].name", i+1)
	field, _ := catalogue.Of(key)
	now.Change(words.Of(field.Called, was), key, next)
	n.named()
	return ""
}

// scenario names the scenario that is looked at.
func (n naming) scenario(name string) (wrong string) {
	if wrong := n.d.session.NameTaken(name); wrong != "" {
		return wrong
	}
	n.d.session.Rename(name)
	n.named()
	return ""
}

// named shows a new name without laying the window out anew: the focus is on its way.
func (n naming) named() {
	n.d.session.EndField()
	n.d.show()
	n.d.pipeline.compute(jobs.Now)
}
