package main

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk"
	"reelworth/internal/desk/kit"
)

// below visits what lies below o.
func below(o fyne.CanvasObject, visit func(fyne.CanvasObject)) {
	for _, c := range test.LaidOutObjects(o) {
		visit(c)
	}
}

// fill types into the field of the open dialog that stands beside a label.
func fill(h *desk.Harness, label, text string) {
	below(h.Window().Canvas().Overlays().Top(), func(o fyne.CanvasObject) {
		if r, ok := o.(*kit.Row); ok && r.Label.String() == label {
			r.Field.(*kit.TextBox).Entry.SetText(text)
		}
	})
	h.Settle()
}

// choose chooses in the open dialog, beside a label.
func choose(h *desk.Harness, label, value string) {
	below(h.Window().Canvas().Overlays().Top(), func(o fyne.CanvasObject) {
		if r, ok := o.(*kit.Row); ok && r.Label.String() == label {
			r.Field.(*kit.Picker).Choose(value)
		}
	})
	h.Settle()
}

// reply gives a reply to the open dialog.
func reply(h *desk.Harness, label string) {
	below(h.Window().Canvas().Overlays().Top(), func(o fyne.CanvasObject) {
		if b, ok := o.(*kit.ReplyButton); ok && b.Text == label {
			b.Press()
		}
	})
	h.Settle()
}

// command does what the menu's item of a label does.
func command(h *desk.Harness, label string) {
	for _, menu := range h.Window().MainMenu().Items {
		for _, item := range menu.Items {
			if strings.HasPrefix(item.Label, label) {
				item.Action()
			}
		}
	}
	h.Settle()
}

// layAgain lays out what grew since it was laid out, as the driver of a screen does before
// each picture.
func layAgain(o fyne.CanvasObject) {
	switch w := o.(type) {
	case *fyne.Container:
		if w.Layout != nil {
			w.Layout.Layout(w.Objects, w.Size())
		}
		for _, c := range w.Objects {
			layAgain(c)
		}
	case fyne.Widget:
		r := test.WidgetRenderer(w)
		r.Layout(w.Size())
		for _, c := range r.Objects() {
			layAgain(c)
		}
	}
}
