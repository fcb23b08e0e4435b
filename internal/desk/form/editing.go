package form

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Edit takes what was typed or chosen into the scenario, or keeps it out with the reason.
// It starts from the scenario as it was when the field was entered, so that what is
// typed on the way ("1", "11", "118") leaves no trace.
func (c *Column) Edit(f *Field, text string) {
	if !c.form.has(f) {
		return // of a form that is gone, with the focus still in it
	}
	if f.reel != nil {
		c.editReel(f, text)
		return
	}
	now, l := c.win.Session(), c.win.Locale()
	if _, chosen := f.Input.(*kit.Picker); chosen && !f.inside {
		now.EndField() // it was chosen by the pointer, from beside another field
	}
	before := now.Base()
	next := before.Clone()
	t := f.take(&before, text, l)
	err := f.set(&next, t.number, l)
	if err == nil && t.also != nil {
		t.also(&next)
	}
	scenario.FollowLengths(&before, &next)
	if err == nil {
		next.Settle(f.Key)
		next.SettleAll()
		scenario.Follow(&before, &next)
	}
	q := whichNumber(f, err, t.behind)
	if q == nil && err == nil && f.instead != nil {
		q = f.instead(&next)
	}
	if q != nil {
		f.ask(q)
		c.withhold(f, text, before)
		return
	}
	why, remedy := c.wrong(f, err, before, next, text)
	f.refuse(why, remedy)
	if why != "" {
		c.withhold(f, text, before)
		return
	}
	delete(now.Withheld, f.Key)
	now.Change(c.nameOf(f, t), f.Key, next)
	if _, chosen := f.Input.(*kit.Picker); chosen { // the form may have other fields now
		now.Reshape()
		c.win.Changed()
		return
	}
	if f.beside != nil && f.beside.Get(&next, l) != f.beside.Get(&c.built, l) {
		f = c.reshape(f)
	}
	f.said = t.said
	c.win.Typed()
	if q := whichCurrency(c, f, &next, text, l); q != nil {
		f.ask(q)
	}
}

// wrong is what is wrong with a text, and what to write instead; "" for nothing. err is
// what came of reading it.
func (c *Column) wrong(f *Field, err error, before, next scenario.Scenario, text string) (why, remedy string) {
	if err != nil {
		return words.NotTaken(err)
	}
	if why := wrongCurrency(f, &next, text, c.win.Locale()); why != "" {
		return why, why
	}
	if i, ok := offerOf(f.Key); ok && f.Key == fmt.Sprintf("offer[%d].name", i+1) {
		if why := c.win.Session().OfferNameTaken(i, next.Offers[i].Name); why != "" {
			return why, why
		}
	}
	if f.Key == "name" {
		if why := c.win.Session().NameTaken(next.Name); why != "" {
			return why, why
		}
	}
	return NewFault(before, next, f.Key)
}

// reshape makes the form anew while a field is being typed in: the other fields belong to
// another currency or unit now. It gives that field's successor, with the text as it is.
func (c *Column) reshape(f *Field) *Field {
	typing := f.Input.(*kit.TextBox).Entry
	inside := typing.Inside()
	c.replace()
	next := c.field(f.Key)
	if box, ok := next.Input.(*kit.TextBox); ok && inside {
		box.Entry.Resume(typing)
		next.inside, c.inside = true, next
		c.canvas.Focus(box.Entry)
	}
	c.putBack()
	return next
}

// withhold keeps what was typed out of the scenario, what came of it on the way as well:
// "21x" must not leave 21 behind.
func (c *Column) withhold(f *Field, text string, before scenario.Scenario) {
	now := c.win.Session()
	now.Withheld[f.Key] = text
	now.Change(c.nameOf(f, taken{}), f.Key, before)
	c.win.Typed()
	c.win.Withheld()
}

// nameOf is what a change of a field is called in the menu: "price of the pack".
func (c *Column) nameOf(f *Field, t taken) string {
	now, name := c.win.Session(), f.Name
	if r, ok := now.Reel(); ok {
		return words.Of(name, r.Name)
	}
	if t.said != "" && f.beside != nil {
		name = words.Both(name, f.beside.Name)
	}
	if i, ok := offerOf(f.Key); ok {
		if offers := now.Current().Offers; i < len(offers) {
			return words.Of(name, offers[i].Name)
		}
	}
	return name
}

// Enter follows the focus: what is typed in one field until it is left is one change.
func (c *Column) Enter(f *Field, in bool) {
	if !c.form.has(f) {
		return
	}
	f.inside = in
	now := c.win.Session()
	now.EndField()
	stressed := words.PartOf(c.Entered())
	if in {
		c.inside = f
		now.BeginField()
		c.reveal(f)
		e, _ := catalogue.Of(f.Key)
		c.help.say(e.Help)
	} else if c.inside == f {
		c.inside = nil
		c.help.say("")
	}
	if words.PartOf(c.Entered()) != stressed {
		c.win.Redraw()
	}
	if in {
		return
	}
	f.said = ""
	s := now.Current()
	f.show(&s, c.win.Locale())
	c.win.Explain()
}

// Revert puts what the field under the cursor began with in the place of what was typed
// and could not be taken; it says whether there was such.
func (c *Column) Revert() bool {
	f := c.inside
	if f == nil || f.Problem == "" {
		return false
	}
	box, ok := f.Input.(*kit.TextBox)
	if !ok || box.Entry.Text == box.Entry.Before {
		return false
	}
	box.Entry.SetText(box.Entry.Before)
	box.Entry.SelectAll()
	return true
}

// Nudge moves a number by the up and down keys.
func (c *Column) Nudge(f *Field, step int) {
	if !c.form.has(f) {
		return
	}
	l := c.win.Locale()
	box := f.Input.(*kit.TextBox)
	text := box.Entry.Text
	v, err := ReadNumber(text, l)
	if err != nil && strings.TrimSpace(text) != "" {
		return
	}
	box.Entry.SetText(l.Field(money.Nudge(v, step)))
	box.Entry.SelectAll()
}

// Change makes a change of more than a field.
func (c *Column) Change(do func(*session.Session)) {
	do(c.win.Session())
	c.win.Changed()
}

// AskSeen asks for a price that was seen of an offer.
func (c *Column) AskSeen(offer int) { c.win.AskSeen(offer) }

// AskDayRates asks for a day's published rates.
func (c *Column) AskDayRates() { c.win.AskDayRates() }

// AskStatement asks for a purchase on a card statement.
func (c *Column) AskStatement() { c.win.AskStatement() }

// AskBorderSets asks for border rules that are kept.
func (c *Column) AskBorderSets() { c.win.AskBorderSets() }
