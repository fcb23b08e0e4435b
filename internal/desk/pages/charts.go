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
	whole  *fyne.Container
}

func newChartsPage(act Actions) *ChartsPage {
	p := &ChartsPage{layout: &chartsLayout{figure.CostHeight(3)}}
	p.Cost = newFigureView(act.Redraw, act.LookAt)
	p.Spend = newFigureView(act.Redraw, act.LookAt)
	p.whole = container.New(p.layout, p.Cost, p.Spend)
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

// chartsLayout gives the cost per roll the room its offers need, and the year the rest.
type chartsLayout struct{ costs float64 }

// offers adapts to a number of offers; it says whether that changes anything.
func (l *chartsLayout) offers(n int) bool {
	was := l.costs
	l.costs = figure.CostHeight(n)
	return was != l.costs
}

func (l *chartsLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const top, gap, right = 14, 16, 6
	room := size.Height - top - gap
	h := min(float32(l.costs), room*0.55)
	kit.Place(o[0], 0, top, size.Width-right, h)
	kit.Place(o[1], 0, top+h+gap, size.Width-right, room-h)
}

func (l *chartsLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 260) }
