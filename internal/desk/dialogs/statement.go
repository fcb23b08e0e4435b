package dialogs

import (
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/exact"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// statementPanel works a rate out from a purchase on a card statement.
type statementPanel struct {
	a              *Asker
	file           *rates.File // published ones, nil for none
	dialog         *kit.Dialog
	asked, took    *kit.TextBox
	currency, card *kit.Picker
	day            *kit.TextBox
	says, markup   *kit.Text
	worked         rates.Worked
	good           bool // worked is of what stands in the fields
}

// AskStatement asks for a purchase. file are published rates to hold it against, nil for
// none.
func (a *Asker) AskStatement(file *rates.File) {
	p := &statementPanel{a: a, file: file, says: kit.NewText(kit.SizeText).AtLeast(2), markup: kit.NewText(kit.SizeSmall + 1).AtLeast(4)}
	p.asked, p.took, p.day = kit.NewTextBox(true), kit.NewTextBox(true), kit.NewTextBox(true)
	p.day.Set(a.host.Today().String())
	s := a.host.Session().Current()
	p.currency = p.picker(&s, foreign(&s, a.host.Session().Chosen.Offer))
	p.card = p.picker(&s, s.Home)
	for _, box := range []*kit.TextBox{p.asked, p.took, p.day} {
		box.Entry.OnChanged = func(string) { p.work() }
		box.Entry.OnSubmitted = func(string) { p.take(p.worked.Alone) }
		box.Entry.Escape = func() { p.dialog.Leave() }
	}
	width := kit.LabelWidth + 330*kit.TextFactor
	row := func(label string, box *kit.TextBox, unit *kit.Picker) *kit.Row {
		r := kit.NewRow(label, box, kit.NumberWidth, "")
		r.Choice = unit
		return r
	}
	body := kit.NewStack(width, 6, row(words.StatementAsked, p.asked, p.currency), row(words.StatementTook, p.took, p.card),
		kit.NewRow(words.StatementDay, p.day, kit.NumberWidth, ""), p.says, p.markup)
	p.dialog = a.on.Ask(words.StatementTitle, kit.AtWidth(width, body), p.asked.Entry,
		kit.Reply{Label: words.Cancel},
		kit.Reply{Label: words.StatementApart, Do: p.takeApart, Stay: true},
		kit.Reply{Label: words.StatementAlone, Do: func() { p.take(p.worked.Alone) }, Stay: true})
	p.work()
}

func (p *statementPanel) picker(s *scenario.Scenario, value string) *kit.Picker {
	c := kit.NewPicker(form.AllCurrencies, func(string) { p.work() })
	c.First = form.CurrenciesOf(s)
	c.Plain = true
	c.Set(value)
	return c
}

// foreign is the currency that was likely paid in: that of the offer that is looked at, or
// of the first from abroad.
func foreign(s *scenario.Scenario, chosen int) string {
	if chosen < len(s.Offers) && s.Offers[chosen].Currency != s.Home {
		return s.Offers[chosen].Currency
	}
	for _, o := range s.Offers {
		if o.Currency != s.Home {
			return o.Currency
		}
	}
	for _, code := range []string{"USD", "EUR"} {
		if code != s.Home {
			return code
		}
	}
	return s.Home
}

// work works out what stands in the fields and says it, and greys what cannot be taken.
func (p *statementPanel) work() {
	p.say()
	p.dialog.Allow(words.StatementAlone, p.good)
	p.dialog.Allow(words.StatementApart, p.apart() != nil)
}

// apart is the published rate with what the card added, nil where that is not known.
func (p *statementPanel) apart() *rates.Taking {
	if p.good && p.worked.Reference != nil {
		return p.worked.Reference.Apart
	}
	return nil
}

func (p *statementPanel) say() {
	p.good = false
	p.markup.Set()
	asked, err := form.ReadNumber(p.asked.Entry.Text, p.a.host.Locale())
	took, other := form.ReadNumber(p.took.Entry.Text, p.a.host.Locale())
	day, noDay := scenario.ParseDate(p.day.Entry.Text)
	if err == nil && other == nil && noDay == nil {
		p.worked, p.good = rates.Statement{
			Asked: exact.FromDecimal(asked), Currency: p.currency.Value,
			Took: exact.FromDecimal(took), Card: p.card.Value, Date: day,
		}.Work(p.file)
	}
	if !p.good {
		p.says.Set(kit.Span{Text: words.StatementAmounts, Color: kit.Muted})
		return
	}
	l := p.a.host.Locale()
	p.says.Set(kit.Span{Text: words.StatementRate(p.worked, l), Bold: true})
	text := words.StatementNoMarket
	if r := p.worked.Reference; r != nil {
		text = words.StatementMarkup(r, p.worked.Alone.Quote, l)
	}
	p.markup.Set(kit.Span{Text: text + " " + words.StatementFee(p.currency.Value), Color: kit.Muted})
}

// takeApart takes the published rate and what the card added to it, where that is known.
func (p *statementPanel) takeApart() {
	if t := p.apart(); t != nil {
		p.take(*t)
	}
}

// take takes the statement into the scenario, in one step.
func (p *statementPanel) take(t rates.Taking) {
	if !p.good {
		return
	}
	now := p.a.host.Session().Current()
	if wrong, _ := form.NewFault(now, session.WithStatement(now, t), ""); wrong != "" {
		complain(p.says, wrong)
		return
	}
	p.dialog.Hide()
	p.a.host.Change(func(s *session.Session) { s.TakeStatement(words.StepStatement, t) })
}
