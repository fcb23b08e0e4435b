package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// input is what a field types into or chooses from.
type input interface {
	fyne.CanvasObject
	Set(text string)
	SetFaulty(bool)
}

// field joins a slot with the row that shows it.
type field struct {
	slot
	row   *kit.Row
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
	box := kit.NewTextBox(true)
	return typed(e, label, unit, s, box, kit.NumberWidth, true)
}

// wordField is a field for typing words.
func wordField(e editor, label string, s slot) *field {
	return typed(e, label, "", s, kit.NewTextBox(false), kit.FormWidth-kit.LabelWidth, false)
}

func typed(e editor, label, unit string, s slot, box *kit.TextBox, width float32, nudged bool) *field {
	f := &field{slot: s, input: box, focus: box.Entry}
	f.row = kit.NewRow(label, box, width, unit)
	box.Changed = func(text string) { e.edit(f, text) }
	box.Entered = func(in bool) { e.enter(f, in) }
	if nudged {
		box.Entry.Nudge = func(step int) { e.nudge(f, step) }
	}
	return f
}

// choiceField is a field for choosing.
func choiceField(e editor, label string, width float32, options []kit.Option, s slot) *field {
	f := &field{slot: s}
	p := kit.NewPicker(options, func(value string) { e.edit(f, value) })
	p.Entered = func(in bool) { e.enter(f, in) }
	f.input, f.focus = p, p
	f.row = kit.NewRow(label, p, width, "")
	return f
}

// yesNo is a field for a flag.
func yesNo(e editor, label string, s slot) *field {
	return choiceField(e, label, kit.NumberWidth, []kit.Option{{Value: yes, Label: yes}, {Value: no, Label: no}}, s)
}

// withUnit puts the choice of the unit beside the value.
func (f *field) withUnit(e editor, options []kit.Option, s slot) *field {
	unit := &field{slot: s, row: f.row}
	p := kit.NewPicker(options, func(value string) { e.edit(unit, value) })
	p.Plain = true
	p.Entered = func(in bool) { e.enter(unit, in) }
	unit.input, unit.focus = p, p
	f.row.Choice, f.beside = p, unit
	return f
}

// offering puts some of the units first in their list.
func (f *field) offering(first []string) *field {
	f.row.Choice.First = first
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
	if f.unit != nil && f.row.Unit.String() != f.unit(s) {
		f.row.Unit.Set(kit.Span{Text: f.unit(s), Color: kit.Muted})
		f.row.Refresh()
	}
	if f.label != nil {
		f.row.Label.Set(kit.Span{Text: f.label(s)})
	}
	if f.inside || f.held != "" {
		return
	}
	f.input.Set(f.get(s, l))
}

// hold keeps what was typed in the field and says beside it what to write instead. why
// is what is wrong, "" for nothing.
func (f *field) hold(why, remedy string) {
	f.held = why
	f.row.Answers = nil
	f.input.SetFaulty(why != "")
	if why != "" {
		f.row.Complain(remedy)
	} else {
		f.row.Say("")
	}
}

// ask puts a question beside the field. Unless it may be passed over, what stands in the
// field is held until it is answered.
func (f *field) ask(q *question) {
	f.held = q.why
	f.input.SetFaulty(q.why != "")
	f.row.Ask(q.answers)
}
