package inhand

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// entry is a row of a log to be asked for.
type entry struct {
	title, step string
	row         int    // to be changed, −1 for a new one
	key         string // of its table
	at          int    // how many there are: the place of a new one
	fields      []entryField
	follow      func(map[string]*kit.TextBox) // one value is made of others; nil for none
	add         func(scenario.InHand) scenario.InHand
	change      func(scenario.InHand) scenario.InHand
	remove      func(scenario.InHand) scenario.InHand
}

// entryField is a value of it.
type entryField struct {
	key    string // in the catalogue
	text   string
	figure bool
	set    func(text string) error
}

// asked is an entry in a dialog.
type asked struct {
	*entries
	entry
	dialog *kit.Dialog
	rows   []*kit.Row
	boxes  []*kit.TextBox
	why    *kit.Text
}

// ask opens the dialog.
func (e *entries) ask(x entry) {
	a := &asked{entries: e, entry: x, why: kit.NewText(kit.SizeSmall).AtLeast(3)}
	width := kit.LabelWidth + kit.Scaled(330)
	body := kit.NewStack(width, 2)
	byKey := map[string]*kit.TextBox{}
	for _, f := range x.fields {
		entry, _ := catalogue.Of(f.key)
		box, wide := kit.NewTextBox(f.figure), kit.Scaled(250)
		if f.figure {
			wide = kit.NumberWidth
		}
		box.Set(f.text)
		box.Entry.OnSubmitted = func(string) { a.take() }
		box.Entry.Escape = func() { a.dialog.Leave() }
		unit := ""
		if entry.Unit == catalogue.MM {
			unit = string(entry.Unit)
		}
		row := kit.NewRow(entry.Label, box, wide, unit)
		row.Grew = func() { a.dialog.Fit() }
		a.rows, a.boxes, byKey[f.key] = append(a.rows, row), append(a.boxes, box), box
		body.Add(row)
	}
	if x.follow != nil {
		x.follow(byKey)
	}
	body.Add(a.why)
	replies := []kit.Reply{{Label: words.ReplyCancel}}
	yes := words.ReplyAdd
	if x.row >= 0 {
		yes = words.ReplyChange
		replies = append(replies, kit.Reply{Label: words.ReplyTakeOut, Do: func() { a.put(words.RemovedEntry(x.step), x.remove) }})
	}
	replies = append(replies, kit.Reply{Label: yes, Do: a.take, Stay: true})
	a.dialog = e.on.Ask(x.title, kit.AtWidth(width, body), nil, replies...)
}

// take takes the entry into the log, or says beside the rows what is wrong.
func (a *asked) take() {
	good := true
	for i, f := range a.fields {
		err := f.set(strings.TrimSpace(a.boxes[i].Entry.Text))
		a.boxes[i].SetFaulty(err != nil)
		if err != nil {
			_, remedy := words.NotTaken(err)
			a.rows[i].Complain(remedy)
			good = false
		} else {
			a.rows[i].Say("")
		}
	}
	a.why.Set()
	if !good {
		return
	}
	do, step := a.add, a.step
	if a.row >= 0 {
		do, step = a.change, words.ChangedEntry(a.step)
	}
	s := a.win.Session()
	r, ok := s.Reel()
	if !ok {
		a.dialog.Hide()
		return
	}
	if faults := s.FaultsWith(do(r)); len(faults) > 0 {
		a.complain(faults, s.ReelKey())
		return
	}
	a.dialog.Hide()
	a.put(step, do)
}

// complain says what is wrong: beside the value that is, else below all of them.
func (a *asked) complain(faults []scenario.Fault, reel string) {
	place := a.row
	if place < 0 {
		place = a.at
	}
	row := fmt.Sprintf("%s.%s[%d].", reel, a.key, place+1)
	for _, f := range faults {
		wrong, remedy := words.Fault(f)
		for i, field := range a.fields {
			if name, mine := strings.CutPrefix(f.Path, row); mine && strings.HasSuffix(field.key, "."+name) {
				a.boxes[i].SetFaulty(true)
				a.rows[i].Complain(wrong)
			}
		}
		a.why.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: wrong + "; " + remedy, Color: kit.Fault})
	}
}
