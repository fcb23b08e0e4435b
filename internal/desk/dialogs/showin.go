package dialogs

import (
	"reelworth/internal/compare"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// AskShowIn asks which currency to show all figures in. One that the scenario's rates do
// not lead to is not taken, and it is said why.
func (a *Asker) AskShowIn() {
	s := a.host.Session().Current()
	currency := kit.NewPicker(form.AllCurrencies, nil)
	currency.First = form.CurrenciesOf(&s)
	currency.Set(s.Home)
	if in := a.host.ShownIn(); in != "" {
		currency.Set(in)
	}
	why := complaint()
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 8,
		kit.NewText(kit.SizeText, kit.Span{Text: words.ShowInHow, Color: kit.Muted}),
		kit.NewRow(words.ShowInCurrency, currency, kit.NumberWidth, ""), why)
	var q *kit.Dialog
	show := func(in string) {
		if in == s.Home {
			in = ""
		}
		if in != "" {
			if _, fault := compare.Into(s, scenario.Check(s), in); fault != nil {
				complain(why, words.NoWayTo(s.Home, in))
				return
			}
		}
		q.Hide()
		a.host.ShowIn(in)
	}
	q = a.on.Ask(words.ShowInTitle, kit.AtWidth(width, body), currency,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.ShowInHome(s.Home), Do: func() { show(s.Home) }, Stay: true},
		kit.Reply{Label: words.ShowInDo, Do: func() { show(currency.Value) }, Stay: true})
}
