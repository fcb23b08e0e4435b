package desk

import (
	"reelworth/internal/desk/session"
)

// undoing takes changes back and puts them in again, and shows where that was.
type undoing struct{ d *Desk }

// undo takes the last change back and shows where that was; what stands in the field
// under the cursor and could not be taken goes first.
func (u undoing) undo() {
	if !u.d.form.Revert() && u.d.session.Undo() {
		u.showActed()
	}
}

func (u undoing) redo() {
	if u.d.session.Redo() {
		u.showActed()
	}
}

// showActed turns to where the last undo or redo changed something. A form that is open
// already and has the field stays: an exchange rate stands in more than one.
func (u undoing) showActed() {
	at := u.d.session.Acted()
	u.d.rebuild()
	u.lookAt(at)
}

// lookAt turns to a place in the scenario and enters its field, if it is one.
func (u undoing) lookAt(at session.Place) {
	if at.Key == "" || !u.d.form.Has(at.Key) {
		u.d.choose(at.Selection)
	}
	if at.Key != "" {
		u.d.form.GoTo(at.Key)
	}
}
