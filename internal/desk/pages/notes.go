package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// notesPage lists what is left out of the answer, and what is to be warned of.
type notesPage struct {
	list   *fyne.Container
	scroll *kit.Scroll
}

func newNotesPage() *notesPage {
	p := &notesPage{list: kit.Inset(kit.NewStack(0, 10), 0, 14, 14, 12)}
	p.scroll = kit.NewScroll(p.list)
	return p
}

// name tells how many notes there are.
func (p *notesPage) name(v View) string {
	if v.answer != nil {
		c := v.answer.Comparison
		return words.PageNotes(len(c.Warnings) + len(c.Verdict.LeftOut))
	}
	return words.PageNotes(0)
}

func (p *notesPage) object() fyne.CanvasObject  { return p.scroll }
func (p *notesPage) rooms(float32) answer.Rooms { return answer.Rooms{} }

func (p *notesPage) fill(v View) {
	c := v.answer.Comparison
	p.list.RemoveAll()
	for _, left := range words.LeftOut(c) {
		p.list.Add(kit.NewText(kit.SizeText, kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: left}))
	}
	for _, w := range c.Warnings {
		p.list.Add(kit.NewText(kit.SizeText, kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: words.Warning(w, c, v.locale)}))
	}
	if len(p.list.Objects) == 0 {
		p.list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.NoNotes, Color: kit.Muted}))
	}
	p.list.Refresh()
}
