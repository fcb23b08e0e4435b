package offers

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// Rename lets the name of the way to buy at i be typed where it stands.
func (w *List) Rename(i int) {
	if i < len(w.Offers) {
		w.reveal(w.Offers[i])
		w.Offers[i].TypeName(func(name string) string { return w.act.Rename(i, name) })
	}
}

// RenameScenario lets the scenario's name be typed where it stands.
func (w *List) RenameScenario() {
	canvas := fyne.CurrentApp().Driver().CanvasForObject(w.Scenario)
	if canvas == nil {
		return // it is being typed
	}
	state := w.State.String()
	say := func(wrong string) {
		w.State.Set(kit.Span{Text: state, Color: kit.Muted})
		if wrong != "" {
			w.State.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: wrong, Color: kit.Fault})
		}
	}
	box := kit.NewNaming(w.Scenario.Value, w.act.RenameScenario, say, func(inside bool) {
		w.title.Objects = kit.Objects(w.Scenario)
		w.title.Refresh()
		if inside {
			canvas.Focus(w.Scenario)
		}
	})
	box.Entry.Called = w.Scenario.Called
	w.title.Objects = kit.Objects(box)
	w.title.Refresh()
	w.reveal(box)
	canvas.Focus(box.Entry)
}

func (w *List) reveal(o fyne.CanvasObject) {
	if w.In != nil {
		w.In.Reveal(o)
	}
}

// revealChosen scrolls to the card that was chosen last.
func (w *List) revealChosen() {
	for _, c := range w.cards() {
		if c.Chosen && w.moved {
			w.reveal(c)
		}
	}
}
