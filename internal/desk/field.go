package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// input is what a field types into or chooses from.
type input interface {
	fyne.CanvasObject
	show(text string)
	setFaulty(bool)
}

// field joins a slot with the row that shows it.
type field struct {
	slot
	row   *row
	input input
	focus fyne.Focusable
	// meaning is the engine's words for the value: the key to ask for, "" for none.
	meaning string
	unit    func(s *scenario.Scenario) string // nil for one that never changes
	label   func(s *scenario.Scenario) string // likewise
	held    string                            // what is wrong with what stands in the field
	wanted  string                            // what to say while the field is empty
	inside  bool
	beside  *field // the choice in the place of the unit, nil for none
}

// editor is who a field tells what was typed.
type editor interface {
	edit(f *field, text string)
	enter(f *field, in bool)
	nudge(f *field, step int)
}

// numberField is a field for typing, its value set to the right.
func numberField(e editor, label, unit string, s slot) *field {
	box := newTextBox(true)
	return typed(e, label, unit, s, box, numberWidth, true)
}

// wordField is a field for typing words.
func wordField(e editor, label string, s slot) *field {
	return typed(e, label, "", s, newTextBox(false), formWidth-labelWidth, false)
}

func typed(e editor, label, unit string, s slot, box *textBox, width float32, nudged bool) *field {
	f := &field{slot: s, input: box, focus: box.entry}
	f.row = newRow(label, box, width, unit)
	box.changed = func(text string) { e.edit(f, text) }
	box.entered = func(in bool) { e.enter(f, in) }
	if nudged {
		box.entry.nudge = func(step int) { e.nudge(f, step) }
	}
	return f
}

// choiceField is a field for choosing.
func choiceField(e editor, label string, width float32, options []option, s slot) *field {
	f := &field{slot: s}
	p := newPicker(options, func(value string) { e.edit(f, value) })
	p.entered = func(in bool) { e.enter(f, in) }
	f.input, f.focus = p, p
	f.row = newRow(label, p, width, "")
	return f
}

// yesNo is a field for a flag.
func yesNo(e editor, label string, s slot) *field {
	return choiceField(e, label, numberWidth, []option{{yes, yes}, {no, no}}, s)
}

// withUnit puts the choice of the unit beside the value.
func (f *field) withUnit(e editor, options []option, s slot) *field {
	unit := &field{slot: s, row: f.row}
	p := newPicker(options, func(value string) { e.edit(unit, value) })
	p.plain = true
	p.entered = func(in bool) { e.enter(unit, in) }
	unit.input, unit.focus = p, p
	f.row.choice, f.beside = p, unit
	return f
}

// offering puts some of the units first in their list.
func (f *field) offering(first []string) *field {
	f.row.choice.first = first
	return f
}

// means names what the engine says about the value.
func (f *field) means(key string) *field {
	f.meaning = key
	return f
}

// homeField is a field for an amount in the home currency.
func homeField(e editor, label string, s slot) *field {
	return numberField(e, label, "", s.atHome()).unitOf(home)
}

// unitOf makes the unit follow the scenario.
func (f *field) unitOf(unit func(*scenario.Scenario) string) *field {
	f.unit = unit
	return f
}

// show puts the scenario's value into the field, unless somebody is typing there or
// what stands there is held.
func (f *field) show(s *scenario.Scenario, l money.Locale) {
	if f.unit != nil && f.row.unit.text() != f.unit(s) {
		f.row.unit.set(span{text: f.unit(s), color: colMuted})
		f.row.Refresh()
	}
	if f.label != nil {
		f.row.label.set(span{text: f.label(s)})
	}
	if f.inside || f.held != "" {
		return
	}
	f.input.show(f.get(s, l))
}

// hold keeps what was typed in the field and says beside it what to write instead. why
// is what is wrong, "" for nothing.
func (f *field) hold(why, remedy string) {
	f.held = why
	f.row.answers = nil
	f.input.setFaulty(why != "")
	if why != "" {
		f.row.complain(remedy)
	} else {
		f.row.say("")
	}
}

// ask puts a question beside the field. Unless it may be passed over, what stands in the
// field is held until it is answered.
func (f *field) ask(q *question) {
	f.held = q.why
	f.input.setFaulty(q.why != "")
	f.row.ask(q)
}
