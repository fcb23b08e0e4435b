package desk

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// commands are the menus; what of them changes goes into the menu.
type commands struct {
	d *Desk
	m *menu
}

// add is a command that waits while a dialog is open.
func (c commands) add(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
	return item(label, key, mod, c.d.guarded(do))
}

// change is a command that changes the session.
func (c commands) change(label string, key fyne.KeyName, mod fyne.KeyModifier, do func(*session.Session)) *fyne.MenuItem {
	return c.add(label, key, mod, func() { c.d.change(do) })
}

func (c commands) file() *fyne.Menu {
	d := c.d
	quit := c.add("Quit", fyne.KeyQ, ctrl, d.close)
	quit.IsQuit = true
	recent := fyne.NewMenuItem("Open recent", nil)
	recent.ChildMenu = c.recent()
	export := func(fig int) func() { return func() { d.asker.AskExport(fig) } }
	return fyne.NewMenu("File",
		c.add("Open…", fyne.KeyO, ctrl, d.files.askOpen),
		recent,
		c.add("Save", fyne.KeyS, ctrl, func() { d.files.save(nil) }),
		c.add("Save as…", fyne.KeyS, ctrlShift, func() { d.files.askSaveAs(nil) }),
		fyne.NewMenuItemSeparator(),
		c.add("Export cost per roll…", fyne.KeyE, ctrl, export(answer.Cost)),
		c.add("Export the year's spend…", fyne.KeyE, ctrlShift, export(answer.Spend)),
		c.add("Export what changes it…", "", 0, export(answer.Flip)),
		c.add("Export how far it swings…", "", 0, export(answer.Swings)),
		c.add("Export order sizes…", "", 0, export(answer.Sizes)),
		fyne.NewMenuItemSeparator(),
		quit,
	)
}

// recent opens one of the recent files.
func (c commands) recent() *fyne.Menu {
	d, m := c.d, fyne.NewMenu("")
	for _, path := range d.settings.recent() {
		m.Items = append(m.Items, c.add(filepath.Base(path)+"  –  "+filepath.Dir(path), "", 0,
			func() { d.files.leaving(func() { d.Open(path) }) }))
	}
	if len(m.Items) == 0 {
		none := fyne.NewMenuItem("none yet", nil)
		none.Disabled = true
		m.Items = append(m.Items, none)
	}
	return m
}

func (c commands) edit() *fyne.Menu {
	d := c.d
	c.m.undo, c.m.redo = c.add("Undo", "", 0, d.undo), c.add("Redo", "", 0, d.redo)
	c.m.undo.Shortcut, c.m.redo.Shortcut = &fyne.ShortcutUndo{}, &fyne.ShortcutRedo{} // as the toolkit calls Ctrl+Z and Ctrl+Y
	return fyne.NewMenu("Edit", c.m.undo, c.m.redo, fyne.NewMenuItemSeparator(),
		c.add("Add a reel", fyne.KeyR, ctrl, func() { d.addOffer(scenario.KindReel) }),
		c.add("Add boxed film", fyne.KeyR, ctrlShift, func() { d.addOffer(scenario.KindBoxed) }),
		c.add("Is it a deal?…", fyne.KeyI, ctrl, d.asker.AskDeal),
		c.change("Duplicate this way to buy", fyne.KeyD, ctrl, (*session.Session).DuplicateOffer),
		c.change("Move it up", fyne.KeyUp, ctrlShift, func(s *session.Session) { s.MoveOffer(-1) }),
		c.change("Move it down", fyne.KeyDown, ctrlShift, func(s *session.Session) { s.MoveOffer(1) }),
		c.change("Compare the others with this one", fyne.KeyB, ctrl, (*session.Session).CompareWith),
		c.change("Remove this way to buy", "", 0, (*session.Session).RemoveOffer))
}

func (c commands) scenario() *fyne.Menu {
	d := c.d
	return fyne.NewMenu("Scenario",
		c.add("New, from nothing", fyne.KeyN, ctrl, d.asker.NewScenario),
		c.change("New, from the demo", "", 0, (*session.Session).AddDemo),
		c.change("New, from this one", "", 0, (*session.Session).Duplicate),
		fyne.NewMenuItemSeparator(),
		c.change("Next", fyne.KeyPageDown, ctrl, func(s *session.Session) { s.Step(1) }),
		c.change("Previous", fyne.KeyPageUp, ctrl, func(s *session.Session) { s.Step(-1) }),
		fyne.NewMenuItemSeparator(),
		c.add("Rename…", fyne.KeyT, ctrl, d.asker.RenameScenario),
		c.add("Delete", "", 0, d.asker.DeleteScenario),
	)
}

func (c commands) view() *fyne.Menu {
	d, view := c.d, fyne.NewMenu("View")
	for i, name := range d.answer.Names() {
		view.Items = append(view.Items, c.add(name, fyne.KeyName('1'+rune(i)), ctrl, func() { d.answer.Page(i) }))
	}
	view.Items = append(view.Items, fyne.NewMenuItemSeparator())
	for _, t := range themes {
		c.m.themes = append(c.m.themes, c.add(t.label, "", 0, func() {
			d.settings.setTheme(t.choice)
			d.show()
		}))
	}
	for _, t := range textSizes {
		c.m.texts = append(c.m.texts, c.add(t.label, "", 0, func() { d.setText(t.factor) }))
	}
	for _, l := range money.Locales() {
		c.m.numbers = append(c.m.numbers, c.add(numbersSample(l), "", 0, func() { d.setNumbers(l) }))
	}
	numbers := fyne.NewMenuItem("Numbers", nil)
	numbers.ChildMenu = fyne.NewMenu("", c.m.numbers...)
	view.Items = append(view.Items, c.m.themes...)
	view.Items = append(view.Items, fyne.NewMenuItemSeparator())
	view.Items = append(view.Items, c.m.texts...)
	view.Items = append(view.Items, numbers, fyne.NewMenuItemSeparator(),
		c.add("Next column", fyne.KeyJ, ctrl, func() { d.jump(1) }),
		c.add("Previous column", fyne.KeyJ, ctrlShift, func() { d.jump(-1) }))
	return view
}

func (c commands) help() *fyne.Menu {
	tell := func(title, text string) func() { return func() { c.d.dialogs.Tell(title, text) } }
	var terms []string
	for _, t := range words.Terms() {
		terms = append(terms, t.Word+": "+t.Meaning)
	}
	return fyne.NewMenu("Help",
		c.add("Keys", fyne.KeyK, ctrl, tell("Keys", words.KeysHelp)),
		c.add("Words", "", 0, tell("Words", strings.Join(terms, "\n\n"))),
		c.add("Cautions", "", 0, tell("Cautions", words.ChemistryCaution+"\n\n"+words.RemjetCaution+"\n\n"+words.BorderCaution)),
		c.add("About Reelworth", "", 0, tell("Reelworth", words.About)),
	)
}

// addOffer adds a way to buy and enters its form.
func (d *Desk) addOffer(kind scenario.Kind) {
	d.change(func(s *session.Session) { s.AddOffer(kind) })
	d.form.FocusFirst()
}

// setText changes the size of the text.
func (d *Desk) setText(factor float32) {
	d.settings.setText(factor)
	d.layOut()
}

// setNumbers changes how numbers are read and written.
func (d *Desk) setNumbers(l money.Locale) {
	d.settings.setNumbers(l)
	d.win.Canvas().Unfocus()
	d.rebuild()
}
