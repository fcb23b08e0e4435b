package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// help is the strip under the form that explains the field under the cursor. It always
// has its room, so that nothing moves when the focus does.
type help struct {
	content *fyne.Container
	text    *prose
}

func newHelp() *help {
	h := &help{text: small("").lines(3)}
	h.content = container.New(helpLayout{}, newRule(), h.text)
	h.say("")
	return h
}

// say explains a field, or says how to be told.
func (h *help) say(text string) {
	if text == "" {
		text = "Enter a field, and what it means is explained here."
	}
	h.text.set(span{text: text, color: colMuted})
}

type helpLayout struct{}

func (helpLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	place(o[0], 0, 0, size.Width, 1)
	place(o[1], 20, 7, size.Width-40, size.Height-10)
}

func (helpLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, helpHeight) }
