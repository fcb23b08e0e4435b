package desk

import (
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// askRange asks how far an input swings; the range is kept in the file.
func (d *Desk) askRange() {
	f := d.answer.ahead
	if f == nil || len(f.rival.Swings) == 0 {
		return
	}
	c := &f.job.comparison
	var options []kit.Option
	for _, s := range f.rival.Swings {
		options = append(options, kit.Option{Value: string(s.Input), Label: words.InputName(c, f.rival.Offer, f.rival.Other, s.Input)})
	}
	low, high := kit.NewTextBox(true), kit.NewTextBox(true)
	show := func(input string) {
		for _, s := range f.rival.Swings {
			if string(s.Input) == input {
				low.Set(d.Locale.Field(s.Low.Decimal(placesOf(s))))
				high.Set(d.Locale.Field(s.High.Decimal(placesOf(s))))
			}
		}
	}
	which := kit.NewPicker(options, show)
	which.Set(options[0].Value)
	show(options[0].Value)
	why := kit.NewText(kit.SizeSmall).Lines(2)
	width := kit.LabelWidth + 300*kit.TextFactor
	body := kit.NewStack(width, 6, kit.NewRow("Input", which, 280*kit.TextFactor, ""), kit.NewRow("From", low, kit.NumberWidth, ""), kit.NewRow("to", high, kit.NumberWidth, ""), why)
	var q *kit.Dialog
	set := func() {
		if wrong := d.setRange(compare.Input(which.Value), low.Entry.Text, high.Entry.Text); wrong != "" {
			why.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: wrong, Color: kit.Fault})
			return
		}
		q.Hide()
	}
	usual := func() {
		d.alter("usual range", func(s *scenario.Scenario) { dropRange(s, scenario.Input(which.Value)) })
	}
	for _, box := range []*kit.TextBox{low, high} {
		box.Entry.OnSubmitted = func(string) { set() }
		box.Entry.Escape = func() { q.Leave() }
	}
	q = d.dialogs.Ask("How far an input swings", kit.AtWidth(width, body), low.Entry,
		kit.Reply{Label: "Cancel"}, kit.Reply{Label: "As usual", Do: usual}, kit.Reply{Label: "Set", Do: set, Stay: true})
}

// placesOf is how many decimals tell an input's swing.
func placesOf(s compare.Swing) int {
	places := 2
	for places < 6 && !s.Low.Round(places).Equal(s.Low) {
		places++
	}
	return places
}

// setRange takes a range into the scenario, or says what is wrong with it.
func (d *Desk) setRange(input scenario.Input, low, high string) (wrong string) {
	from, err := readNumber(low, d.Locale)
	if err != nil {
		return err.Error()
	}
	to, err := readNumber(high, d.Locale)
	if err != nil {
		return err.Error()
	}
	next := d.current().Clone()
	dropRange(&next, input)
	next.Ranges = append(next.Ranges, scenario.Range{Input: input, Low: from, High: to})
	if wrong, _ := newFault(d.current(), next, ""); wrong != "" {
		return wrong
	}
	d.alter("range", func(s *scenario.Scenario) { *s = next })
	return ""
}

func dropRange(s *scenario.Scenario, input scenario.Input) {
	s.Ranges = slices.DeleteFunc(s.Ranges, func(r scenario.Range) bool { return r.Input == input })
}
