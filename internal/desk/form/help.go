package form

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// helpHeight is the strip's height.
func helpHeight() float32 { return kit.Scaled(60) }

// help is the strip under the form that explains the field under the cursor. It always
// has its room, so that nothing moves when the focus does.
type help struct {
	content *fyne.Container
	text    *kit.Text
}

func newHelp() *help {
	h := &help{text: kit.Small("").Lines(3)}
	h.content = container.New(helpLayout{}, kit.NewRule(), h.text)
	h.say("")
	return h
}

// say explains a field, or says how to be told.
func (h *help) say(text string) {
	if text == "" {
		text = words.HelpIdle
	}
	h.text.Set(kit.Span{Text: text, Color: kit.Muted})
}

type helpLayout struct{}

func (helpLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	kit.Place(o[0], 0, 0, size.Width, 1)
	kit.Place(o[1], 20, 7, size.Width-40, size.Height-10)
}

func (helpLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, helpHeight()) }
