package inhand

import (
	"strconv"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/stock"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// List is the left column's part about reels in hand.
type List struct {
	Content *fyne.Container
	long    *kit.Long
	head    *fyne.Container
	choose  func(reel int)
	reels   []scenario.InHand
	known   []reels.Standing // where they stood when that was worked out last
	chosen  int              // −1 for none
	locale  money.Locale
}

// NewList is an empty list, choose is told which reel was chosen, add that one more is
// wanted.
func NewList(width float32, choose func(reel int), add func()) *List {
	w := &List{choose: choose, chosen: -1}
	margin := func(o fyne.CanvasObject) fyne.CanvasObject {
		return kit.Inset(kit.NewStack(width, 0, o), kit.CardEdge, 0, kit.CardEdge, 0)
	}
	unit := kit.NewText(kit.SizeSmall, kit.Span{Text: words.HeadingRollsLeft, Color: kit.Muted, Bold: true}).Trailing()
	w.long = kit.NewLong(w.rowHeight, w.newCard, w.fill)
	w.head = kit.NewStack(width, 2, margin(kit.NewSides(kit.Heading(words.HeadingInHand), unit)))
	w.Content = kit.Inset(kit.NewStack(width, 2, w.head, w.long, kit.Space(2), margin(kit.NewLink(words.LinkAddInHand, add))), 12, 0, 12, 20)
	return w
}

// Within says what scrolls the column, and what stands above the list in it.
func (w *List) Within(scroll *kit.Scroll, above fyne.CanvasObject) {
	w.long.Within(scroll, func() float32 { return above.Size().Height + w.long.Position().Y })
}

func (w *List) rowHeight() float32 {
	return kit.LineHeight(kit.SizeTotal) + kit.LineHeight(kit.SizeSmall) + kit.Scaled(28)
}

func (w *List) newCard() fyne.CanvasObject {
	c := kit.NewCard(nil, w.step)
	c.Name.AtMost(1)
	c.Bar = kit.NewBar()
	return c
}

// fill puts a reel into a card.
func (w *List) fill(row fyne.CanvasObject, i int) {
	c, r := row.(*kit.Card), &w.reels[i]
	c.Choose = func() { w.choose(i) }
	c.Chosen = i == w.chosen
	c.Name.Set(kit.Span{Text: r.Name})
	if i >= len(w.known) || w.known[i].Name != r.Name {
		c.Total.Set()
		c.Bar.SetParts()
		c.Under.Set()
		c.Refresh()
		return
	}
	s := &w.known[i]
	if s.Fault != nil {
		c.Total.Set(kit.Span{Text: "–", Bold: true, Color: kit.Fault})
		c.Bar.SetParts()
		c.Under.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.ReelUnsound, Color: kit.Fault})
		c.Refresh()
		return
	}
	c.Total.Set(kit.Span{Text: strconv.FormatInt(s.More.Rolls(), 10), Bold: true})
	c.Bar.SetParts(partsOf(s)...)
	under := []kit.Span{{Text: words.ReelUnder(s, w.locale), Color: kit.Muted}}
	if len(s.Warnings) > 0 {
		under = append(under, kit.Span{Text: " !", Bold: true, Color: kit.Accent})
	}
	c.Under.Set(under...)
	c.Refresh()
}

// partsOf is the reel drawn to scale from its start: what is used, then what is left for
// cassettes; what is lost stays quiet.
func partsOf(s *reels.Standing) []kit.Part {
	length := s.Used.Add(s.Left).Add(s.Wasted)
	if length.Sign() <= 0 {
		return nil
	}
	share := func(f exact.Fraction) float32 { return float32(f.Float() / length.Float()) }
	return []kit.Part{{Share: share(s.Used), Color: kit.Muted}, {Share: share(s.Left), Color: kit.Accent}}
}

// step chooses the neighbour of the chosen reel.
func (w *List) step(by int) {
	if i := w.chosen + by; i >= 0 && i < len(w.reels) {
		w.choose(i)
		if c, ok := w.long.Reveal(i).(*kit.Card); ok {
			c.Tapped(nil)
		}
	}
}

// Show puts up the reels; chosen is −1 for none.
func (w *List) Show(list []scenario.InHand, chosen int, l money.Locale) {
	fewer := len(list) != len(w.reels)
	w.reels, w.chosen, w.locale = list, chosen, l
	w.long.SetCount(len(list))
	if fewer {
		w.Content.Refresh()
	}
}

// Tell takes in where the reels stand.
func (w *List) Tell(s *stock.Stock) {
	w.known = s.Standings
	w.long.Rows(func(row fyne.CanvasObject, i int) {
		if i < len(w.reels) {
			w.fill(row, i)
		}
	})
}

// Chosen is the card of the chosen reel, nil where there is none.
func (w *List) Chosen() fyne.Focusable {
	if c, ok := w.long.Reveal(w.chosen).(*kit.Card); ok {
		return c
	}
	return nil
}

// Has says whether a widget is one of the list's cards.
func (w *List) Has(f fyne.Focusable) (has bool) {
	w.long.Rows(func(row fyne.CanvasObject, _ int) { has = has || any(row) == any(f) })
	return has
}

// Cards are those in sight.
func (w *List) Cards() (list []*kit.Card) {
	w.long.Rows(func(row fyne.CanvasObject, _ int) { list = append(list, row.(*kit.Card)) })
	return list
}
