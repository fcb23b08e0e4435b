package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// jump moves the focus to the next column: the ways to buy, the form, the answer.
func (d *Desk) jump(by int) {
	stops := []fyne.Focusable{d.leftFocus(), d.form.First(), d.answer.Label()}
	if d.hand.looking() {
		stops[2] = d.hand.column.Label()
	}
	if stops[1] == nil { // a form without fields
		stops[1] = d.offers.Scenario
	}
	at := (d.columnOfFocus() + by + len(stops)) % len(stops)
	if at > 0 {
		d.panes.look(map[int]int{1: atForm, 2: atAnswer}[at])
	}
	d.win.Canvas().Focus(stops[at])
}

// leftFocus is where the focus enters the left column.
func (d *Desk) leftFocus() fyne.Focusable {
	if f := d.hand.focusable(); f != nil {
		return f
	}
	return d.offers.ChosenCard()
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
	if d.offers.Has(f) || d.hand.list.Has(f) {
		return 0
	}
	if _, card := f.(*kit.Card); card {
		return 2
	}
	return 1
}

// page turns the answer to a page, from 0.
func (d *Desk) page(i int) {
	d.panes.look(atAnswer)
	d.answer.Page(i)
}
