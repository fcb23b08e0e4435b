package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// jump moves the focus to the next column: the ways to buy, the form, the answer.
func (d *Desk) jump(by int) {
	stops := []fyne.Focusable{d.offers.ChosenCard(), d.form.First(), d.answer.Label()}
	if stops[1] == nil { // a form without fields
		stops[1] = d.offers.Scenario
	}
	at := (d.columnOfFocus() + by + len(stops)) % len(stops)
	d.win.Canvas().Focus(stops[at])
}

// columnOfFocus is the column that has the focus, −1 for none.
func (d *Desk) columnOfFocus() int {
	f := d.win.Canvas().Focused()
	switch f.(type) {
	case nil:
		return -1
	case *kit.TabLabel:
		return 2
	}
	if d.offers.Has(f) {
		return 0
	}
	if _, card := f.(*kit.Card); card {
		return 2
	}
	return 1
}
