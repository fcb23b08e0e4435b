package desk

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"reelworth/internal/words"
)

func TestCommandsWaitWhileADialogIsOpen(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.close()
	h.menu.undo.Action()
	if h.session.Current().Offers[2].Price.String() != "99" {
		t.Error("undone under an open dialog")
	}
}

// The page of keys must name every shortcut of the menu, and the toolkit passes on only
// those with a modifier.
func TestEveryShortcutIsOnThePageOfKeys(t *testing.T) {
	h := open(t)
	names := map[fyne.KeyName]string{fyne.KeyPageDown: "Page Down", fyne.KeyPageUp: "Page Up"}
	for _, m := range h.menu.main.Items {
		for _, item := range m.Items {
			if item.Shortcut == nil {
				continue
			}
			s := item.Shortcut.(keyed).by
			if s.Mod() == 0 {
				t.Errorf("%s: a key without a modifier never arrives", item.Label)
			}
			if _, ours := s.(*desktop.CustomShortcut); ours && (s.Key() == fyne.KeyZ || s.Key() == fyne.KeyY) && s.Mod() == ctrl {
				t.Errorf("%s: the toolkit has a shortcut of its own for these keys, and never looks for ours", item.Label)
			}
			name := names[s.Key()]
			if name == "" {
				name = string(s.Key())
			}
			if len(name) == 1 && name >= "1" && name <= "6" {
				continue // "Ctrl+1 to Ctrl+7"
			}
			if !strings.Contains(words.KeysHelp, "+"+name) && !strings.Contains(words.KeysHelp, "and "+name) && !item.IsQuit {
				t.Errorf("%s (%s) is not on the page of keys", item.Label, name)
			}
		}
	}
}

func TestJumpingBetweenColumns(t *testing.T) {
	h := open(t)
	for _, want := range []string{"*kit.Card", "*kit.Entry", "*kit.TabLabel", "*kit.Card"} {
		h.jump(1)
		if got := fmt.Sprintf("%T", h.Window().Canvas().Focused()); got != want {
			t.Errorf("the focus is on %s, want %s", got, want)
		}
	}
	h.jump(-1)
	if got := fmt.Sprintf("%T", h.Window().Canvas().Focused()); got != "*kit.TabLabel" {
		t.Error("back to", got)
	}
}

func TestEscapeBacksOut(t *testing.T) {
	h := open(t)
	escape := &fyne.KeyEvent{Name: fyne.KeyEscape}
	for name, ask := range map[string]func(){
		"keys": h.menu.item("Keys"), "deal": h.asker.AskDeal, "save as": func() { h.files.askSaveAs(nil) },
		"confirm": func() { h.dialogs.Confirm("Sure?", "Really?", "Yes", func() { t.Error("Esc said yes") }) },
	} {
		ask()
		h.Settle()
		if !h.View().Asking {
			t.Fatal(name, "asks nothing")
		}
		h.Window().Canvas().Focused().TypedKey(escape)
		if h.View().Asking || len(h.dialogs.Open) > 0 {
			t.Error(name, "stays after Esc")
		}
		ask() // and with the focus nowhere
		h.Settle()
		h.Window().Canvas().Unfocus()
		h.dialogs.Escape(escape)
		if h.View().Asking {
			t.Error(name, "stays after Esc without focus")
		}
	}
}
