package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// menu is the main menu's items that change.
type menu struct {
	main       *fyne.MainMenu
	edit       *fyne.Menu
	undo, redo *fyne.MenuItem
	themes     []*fyne.MenuItem
	texts      []*fyne.MenuItem
	numbers    []*fyne.MenuItem
}

const (
	ctrl      = fyne.KeyModifierShortcutDefault
	ctrlShift = fyne.KeyModifierShortcutDefault | fyne.KeyModifierShift
)

// setMenu builds the main menu.
func (d *Desk) setMenu() {
	m := &menu{}
	c := commands{d, m}
	m.main = fyne.NewMainMenu(c.file(), c.edit(), c.scenario(), c.view(), c.help())
	d.menu = m
	for _, one := range m.main.Items {
		writeKeys(one)
	}
	m.refresh(d.session, d.settings)
	d.win.SetMainMenu(m.main)
	d.listenForMenus()
}

// guarded keeps a command from running while a dialog is open: its shortcut reaches the
// menu even then.
func (d *Desk) guarded(do func()) func() {
	return func() {
		if d.win.Canvas().Overlays().Top() == nil {
			d.columns() // a list of faults is left first
			do()
		}
	}
}

// refresh names what undo and redo would do, and marks the settings.
func (m *menu) refresh(work *session.Session, set *settings) {
	if m == nil {
		return // not made yet
	}
	undo, redo := work.Draft.UndoName(), work.Draft.RedoName()
	changed := plain(m.undo.Label) != words.Undo(undo) || plain(m.redo.Label) != words.Redo(redo)
	if changed {
		m.undo.Label, m.redo.Label = words.Undo(undo), words.Redo(redo)
		writeKeys(m.edit)
	}
	m.undo.Disabled, m.redo.Disabled = undo == "", redo == ""
	tick := func(item *fyne.MenuItem, on bool) {
		changed = changed || item.Checked != on
		item.Checked = on
	}
	for i, item := range m.themes {
		tick(item, themes[i].choice == kit.Look.Choice)
	}
	for i, item := range m.texts {
		tick(item, textSizes[i].factor == kit.TextFactor)
	}
	for i, item := range m.numbers {
		tick(item, money.Locales()[i] == set.locale)
	}
	if changed {
		m.main.Refresh()
	}
}

// item is a command of the menu. Its shortcut needs a modifier: the toolkit hands plain
// function keys to the field that has the focus.
func item(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
	m := fyne.NewMenuItem(label, do)
	if key != "" {
		m.Shortcut = &desktop.CustomShortcut{KeyName: key, Modifier: mod}
	}
	return m
}

// fileMenu is where the first menu stands in the bar above the content; empty where the
// system draws the menu.
func fileMenu(c fyne.Canvas) kit.Box {
	height := c.Content().Position().Y
	// As the toolkit sets the bar: its edge, and as much around the name.
	width := 3*theme.InnerPadding() + kit.Measure(words.MenuFile, kit.SizeText, false)
	return kit.Box{Size: fyne.NewSize(width, height)}
}
