package pages

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/words"
)

// ChartsPage is the cost per roll of every way to buy, over what the year costs.
type ChartsPage struct {
	Cost   *FigureView
	Spend  *FigureView
	layout *chartsLayout
	whole  *kit.Scroll
}

func newChartsPage(act Actions) *ChartsPage {
	p := &ChartsPage{layout: &chartsLayout{3}}
	p.Cost = newFigureView(act.Redraw, act.LookAt)
	p.Spend = newFigureView(act.Redraw, act.LookAt)
	p.whole = kit.NewScroll(container.New(p.layout, p.Cost, p.Spend))
	return p
}

func (p *ChartsPage) name(View) string          { return words.PageCharts }
func (p *ChartsPage) object() fyne.CanvasObject { return p.whole }
func (p *ChartsPage) fill(View)                 {} // what is drawn is put up at once

func (p *ChartsPage) put(an *answer.Answer) {
	p.Cost.put(an.Pictures[answer.Cost])
	p.Spend.put(an.Pictures[answer.Spend])
}

func (p *ChartsPage) rooms(scale float32) (r answer.Rooms) {
	r[answer.Cost], r[answer.Spend] = p.Cost.room(scale), p.Spend.room(scale)
	return r
}

// chartsLayout gives the cost per roll the room its offers need, and the year the rest. It
// is as high as both need it, so that in a small window no bar is left out.
type chartsLayout struct{ n int }

// offers adapts to a number of offers; it says whether that changes anything.
func (l *chartsLayout) offers(n int) bool {
	was := l.n
	l.n = n
	return was != n
}

// Around the charts, and what the year needs at least.
const chartsTop, chartsGap, chartsRight, leastYear = 14, 16, 6, 180

func (l *chartsLayout) least() float32 { return kit.Scaled(float32(figure.LeastCostHeight(l.n))) }

func (l *chartsLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	room := size.Height - chartsTop - chartsGap
	h := min(kit.Scaled(float32(figure.CostHeight(l.n))), room*0.55)
	h = max(h, min(l.least(), room-kit.Scaled(leastYear)))
	kit.Place(o[0], 0, chartsTop, size.Width-chartsRight, h)
	kit.Place(o[1], 0, chartsTop+h+chartsGap, size.Width-chartsRight, room-h)
}

func (l *chartsLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(300, chartsTop+l.least()+chartsGap+kit.Scaled(leastYear))
}
