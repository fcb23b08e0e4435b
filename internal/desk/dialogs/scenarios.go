package dialogs

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/words"
)

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
	a.askName(words.RenameTitle, words.Rename, was, func(name string) {
		a.host.Change(func(s *session.Session) { s.Rename(name) })
	})
}

// askName asks for the name of a scenario.
func (a *Asker) askName(title, yes, name string, then func(name string)) {
	box := kit.NewTextBox(false)
	box.Set(name)
	why := complaint()
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 6, kit.NewRow(words.FieldAsked, box, 290*kit.TextFactor, ""))
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
