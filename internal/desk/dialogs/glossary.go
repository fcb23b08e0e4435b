package dialogs

import (
	"image"

	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/words"
)

// Glossary explains the words of the trade, some with a drawing. They are drawn away from
// the interface thread, before it opens.
func (a *Asker) Glossary() {
	style := figure.Style{Theme: kit.Palette(), Locale: a.host.Locale()}
	style.Theme.Ground = style.Theme.Field // of a dialog
	text := kit.TextFactor
	scale := float64(a.on.Window.Canvas().Scale() * text)
	width := float64(kit.DocumentWidth() / text)
	a.work.Do(func() func() {
		type picture struct {
			image   image.Image
			caption string
		}
		drawn := map[words.TermPicture]picture{}
		for _, p := range words.TermPictures {
			d := figure.Term(p, width, style)
			drawn[p] = picture{d.Image(scale), d.Title()}
		}
		return func() {
			doc := kit.NewDocument()
			for _, t := range words.Glossary() {
				doc.Heading(t.Word)
				doc.Paragraph(t.Meaning)
				if p, has := drawn[t.Picture]; has {
					doc.Picture(p.image, p.caption, figure.TermHeight*text)
				}
			}
			a.read(words.MenuWords, doc, words.WordsHelp())
		}
	})
}
