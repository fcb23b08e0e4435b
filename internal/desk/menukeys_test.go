package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"reelworth/internal/desk/kit"
	"reelworth/internal/palette"
)

// The toolkit writes the keys of a fyne.KeyboardShortcut at a fifth of the ink, and looks
// for all by their names.
func TestTheMenuWritesItsKeysAsStronglyAsItsWords(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99") // the longest of labels comes and goes
	h.Settle()
	for _, m := range h.menu.main.Items {
		column := float32(0)
		for _, item := range m.Items {
			if item.Shortcut == nil {
				continue
			}
			if _, faint := item.Shortcut.(fyne.KeyboardShortcut); faint {
				t.Errorf("the keys of %s cannot be read", item.Label)
			}
			k := item.Shortcut.(keyed)
			before, found := strings.CutSuffix(item.Label, keysOf(k.by))
			if !found || k.ShortcutName() != k.by.ShortcutName() {
				t.Errorf("%q does not end in %s", item.Label, keysOf(k.by))
			}
			if x := kit.Measure(before, kit.SizeText, false); column == 0 {
				column = x
			} else if x < column-1.5 || x > column+1.5 {
				t.Errorf("the keys of %q stand at %g, others at %g", item.Label, x, column)
			}
		}
	}
}

// What cannot be done now is still to be read: 3:1, and the rest 4.5:1, on the menu and
// under the pointer (WCAG 2.2, 1.4.3 and 1.4.11).
func TestMenusCanBeRead(t *testing.T) {
	defer func(was kit.ThemeChoice) { kit.Look.Choice = was }(kit.Look.Choice)
	for _, choice := range []kit.ThemeChoice{kit.AlwaysPaper, kit.AlwaysSafelight} {
		kit.Look.Choice = choice
		colour := func(n fyne.ThemeColorName) palette.Layer { return palette.LayerOf(kit.Look.Color(n, 0)) }
		menu := colour(theme.ColorNameMenuBackground)
		for name, under := range map[string]palette.Layer{
			"menu": menu, "under the pointer": colour(theme.ColorNameHover).Over(menu), "chosen by keys": colour(theme.ColorNameFocus).Over(menu),
		} {
			if c := palette.Contrast(colour(theme.ColorNameForeground).Over(under), under); c < palette.TextContrast {
				t.Errorf("%s, %s: a label has %.2f:1", choice, name, c)
			}
			if c := palette.Contrast(colour(theme.ColorNameDisabled).Over(under), under); c < palette.PartContrast {
				t.Errorf("%s, %s: what cannot be done has %.2f:1", choice, name, c)
			}
		}
	}
}

// barred is a canvas with a menu bar, as the real window's is.
type barred struct {
	fyne.Canvas
	opened int // times
	moved  []fyne.KeyName
}

func (b *barred) ToggleMenu()               { b.opened++ }
func (b *barred) Focused() fyne.Focusable   { return b }
func (b *barred) FocusGained()              {}
func (b *barred) FocusLost()                {}
func (b *barred) TypedRune(rune)            {}
func (b *barred) TypedKey(e *fyne.KeyEvent) { b.moved = append(b.moved, e.Name) }

func TestMenusOpenByKeys(t *testing.T) {
	h := open(t)
	b := &barred{Canvas: h.win.Canvas()}
	openMenu(b, 2)
	if b.opened != 1 || len(b.moved) != 2 || b.moved[0] != fyne.KeyRight {
		t.Error("the third menu:", b.opened, b.moved)
	}
	h.asker.AskDeal()
	h.Settle()
	openMenu(b, 0)
	if b.opened != 1 {
		t.Error("a menu opens over a dialog")
	}
}

// F10 is a key like any other to what has the focus.
func TestTheKeyOfTheMenuReachesTheWindow(t *testing.T) {
	h := open(t)
	c := h.win.Canvas()
	heard := 0
	c.SetOnTypedKey(func(e *fyne.KeyEvent) { heard++ })
	h.form.GoTo("offer[3].price")
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyF10})
	h.form.GoTo("offer[3].currency")
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyF10})
	c.Focus(h.offers.ChosenCard())
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyF10})
	c.Focus(h.answer.Label())
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyF10})
	if heard != 4 {
		t.Errorf("of four, %d arrived", heard)
	}
}

func TestMenusBeginWithLettersOfTheirOwn(t *testing.T) {
	letters := map[string]bool{}
	menus := open(t).menu.main.Items
	for _, m := range menus {
		letters[strings.ToUpper(m.Label[:1])] = true
	}
	if len(letters) != len(menus) {
		t.Error("two begin alike:", letters)
	}
}
