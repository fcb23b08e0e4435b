package dialogs

import (
	"reelworth/internal/compare"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// AskRange asks how far an input swings; the range is kept in the file.
func (a *Asker) AskRange() {
	f := a.host.Ahead()
	if f == nil || len(f.Swings()) == 0 {
		return
	}
	c := f.Ahead.AtHome() // a range is kept in what the file is in, whatever is shown
	pair := c.Outlook.PairOf(f.Job.Offer)
	var options []kit.Option
	for _, s := range pair.Swings {
		options = append(options, kit.Option{Value: string(s.Input), Label: words.InputName(c, pair.Offer, pair.Other, s.Input)})
	}
	low, high := kit.NewTextBox(true), kit.NewTextBox(true)
	show := func(input string) {
		for _, s := range pair.Swings {
			if string(s.Input) == input {
				low.Set(a.host.Locale().Field(s.Low.Decimal(placesOf(s))))
				high.Set(a.host.Locale().Field(s.High.Decimal(placesOf(s))))
			}
		}
	}
	which := kit.NewPicker(options, show)
	which.Set(options[0].Value)
	show(options[0].Value)
	why := complaint()
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 6, kit.NewRow(words.RangeInput, which, 280*kit.TextFactor, ""), kit.NewRow(words.RangeFrom, low, kit.NumberWidth, ""), kit.NewRow(words.RangeTo, high, kit.NumberWidth, ""), why)
	var q *kit.Dialog
	set := func() {
		if wrong := a.SetRange(compare.Input(which.Value), low.Entry.Text, high.Entry.Text); wrong != "" {
			complain(why, wrong)
			return
		}
		q.Hide()
	}
	usual := func() {
		a.host.Change(func(s *session.Session) { s.UsualRange(scenario.Input(which.Value)) })
	}
	for _, box := range []*kit.TextBox{low, high} {
		box.Entry.OnSubmitted = func(string) { set() }
		box.Entry.Escape = func() { q.Leave() }
	}
	q = a.on.Ask(words.RangeTitle, kit.AtWidth(width, body), low.Entry,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.RangeUsual, Do: usual}, kit.Reply{Label: words.RangeSet, Do: set, Stay: true})
}

// placesOf is how many decimals tell an input's swing.
func placesOf(s compare.Swing) int {
	places := 2
	for places < 6 && !s.Low.Round(places).Equal(s.Low) {
		places++
	}
	return places
}

// SetRange takes a range into the scenario, or says what is wrong with it.
func (a *Asker) SetRange(input scenario.Input, low, high string) (wrong string) {
	from, err := form.ReadNumber(low, a.host.Locale())
	if err != nil {
		wrong, _ = words.NotTaken(err)
		return wrong
	}
	to, err := form.ReadNumber(high, a.host.Locale())
	if err != nil {
		wrong, _ = words.NotTaken(err)
		return wrong
	}
	now, r := a.host.Session(), scenario.Range{Input: input, Low: from, High: to}
	if wrong, _ := form.NewFault(now.Current(), now.WithRange(r), ""); wrong != "" {
		return wrong
	}
	a.host.Change(func(s *session.Session) { s.SetRange(r) })
	return ""
}
