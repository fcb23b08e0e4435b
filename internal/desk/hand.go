package desk

import (
	"sync"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/offers"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// hand is the window's part about reels in hand: their list, and the column that stands in
// the place of the answer while one of them, or the cut of an offer's reel, is looked at.
type hand struct {
	d       *Desk
	list    *inhand.List
	column  *inhand.Column
	right   *fyne.Container // the answer, or the column
	worker  *jobs.Latest[stock.Job, *stock.Stock]
	thought bool // the cut of the chosen offer's reel is looked at
	filled  bool // something stands in the place of all columns
}

// newHand works away from the interface thread and reports back by post.
func newHand(d *Desk, post func(func())) *hand {
	h := &hand{d: d}
	keeper := &stock.Keeper{}
	h.worker = jobs.NewLatest(new(sync.Mutex), true, keeper.Work, jobs.NewMailbox(post, h.deliver).Put)
	return h
}

// layOut makes the list and the column anew; left scrolls the left column, in which the
// list stands below above.
func (h *hand) layOut(answer, above fyne.CanvasObject) (left *kit.Scroll) {
	page := stock.Log
	if h.column != nil {
		page = h.column.Page()
	}
	h.list = inhand.NewList(offers.Width(), func(i int) { h.d.choose(h.at(i)) }, h.add)
	h.column = nil // it is not there to be asked while it is made
	column := inhand.NewColumn(asHand{h.d}, h.d.dialogs, h.d.notices)
	h.column = column
	h.column.Turn(page)
	h.right = container.NewStack(answer, h.column.Content)
	left = kit.NewScroll(offers.Above(above, h.list.Content))
	h.list.Within(left, above)
	return left
}

// at is the selection of a reel in hand.
func (h *hand) at(i int) session.Selection {
	return session.Selection{Topic: session.TopicReel, Offer: h.d.session.Chosen.Offer, Reel: i}
}

// subject is what is looked at.
func (h *hand) subject() stock.Subject {
	sel := h.d.session.Chosen
	switch {
	case sel.Topic == session.TopicReel:
		return stock.Subject{Reel: sel.Reel}
	case h.thought && sel.Topic == session.TopicOffer:
		return stock.Subject{Reel: -1, Offer: sel.Offer, Thought: true}
	}
	return stock.None
}

// looking says whether the column stands in the place of the answer.
func (h *hand) looking() bool { return h.subject() != stock.None }

// show puts up what is known without computing, and asks for the rest.
func (h *hand) show() {
	chosen := -1
	if h.d.session.Chosen.Topic == session.TopicReel {
		chosen = h.d.session.Chosen.Reel
	}
	h.list.Show(h.d.session.Reels(), chosen, h.d.locale())
	h.turn()
	h.restock()
}

// turn puts the column in the place of the answer, or the answer back.
func (h *hand) turn() {
	answer, column := h.right.Objects[0], h.right.Objects[1]
	if h.looking() == column.Visible() && h.looking() != answer.Visible() {
		return
	}
	if h.looking() {
		answer.Hide()
		column.Show()
	} else {
		column.Hide()
		answer.Show()
	}
	h.right.Refresh()
}

// restock asks where the reels stand, and for what is on the screen of the one looked at.
func (h *hand) restock() {
	if h.column == nil {
		return // not while the columns are being made
	}
	d := h.d
	j := stock.Job{
		Reels: d.session.Reels(), Scenario: d.session.Current(), Today: d.today(), Of: h.subject(), Style: onScreen{d}.style(),
	}
	if h.looking() {
		j = h.column.Wants(j, d.win.Canvas().Scale())
	}
	h.worker.Post(j)
}

// deliver shows what was worked out, unless the window has moved on.
func (h *hand) deliver(s *stock.Stock) {
	if len(s.Job.Reels) != len(h.d.session.Reels()) {
		return
	}
	h.list.Tell(s)
	if h.looking() && s.Job.Of == h.subject() {
		h.column.Show(s)
	}
}

// plan looks at how the reel of the chosen offer could be cut.
func (h *hand) plan() {
	s, at := h.d.session.Current(), h.d.session.Chosen.Offer
	if at >= len(s.Offers) || s.Offers[at].Kind != scenario.KindReel {
		h.d.dialogs.Tell(words.NotCut.Title, words.NotCut.Text)
		return
	}
	h.d.choose(session.Selection{Topic: session.TopicOffer, Offer: at})
	h.thought = true
	h.d.win.Canvas().Unfocus()
	h.show()
}

// leave goes back to the answer.
func (h *hand) leave() {
	h.thought = false
	if h.d.session.Chosen.Topic == session.TopicReel {
		h.d.choose(session.Selection{Topic: session.TopicOffer, Offer: h.d.session.Chosen.Offer})
	} else {
		h.show()
	}
	h.d.win.Canvas().Focus(h.d.leftFocus()) // the link back is out of sight
}

// put puts the reel of the chosen offer in hand: it has come.
func (h *hand) put() {
	d, s, work := h.d, h.d.session.Current(), h.d.session
	offer, today := work.ChosenOffer(), d.today()
	d.work.Do(func() func() {
		c := compare.Compare(s, scenario.Check(s), today)
		return func() {
			if d.session != work {
				return // another file is open now
			}
			r, ok := compare.PutInHand(&c, offer, today, work.ReelNameTaken)
			if !ok {
				d.dialogs.Tell(words.NotInHand.Title, words.NotInHand.Text)
				return
			}
			h.insert(r)
		}
	})
}

// add puts a reel in hand that was bought as no offer of this file.
func (h *hand) add() {
	d := h.d
	h.insert(scenario.NewInHand(d.session.Current().Home, d.today(), d.session.ReelNameTaken))
}

func (h *hand) insert(r scenario.InHand) {
	h.thought = false
	h.d.change(func(s *session.Session) { s.PutInHand(words.StepPutInHand, r) })
	h.d.form.Top()
	h.column.Turn(stock.Log)
	h.d.win.Canvas().Focus(h.d.leftFocus()) // the link that put it in hand is gone
}

// fill puts something in the place of the columns, which has the keys.
func (h *hand) fill(whole fyne.CanvasObject, focus fyne.Focusable) {
	h.filled = true
	h.d.win.SetContent(whole)
	h.d.win.Canvas().Focus(focus)
}

// empty puts the columns back.
func (h *hand) empty() {
	if h.filled {
		h.filled = false
		h.d.win.SetContent(h.d.root)
		h.d.root.Refresh()
		h.restock()
		h.d.win.Canvas().Focus(h.column.Label()) // the keys go on where they were
	}
}

// typed follows a field of the reel; it says whether it is one.
func (h *hand) typed() bool { return h.d.session.Chosen.Topic == session.TopicReel }

// focusable is where the focus enters the list, nil where none of it is chosen.
func (h *hand) focusable() fyne.Focusable {
	if h.typed() {
		return h.list.Chosen()
	}
	return nil
}

func (h *hand) idle() { h.worker.Idle() }
func (h *hand) stop() { h.worker.Stop() }
