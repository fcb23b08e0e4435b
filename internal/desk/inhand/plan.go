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
	plans  map[planKey][]*wishRow // a plan is kept while the window is open
	sight  planKey
	own    int             // exposures in its cassettes
	list   *fyne.Container // the wishes
	says   *kit.Text       // what is missing or left over
	acts   *fyne.Container
	cuts   *pages.FigureView
	sizes  *fyne.Container
	table  *kit.Table
	whole  *fyne.Container
	scroll *kit.Scroll

	atLoader *kit.Link
	shown    *stock.Stock
}

func newPlanPage(win Window, copied func(string)) *planPage {
	p := &planPage{win: win, plans: map[planKey][]*wishRow{}}
	p.list = kit.NewStack(0, 4)
	p.says = kit.NewText(kit.SizeText)
	p.atLoader = kit.NewLink(words.LinkStand, p.stand)
	p.acts = kit.NewLine(18, kit.NewLink(words.LinkWish, p.add), kit.NewLink(words.LinkSheet, p.print), p.atLoader)
	p.cuts, p.table = pages.NewFigureView(win.Restock), kit.NewTable(copied)
	p.sizes = kit.NewStack(0, 8, kit.FixedHeight(p.cuts, 260), kit.Small(words.CutCaution), kit.NewSideways(p.table))
	p.whole = kit.Inset(kit.NewStack(0, 10, kit.Small(words.WishHelp), p.list, p.says, p.acts, kit.Space(6), p.sizes), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	return p
}

func (p *planPage) name() string              { return words.PageCut }
func (p *planPage) which() stock.Page         { return stock.Cut }
func (p *planPage) object() fyne.CanvasObject { return p.scroll }

// planKey is whose a plan is: an offer and the reel that it became may have one name.
type planKey struct {
	name    string
	thought bool
}

// wishes are those of the reel in sight that can be read.
func (p *planPage) wishes(plan planKey, own int) (list []reels.Wish) {
	p.begin(plan, own)
	for _, w := range p.plans[plan] {
		if w.good {
			list = append(list, w.wish)
		}
	}
	return list
}

// begin begins a plan with as many as fit of the reel's own exposures.
func (p *planPage) begin(plan planKey, own int) {
	p.own = own
	if p.plans[plan] == nil {
		p.plans[plan] = []*wishRow{newWishRow(p, reels.Wish{Exposures: own})}
	}
	if p.sight != plan {
		p.sight = plan
		p.lay()
	}
}

// lay puts the rows of the reel's plan up.
func (p *planPage) lay() {
	p.list.RemoveAll()
	for _, w := range p.plans[p.sight] {
		p.list.Add(w.whole)
	}
	p.whole.Refresh()
	p.scroll.Refresh()
}

// grew lays the page out anew: a row is higher or lower than before.
func (p *planPage) grew() {
	p.list.Refresh()
	p.whole.Refresh()
	p.scroll.Refresh()
}

func (p *planPage) add() {
	w := newWishRow(p, reels.Wish{Asked: 1, Exposures: p.own})
	rows := p.plans[p.sight]
	if n := len(rows); n > 0 && rows[n-1].good && rows[n-1].wish.Asked == 0 {
		rows = append(rows[:n-1:n-1], w, rows[n-1]) // behind "as many as fit" nothing is left to wish
	} else {
		rows = append(rows, w)
	}
	p.plans[p.sight] = rows
	p.lay()
	p.win.Restock()
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.list); c != nil {
		c.Focus(w.asked.Entry)
	}
}

func (p *planPage) remove(w *wishRow) {
	rows := []*wishRow{}
	for _, other := range p.plans[p.sight] {
		if other != w {
			rows = append(rows, other)
		}
	}
	p.plans[p.sight] = rows
	p.lay()
	p.win.Restock()
}

func (p *planPage) fill(s *stock.Stock) {
	p.shown = s
	if p.atLoader.Show(); s.Standing == nil || !s.Is {
		p.atLoader.Hide()
	}
	l := p.win.Locale()
	at := 0
	for _, w := range p.plans[planKey{s.Name, s.Job.Of.Thought}] {
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

// Wish adds a wish to the plan in sight, as typing does.
func (c *Column) Wish(asked, exposures string) {
	c.plan.add()
	for _, w := range c.plan.plans[c.plan.sight] {
		if w.wish.Asked == 1 && w.asked.Entry.Text == "1" {
			w.asked.Entry.SetText(asked)
			w.exposures.Entry.SetText(exposures)
		}
	}
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
