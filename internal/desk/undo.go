package desk

import (
	"reelworth/internal/desk/session"
)

// undo takes the last change back and shows where that was; what stands in the field
// under the cursor and could not be taken goes first.
func (d *Desk) undo() {
	if !d.form.Revert() && d.session.Undo() {
		d.showActed()
	}
}

func (d *Desk) redo() {
	if d.session.Redo() {
		d.showActed()
	}
}

// showActed turns to where the last undo or redo changed something. A form that is open
// already and has the field stays: an exchange rate stands in more than one.
func (d *Desk) showActed() {
	at := d.session.Acted()
	d.rebuild()
	d.lookAt(at)
}

// lookAt turns to a place in the scenario and enters its field, if it is one.
func (d *Desk) lookAt(at session.Place) {
	if at.Key == "" || !d.form.Has(at.Key) {
		d.choose(at.Selection)
	}
	if at.Key != "" {
		d.form.GoTo(at.Key)
	}
}
