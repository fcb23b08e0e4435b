package inhand

import (
	"slices"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// subject is whose plan is in sight.
type subject struct {
	work *session.Session
	at   stock.Subject
	of   stock.Plan
	all  int // reels in hand that there are: with one more or less, a place is another reel's
}

// follow turns the page to a subject. A reel that has another name than before takes its
// plan along.
func (p *planPage) follow(next subject, list []scenario.InHand) {
	was := p.sight
	if was == next {
		return
	}
	p.sight = next
	named := func(r scenario.InHand) bool { return r.Name == was.of.Name }
	if was.work == next.work && was.at == next.at && !next.at.Thought && !slices.ContainsFunc(list, named) {
		if wishes, kept := p.win.Plan(was.of); kept {
			p.win.KeepPlan(was.of, nil, true)
			p.win.KeepPlan(next.of, wishes, false)
		}
		return
	}
	p.laid = false
}

// wishes are those of the reel in sight that can be read; own is how many exposures its
// cassettes have.
func (p *planPage) wishes(own int) (list []reels.Wish) {
	p.own = own
	if !p.laid {
		p.begin()
	}
	for _, w := range p.rows {
		if w.good {
			list = append(list, w.wish)
		}
	}
	return list
}

// usual is the plan to begin with: as many as fit of the reel's own exposures.
func (p *planPage) usual() []reels.Wish { return []reels.Wish{{Exposures: p.own}} }

// begin begins with the plan that is remembered, or the usual one.
func (p *planPage) begin() {
	wishes, kept := p.win.Plan(p.sight.of)
	if !kept {
		wishes = p.usual()
	}
	p.rows = nil
	for _, w := range wishes {
		p.rows = append(p.rows, newWishRow(p, w))
	}
	p.laid = true
	p.lay()
}

// keep remembers the plan as it stands, as far as it can be read.
func (p *planPage) keep() {
	var list []reels.Wish
	for _, w := range p.rows {
		if w.good {
			list = append(list, w.wish)
		}
	}
	p.win.KeepPlan(p.sight.of, list, slices.Equal(list, p.usual()))
}

// lay puts the rows of the plan up.
func (p *planPage) lay() {
	p.list.RemoveAll()
	for _, w := range p.rows {
		p.list.Add(w.whole)
	}
	p.whole.Refresh()
	p.scroll.Refresh()
}

// add adds a wish and enters it. Behind "as many as fit" nothing is left to wish.
func (p *planPage) add() {
	w := newWishRow(p, reels.Wish{Asked: 1, Exposures: p.own})
	if n := len(p.rows); n > 0 && p.rows[n-1].good && p.rows[n-1].wish.Asked == 0 {
		p.rows = slices.Insert(p.rows, n-1, w)
	} else {
		p.rows = append(p.rows, w)
	}
	p.changed()
	p.focus(w.asked.Entry)
}

// remove takes a wish out; the focus goes to the one in its place.
func (p *planPage) remove(w *wishRow) {
	at := slices.Index(p.rows, w)
	p.rows = slices.Delete(p.rows, at, at+1)
	p.changed()
	if len(p.rows) > 0 {
		p.focus(p.rows[min(at, len(p.rows)-1)].asked.Entry)
	} else {
		p.focus(p.more)
	}
}

// changed shows and remembers that there are other wishes.
func (p *planPage) changed() {
	p.keep()
	p.lay()
	p.win.Restock()
}

func (p *planPage) focus(on fyne.Focusable) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(p.list); c != nil {
		c.Focus(on)
	}
}

// Wish adds a wish to the plan in sight, as typing does.
func (c *Column) Wish(asked, exposures string) {
	c.plan.add()
	for _, w := range c.plan.rows {
		if w.wish.Asked == 1 && w.asked.Entry.Text == "1" {
			w.asked.Entry.SetText(asked)
			w.exposures.Entry.SetText(exposures)
		}
	}
}

// Wishes are those of the plan in sight that can be read.
func (c *Column) Wishes() []reels.Wish { return c.plan.wishes(c.plan.own) }
