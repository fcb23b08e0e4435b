package desk

import (
	"slices"

	"fyne.io/fyne/v2/container"

	"reelworth/internal/compare"
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
	var options []option
	for _, s := range f.rival.Swings {
		options = append(options, option{string(s.Input), words.InputName(c, f.rival.Offer, f.rival.Other, s.Input)})
	}
	low, high := newTextBox(true), newTextBox(true)
	show := func(input string) {
		for _, s := range f.rival.Swings {
			if string(s.Input) == input {
				low.show(d.Locale.Field(s.Low.Decimal(placesOf(s))))
				high.show(d.Locale.Field(s.High.Decimal(placesOf(s))))
			}
		}
	}
	which := newPicker(options, show)
	which.show(options[0].value)
	show(options[0].value)
	why := newProse(sizeSmall).lines(2)
	width := labelWidth + 300*textFactor
	body := newStack(width, 6, newRow("Input", which, 280*textFactor, ""), newRow("From", low, numberWidth, ""), newRow("to", high, numberWidth, ""), why)
	var q *posed
	set := func() {
		if wrong := d.setRange(compare.Input(which.value), low.entry.Text, high.entry.Text); wrong != "" {
			why.set(span{text: "✗ ", color: colFault, bold: true}, span{text: wrong, color: colFault})
			return
		}
		q.hide()
	}
	usual := func() {
		d.alter("usual range", func(s *scenario.Scenario) { dropRange(s, scenario.Input(which.value)) })
	}
	for _, box := range []*textBox{low, high} {
		box.entry.OnSubmitted = func(string) { set() }
		box.entry.escape = func() { q.wayOut() }
	}
	q = d.pose("How far an input swings", container.New(&exactSize{width}, body), low.entry,
		reply{label: "Cancel"}, reply{label: "As usual", do: usual}, reply{label: "Set", do: set, stay: true})
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
