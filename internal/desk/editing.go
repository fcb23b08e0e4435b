package desk

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// edit takes what was typed or chosen into the scenario, or holds it with the reason.
// It starts from the scenario as it was when the field was entered, so that what is
// typed on the way ("1", "11", "118") leaves no trace.
func (d *Desk) edit(f *field, text string) {
	if !d.form.has(f) {
		return // of a form that is gone, with the focus still in it
	}
	before := d.session.base()
	next := before.Clone()
	err := f.set(&next, text, d.Locale)
	why, remedy := "", ""
	if q := whichNumber(f, err); q != nil {
		f.ask(q)
		d.withhold(f, text, before)
		return
	}
	if err != nil {
		why, remedy = reason(err)
	} else if why = wrongCurrency(f, &next, text, d.Locale); why != "" {
		remedy = why
	} else if why = d.taken(f, &next); why != "" {
		remedy = why
	} else {
		why, remedy = newFault(before, next, f.key)
	}
	f.hold(why, remedy)
	if why != "" {
		d.withhold(f, text, before)
		return
	}
	delete(d.session.held, f.key)
	d.session.change(d.nameOf(f), f.key, next)
	if _, chosen := f.input.(*kit.Picker); chosen { // the form may have other fields now
		d.session.reshaped()
		d.rebuild()
		return
	}
	d.show()
	if q := d.whichCurrency(f, &next, text); q != nil {
		f.ask(q)
	}
	d.compute(settles)
}

// nameOf is what a change of a field is called in the menu: "price of the pack".
func (d *Desk) nameOf(f *field) string {
	s := d.current()
	if i := d.session.sel.offer; d.session.sel.topic == topicOffer && i < len(s.Offers) && strings.HasPrefix(f.key, "offer[") {
		return f.name + " of " + s.Offers[i].Name
	}
	return f.name
}

// withhold keeps what was typed out of the scenario, what came of it on the way as well:
// "21x" must not leave 21 behind.
func (d *Desk) withhold(f *field, text string, before scenario.Scenario) {
	d.session.held[f.key] = text
	d.session.change(d.nameOf(f), f.key, before)
	d.show()
	d.status()
	d.compute(settles)
}

// taken says that a scenario's new name is another one's.
func (d *Desk) taken(f *field, next *scenario.Scenario) string {
	if f.key != "name" {
		return ""
	}
	return d.session.nameTaken(next.Name)
}

// newFault is what a change breaks, "" for nothing. A currency without a rate is no
// reason to refuse it: the rate is asked for next.
func newFault(before, after scenario.Scenario, key string) (wrong, remedy string) {
	had := map[string]bool{}
	for _, f := range scenario.Check(before) {
		had[f.Path] = true
	}
	for _, f := range scenario.Check(after) {
		if strings.HasSuffix(f.Path, ".currency") {
			continue
		}
		if f.Path == key || !had[f.Path] {
			return f.Wrong + "; " + f.Remedy, f.Wrong + "; " + f.Remedy
		}
	}
	return "", ""
}

// reason is why a text is no value, and what to write instead.
func reason(err error) (why, remedy string) {
	var unreadable *money.Unreadable
	if errors.As(err, &unreadable) {
		return err.Error(), unreadable.Do
	}
	return err.Error(), err.Error()
}

// enter follows the focus: what is typed in one field until it is left is one change.
func (d *Desk) enter(f *field, in bool) {
	if !d.form.has(f) {
		return
	}
	f.inside = in
	d.session.ended()
	lit := d.litStyle().Lit
	if in {
		d.inside = f
		d.session.began()
		d.reveal(f)
		d.help.say(words.FieldHelp(f.key))
	} else if d.inside == f {
		d.inside = nil
		d.help.say("")
	}
	if d.litStyle().Lit != lit {
		d.redraw()
	}
	if in {
		return
	}
	s := d.current()
	f.show(&s, d.Locale)
}

// nudge moves a number by the up and down keys.
func (d *Desk) nudge(f *field, step int) {
	if !d.form.has(f) {
		return
	}
	box := f.input.(*kit.TextBox)
	text := box.Entry.Text
	v, err := readNumber(text, d.Locale)
	if err != nil && strings.TrimSpace(text) != "" {
		return
	}
	box.Entry.SetText(d.Locale.Field(money.Nudge(v, step)))
	box.Entry.SelectAll()
}

// reveal scrolls the form so that a field can be seen.
func (d *Desk) reveal(f *field) {
	const margin = 30
	top, height := f.row.Position().Y, f.row.Size().Height
	view := d.scroll.Size().Height
	at := d.scroll.Offset.Y
	switch {
	case top-margin < at:
		at = max(0, top-margin)
	case top+height+margin > at+view:
		at = top + height + margin - view
	default:
		return
	}
	d.scroll.ScrollToOffset(fyne.NewPos(0, at))
}

func (d *Desk) focusedKey() string {
	if d.form == nil {
		return ""
	}
	for _, f := range d.form.fields {
		if c := d.win.Canvas(); c != nil && c.Focused() == f.focus && f.focus != nil {
			return f.key
		}
	}
	return ""
}

func (d *Desk) focusKey(key string) {
	if key == "" {
		return
	}
	for _, f := range d.form.fields {
		if f.key == key {
			d.win.Canvas().Focus(f.focus)
			return
		}
	}
}

func (d *Desk) openFolds() map[string]bool {
	open := map[string]bool{}
	if d.form != nil {
		for _, g := range d.form.groups {
			if g.open {
				open[g.fold] = true
			}
		}
	}
	return open
}

// undo takes the last change back; inside a field, first what was typed since it was
// entered.
func (d *Desk) undo() {
	if box, ok := d.win.Canvas().Focused().(*kit.Entry); ok && box.Text != box.Before {
		box.SetText(box.Before)
		box.SelectAll()
		return
	}
	if i, ok := d.session.draft.Undo(); ok {
		d.returned(i)
	}
}

func (d *Desk) redo() {
	if i, ok := d.session.draft.Redo(); ok {
		d.returned(i)
	}
}

// returned shows the scenario that undo or redo was about.
func (d *Desk) returned(index int) {
	d.session.at = index
	clear(d.session.held)
	d.session.reshaped()
	d.rebuild()
}
