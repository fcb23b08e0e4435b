package dialogs

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// Read shows a text to be read, and to be copied.
func (a *Asker) Read(title string, passages []words.Passage) {
	doc := kit.NewDocument()
	for _, p := range passages {
		if p.Linked {
			doc.Link(p.Heading)
		}
		if p.Heading != "" {
			doc.Heading(p.Heading)
		}
		for _, text := range p.Paragraphs {
			doc.Paragraph(text)
		}
	}
	a.read(title, doc, words.Plain(passages))
}

// read shows a text, which is copied as plain.
func (a *Asker) read(title string, doc *kit.Document, plain string) {
	d := a.on.Ask(title, doc.Scroll(), nil, kit.Reply{Label: words.Close},
		kit.Reply{Label: words.CopyText, Stay: true, Do: func() { fyne.CurrentApp().Clipboard().SetContent(plain) }})
	closes, copies := d.Buttons[0], d.Buttons[1]
	copies.Importance = widget.MediumImportance
	copies.Refresh()
	a.on.Window.Canvas().Focus(closes)
}
