package form

import (
	"slices"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Width is the width of the middle column.
func Width() float32 { return kit.Scaled(388) }

// Form is the middle column for one thing that is chosen.
type Form struct {
	title    func(s *scenario.Scenario) string
	subtitle func(s *scenario.Scenario) string
	groups   []group
	caution  string // what a person could be hurt by or lose money over

	fields []*Field
	head   *kit.Text
	under  *kit.Text
	says   []says
	notes  *fyne.Container // what is worth knowing about what is chosen
	told   []string        // its sentences
	body   *fyne.Container
	wrong  *fyne.Container // what is wrong and has no field
	wrongs []string        // its sentences
}

// says is a text that follows what is typed.
type says struct {
	text *kit.Text
	of   func(*scenario.Scenario, money.Locale) string
}

// group is some fields under a heading. A folded group is one step away, behind its
// link.
type group struct {
	heading string
	fields  []*Field
	actions []fyne.CanvasObject
	note    func(*scenario.Scenario, money.Locale) string // said below the fields; nil for nothing
	fold    string                                        // the link's words, "" for a group that is always open
	open    bool
}

// build lays the form out. unfold is called when a fold is opened or closed.
func (f *Form) build(unfold func()) *fyne.Container {
	f.head = kit.NewText(kit.SizeTitle).AtMost(2)
	f.under = kit.Small("").AtMost(1)
	f.body = kit.Inset(kit.NewStack(kit.FormWidth+40, 0), 20, 14, 20, 24)
	f.fields, f.says = nil, nil
	f.body.Add(f.head)
	f.body.Add(f.under)
	f.wrong, f.wrongs = kit.NewStack(kit.FormWidth, 4), nil
	f.body.Add(f.wrong)
	for i := range f.groups {
		f.add(&f.groups[i], unfold)
	}
	f.notes, f.told = kit.NewStack(kit.FormWidth, 8), nil
	f.body.Add(kit.Space(12))
	f.body.Add(f.notes)
	if f.caution != "" {
		f.body.Add(kit.Space(12))
		f.body.Add(kit.Small(f.caution))
	}
	return f.body
}

func (f *Form) add(g *group, unfold func()) {
	f.body.Add(kit.Space(14))
	if g.fold != "" {
		link := kit.NewLink(g.fold, func() {
			g.open = !g.open
			unfold()
		})
		f.body.Add(link)
		if !g.open {
			f.fields = append(f.fields, g.fields...) // known, though not on the screen
			return
		}
		f.body.Add(kit.Space(6))
	}
	if g.heading != "" {
		f.body.Add(kit.Heading(g.heading))
		f.body.Add(kit.Space(4))
	}
	for _, fd := range g.fields {
		f.fields = append(f.fields, fd)
		if fd.beside != nil {
			f.fields = append(f.fields, fd.beside)
		}
		f.body.Add(fd.Row)
	}
	if g.note != nil {
		text := kit.Small("")
		f.says = append(f.says, says{text, g.note})
		f.body.Add(text)
	}
	for _, a := range g.actions {
		f.body.Add(kit.Space(6))
		f.body.Add(a)
	}
}

// has says whether a field is one of the form's.
func (f *Form) has(fd *Field) bool { return slices.Contains(f.fields, fd) }

// show puts the scenario into the fields.
func (f *Form) show(s *scenario.Scenario, l money.Locale) {
	f.head.Set(kit.Span{Text: f.title(s), Bold: true})
	if f.subtitle != nil {
		f.under.Set(kit.Span{Text: f.subtitle(s), Color: kit.Muted})
	}
	for _, t := range f.says {
		said := t.of(s, l)
		t.text.Set(kit.Span{Text: said, Color: kit.Muted})
		if said == "" {
			t.text.Hide()
		} else {
			t.text.Show()
		}
	}
	for _, fd := range f.fields {
		fd.show(s, l)
	}
}

// explain puts what the engine says beside the fields.
func (f *Form) explain(meaning func(fd *Field) string) {
	for _, fd := range f.fields {
		switch {
		case fd.isBlamed(), len(fd.Row.Answers) > 0:
		case fd.said != "":
			fd.Row.Say(fd.said)
		case fd.Row.Choice == fd.Input: // the value beside it speaks for the row
		default:
			text := ""
			if fd.meaning != "" {
				text = meaning(fd)
			}
			if text == "" && fd.isEmpty() {
				text = fd.wanted
			}
			fd.Row.Say(text)
		}
	}
}

// note lists what is worth knowing; it says whether that is something else than before.
func (f *Form) note(sentences []string) bool {
	if slices.Equal(sentences, f.told) {
		return false
	}
	f.told = sentences
	f.notes.RemoveAll()
	for _, s := range sentences {
		f.notes.Add(kit.NewText(kit.SizeSmall+1, kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: s}))
	}
	return true
}

// openFolds are the links of the groups that are unfolded.
func (f *Form) openFolds() map[string]bool {
	open := map[string]bool{}
	for _, g := range f.groups {
		if g.open {
			open[g.fold] = true
		}
	}
	return open
}

// unfold opens the groups of these links.
func (f *Form) unfold(open map[string]bool) {
	for i := range f.groups {
		if g := &f.groups[i]; g.fold != "" && open[g.fold] {
			g.open = true
		}
	}
}

// unfoldFor opens the group that a field stands in; it says whether it was folded.
func (f *Form) unfoldFor(fd *Field) bool {
	for i := range f.groups {
		g := &f.groups[i]
		if g.fold != "" && !g.open && slices.Contains(g.fields, fd) {
			g.open = true
			return true
		}
	}
	return false
}

// withheld are the fields whose text is not part of the answer.
func (f *Form) withheld() []*Field {
	var held []*Field
	for _, fd := range f.fields {
		if fd.Problem != "" {
			held = append(held, fd)
		}
	}
	return held
}
