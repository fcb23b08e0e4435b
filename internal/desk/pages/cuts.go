package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// cutsPart is what a reel comes to cut into rolls of other lengths; its table stands by
// itself.
type cutsPart struct {
	Whole  *fyne.Container
	Figure *FigureView
	Table  *kit.Table
}

func newCutsPart(act Actions, copied func(string)) *cutsPart {
	p := &cutsPart{Figure: newFigureView(act.Redraw, nil), Table: kit.NewTable(copied)}
	p.Whole = kit.NewStack(0, 6, kit.FixedHeight(p.Figure, 290), kit.Small(words.CutCaution))
	return p
}

// fill shows the cut sizes of what is looked at, which has some where it is a reel that
// can be computed.
func (p *cutsPart) fill(f *answer.Foresight) {
	there := len(f.Ahead.Outlook.Of(f.Job.Offer).CutSizes) > 0
	show(p.Whole, there)
	show(p.Table, there)
	if !there {
		return
	}
	p.Figure.put(f.Pictures[answer.Cuts])
	if d := f.Pictures[answer.Cuts].Drawing; d != nil {
		table := d.Table()
		p.Table.Set(words.CutsTitle, table.Header, table.Rows)
	}
}
