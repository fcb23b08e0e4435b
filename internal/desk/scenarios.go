package desk

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
)

// add puts a scenario behind the one in the window and turns to it.
func (d *Desk) add(name string, s scenario.Scenario) {
	s.Name = scenario.FreeName(d.session.draft.File(), s.Name)
	d.session.draft.Insert(name, d.session.at+1, s)
	d.session.turnTo(d.session.at + 1)
	d.rebuild()
}

// newScenario asks for a name and a home currency, and begins from nothing.
func (d *Desk) newScenario() {
	t := d.Now()
	home := kit.NewPicker(allCurrencies, nil)
	home.First = currenciesOf(ptr(d.current()))
	home.Set(d.current().Home)
	d.askName("A new scenario", "Make", scenario.FreeName(d.session.draft.File(), "New scenario"), []*kit.Row{kit.NewRow("Home currency", home, kit.NumberWidth, "")},
		func(name string) {
			s := scenario.New(name, home.Value, scenario.Month{Year: t.Year(), Month: t.Month()})
			if d.session.isUntouchedDemo() {
				d.replaceDemo(s)
				return
			}
			d.add("a new scenario", s)
		})
}

// replaceDemo begins a file with s alone: nobody wants the demo in a file of their own.
func (d *Desk) replaceDemo(s scenario.Scenario) {
	d.session = newSession(scenario.File{Schema: scenario.Schema, Scenarios: []scenario.Scenario{s}})
	d.session.draft.Unsaved()
	d.safety.isKept = false
	d.rebuild()
}

func ptr[T any](v T) *T { return &v }

func (d *Desk) newFromDemo() { d.add("a new scenario", scenario.Demo().Scenarios[0]) }

func (d *Desk) duplicateScenario() { d.add("duplicating "+d.current().Name, d.current().Clone()) }

// deleteScenario takes the scenario in the window away; it can be undone. The last one
// stays.
func (d *Desk) deleteScenario() {
	if len(d.session.draft.File().Scenarios) < 2 {
		d.dialogs.Tell("The last scenario stays", "A file needs one scenario. Make another first.")
		return
	}
	d.session.draft.Remove("deleting "+d.current().Name, d.session.at)
	d.session.turnTo(min(d.session.at, len(d.session.draft.File().Scenarios)-1))
	d.rebuild()
}

// nextScenario turns to a neighbour in the file.
func (d *Desk) nextScenario(by int) {
	if i := d.session.at + by; i >= 0 && i < len(d.session.draft.File().Scenarios) {
		d.session.turnTo(i)
		d.rebuild()
	}
}

// renameScenario asks for another name.
func (d *Desk) renameScenario() {
	was := d.current().Name
	d.askName("Name of the scenario", "Rename", was, nil, func(name string) {
		if name != was {
			d.alter("name of the scenario", func(s *scenario.Scenario) { s.Name = name })
		}
	})
}

// askName asks for the name of a scenario, and for more beside it.
func (d *Desk) askName(title, yes, name string, more []*kit.Row, then func(name string)) {
	box := kit.NewTextBox(false)
	box.Set(name)
	why := kit.NewText(kit.SizeSmall).Lines(2)
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 6, kit.NewRow("Name", box, 290*kit.TextFactor, ""))
	for _, r := range more {
		body.Add(r)
	}
	body.Add(why)
	var q *kit.Dialog
	try := func() {
		if wrong := d.session.nameTaken(box.Entry.Text); wrong != "" && box.Entry.Text != name {
			why.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: wrong, Color: kit.Fault})
			return
		}
		q.Hide()
		then(box.Entry.Text)
	}
	box.Entry.OnSubmitted = func(string) { try() }
	box.Entry.Escape = func() { q.Leave() }
	q = d.dialogs.Ask(title, kit.AtWidth(width, body), box.Entry,
		kit.Reply{Label: "Cancel"}, kit.Reply{Label: yes, Do: try, Stay: true})
}
