package dialogs

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// dayPanel asks which day's published rates are to be taken, and shows them beside what
// the scenario has.
type dayPanel struct {
	a      *Asker
	file   *rates.File
	dialog *kit.Dialog
	day    *kit.TextBox
	why    *kit.Text
	list   *fyne.Container
	whole  *fyne.Container
}

// AskDayRates asks for a day of a file of published rates.
func (a *Asker) AskDayRates(file *rates.File) {
	p := &dayPanel{a: a, file: file, why: kit.NewText(kit.SizeSmall), day: kit.NewTextBox(true)}
	p.day.Set(file.Newest().Date().String())
	p.day.Entry.OnChanged = func(string) { p.fill() }
	p.day.Entry.OnSubmitted = func(string) { p.take() }
	p.day.Entry.Escape = func() { p.dialog.Leave() }
	width := kit.LabelWidth + 330*kit.TextFactor
	p.list = kit.NewStack(width, 6)
	p.whole = kit.NewStack(width, 8, kit.NewRow(words.DayRatesDay, p.day, kit.NumberWidth, ""), p.why, p.list,
		kit.NewText(kit.SizeSmall+1, kit.Span{Text: words.ForInformation, Color: kit.Muted}), kit.Space(8))
	p.dialog = a.on.Ask(words.DayRatesTitle, kit.AtWidth(width, p.whole), p.day.Entry,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.DayRatesTake, Do: p.take, Stay: true})
	p.fill()
	p.dialog.Fit()
}

// chosen is the day that stands in the field, or says what is wrong with it.
func (p *dayPanel) chosen() (d rates.Day, wrong string) {
	date, err := scenario.ParseDate(p.day.Entry.Text)
	if err != nil {
		return d, words.DayRatesNoDay
	}
	d, ok := p.file.On(date)
	if !ok {
		return d, words.DayRatesMissing(p.file, date)
	}
	s := p.a.host.Session().Current()
	if _, taken := session.WithDay(s, d); len(taken) == 0 {
		return d, words.DayRatesNone
	}
	return d, ""
}

// fill shows what would be taken.
func (p *dayPanel) fill() {
	p.list.RemoveAll()
	p.why.Set()
	d, wrong := p.chosen()
	p.dialog.Allow(words.DayRatesTake, wrong == "")
	if wrong != "" {
		complain(p.why, wrong)
		p.whole.Refresh()
		return
	}
	s := p.a.host.Session().Current()
	next, taken := session.WithDay(s, d)
	for _, i := range taken {
		var was *scenario.Rate
		if i < len(s.Rates) {
			was = &s.Rates[i]
		}
		p.list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.DayRate(next.Rates[i], was, p.a.host.Locale())}))
	}
	p.whole.Refresh()
}

// take puts the day's rates into the scenario, in one step.
func (p *dayPanel) take() {
	d, wrong := p.chosen()
	if wrong != "" {
		return // it stands there
	}
	p.dialog.Hide()
	n := 0
	p.a.host.Change(func(s *session.Session) { n = s.TakeDay(words.StepDayRates, d) })
	p.a.host.Announce(words.DayRatesTaken(d.Date(), n))
}
