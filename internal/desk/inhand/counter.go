package inhand

import (
	"errors"
	"strings"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// counterPanel finds the loader's counter by one scrap of film or two.
type counterPanel struct {
	win    Window
	dialog *kit.Dialog
	counts [2]*kit.TextBox
	length [2]*kit.TextBox
	says   *kit.Text
	found  film.Counter
	good   bool
}

// counterPlaces is how fine a measured counter is written down, in decimals of a
// millimetre.
const counterPlaces = 6

// MeasureCounter opens the panel for the chosen reel.
func (c *Column) MeasureCounter() {
	p := &counterPanel{win: c.win, says: kit.NewText(kit.SizeText).AtLeast(3)}
	width := kit.LabelWidth + kit.Scaled(300)
	body := kit.NewStack(width, 2, kit.NewText(kit.SizeText, kit.Span{Text: words.CounterHelp}), kit.Space(4))
	for i := range p.counts {
		p.counts[i], p.length[i] = kit.NewTextBox(true), kit.NewTextBox(true)
		for _, box := range []*kit.TextBox{p.counts[i], p.length[i]} {
			box.Changed = func(string) { p.find() }
			box.Entry.OnSubmitted = func(string) { p.take() }
			box.Entry.Escape = func() { p.dialog.Leave() }
		}
		body.Add(kit.NewRow(words.ScrapCounts(i+1), p.counts[i], kit.NumberWidth, ""))
		body.Add(kit.NewRow(words.ScrapLength(i+1), p.length[i], kit.NumberWidth, words.Millimetres))
	}
	body.Add(p.says)
	p.dialog = c.on.Ask(words.AskCounter, kit.AtWidth(width, body), p.counts[0].Entry,
		kit.Reply{Label: words.ReplyCancel}, kit.Reply{Label: words.ReplySet, Do: p.take, Stay: true})
	p.find()
}

// scraps are those that are filled in; good is false where one cannot be read.
func (p *counterPanel) scraps() (list []film.Scrap, good bool) {
	good = true
	for i := range p.counts {
		n, mm := strings.TrimSpace(p.counts[i].Entry.Text), strings.TrimSpace(p.length[i].Entry.Text)
		if n == "" && mm == "" {
			continue
		}
		counts, wrong := form.ReadCount(n, p.win.Locale())
		length, err := form.ReadNumber(mm, p.win.Locale())
		p.counts[i].SetFaulty(wrong != nil)
		p.length[i].SetFaulty(err != nil)
		good = good && wrong == nil && err == nil
		list = append(list, film.Scrap{Counts: int64(counts), Length: exact.FromDecimal(length)})
	}
	return list, good
}

// find works the counter out as it is typed, and greys the reply while there is none.
func (p *counterPanel) find() {
	p.work()
	p.dialog.Allow(words.ReplySet, p.good)
}

func (p *counterPanel) work() {
	p.good = false
	scraps, good := p.scraps()
	if !good || len(scraps) == 0 {
		p.says.Set(kit.Span{Text: words.CounterWaits, Color: kit.Muted})
		return
	}
	found, err := film.Calibrate(scraps...)
	var wrong film.Mismeasured
	if errors.As(err, &wrong) {
		p.says.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.Mismeasured(wrong), Color: kit.Fault})
		return
	}
	p.found, p.good = found, true
	p.says.Set(kit.Span{Text: words.CounterFound(found, p.win.Locale())})
}

// take puts the counter into the reel, as one step.
func (p *counterPanel) take() {
	if !p.good {
		return
	}
	found := p.found
	do := func(r scenario.InHand) scenario.InHand {
		r.CounterMM = scenario.Maybe{Decimal: scenario.Trim(found.PerCount.Decimal(counterPlaces)), Set: true}
		r.CounterGrowthMM = scenario.Trim(found.Growth.Decimal(counterPlaces))
		return r
	}
	now := p.win.Session()
	r, ok := now.Reel()
	if !ok {
		return
	}
	if faults := now.FaultsWith(do(r)); len(faults) > 0 {
		wrong, remedy := words.Fault(faults[0])
		p.says.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: wrong + "; " + remedy, Color: kit.Fault})
		return
	}
	p.dialog.Hide()
	p.win.Change(func(s *session.Session) { s.AlterReel(words.Of(words.StepCounter, r.Name), do) })
}
