package desk

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
)

// wheelOver turns the wheel downward with the pointer in the middle of an object.
func (h *Harness) wheelOver(o fyne.CanvasObject) {
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
	s := o.Size()
	test.Scroll(h.win.Canvas(), at.AddXY(s.Width/2, s.Height/2), 0, -20)
}

// Over a field as over the room beside it, the wheel turns the form.
func TestTheWheelTurnsTheFormWhereverThePointerIs(t *testing.T) {
	h := open(t)
	h.Topic("offer", 2)
	h.unfoldAll()
	h.Resize(1280, 700)
	scroll := h.form.Scroll
	turned := func(what string, o fyne.CanvasObject) {
		t.Helper()
		scroll.ScrollToTop()
		h.wheelOver(o)
		if scroll.Offset.Y == 0 {
			t.Errorf("over %s the form stays", what)
		}
	}
	tried := 0
	for _, f := range h.form.Fields() {
		at := f.Row.Position().Y
		if at+f.Row.Size().Height > scroll.Size().Height || !f.Row.Visible() || f.Row.Size().Height == 0 {
			continue
		}
		tried++
		turned(f.Key, f.Row.Field)
		turned("the name of "+f.Key, f.Row.Label)
		if box, ok := f.Input.(*kit.TextBox); ok {
			turned("the text of "+f.Key, box.Entry)
		}
	}
	if tried < 5 {
		t.Errorf("only %d fields are in sight", tried)
	}
	turned("the help", h.form.Content.Objects[1])
}

// A table that is too wide leaves the wheel's way down to its page.
func TestTheWheelTurnsThePageOverItsTable(t *testing.T) {
	h := open(t)
	for page := range h.answer.Tabs.Pages {
		h.Page(page)
		h.Resize(1280, 420)
		scroll, ok := h.answer.Tabs.Pages[page].Content.(*kit.Scroll)
		if !ok || scroll.Content.MinSize().Height <= scroll.Size().Height {
			continue
		}
		h.wheelOver(scroll)
		if scroll.Offset.Y == 0 || scroll.Offset.X != 0 {
			t.Errorf("page %d, turned down, is at %v", page, scroll.Offset)
		}
	}
}
