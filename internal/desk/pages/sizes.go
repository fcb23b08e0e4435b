package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// SizesPage is how many units to buy at once, and of a reel how to cut it.
type SizesPage struct {
	whole  *fyne.Container
	scroll *kit.Scroll
	Figure *FigureView
	why    *kit.Text
	Set    *kit.Link
	Table  *kit.Table
	Cuts   *cutsPart
	Offer  string // whose sizes they are
	Best   int
}

func newSizesPage(act Actions, copied func(string)) *SizesPage {
	p := &SizesPage{why: kit.NewText(kit.SizeText), Table: kit.NewTable(copied)}
	p.Figure = newFigureView(act.Redraw, nil)
	p.Figure.picked = func(units int) { act.Order(p.Offer, units) }
	p.Set = kit.NewLink("", func() { act.Order(p.Offer, p.Best) })
	p.Cuts = newCutsPart(act, copied)
	table, cuts := kit.NewSideways(p.Table), kit.NewSideways(p.Cuts.Table)
	p.whole = kit.Inset(kit.NewStack(0, 10, kit.FixedHeight(p.Figure, 270), p.why, p.Set, p.Cuts.Whole, table, cuts), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	table.Around, cuts.Around = p.scroll, p.scroll
	return p
}

func (p *SizesPage) name(View) string          { return words.PageSizes }
func (p *SizesPage) object() fyne.CanvasObject { return p.scroll }

func (p *SizesPage) rooms(scale float32) (r answer.Rooms) {
	r[answer.Sizes], r[answer.Cuts] = p.Figure.room(scale), p.Cuts.Figure.room(scale)
	return r
}

func (p *SizesPage) fill(v View) {
	f, l := v.Ahead, v.locale
	if f == nil || !f.Job.All {
		return
	}
	c := f.Ahead
	p.Cuts.fill(f)
	o := f.OrderSizesOf(f.Job.Offer)
	if o == nil {
		p.why.Set(kit.Span{Text: words.NothingToSize, Color: kit.Muted})
		p.Figure.putOrHide(answer.Picture{}) // its room stays, to draw in again
		p.Set.Hide()
		p.Table.Hide()
		p.whole.Refresh()
		return
	}
	p.Offer = o.Name
	for _, size := range o.OrderSizes {
		if size.Best {
			p.tell(c, o, size, l)
		}
	}
	p.Figure.putOrHide(f.Pictures[answer.Sizes])
	if d := f.Pictures[answer.Sizes].Drawing; d != nil {
		p.Table.Show()
		table := d.Table()
		p.Table.Set(words.SizesTitle(c), table.Header, table.Rows)
	}
	p.whole.Refresh()
}

// tell says which size is the best, why, and offers to take it.
func (p *SizesPage) tell(c *compare.Comparison, o *compare.OfferOutlook, size compare.OrderSize, l money.Locale) {
	offer := offerNamed(c, o.Name)
	p.Best = size.Units
	p.why.Set(kit.Span{Text: words.BestOrder(c, offer, size, l)})
	p.Set.Label.Set(kit.Span{Text: words.LinkOrder(size.Units, offer), Color: kit.Accent})
	if offer.Units == size.Units {
		p.Set.Hide()
	} else {
		p.Set.Show()
	}
}

// offerNamed is the offer of that name as it was typed.
func offerNamed(c *compare.Comparison, name string) *scenario.Offer {
	for i := range c.Scenario.Offers {
		if c.Scenario.Offers[i].Name == name {
			return &c.Scenario.Offers[i]
		}
	}
	return &scenario.Offer{}
}
