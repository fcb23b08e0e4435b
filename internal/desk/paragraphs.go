package desk

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// paragraphs sets a text with empty lines between its paragraphs in a column that wide.
func paragraphs(text string, width float32) fyne.CanvasObject {
	c := newStack(width, 10)
	for _, p := range strings.Split(text, "\n\n") {
		c.Add(newProse(sizeText, span{text: p}))
	}
	return container.New(&exactSize{width}, c)
}

// exactSize gives its object a width and the height it needs then.
type exactSize struct{ width float32 }

func (e *exactSize) Layout(o []fyne.CanvasObject, size fyne.Size) {
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(size)
}

func (e *exactSize) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(e.width, heightOf(o[0], e.width))
}
