package inhand

import (
	"io"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/stock"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// planPage is how a reel is to be cut: wishes in order, what becomes of them, and what
// other cuts of a whole reel come to.
type planPage struct {
	win    Window
	rows   []*wishRow      // of the plan in sight
	sight  subject         // whose it is
	laid   bool            // its rows are there
	own    int             // exposures in its cassettes
	list   *fyne.Container // the wishes
	says   *kit.Text       // what is missing or left over
	acts   *fyne.Container
	cuts   *pages.FigureView
	sizes  *fyne.Container
	table  *kit.Table
	whole  *fyne.Container
	scroll *kit.Scroll

	more     *kit.Link // one wish more
	atLoader *kit.Link
	shown    *stock.Stock
}

func newPlanPage(win Window, copied func(string)) *planPage {
	p := &planPage{win: win}
	p.list = kit.NewStack(0, 4)
	p.says = kit.NewText(kit.SizeText)
	p.atLoader = kit.NewLink(words.LinkStand, p.stand)
	p.more = kit.NewLink(words.LinkWish, p.add)
	p.acts = kit.NewLine(18, p.more, kit.NewLink(words.LinkSheet, p.print), p.atLoader)
	p.cuts, p.table = pages.NewFigureView(win.Restock), kit.NewTable(copied)
	p.sizes = kit.NewStack(0, 8, kit.FixedHeight(p.cuts, 260), kit.Small(words.CutCaution), kit.NewSideways(p.table))
	p.whole = kit.Inset(kit.NewStack(0, 10, kit.Small(words.WishHelp), p.list, p.says, p.acts, kit.Space(6), p.sizes), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	return p
}

func (p *planPage) name() string              { return words.PageCut }
func (p *planPage) which() stock.Page         { return stock.Cut }
func (p *planPage) object() fyne.CanvasObject { return p.scroll }

// grew lays the page out anew: a row is higher or lower than before.
func (p *planPage) grew() {
	p.list.Refresh()
	p.whole.Refresh()
	p.scroll.Refresh()
}

func (p *planPage) fill(s *stock.Stock) {
	p.shown = s
	if p.atLoader.Show(); s.Standing == nil || !s.Is {
		p.atLoader.Hide()
	}
	l := p.win.Locale()
	at := 0
	for _, w := range p.rows {
		if w.good && at < len(s.Plan.Wishes) {
			w.tell(words.WishOutcome(s.Plan.Wishes[at], l))
			at++
		}
	}
	switch {
	case !s.Is:
		p.says.Set()
	case s.Plan.Missing.Sign() > 0:
		p.says.Set(kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: words.PlanOutcome(s.Plan, l), Bold: true})
	default:
		p.says.Set(kit.Span{Text: words.PlanOutcome(s.Plan, l)})
	}
	if s.Sizes == nil {
		p.sizes.Hide()
	} else {
		p.sizes.Show()
		p.cuts.Display(s.Sizes.Picture)
		if d := s.Sizes.Picture.Drawing; d != nil {
			table := d.Table()
			p.table.Set("", table.Header, table.Rows)
		}
	}
	p.whole.Refresh()
}

// steps are the plan's cassettes one after another, nil for none.
func (p *planPage) steps() []reels.Step {
	if p.shown == nil || !p.shown.Is {
		return nil
	}
	loaded := 0
	if p.shown.Standing != nil {
		loaded = p.shown.Standing.Loaded
	}
	return reels.Steps(p.shown.Plan, loaded)
}

// stand fills the window with one cassette after another.
func (p *planPage) stand() {
	if steps := p.steps(); len(steps) > 0 && p.shown.Standing != nil {
		s := newStanding(p.win, steps)
		p.win.Fill(s, s)
	}
}

// print writes the sheet with boxes to tick.
func (p *planPage) print() {
	steps := p.steps()
	if len(steps) == 0 {
		return
	}
	name, today := p.shown.Name, p.win.Today()
	p.win.Export(words.SheetTitle, words.LoadingTitle(name), []string{".pdf"}, func(w io.Writer) error {
		return stock.WritePages(w, words.LoadingTitle(name), stock.LoadingSheet(name, steps), today)
	})
}

// Stand stands at the loader with the plan in sight, as its link does.
func (c *Column) Stand() { c.plan.stand() }
