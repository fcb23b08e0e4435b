package desk

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// menu is the main menu's items that change.
type menu struct {
	main         *fyne.MainMenu
	undo, redo   *fyne.MenuItem
	themes       map[kit.ThemeChoice]*fyne.MenuItem
	texts        []*fyne.MenuItem
	numbers      []*fyne.MenuItem
	remove, with *fyne.MenuItem
}

// command is an item of the menu. Its shortcut needs a modifier: the toolkit hands plain
// function keys to the field that has the focus.
func command(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, do)
	if key != "" {
		m.Shortcut = &desktop.CustomShortcut{KeyName: key, Modifier: mod}
	}
	return m
}

const (
	ctrl      = fyne.KeyModifierShortcutDefault
	ctrlShift = fyne.KeyModifierShortcutDefault | fyne.KeyModifierShift
)

// setMenu builds the main menu. Shortcuts reach it even under a dialog, so every
// command is guarded.
func (d *Desk) setMenu() {
	m := &menu{themes: map[kit.ThemeChoice]*fyne.MenuItem{}}
	c := func(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
		return command(label, key, mod, d.guarded(do))
	}
	quit := c("Quit", fyne.KeyQ, ctrl, d.close)
	quit.IsQuit = true
	recent := fyne.NewMenuItem("Open recent", nil)
	recent.ChildMenu = d.recentMenu()
	file := fyne.NewMenu("File",
		c("Open…", fyne.KeyO, ctrl, d.askOpen),
		recent,
		c("Save", fyne.KeyS, ctrl, func() { d.save(nil) }),
		c("Save as…", fyne.KeyS, ctrlShift, func() { d.askSaveAs(nil) }),
		fyne.NewMenuItemSeparator(),
		c("Export cost per roll…", fyne.KeyE, ctrl, func() { d.askExport(figureCost) }),
		c("Export the year's spend…", fyne.KeyE, ctrlShift, func() { d.askExport(figureSpend) }),
		c("Export what changes it…", "", 0, func() { d.askExport(figureFlip) }),
		c("Export how far it swings…", "", 0, func() { d.askExport(figureSwings) }),
		c("Export order sizes…", "", 0, func() { d.askExport(figureSizes) }),
		fyne.NewMenuItemSeparator(),
		quit,
	)
	m.undo, m.redo = c("Undo", "", 0, d.undo), c("Redo", "", 0, d.redo)
	m.undo.Shortcut, m.redo.Shortcut = &fyne.ShortcutUndo{}, &fyne.ShortcutRedo{} // as the toolkit calls Ctrl+Z and Ctrl+Y
	m.with = c("Compare the others with this one", fyne.KeyB, ctrl, d.compareWith)
	m.remove = c("Remove this way to buy", "", 0, d.removeOffer)
	edit := fyne.NewMenu("Edit", m.undo, m.redo, fyne.NewMenuItemSeparator(),
		c("Add a reel", fyne.KeyR, ctrl, func() { d.addOffer(scenario.KindReel) }),
		c("Add boxed film", fyne.KeyR, ctrlShift, func() { d.addOffer(scenario.KindBoxed) }),
		c("Is it a deal?…", fyne.KeyI, ctrl, d.askDeal),
		c("Duplicate this way to buy", fyne.KeyD, ctrl, d.duplicateOffer),
		c("Move it up", fyne.KeyUp, ctrlShift, func() { d.moveOffer(-1) }),
		c("Move it down", fyne.KeyDown, ctrlShift, func() { d.moveOffer(1) }),
		m.with, m.remove)
	scenarios := fyne.NewMenu("Scenario",
		c("New, from nothing", fyne.KeyN, ctrl, d.newScenario),
		c("New, from the demo", "", 0, d.newFromDemo),
		c("New, from this one", "", 0, d.duplicateScenario),
		fyne.NewMenuItemSeparator(),
		c("Next", fyne.KeyPageDown, ctrl, func() { d.nextScenario(1) }),
		c("Previous", fyne.KeyPageUp, ctrl, func() { d.nextScenario(-1) }),
		fyne.NewMenuItemSeparator(),
		c("Rename…", fyne.KeyT, ctrl, d.renameScenario),
		c("Delete", "", 0, d.deleteScenario),
	)
	view := fyne.NewMenu("View",
		c("Charts", fyne.Key1, ctrl, func() { d.answer.tabs.Choose(pageCharts) }),
		c("Receipt", fyne.Key2, ctrl, func() { d.answer.tabs.Choose(pageReceipt) }),
		c("What changes it", fyne.Key3, ctrl, func() { d.answer.tabs.Choose(pageChanges) }),
		c("Order size", fyne.Key4, ctrl, func() { d.answer.tabs.Choose(pageSizes) }),
		c("Tables", fyne.Key5, ctrl, func() { d.answer.tabs.Choose(pageTables) }),
		c("Notes", fyne.Key6, ctrl, func() { d.answer.tabs.Choose(pageNotes) }),
		fyne.NewMenuItemSeparator(),
	)
	for _, t := range []struct {
		choice kit.ThemeChoice
		label  string
	}{{kit.FollowSystem, "Theme of the system"}, {kit.AlwaysPaper, "Paper theme"}, {kit.AlwaysSafelight, "Safelight theme"}} {
		item := c(t.label, "", 0, func() { d.setTheme(t.choice) })
		m.themes[t.choice] = item
		view.Items = append(view.Items, item)
	}
	view.Items = append(view.Items, fyne.NewMenuItemSeparator())
	for _, t := range textSizes {
		item := c(t.label, "", 0, func() { d.setText(t.factor) })
		m.texts = append(m.texts, item)
		view.Items = append(view.Items, item)
	}
	numbers := fyne.NewMenuItem("Numbers", nil)
	numbers.ChildMenu = fyne.NewMenu("")
	for _, l := range money.Locales() {
		item := c(numbersSample(l), "", 0, func() { d.setNumbers(l) })
		m.numbers = append(m.numbers, item)
		numbers.ChildMenu.Items = append(numbers.ChildMenu.Items, item)
	}
	jump := c("Next column", fyne.KeyJ, ctrl, func() { d.jump(1) })
	back := c("Previous column", fyne.KeyJ, ctrlShift, func() { d.jump(-1) })
	view.Items = append(view.Items, numbers, fyne.NewMenuItemSeparator(), jump, back)
	help := fyne.NewMenu("Help",
		c("Keys", fyne.KeyK, ctrl, d.showKeys),
		c("Words", "", 0, d.showWords),
		c("Cautions", "", 0, d.showCautions),
		c("About Reelworth", "", 0, d.showAbout),
	)
	m.main = fyne.NewMainMenu(file, edit, scenarios, view, help)
	d.menu = m
	d.refreshMenu()
	d.win.SetMainMenu(m.main)
}

// guarded keeps a command from running while a dialog is open.
func (d *Desk) guarded(do func()) func() {
	return func() {
		if d.win.Canvas().Overlays().Top() == nil {
			d.showColumns() // a list of faults is left first
			do()
		}
	}
}

// refreshMenu names what undo and redo would do, and marks the theme.
func (d *Desk) refreshMenu() {
	if d.menu == nil {
		return
	}
	m := d.menu
	label := func(verb, name string) string { return strings.TrimSpace(verb + " " + name) }
	undo, redo := d.session.draft.UndoName(), d.session.draft.RedoName()
	changed := m.undo.Label != label("Undo", undo) || m.redo.Label != label("Redo", redo)
	m.undo.Label, m.redo.Label = label("Undo", undo), label("Redo", redo)
	m.undo.Disabled, m.redo.Disabled = undo == "", redo == ""
	tick := func(item *fyne.MenuItem, on bool) {
		changed = changed || item.Checked != on
		item.Checked = on
	}
	for choice, item := range m.themes {
		tick(item, choice == kit.Look.Choice)
	}
	for i, item := range m.texts {
		tick(item, textSizes[i].factor == kit.TextFactor)
	}
	for i, item := range m.numbers {
		tick(item, money.Locales()[i] == d.Locale)
	}
	if changed {
		m.main.Refresh()
	}
}

func (d *Desk) showKeys() { d.dialogs.Tell("Keys", words.KeysHelp) }

func (d *Desk) showWords() {
	var text []string
	for _, t := range words.Terms() {
		text = append(text, t.Word+": "+t.Meaning)
	}
	d.dialogs.Tell("Words", strings.Join(text, "\n\n"))
}

func (d *Desk) showCautions() {
	d.dialogs.Tell("Cautions", words.ChemistryCaution+"\n\n"+words.RemjetCaution+"\n\n"+words.BorderCaution)
}

func (d *Desk) showAbout() { d.dialogs.Tell("Reelworth", words.About) }
