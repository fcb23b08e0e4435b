package dialogs

import (
	"errors"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// borderPanel is the sets of border rules of one's own: this scenario's to keep as one, and
// those there are, each to be used, renamed or deleted.
type borderPanel struct {
	a                 *Asker
	shelf             session.BorderShelf
	sets              []scenario.BorderSet
	dialog            *kit.Dialog
	name, day, source *kit.TextBox
	why               *kit.Text
	list              *fyne.Container
	scroll            *kit.Scroll
}

// AskBorderSets opens the panel.
func (a *Asker) AskBorderSets() {
	p := &borderPanel{a: a, shelf: a.host.BorderShelf(), why: complaint()}
	p.name, p.day, p.source = kit.NewTextBox(false), kit.NewTextBox(true), kit.NewTextBox(false)
	p.day.Set(a.host.Today().String())
	width := kit.LabelWidth + 360*kit.TextFactor
	p.list = kit.NewStack(width, 8)
	p.scroll = kit.NewScroll(p.list)
	p.scroll.SetMinSize(fyne.NewSize(0, 210*kit.TextFactor))
	whole := kit.NewStack(width, 6,
		kit.NewRow(words.BorderSetName, p.name, 250*kit.TextFactor, ""),
		kit.NewRow(words.BorderSetOn, p.day, kit.NumberWidth, ""),
		kit.NewRow(words.BorderSetSource, p.source, 340*kit.TextFactor, ""),
		p.why, p.scroll, kit.Small(words.BorderSetCaution))
	for _, box := range []*kit.TextBox{p.name, p.day, p.source} {
		box.Entry.OnSubmitted = func(string) { p.keep() }
		box.Entry.Escape = func() { p.dialog.Leave() }
	}
	p.dialog = a.on.Ask(words.BorderSetsTitle, kit.AtWidth(width, whole), p.name.Entry,
		kit.Reply{Label: words.Close}, kit.Reply{Label: words.BorderSetKeep, Do: p.keep, Stay: true})
	p.do("", p.shelf.Sets)
}

// do does something with the sets away from the interface thread, and shows them, or says
// what is wrong; done is announced, "" for nothing.
func (p *borderPanel) do(done string, what func() ([]scenario.BorderSet, error)) {
	p.a.work.Do(func() func() {
		sets, err := what()
		return func() {
			if wrong := notKept(err); wrong != "" {
				complain(p.why, wrong)
				return
			}
			p.why.Set()
			if err != nil {
				p.object(whyNoSets(err))
				return
			}
			if done != "" {
				p.why.Set(kit.Span{Text: "✓ ", Color: kit.Good, Bold: true}, kit.Span{Text: done, Color: kit.Muted})
			}
			p.sets = sets
			p.fill()
		}
	})
}

// notKept says what is wrong with the set that was to be kept, "" where it is not that.
func notKept(err error) string {
	var fault *session.BorderSetFault
	switch {
	case !errors.As(err, &fault):
		return ""
	case fault.Fault.Code == scenario.NameTaken:
		return words.BorderSetTwice
	}
	wrong, remedy := words.Fault(fault.Fault)
	return wrong + "; " + remedy
}

// whyNoSets says why sets can be neither read nor kept.
func whyNoSets(err error) string {
	var torn *session.TornBorderSets
	switch {
	case errors.As(err, &torn):
		return words.BorderSetsTorn(torn.Path, torn.Fault)
	case errors.Is(err, session.ErrNoBorderShelf):
		return words.BorderSetNoFile
	}
	return words.Failure(err)
}

// object says in the place of the sets why there are none.
func (p *borderPanel) object(why string) {
	p.list.RemoveAll()
	text := kit.NewText(kit.SizeText)
	complain(text, why)
	p.list.Add(text)
	p.scroll.Refresh()
}

// fill lists the sets, the one kept last first.
func (p *borderPanel) fill() {
	s := p.a.host.Session().Current()
	p.list.RemoveAll()
	for i := len(p.sets) - 1; i >= 0; i-- {
		p.list.Add(p.row(p.sets[i], &s))
	}
	if len(p.sets) == 0 {
		p.list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.BorderSetsNone, Color: kit.Muted}))
	}
	p.scroll.Refresh()
}

// row is a set with what can be done with it.
func (p *borderPanel) row(set scenario.BorderSet, s *scenario.Scenario) fyne.CanvasObject {
	l := p.a.host.Locale()
	line, under := kit.NewLine(16), kit.NewText(kit.SizeSmall, kit.Span{Text: words.BorderSetUnder(&set, l), Color: kit.Muted})
	switch {
	case set.Currency != s.Home:
		under.Set(kit.Span{Text: words.BorderSetUnder(&set, l) + "; ", Color: kit.Muted}, kit.Span{Text: words.BorderSetElsewhere(&set, s.Home)})
	case scenario.HasBorderSet(s, &set):
		under.Set(kit.Span{Text: "✓ " + words.BorderSetInUse + " ", Color: kit.Good, Bold: true}, kit.Span{Text: words.BorderSetUnder(&set, l), Color: kit.Muted})
	default:
		line.Add(kit.NewSmallLink(words.BorderSetUse, func() { p.use(set) }))
	}
	line.Add(kit.NewSmallLink(words.BorderSetRename, func() { p.rename(set.Name) }))
	line.Add(kit.NewSmallLink(words.BorderSetDelete, func() {
		p.a.Sure(words.SureToDeleteBorderSet(set.Name), func() {
			p.do("", func() ([]scenario.BorderSet, error) { return p.shelf.Delete(set.Name) })
		})
	}))
	return kit.NewStack(0, 1,
		kit.NewText(kit.SizeText, kit.Span{Text: words.BorderSetLine(&set), Bold: true}).AtMost(2), under.AtMost(3), line)
}

// use puts a set in the place of the scenario's rules, in one step.
func (p *borderPanel) use(set scenario.BorderSet) {
	p.dialog.Hide()
	used := false
	p.a.host.Change(func(s *session.Session) { used = s.UseBorderSet(words.StepBorderSet, set) })
	if used {
		p.a.host.Announce(words.BorderSetUsed(set.Name))
	}
}

// keep keeps the scenario's rules as a set, or says what is wrong.
func (p *borderPanel) keep() {
	now := p.a.host.Session()
	s, name := now.Current(), p.name.Entry.Text
	day, err := scenario.ParseDate(p.day.Entry.Text)
	switch {
	case name == "":
		complain(p.why, words.BorderSetNoName)
	case err != nil:
		complain(p.why, words.BorderSetNoDay)
	case now.BorderHeldBack():
		complain(p.why, words.BorderSetMend)
	default:
		set := scenario.BorderSetOf(&s, name, day, p.source.Entry.Text)
		p.do(words.BorderSetKept(name), func() ([]scenario.BorderSet, error) { return p.shelf.Keep(set) })
	}
}

// rename asks for another name of a set.
func (p *borderPanel) rename(name string) {
	box, why := kit.NewTextBox(false), complaint()
	box.Set(name)
	width := kit.LabelWidth + 280*kit.TextFactor
	var q *kit.Dialog
	take := func() {
		next := box.Entry.Text
		if next == "" {
			complain(why, words.BorderSetNoName)
			return
		}
		q.Hide()
		p.do("", func() ([]scenario.BorderSet, error) { return p.shelf.Rename(name, next) })
	}
	box.Entry.OnSubmitted = func(string) { take() }
	box.Entry.Escape = func() { q.Leave() }
	q = p.a.on.Ask(words.BorderSetRename, kit.AtWidth(width, kit.NewStack(width, 6, kit.NewRow(words.BorderSetName, box, 270*kit.TextFactor, ""), why)), box.Entry,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.BorderSetRename, Do: take, Stay: true})
	box.Entry.SelectAll()
}
