package desk

import (
	"io"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// asHand is the window as the pages of a reel know it.
type asHand struct{ d *Desk }

func (w asHand) Session() *session.Session        { return w.d.session }
func (w asHand) Locale() money.Locale             { return w.d.locale() }
func (w asHand) Today() scenario.Date             { return w.d.today() }
func (w asHand) Change(do func(*session.Session)) { w.d.change(do) }
func (w asHand) Restock()                         { w.d.hand.restock() }
func (w asHand) Back()                            { w.d.hand.leave() }
func (w asHand) Sheet() stock.Sheet               { return w.d.settings.sheet() }
func (w asHand) SetSheet(s stock.Sheet)           { w.d.settings.setSheet(s) }
func (w asHand) Undo()                            { w.d.undo() }
func (w asHand) Empty()                           { w.d.hand.empty() }
func (w asHand) Fill(whole fyne.CanvasObject, focus fyne.Focusable) {
	w.d.hand.fill(whole, focus)
}
func (w asHand) Export(title, name string, endings []string, write func(io.Writer) error) {
	w.d.asker.AskFile(title, name, endings, write)
}

func (w asHand) Plan(of stock.Plan) ([]reels.Wish, bool) {
	return w.d.settings.plan(w.d.session.Path(), of)
}
func (w asHand) KeepPlan(of stock.Plan, wishes []reels.Wish, forget bool) {
	w.d.settings.keepPlan(w.d.session.Path(), of, wishes, forget)
}
