package dialogs

import (
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// NewScenario asks for a name and a home currency, and begins from nothing.
func (a *Asker) NewScenario() {
	now := a.host.Session()
	s, today := now.Current(), a.host.Today()
	home := kit.NewPicker(form.AllCurrencies, nil)
	home.First = form.CurrenciesOf(&s)
	home.Set(s.Home)
	a.askName(words.NewScenarioTitle, words.NewScenarioMake, now.FreeName(words.NewScenarioName), []*kit.Row{kit.NewRow(words.NewScenarioHome, home, kit.NumberWidth, "")},
		func(name string) {
			s := scenario.New(name, home.Value, scenario.Month{Year: today.Year, Month: today.Month})
			if now.IsUntouchedDemo() { // nobody wants the demo in a file of their own
				alone := session.New(scenario.File{Schema: scenario.Schema, Scenarios: []scenario.Scenario{s}})
				alone.Draft.Unsaved()
				a.host.Take(alone)
				return
			}
			a.host.Change(func(now *session.Session) { now.Add(words.StepNewScenario, s) })
		})
}

// DeleteScenario takes the scenario in the window away; it can be undone.
func (a *Asker) DeleteScenario() {
	if a.host.Session().IsLast() {
		a.on.Tell(words.LastScenario, words.LastScenarioWhy)
		return
	}
	a.host.Change((*session.Session).Remove)
}

// RenameScenario asks for another name.
func (a *Asker) RenameScenario() {
	was := a.host.Session().Current().Name
	a.askName(words.RenameTitle, words.Rename, was, nil, func(name string) {
		a.host.Change(func(s *session.Session) { s.Rename(name) })
	})
}

// askName asks for the name of a scenario, and for more beside it.
func (a *Asker) askName(title, yes, name string, more []*kit.Row, then func(name string)) {
	box := kit.NewTextBox(false)
	box.Set(name)
	why := complaint()
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 6, kit.NewRow(words.FieldAsked, box, 290*kit.TextFactor, ""))
	for _, r := range more {
		body.Add(r)
	}
	body.Add(why)
	var q *kit.Dialog
	try := func() {
		if wrong := a.host.Session().NameTaken(box.Entry.Text); wrong != "" && box.Entry.Text != name {
			complain(why, wrong)
			return
		}
		q.Hide()
		then(box.Entry.Text)
	}
	box.Entry.OnSubmitted = func(string) { try() }
	box.Entry.Escape = func() { q.Leave() }
	q = a.on.Ask(title, kit.AtWidth(width, body), box.Entry,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: yes, Do: try, Stay: true})
}
