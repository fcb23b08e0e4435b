package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/stock"
)

// linesOf is what is drawn of a text, its lines joined.
func linesOf(p *kit.Text) string {
	var b strings.Builder
	for _, o := range test.WidgetRenderer(p).Objects() {
		b.WriteString(o.(*canvas.Text).Text)
	}
	return b.String()
}

// complaints are the texts in sight below o that say what is wrong; each is held to be
// drawn to its last word, and within its room.
func complaints(t *testing.T, what string, o fyne.CanvasObject) (n int) {
	t.Helper()
	plain := func(s string) string { return strings.Join(strings.Fields(s), "") }
	inSight(o, func(p *kit.Text) {
		if !strings.HasPrefix(p.String(), "✗") {
			return
		}
		n++
		if got := linesOf(p); plain(got) != plain(p.String()) {
			t.Errorf("%s: %q is cut to %q", what, p, got)
		}
		if need := p.HeightFor(p.Size().Width); need > p.Size().Height+1 {
			t.Errorf("%s: %q needs %.0f of height and has %.0f", what, p, need, p.Size().Height)
		}
	})
	return n
}

// inSight visits the texts below o that are shown.
func inSight(o fyne.CanvasObject, visit func(*kit.Text)) {
	if !o.Visible() {
		return
	}
	switch w := o.(type) {
	case *kit.Text:
		visit(w)
	case *fyne.Container:
		for _, c := range w.Objects {
			inSight(c, visit)
		}
	case fyne.Widget:
		for _, c := range test.WidgetRenderer(w).Objects() {
			inSight(c, visit)
		}
	}
}

// What is wrong and what would do is said to its last word, beside a wish, a field and in
// a dialog, and nothing stands over it: in the usual window, and in a small one with the
// largest text.
func TestWhatIsWrongIsSaidWhole(t *testing.T) {
	for _, of := range []struct{ width, height, text float32 }{{1280, 800, 1}, {1024, 700, 1}, {1024, 700, 1.3}} {
		h := open(t)
		h.setText(of.text)
		t.Cleanup(func() { kit.SetTextSize(1) })
		h.Put(Shelf())
		h.Resize(of.width, of.height)
		h.Reel(0, stock.Cut)
		h.panes.look(atAnswer)
		h.Wish("1x", "12")
		if complaints(t, "a wish", h.root) == 0 {
			t.Error("nothing is wrong with 1x cassettes")
		}
		h.inspect(t, "a wish")
		h.Reel(0, stock.Log)
		h.Type("reel[1].keeps_until", "the day after the day before")
		h.Type("reel[1].counter_wraps", "1")
		if complaints(t, "the form", h.root) < 2 {
			t.Error("not every wrong field complains")
		}
		h.inspect(t, "the form")
		h.hand.column.Enter(inhand.Loaded)
		h.panel(t, "Loaded on").Entry.SetText("the day before yesterday")
		h.panel(t, "Cassettes").Entry.SetText("9999")
		h.press(t, "Add")
		if complaints(t, "a dialog", h.win.Canvas().Overlays().Top()) == 0 {
			t.Error("a day that is none is taken")
		}
		h.press(t, "Cancel")
	}
}
