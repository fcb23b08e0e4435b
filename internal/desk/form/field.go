package form

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Input is what a field types into or chooses from.
type Input interface {
	fyne.CanvasObject
	Set(text string)
	SetFaulty(bool)
}

// Field joins a binding with the row that shows it.
type Field struct {
	Binding
	Row   *kit.Row
	Input Input
	Focus fyne.Focusable
	// meaning is the engine's words for the value: the key to ask for, "" for none.
	meaning string
	unit    func(s *scenario.Scenario) string // nil for one that never changes
	label   func(s *scenario.Scenario) string // likewise
	Problem string                            // what is wrong with what stands in the field
	blame   string                            // what is wrong with the scenario's own value
	wanted  string                            // what to say while the field is empty
	inside  bool
	beside  *Field  // the choice in the place of the unit, nil for none
	takers  []taker // of what may be written beside the number
	said    string  // what was understood by it, until the field is left
	// instead asks back where what was chosen makes no sense but shows what is meant; nil
	// for never.
	instead func(next *scenario.Scenario) *question
	// prompt offers something beside the field while the scenario needs it; nil for never.
	prompt    func(s *scenario.Scenario) []kit.Answer
	prompting bool
}

// editor is who a field tells what was typed.
type editor interface {
	Edit(f *Field, text string)
	Enter(f *Field, in bool)
	Nudge(f *Field, step int)
	Change(do func(*session.Session)) // of more than a field: what it shows may alter
	GoTo(key string)                  // another field
	AskSeen(offer int)                // for a price that was seen
	AskDayRates()                     // for a day's published rates
	AskStatement()                    // for a purchase on a card statement
	AskBorderSets()                   // for border rules that are kept
}

// numberField is a field for typing, its value set to the right.
func numberField(e editor, label, unit string, s Binding) *Field {
	box := kit.NewTextBox(true)
	f := typed(e, label, unit, s, box, kit.NumberWidth, true)
	if unit != "" {
		f.taking(takesUnit(unit))
	}
	return f
}

// wordField is a field for typing words.
func wordField(e editor, label string, s Binding) *Field {
	return typed(e, label, "", s, kit.NewTextBox(false), kit.FormWidth-kit.LabelWidth, false)
}

func typed(e editor, label, unit string, s Binding, box *kit.TextBox, width float32, nudged bool) *Field {
	f := &Field{Binding: s, Input: box, Focus: box.Entry}
	f.Row = kit.NewRow(label, box, width, unit)
	box.Changed = func(text string) { e.Edit(f, text) }
	box.Entered = func(in bool) { e.Enter(f, in) }
	if nudged {
		box.Entry.Nudge = func(step int) { e.Nudge(f, step) }
	}
	return f
}

// choiceField is a field for choosing.
func choiceField(e editor, label string, width float32, options []kit.Option, s Binding) *Field {
	f := &Field{Binding: s}
	p := kit.NewPicker(options, func(value string) { e.Edit(f, value) })
	p.Entered = func(in bool) { e.Enter(f, in) }
	f.Input, f.Focus = p, p
	f.Row = kit.NewRow(label, p, width, "")
	return f
}

// withUnit puts the choice of the unit beside the value.
func (f *Field) withUnit(e editor, options []kit.Option, s Binding) *Field {
	unit := &Field{Binding: s, Row: f.Row}
	f.unit = nil
	p := kit.NewPicker(options, func(value string) { e.Edit(unit, value) })
	p.Plain = true
	p.Entered = func(in bool) { e.Enter(unit, in) }
	unit.Input, unit.Focus = p, p
	f.Row.ChooseUnit(p)
	f.beside = unit
	return f
}

// offering puts some of the units first in their list.
func (f *Field) offering(first []string) *Field {
	f.Row.Choice.First = first
	return f
}

// means names what the engine says about the value.
func (f *Field) means(key string) *Field {
	f.meaning = key
	return f
}

// unitOf makes the unit follow the scenario.
func (f *Field) unitOf(unit func(*scenario.Scenario) string) *Field {
	f.unit = unit
	return f
}

// show puts the scenario's value into the field, unless somebody is typing there or
// what stands there is kept out.
func (f *Field) show(s *scenario.Scenario, l money.Locale) {
	if f.unit != nil && f.Row.Unit.String() != f.unit(s) {
		f.Row.Unit.Set(kit.Span{Text: f.unit(s), Color: kit.Muted})
		f.Row.Refresh()
	}
	if f.label != nil {
		f.Row.Label.Set(kit.Span{Text: f.label(s)})
	}
	f.offer(s)
	if f.inside || f.Problem != "" {
		return
	}
	if text := s.Unread(f.Key); text != "" {
		f.Input.Set(text)
		return
	}
	f.Input.Set(f.Get(s, l))
}

// offer puts the prompt beside the field, or takes it away.
func (f *Field) offer(s *scenario.Scenario) {
	if f.prompt == nil || f.Problem != "" {
		return
	}
	answers := f.prompt(s)
	if len(answers) > 0 != f.prompting {
		f.prompting = !f.prompting
		f.Row.Ask(answers)
	}
}

// isEmpty says whether nothing stands in the field.
func (f *Field) isEmpty() bool {
	box, ok := f.Input.(*kit.TextBox)
	return ok && box.Entry.Text == ""
}

// refuse keeps what was typed in the field and says beside it what to write instead. why
// is what is wrong, "" for nothing.
func (f *Field) refuse(why, remedy string) {
	f.Problem, f.blame = why, ""
	f.Row.Answers = nil
	f.Input.SetFaulty(why != "")
	if why != "" {
		f.Row.Complain(remedy)
	} else {
		f.Row.Say("")
	}
}

// ask puts a question beside the field. Unless it may be passed over, what stands in the
// field is kept out until it is answered.
func (f *Field) ask(q *question) {
	f.Problem = q.why
	f.Input.SetFaulty(q.why != "")
	f.Row.Ask(q.answers)
}
