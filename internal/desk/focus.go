package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// focus is which column is worked in.
type focus struct{ d *Desk }

// jump moves the focus to the next column: the ways to buy, the form, the answer.
func (f focus) jump(by int) {
	d := f.d
	stops := []fyne.Focusable{f.leftFocus(), d.form.First(), d.answer.Label()}
	if d.hand.looking() {
		stops[2] = d.hand.column.Label()
	}
	if stops[1] == nil { // a form without fields
		stops[1] = d.offers.Scenario
	}
	at := (f.columnOfFocus() + by + len(stops)) % len(stops)
	if at > 0 {
		d.panes.look(map[int]int{1: atForm, 2: atAnswer}[at])
	}
	d.win.Canvas().Focus(stops[at])
}

// leftFocus is where the focus enters the left column.
func (f focus) leftFocus() fyne.Focusable {
	d := f.d
	if of := d.hand.focusable(); of != nil {
		return of
	}
	return d.offers.ChosenCard()
}

// columnOfFocus is the column that has the focus, −1 for none.
func (f focus) columnOfFocus() int {
	d := f.d
	now := d.win.Canvas().Focused()
	switch now.(type) {
	case nil:
		return -1
	case *kit.TabLabel:
		return 2
	}
	if d.offers.Has(now) || d.hand.list.Has(now) {
		return 0
	}
	if _, card := now.(*kit.Card); card {
		return 2
	}
	return 1
}

// page turns the answer to a page, from 0.
func (d *Desk) page(i int) {
	d.panes.look(atAnswer)
	d.answer.Page(i)
}
