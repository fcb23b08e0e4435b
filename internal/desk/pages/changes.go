package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/words"
)

// ChangesPage is what would change the answer: where it turns, and how far each input
// moves it.
type ChangesPage struct {
	whole   *fyne.Container
	list    *fyne.Container
	intro   *kit.Text
	Flip    *FigureView
	Volumes *FigureView
	ranges  *fyne.Container // who is cheaper by rolls a year: the strips and their table
	strips  *fyne.Container // the strips' room
	Table   *kit.Table
	Swings  *FigureView
	swing   *fyne.Container // the swings with their heading
	scroll  *kit.Scroll
	choose  func(answer.FlipKey)
	Flips   []*kit.Card // a sentence for each place where the answer flips
}

func newChangesPage(act Actions, copied func(string)) *ChangesPage {
	p := &ChangesPage{choose: act.LookAtFlip, intro: kit.NewText(kit.SizeText)}
	p.Flip, p.Swings = newFigureView(act.Redraw, nil), newFigureView(act.Redraw, nil)
	p.list = kit.NewStack(0, 1)
	p.Volumes, p.Table = newFigureView(act.Redraw, act.LookAt), kit.NewTable(copied)
	p.strips = kit.FixedHeight(p.Volumes, 200)
	table := kit.NewSideways(p.Table)
	p.ranges = kit.NewStack(0, 10, p.strips, table)
	p.swing = kit.NewStack(0, 6, kit.FixedHeight(p.Swings, 300), kit.NewLink(words.LinkRange, act.AskRange))
	p.whole = kit.Inset(kit.NewStack(0, 10, p.intro, p.list, kit.FixedHeight(p.Flip, 250), p.ranges, p.swing), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	table.Around = p.scroll
	return p
}

func (p *ChangesPage) name(View) string          { return words.PageChanges }
func (p *ChangesPage) object() fyne.CanvasObject { return p.scroll }

func (p *ChangesPage) rooms(scale float32) (r answer.Rooms) {
	r[answer.Flip], r[answer.Volumes], r[answer.Swings] = p.Flip.room(scale), p.Volumes.room(scale), p.Swings.room(scale)
	return r
}

func (p *ChangesPage) fill(v View) {
	f, l := v.Ahead, v.locale
	if f == nil || !f.Job.All {
		return
	}
	c, look := f.Ahead, f.Look
	p.intro.Set(kit.Span{Text: words.ChangesIntro(c, f.Pair(), l), Color: kit.Muted})
	sentences := words.Flips(c, look.Pair, l)
	for len(p.Flips) < len(sentences) {
		row := kit.NewCard(nil, p.move)
		row.Bare = true
		p.Flips = append(p.Flips, row)
		p.list.Add(row)
	}
	for i, row := range p.Flips {
		if i >= len(sentences) {
			row.Hide()
			continue
		}
		t := look.Crossings[i]
		row.Choose = func() { p.choose(answer.FlipKey{Input: t.Input, Up: t.Up}) }
		row.Chosen = i == look.At
		row.Name.Set(kit.Span{Text: sentences[i]})
		row.Show()
		row.Refresh()
	}
	p.Flip.putOrHide(f.Pictures[answer.Flip])
	p.tellRanges(f)
	if len(f.Swings()) > 0 {
		p.swing.Show()
		p.Swings.put(f.Pictures[answer.Swings])
	} else {
		p.swing.Hide()
	}
	p.whole.Refresh()
}

// tellRanges puts up who is cheaper by rolls a year.
func (p *ChangesPage) tellRanges(f *answer.Foresight) {
	there := f.Pair() != nil && len(f.Pair().Volumes) > 0
	show(p.ranges, there)
	if !there {
		return
	}
	kit.SetHeight(p.strips, float32(figure.VolumesHeight(f.Ahead, f.Job.Offer))*kit.TextFactor)
	p.Volumes.put(f.Pictures[answer.Volumes])
	if d := f.Pictures[answer.Volumes].Drawing; d != nil {
		table := d.Table()
		p.Table.Set(words.VolumesTitle, table.Header, table.Rows)
	}
}

// move chooses the neighbour of the flip that has the focus.
func (p *ChangesPage) move(step int) {
	for i, c := range p.Flips {
		if c.Focused {
			if j := i + step; j >= 0 && j < len(p.Flips) && p.Flips[j].Visible() {
				p.Flips[j].Tapped(nil)
			}
			return
		}
	}
}
