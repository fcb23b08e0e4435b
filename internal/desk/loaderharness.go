package desk

import (
	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
)

// PutInHand puts the reel of an offer, from 0, in hand, as its link does.
func (h *Harness) PutInHand(offer int) {
	h.Topic("offer", offer)
	asForm{h.Desk}.PutInHand()
	h.Settle()
}

// PlanCut looks at how the reel of an offer, from 0, could be cut.
func (h *Harness) PlanCut(offer int) {
	h.Topic("offer", offer)
	asForm{h.Desk}.PlanCut()
	h.Settle()
}

// Reel turns to the reel in hand at i, and to a page of it.
func (h *Harness) Reel(i int, page stock.Page) {
	h.choose(session.Selection{Topic: session.TopicReel, Offer: h.session.Chosen.Offer, Reel: i})
	h.hand.column.Turn(page)
	h.Settle()
}

// OpenEntry opens an entry of the log in sight.
func (h *Harness) OpenEntry(i int) {
	h.hand.column.Open(i)
	h.Settle()
}

// Wish adds a wish to the cut plan in sight, as typing does.
func (h *Harness) Wish(asked, exposures string) {
	h.hand.column.Wish(asked, exposures)
	h.Settle()
}

// Stand stands at the loader with the plan in sight.
func (h *Harness) Stand() {
	h.hand.column.Stand()
	h.Settle()
}

// Enter asks for an entry of the log in sight.
func (h *Harness) Enter(kind inhand.Entry) {
	h.hand.column.Enter(kind)
	h.Settle()
}

// MeasureCounter opens the panel that measures the counter of the reel in sight.
func (h *Harness) MeasureCounter() {
	h.hand.column.MeasureCounter()
	h.Settle()
}
