package desk

import (
	"fyne.io/fyne/v2/container"

	"reelworth/internal/scenario"
)

// add puts a scenario behind the one in the window and turns to it.
func (d *Desk) add(name string, s scenario.Scenario) {
	s.Name = scenario.FreeName(d.session.draft.File(), s.Name)
	d.session.draft.Insert(name, d.session.at+1, s)
	d.session.turnTo(d.session.at + 1)
	d.rebuild()
}

func (d *Desk) newScenario() {
	t := d.Now()
	d.add("a new scenario", scenario.New("New scenario", d.current().Home, scenario.Month{Year: t.Year(), Month: t.Month()}))
	d.renameScenario()
}

func (d *Desk) newFromDemo() { d.add("a new scenario", scenario.Demo().Scenarios[0]) }

func (d *Desk) duplicateScenario() { d.add("duplicating "+d.current().Name, d.current().Clone()) }

// deleteScenario takes the scenario in the window away; it can be undone. The last one
// stays.
func (d *Desk) deleteScenario() {
	if len(d.session.draft.File().Scenarios) < 2 {
		d.tell("The last scenario stays", "A file needs one scenario. Make another first.")
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
	box := newTextBox(false)
	box.show(d.current().Name)
	why := newProse(sizeSmall).lines(2)
	width := labelWidth + 300*textFactor
	body := newStack(width, 6, newRow("Name", box, 290*textFactor, ""), why)
	var q *posed
	try := func() {
		name := box.entry.Text
		if wrong := d.session.nameTaken(name); wrong != "" {
			why.set(span{text: "✗ ", color: colFault, bold: true}, span{text: wrong, color: colFault})
			return
		}
		q.hide()
		if name != d.current().Name {
			d.alter("name of the scenario", func(s *scenario.Scenario) { s.Name = name })
		}
	}
	box.entry.OnSubmitted = func(string) { try() }
	box.entry.escape = func() { q.wayOut() }
	q = d.pose("Name of the scenario", container.New(&exactSize{width}, body), box.entry,
		reply{label: "Cancel"}, reply{label: "Rename", do: try, stay: true})
}
