package kit

import (
	"strings"

	"fyne.io/fyne/v2"
)

// Paragraphs sets a text with empty lines between its paragraphs in a column that wide.
func Paragraphs(text string, width float32) fyne.CanvasObject {
	c := NewStack(width, 10)
	for _, p := range strings.Split(text, "\n\n") {
		c.Add(NewText(SizeText, Span{Text: p}))
	}
	return AtWidth(width, c)
}

// pageOf sets a text to be read, with a scroll where it is long.
func pageOf(text string) fyne.CanvasObject {
	scroll := NewScroll(Paragraphs(text, 520*TextFactor))
	need := HeightOf(scroll.Content, 520*TextFactor)
	scroll.SetMinSize(fyne.NewSize(530*TextFactor, min(need, 460)))
	return scroll
}
