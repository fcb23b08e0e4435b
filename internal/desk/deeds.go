package desk

import (
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// deeds are what commands do that is more than one change.
type deeds struct{ d *Desk }

// begin begins a scenario from nothing. The demo nobody changed makes room for it.
func (w deeds) begin() {
	d := w.d
	today := d.today()
	first := scenario.Month{Year: today.Year, Month: today.Month}
	if d.session.IsUntouchedDemo() {
		d.take(session.Begin(d.session.Current().Home, first))
	} else {
		d.change(func(s *session.Session) { s.AddNew(first) })
	}
	d.form.FocusFirst()
}

// addOffer adds a way to buy and enters its form.
func (w deeds) addOffer(kind scenario.Kind) {
	d := w.d
	d.change(func(s *session.Session) { s.AddOffer(kind) })
	d.form.FocusFirst()
}

// setText changes the size of the text.
func (w deeds) setText(factor float32) {
	d := w.d
	d.settings.setText(factor)
	d.layOut()
}

// setNumbers changes how numbers are read and written.
func (w deeds) setNumbers(l money.Locale) {
	d := w.d
	d.settings.setNumbers(l)
	d.win.Canvas().Unfocus()
	d.rebuild()
}
