package kit

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
)

func TestTextBoxSelectsAllWhenEntered(t *testing.T) {
	var told []string
	b := NewTextBox(true)
	b.Changed = func(text string) { told = append(told, text) }
	b.Set("118")
	w := on(t, b, 120, 30)
	b.Tapped(nil)
	if w.Canvas().Focused() != b.Entry || b.Entry.SelectedText() != "118" || b.Entry.Before != "118" {
		t.Errorf("%q is selected", b.Entry.SelectedText())
	}
	b.Entry.TypedRune('7')
	if strings.Join(told, "|") != "7" || b.Entry.Text != "7" {
		t.Error(told, b.Entry.Text)
	}
}

func TestEntryHandsOnKeys(t *testing.T) {
	b := NewTextBox(false)
	steps, left := 0, false
	b.Entry.Nudge = func(by int) { steps = steps*10 + by }
	b.Entry.Escape = func() { left = true }
	on(t, b, 120, 30)
	b.Entry.TypedKey(key(fyne.KeyUp))
	b.Entry.TypedKey(key(fyne.KeyUp))
	b.Entry.TypedKey(key(fyne.KeyDown))
	b.Entry.TypedKey(key(fyne.KeyEscape))
	if steps != 109 || !left {
		t.Error(steps, left)
	}
}

func TestRowSaysAsksAndComplains(t *testing.T) {
	picked := ""
	r := NewRow("Price", NewTextBox(true), NumberWidth, "EUR")
	on(t, r, FormWidth, RowHeight)
	r.Say("means something")
	if r.Meaning.String() != "means something" || !r.Unit.Visible() {
		t.Error(r.Meaning.String())
	}
	r.Complain("write a number")
	if r.Meaning.String() != "✗ write a number" || r.Unit.Visible() {
		t.Error(r.Meaning.String(), "beside the unit", r.Unit.Visible())
	}
	r.Ask([]Answer{{"1.234?", func() { picked = "a" }}, {"1234?", func() { picked = "b" }}})
	if len(r.Answers) != 2 || r.Meaning.String() != "" {
		t.Fatal(len(r.Answers), r.Meaning.String())
	}
	if a, b := r.Answers[0], r.Answers[1]; a.Position().X+a.Size().Width > b.Position().X || b.Position().X+b.Size().Width > FormWidth+1 {
		t.Error("the answers overlap or leave the row")
	}
	r.Answers[1].Tapped(nil)
	if picked != "b" {
		t.Error("picked", picked)
	}
}
