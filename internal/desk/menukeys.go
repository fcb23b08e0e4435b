package desk

import (
	"runtime"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// keyed is a shortcut whose keys stand in the label of its item. The toolkit would write
// them beside it at a fifth of the text's strength, which nobody can read; it does not write
// those of a shortcut that names no keys, and finds it all the same.
type keyed struct{ by fyne.KeyboardShortcut }

func (k keyed) ShortcutName() string { return k.by.ShortcutName() }

// nativeMenu says whether the system draws the menu, and writes the keys itself.
const nativeMenu = runtime.GOOS == "darwin"

// keysColumn begins the keys in a label, and with hair moves them into one column: the em
// and the tenth of an em of the typeface.
const (
	keysColumn = "\u2003"
	hair       = "\u200a"
)

// plain is a label without its keys.
func plain(label string) string {
	before, _, _ := strings.Cut(label, keysColumn)
	return before
}

// writeKeys sets the keys of a menu's shortcuts behind its labels, in one column.
func writeKeys(m *fyne.Menu) {
	if nativeMenu {
		return
	}
	width := func(text string) float32 { return kit.Measure(text, kit.SizeText, false) }
	var column float32
	for _, item := range m.Items {
		column = max(column, width(plain(item.Label)+keysColumn))
	}
	for _, item := range m.Items {
		if by, ok := item.Shortcut.(fyne.KeyboardShortcut); ok {
			item.Shortcut = keyed{by}
		}
		if k, ok := item.Shortcut.(keyed); ok {
			label := plain(item.Label) + keysColumn
			for _, space := range []string{keysColumn, hair} {
				for width(label+space) <= column+width(hair)/2 {
					label += space
				}
			}
			item.Label = label + keysOf(k.by)
		}
	}
}

// keysOf are the keys of a shortcut as people write them.
func keysOf(s fyne.KeyboardShortcut) string {
	return words.Keys(s.Mod()&fyne.KeyModifierControl != 0, s.Mod()&fyne.KeyModifierAlt != 0, s.Mod()&fyne.KeyModifierShift != 0, string(s.Key()))
}

// bar is a canvas with a menu bar, which the toolkit's own interface does not tell of.
type bar interface {
	fyne.Canvas
	ToggleMenu()
}

// openMenu opens the menu at a place of the bar, from 0, unless a dialog is open.
func openMenu(c fyne.Canvas, at int) {
	b, ok := c.(bar)
	if !ok || c.Overlays().Top() != nil {
		return
	}
	b.ToggleMenu()
	for range at {
		if f := b.Focused(); f != nil {
			f.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
		}
	}
}

// listenForMenus opens menus by Alt with the first letter of their names, as F10 opens the
// first. The toolkit does that by Alt alone, and closes them by Esc.
func (d *Desk) listenForMenus() {
	c := d.win.Canvas()
	for i, m := range d.menu.main.Items {
		c.AddShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyName(strings.ToUpper(m.Label[:1])), Modifier: fyne.KeyModifierAlt},
			func(fyne.Shortcut) { openMenu(c, i) })
	}
}

// typed is a key that nothing with the focus has a use for.
func (d *Desk) typed(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyF10 {
		openMenu(d.win.Canvas(), 0)
		return
	}
	onScreen{d}.escape(e)
}
