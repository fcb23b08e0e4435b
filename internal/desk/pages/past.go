package pages

import (
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/history"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// PastPage is what a roll has cost at the rates of the past.
type PastPage struct {
	whole  *fyne.Container
	scroll *kit.Scroll
	Span   *kit.Picker
	span   *kit.Row
	asks   *ratesLine
	State  *kit.Text // what is under way, or why there is nothing
	again  *kit.Link // where it was stopped
	Figure *FigureView
	room   *fyne.Container // the figure's
	Notes  *kit.Text
	swings *fyne.Container
	Swings []*kit.Link // each takes a quote's past as the range of its swing
	Table  *kit.Table
	told   *answer.Past
	act    Actions
}

// spans are the stretches of the past to choose from; the value counts years.
var spans = []struct {
	option kit.Option
	span   history.Span
}{
	{kit.Option{Value: "1", Label: words.PastYear}, history.Span{Years: 1}},
	{kit.Option{Value: "3", Label: words.Past3}, history.Span{Years: 3}},
	{kit.Option{Value: "5", Label: words.Past5}, history.Span{Years: 5}},
	{kit.Option{Value: "all", Label: words.PastAll}, history.Span{}},
}

func newPastPage(act Actions, copied func(string)) *PastPage {
	p := &PastPage{act: act, State: kit.NewText(kit.SizeText), Notes: kit.NewText(kit.SizeSmall + 1), Table: kit.NewTable(copied)}
	var options []kit.Option
	for _, s := range spans {
		options = append(options, s.option)
	}
	p.Span = kit.NewPicker(options, func(value string) {
		for _, s := range spans {
			if s.option.Value == value {
				act.LookBackOver(s.span)
			}
		}
	})
	p.span = kit.NewRow(words.PastDays, p.Span, kit.WideWidth, "")
	p.asks = newRatesLine(act)
	p.again = kit.NewLink(words.PastGoOn, act.Redraw)
	p.Figure = newFigureView(act.Redraw, act.LookAt)
	p.room = kit.FixedHeight(p.Figure, 330)
	p.swings = kit.NewStack(0, 4)
	p.whole = kit.Inset(kit.NewStack(0, 10, p.span, p.State, p.again, p.room,
		p.Notes, p.swings, p.asks.Content, kit.NewSideways(p.Table)), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	return p
}

func (p *PastPage) name(View) string          { return words.PastPage }
func (p *PastPage) object() fyne.CanvasObject { return p.scroll }

func (p *PastPage) rooms(scale float32) (r answer.Rooms) {
	r[answer.Days] = p.Figure.room(scale)
	return r
}

func (p *PastPage) fill(v View) {
	m := v.Market
	p.asks.fill(m)
	for _, s := range spans {
		if s.span == m.Span {
			p.Span.Set(s.option.Value)
		}
	}
	state := p.state(v)
	p.State.Set(kit.Span{Text: state, Color: kit.Muted})
	show(p.State, state != "")
	show(p.span, m.File != nil)
	show(p.again, v.PastStopped && m.File != nil)
	past := v.Past
	if m.File == nil {
		past = nil
	}
	there := past != nil && past.History != nil
	show(p.room, there || m.File != nil && past == nil)
	show(p.Notes, there)
	show(p.swings, there)
	show(p.Table, there)
	if there {
		p.Figure.put(past.Picture)
		if past != p.told {
			p.told = past
			p.tell(past, v)
		}
	}
	p.whole.Refresh()
}

// state is what is under way, or why there is nothing to see; "" where there is.
func (p *PastPage) state(v View) string {
	switch {
	case v.Market.File == nil && v.Market.Busy != market.Idle:
		return ""
	case v.Market.File == nil:
		return words.NoMarket
	case v.PastStopped:
		return words.PastStopped
	case v.PastDone > 0:
		return words.PastProgress(v.PastDone, v.PastOf, v.locale)
	case v.Past == nil:
		return words.PastUnderWay
	case v.Past.Empty != nil:
		return words.PastEmpty(v.Past.Empty)
	}
	return ""
}

// tell puts up what is said of a history beside its figure.
func (p *PastPage) tell(past *answer.Past, v View) {
	h, l := past.History, v.locale
	var notes []string
	for _, out := range h.LeftOut {
		notes = append(notes, words.HistoryLeftOut(h, out))
	}
	notes = append(notes, words.HistoryNotes(h)...)
	p.Notes.Set(kit.Span{Text: strings.Join(notes, " "), Color: kit.Muted})
	p.Swings = nil
	p.swings.RemoveAll()
	for i, q := range h.Quotes {
		low, high, ok := h.Range(i)
		from, fits := rates.SixFigures(low)
		to, both := rates.SixFigures(high)
		if !ok || !fits || !both || !from.LessThan(to) {
			continue
		}
		r := scenario.Range{Input: q.Input, Low: from, High: to}
		link := kit.NewLink(words.SwingOfPast(r, l), func() { p.act.SetRange(r) })
		p.Swings = append(p.Swings, link)
		p.swings.Add(link)
	}
	if d := past.Picture.Drawing; d != nil {
		table := d.Table()
		p.Table.Set("", table.Header, table.Rows)
	}
}

func show(o fyne.CanvasObject, there bool) {
	if there {
		o.Show()
	} else {
		o.Hide()
	}
}

// ratesLine says which published rates are in use, and how to get others.
type ratesLine struct {
	Content *fyne.Container
	says    *kit.Text
	wrong   *kit.Text
	take    *kit.Link
	stop    *kit.Link
}

func newRatesLine(act Actions) *ratesLine {
	r := &ratesLine{says: kit.NewText(kit.SizeSmall + 1), wrong: kit.NewText(kit.SizeSmall + 1), stop: kit.NewLink(words.StopWaiting, act.StopWaiting)}
	r.take = kit.NewLink(words.LinkTakeDayRates, act.TakeDayRates)
	r.Content = kit.NewStack(0, 4, r.says, r.wrong, r.take,
		kit.NewLink(words.OpenRates, act.OpenRates), kit.NewLink(words.FetchRates, act.FetchRates), r.stop)
	return r
}

func (r *ratesLine) fill(m *market.Market) {
	text := ""
	switch {
	case m.Busy == market.Fetching:
		text = words.FetchingRates
	case m.Busy == market.Reading:
		text = words.ReadingRates
	case m.File != nil:
		text = words.RatesInUse(m.File, m.From)
	}
	r.says.Set(kit.Span{Text: text, Color: kit.Muted})
	r.wrong.Set()
	if m.Wrong != "" {
		r.wrong.Set(kit.Span{Text: "! ", Color: kit.Accent, Bold: true}, kit.Span{Text: m.Wrong})
	}
	show(r.says, text != "")
	show(r.wrong, m.Wrong != "")
	show(r.take, m.File != nil)
	show(r.stop, m.Busy == market.Fetching)
}
