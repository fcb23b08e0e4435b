package desk

import (
	"reelworth/internal/desk/kit"
	"slices"

	"fyne.io/fyne/v2"
)

// jump moves the focus to the next column: the ways to buy, the form, the answer.
func (d *Desk) jump(by int) {
	stops := []fyne.Focusable{d.chosenCard(), d.firstField(), d.answer.tabs.Labels[d.answer.tabs.At]}
	at := (d.columnOfFocus() + by + len(stops)) % len(stops)
	if stops[at] != nil {
		d.win.Canvas().Focus(stops[at])
	}
}

// columnOfFocus is the column that has the focus, −1 for none.
func (d *Desk) columnOfFocus() int {
	switch f := d.win.Canvas().Focused().(type) {
	case nil:
		return -1
	case *kit.Card:
		if slices.Contains(d.ways.cards(), f) {
			return 0
		}
		return 2
	case *kit.TabLabel:
		return 2
	case *kit.Picker:
		if f == d.ways.scenario {
			return 0
		}
	}
	return 1
}

func (d *Desk) chosenCard() fyne.Focusable {
	for _, c := range d.ways.cards() {
		if c.Chosen {
			return c
		}
	}
	return d.ways.scenario
}

func (d *Desk) firstField() fyne.Focusable {
	if len(d.form.fields) == 0 {
		return d.ways.scenario
	}
	return d.form.fields[0].focus
}
