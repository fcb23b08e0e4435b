package pages

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// Preview is what stands in the place of the columns for the report as it will print: all
// pages small, to choose one by, and that one large enough to read.
type Preview struct {
	Content *fyne.Container
	Paper   *kit.Picker
	State   *kit.Text // what was done, is under way, or could not be
	Pages   []*kit.Leaf
	Page    *kit.Leaf // the one chosen
	At      int       // from 0

	act    PreviewActions
	list   *fyne.Container // of the small ones
	side   *kit.Scroll     // they are in
	scroll *kit.Scroll     // the large one is in
}

// PreviewActions are what can be done there.
type PreviewActions interface {
	Redraw()             // there is more or less room now, or another page is looked at
	PrintOn(letter bool) // sheets of Letter, or of A4
	Export()
	Leave() // back to the columns
}

// a4Sides is the height of A4 to its width; the first picture says how it really is.
const a4Sides = 297.0 / 210

// NewPreview is a preview without pages yet.
func NewPreview(act PreviewActions, letter bool) *Preview {
	p := &Preview{act: act, State: kit.NewText(kit.SizeSmall + 1).Lines(1)}
	p.Paper = NewPaperPicker(letter, act.PrintOn)
	p.Page = kit.NewLeaf(a4Sides)
	p.Page.Resized, p.Page.Key = act.Redraw, p.key
	p.list = kit.NewStack(kit.Scaled(sideWidth), 10)
	choice := kit.NewRow(words.ExportPaper, p.Paper, kit.NumberWidth, "")
	p.side, p.scroll = kit.NewScroll(p.list), kit.NewScroll(container.New(sheetRoom{}, p.Page))
	links := kit.NewLine(24, kit.NewLink(words.SideBack, act.Leave), kit.NewLink(words.PreviewExport, act.Export))
	head := kit.NewStack(0, 8,
		kit.NewText(kit.SizeAnswer, kit.Span{Text: words.PreviewName, Bold: true}),
		kit.NewText(kit.SizeText, kit.Span{Text: words.PreviewHint, Color: kit.Muted}),
		links, p.State)
	p.Content = container.New(previewRoom{}, head, choice, p.side, p.scroll)
	return p
}

// NewPaperPicker chooses between sheets of A4 and of Letter.
func NewPaperPicker(letter bool, choose func(letter bool)) *kit.Picker {
	p := kit.NewPicker([]kit.Option{{Value: words.PaperA4, Label: words.PaperA4}, {Value: words.PaperLetter, Label: words.PaperLetter}},
		func(v string) { choose(v == words.PaperLetter) })
	p.Set(map[bool]string{false: words.PaperA4, true: words.PaperLetter}[letter])
	return p
}

// Wait says that something is under way.
func (p *Preview) Wait() { p.State.Set(kit.Span{Text: words.PreviewMaking, Color: kit.Muted}) }

// Announce says that something was done.
func (p *Preview) Announce(text string) {
	p.State.Set(kit.Span{Text: "✓ ", Color: kit.Good, Bold: true}, kit.Span{Text: text, Color: kit.Muted})
}

// Sheets are the rooms of the small pages and of the large one.
func (p *Preview) Sheets(scale float32) (small, large answer.Sheet) {
	return answer.Sheet{Width: kit.Scaled(sideWidth) - kit.LeafEdges, Scale: scale}, answer.Sheet{Width: p.Page.PaperWidth(), Scale: scale}
}

// Show puts pages up; caution is what is to be known of them, "" for nothing.
func (p *Preview) Show(came *answer.Preview, caution string) {
	pages := came.Pages.Pages
	p.State.Set()
	if caution != "" {
		p.State.Set(kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: caution})
	}
	for len(p.Pages) < len(pages) {
		p.Pages = append(p.Pages, p.small(len(p.Pages)))
	}
	p.Pages = p.Pages[:len(pages)]
	p.list.Objects = kit.Objects(p.Pages...)
	p.At = min(p.At, len(pages)-1)
	for i, leaf := range p.Pages {
		leaf.Put(came.Small[i], float32(pages[i].Size.H/pages[i].Size.W))
		leaf.Mark(i == p.At)
	}
	if came.Job.Page == p.At && came.Large != nil {
		page := pages[p.At]
		p.Page.Caption = words.PreviewPage(p.At+1) + ": " + strings.Join(page.Texts(), " ")
		p.Page.Put(came.Large, float32(page.Size.H/page.Size.W))
	}
	p.side.Refresh()
	p.scroll.Refresh()
}

// small is page i among the small ones.
func (p *Preview) small(i int) *kit.Leaf {
	leaf := kit.NewLeaf(a4Sides)
	leaf.Name.Set(kit.Span{Text: words.PreviewPage(i + 1), Color: kit.Muted})
	leaf.Choose, leaf.Key = func() { p.Turn(i) }, p.key
	return leaf
}

// Turn turns to page i, from 0, and stays where there is none.
func (p *Preview) Turn(i int) {
	if i < 0 || i >= len(p.Pages) || i == p.At {
		return
	}
	p.At = i
	for k, leaf := range p.Pages {
		leaf.Mark(k == i)
	}
	p.side.Reveal(p.Pages[i])
	p.scroll.ScrollToTop()
	p.act.Redraw()
}

// lineStep is how far an arrow key moves the page, in the window's units.
const lineStep = 60

// key does what the keys do on any of the pages.
func (p *Preview) key(k fyne.KeyName) bool {
	switch k {
	case fyne.KeyPageDown:
		p.Turn(p.At + 1)
	case fyne.KeyPageUp:
		p.Turn(p.At - 1)
	case fyne.KeyDown, fyne.KeyUp:
		by := kit.Scaled(lineStep)
		if k == fyne.KeyUp {
			by = -by
		}
		p.scroll.ScrollToOffset(p.scroll.Offset.AddXY(0, by))
	case fyne.KeyHome:
		p.scroll.ScrollToTop()
	case fyne.KeyEnd:
		p.scroll.ScrollToBottom()
	default:
		return false
	}
	return true
}
