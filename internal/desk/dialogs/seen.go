package dialogs

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// seenPanel is the prices that were seen of an offer: one to add, and those there are, each
// to be put in use or forgotten.
type seenPanel struct {
	a                *Asker
	offer            int
	dialog           *kit.Dialog
	price, day, note *kit.TextBox
	why              *kit.Text
	list             *fyne.Container
	scroll           *kit.Scroll
}

// AskSeen asks for a price that was seen of the offer at a place.
func (a *Asker) AskSeen(offer int) {
	p := &seenPanel{a: a, offer: offer, why: complaint()}
	o := a.host.Session().Current().Offers[offer]
	p.price, p.day, p.note = kit.NewTextBox(true), kit.NewTextBox(true), kit.NewTextBox(false)
	p.price.Set(a.host.Locale().Field(o.Price))
	p.day.Set(a.host.Today().String())
	width := kit.LabelWidth + 330*kit.TextFactor
	p.list = kit.NewStack(width, 6)
	p.scroll = kit.NewScroll(p.list)
	body := kit.NewStack(width, 6,
		kit.NewRow(words.SeenAt, p.price, kit.NumberWidth, o.Currency),
		kit.NewRow(words.SeenOn, p.day, kit.NumberWidth, ""),
		kit.NewRow(words.SeenNote, p.note, 250*kit.TextFactor, ""),
		p.why, p.scroll)
	for _, box := range []*kit.TextBox{p.price, p.day, p.note} {
		box.Entry.OnSubmitted = func(string) { p.keep() }
		box.Entry.Escape = func() { p.dialog.Leave() }
	}
	p.fill()
	p.dialog = a.on.Ask(words.SeenTitle, kit.AtWidth(width, body), p.price.Entry,
		kit.Reply{Label: words.Close}, kit.Reply{Label: words.SeenKeep, Do: p.keep, Stay: true})
	p.price.Entry.SelectAll()
}

// fill lists what was seen, the newest first.
func (p *seenPanel) fill() {
	o := p.a.host.Session().Current().Offers[p.offer]
	l := p.a.host.Locale()
	p.list.RemoveAll()
	places := o.SeenPlaces()
	for i := len(places) - 1; i >= 0; i-- {
		place := places[i]
		line := kit.NewLine(14, kit.NewLink(words.SeenForget, func() {
			p.a.host.Change(func(s *session.Session) { s.ForgetSeen(p.offer, place) })
			p.fill()
		}))
		if !o.Seen[place].Price.Equal(o.Price) {
			line.Objects = append([]fyne.CanvasObject{kit.NewLink(words.SeenUse, func() {
				p.a.host.Change(func(s *session.Session) { s.UseSeen(p.offer, place) })
				p.dialog.Hide()
			})}, line.Objects...)
		}
		p.list.Add(kit.NewSides(kit.NewText(kit.SizeText, kit.Span{Text: words.SeenLine(&o, place, l)}).AtMost(1), line))
	}
	p.scroll.SetMinSize(fyne.NewSize(0, min(float32(len(places))*26, 160)*kit.TextFactor))
	p.scroll.Refresh()
}

// keep takes what stands in the fields into the scenario, or says what is wrong with it.
func (p *seenPanel) keep() {
	price, err := form.ReadNumber(p.price.Entry.Text, p.a.host.Locale())
	if err != nil {
		_, remedy := words.NotTaken(err)
		complain(p.why, remedy)
		return
	}
	day, err := scenario.ParseDate(p.day.Entry.Text)
	if err != nil {
		complain(p.why, words.SeenNoDay)
		return
	}
	now, seen := p.a.host.Session(), scenario.Seen{Date: day, Price: price, Note: p.note.Entry.Text}
	if wrong, _ := form.NewFault(now.Current(), now.WithSeen(p.offer, seen), ""); wrong != "" {
		complain(p.why, wrong)
		return
	}
	p.why.Set()
	p.a.host.Change(func(s *session.Session) { s.See(p.offer, seen) })
	p.fill()
}
