package desk

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// changesPage is what would change the answer: where it turns, and how far each input
// moves it.
type changesPage struct {
	content *fyne.Container
	list    *fyne.Container
	intro   *kit.Text
	flip    *figureView
	swings  *figureView
	swing   *fyne.Container // the swings with their heading
	choose  func(turnKey)
	turns   []*kit.Card
}

func newChangesPage(redraw func(), choose func(turnKey), setRange func()) *changesPage {
	p := &changesPage{choose: choose, intro: kit.NewText(kit.SizeText)}
	p.flip, p.swings = newFigureView(redraw, nil), newFigureView(redraw, nil)
	p.list = kit.NewStack(0, 1)
	p.swing = kit.NewStack(0, 6, kit.FixedHeight(p.swings, 300), kit.NewLink("Set how far an input swings…", setRange))
	p.content = kit.Inset(kit.NewStack(0, 10, p.intro, p.list, kit.FixedHeight(p.flip, 250), p.swing), 0, 12, 14, 12)
	return p
}

// show puts up what was foreseen.
func (p *changesPage) show(f *foresight, l locale) {
	c := &f.job.comparison
	p.intro.Set(kit.Span{Text: changesIntro(f, l), Color: kit.Muted})
	sentences := words.Flips(c, f.rival.Offer, f.rival.Other, f.rival.Saving, f.rival.Flips, l)
	for len(p.turns) < len(sentences) {
		row := kit.NewCard(nil, p.move)
		row.Bare = true
		p.turns = append(p.turns, row)
		p.list.Add(row)
	}
	for i, row := range p.turns {
		if i >= len(sentences) {
			row.Hide()
			continue
		}
		t := f.turns[i]
		row.Choose = func() { p.choose(turnKey{t.Input, t.Up}) }
		row.Chosen = i == f.at
		row.Name.Set(kit.Span{Text: sentences[i]})
		row.Show()
		row.Refresh()
	}
	p.flip.putOrHide(f.pictures[figureFlip])
	if len(f.rival.Swings) > 0 {
		p.swing.Show()
		p.swings.put(f.pictures[figureSwings])
	} else {
		p.swing.Hide()
	}
	p.content.Refresh()
}

// move chooses the neighbour of the turn that has the focus.
func (p *changesPage) move(step int) {
	for i, c := range p.turns {
		if c.Focused {
			if j := i + step; j >= 0 && j < len(p.turns) && p.turns[j].Visible() {
				p.turns[j].Tapped(nil)
			}
			return
		}
	}
}

// changesIntro says who is held against whom.
func changesIntro(f *foresight, l locale) string {
	c := &f.job.comparison
	if f.rival.Offer == "" {
		return "Nothing to hold against each other yet: add a reel and a boxed roll that can be computed."
	}
	text := fmt.Sprintf("%s against %s.", f.rival.Offer, f.rival.Other)
	if len(f.turns) == 0 {
		return text + " No single figure turns the answer within ten times what it is today."
	}
	text += " One figure changed, everything else as it is; the nearest first."
	if o := c.Find(f.rival.Offer); o != nil && o.Against != nil && f.rival.Other == c.Scenario.Baseline {
		text = join(text, words.Payback(&c.Scenario, o.Against, l))
		if a := f.outlook.Of(f.rival.Offer); a.Ceiling != nil {
			text = join(text, words.Ceiling(c, a.Name, a.Ceiling, l))
		}
	}
	return text
}

func join(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " " + b
}

// sizesPage is how many units to buy at once.
type sizesPage struct {
	content *fyne.Container
	figure  *figureView
	why     *kit.Text
	set     *kit.Link
	table   *kit.Table
	offer   string // whose sizes they are
	best    int
}

func newSizesPage(redraw func(), order func(offer string, units int), copied func(string)) *sizesPage {
	p := &sizesPage{why: kit.NewText(kit.SizeText), table: kit.NewTable(copied)}
	p.figure = newFigureView(redraw, nil)
	p.figure.picked = func(units int) { order(p.offer, units) }
	p.set = kit.NewLink("", func() { order(p.offer, p.best) })
	p.content = kit.Inset(kit.NewStack(0, 10, kit.FixedHeight(p.figure, 300), p.why, p.set, container.NewHScroll(p.table)), 0, 12, 14, 12)
	return p
}

// show puts up what was foreseen of the chosen offer.
func (p *sizesPage) show(f *foresight, l locale) {
	c := &f.job.comparison
	o := f.of(f.job.offer)
	if o == nil {
		p.why.Set(kit.Span{Text: "Choose a way to buy that can be computed.", Color: kit.Muted})
		p.figure.putOrHide(picture{}) // its room stays, to draw in again
		p.set.Hide()
		p.table.Hide()
		p.content.Refresh()
		return
	}
	p.offer = o.Name
	for _, size := range o.OrderSizes {
		if size.Best {
			p.tell(c, o, size, l)
		}
	}
	p.figure.putOrHide(f.pictures[figureSizes])
	if d := f.pictures[figureSizes].drawing; d != nil {
		p.table.Show()
		table := d.Table()
		p.table.Set("", table.Header, table.Rows)
	}
	p.content.Refresh()
}

// tell says which size is the best, why, and offers to take it.
func (p *sizesPage) tell(c *compare.Comparison, o *compare.OfferOutlook, size compare.OrderSize, l locale) {
	offer := offerNamed(c, o.Name)
	p.best = size.Units
	text := fmt.Sprintf("Best: %s in one order: %s.", words.Units(size.Units, offer), words.SizeReason(c, size, l))
	p.why.Set(kit.Span{Text: text})
	p.set.Label.Set(kit.Span{Text: fmt.Sprintf("Order %s at a time", words.Units(size.Units, offer)), Color: kit.Accent})
	if offer.Units == size.Units {
		p.set.Hide()
	} else {
		p.set.Show()
	}
}
