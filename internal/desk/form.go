package desk

import (
	"slices"

	"fyne.io/fyne/v2"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// form is the middle column for one thing that is chosen.
type form struct {
	title    func(s *scenario.Scenario) string
	subtitle func(s *scenario.Scenario) string
	groups   []group
	caution  string // what a person could be hurt by or lose money over

	fields []*field
	head   *prose
	under  *prose
	notes  *fyne.Container // what is worth knowing about what is chosen
	told   []string        // its sentences
	body   *fyne.Container
}

// group is some fields under a heading. A folded group is one step away, behind its
// link.
type group struct {
	heading string
	fields  []*field
	actions []fyne.CanvasObject
	fold    string // the link's words, "" for a group that is always open
	open    bool
}

// build lays the form out. unfold is called when a fold is opened or closed.
func (f *form) build(unfold func()) *fyne.Container {
	f.head = newProse(sizeTitle).atMost(2)
	f.under = small("").atMost(1)
	f.body = inset(newStack(formWidth+40, 0), 20, 14, 20, 24)
	f.fields = nil
	f.body.Add(f.head)
	f.body.Add(f.under)
	for i := range f.groups {
		f.add(&f.groups[i], unfold)
	}
	f.notes, f.told = newStack(formWidth, 8), nil
	f.body.Add(space(12))
	f.body.Add(f.notes)
	if f.caution != "" {
		f.body.Add(space(12))
		f.body.Add(small(f.caution))
	}
	return f.body
}

func (f *form) add(g *group, unfold func()) {
	f.body.Add(space(14))
	if g.fold != "" {
		link := newLink(g.fold, func() {
			g.open = !g.open
			unfold()
		})
		f.body.Add(link)
		if !g.open {
			f.fields = append(f.fields, g.fields...) // known, though not on the screen
			return
		}
		f.body.Add(space(6))
	}
	if g.heading != "" {
		f.body.Add(heading(g.heading))
		f.body.Add(space(4))
	}
	for _, fd := range g.fields {
		f.fields = append(f.fields, fd)
		if fd.beside != nil {
			f.fields = append(f.fields, fd.beside)
		}
		f.body.Add(fd.row)
	}
	for _, a := range g.actions {
		f.body.Add(space(6))
		f.body.Add(a)
	}
}

// has says whether a field is one of the form's.
func (f *form) has(fd *field) bool { return slices.Contains(f.fields, fd) }

// show puts the scenario into the fields.
func (f *form) show(s *scenario.Scenario, l money.Locale) {
	f.head.set(span{text: f.title(s), bold: true})
	if f.subtitle != nil {
		f.under.set(span{text: f.subtitle(s), color: colMuted})
	}
	for _, fd := range f.fields {
		fd.show(s, l)
	}
}

// explain puts what the engine says beside the fields.
func (f *form) explain(meaning func(key string) string) {
	for _, fd := range f.fields {
		switch {
		case fd.held != "", len(fd.row.answers) > 0:
		case fd.row.choice == fd.input: // the value beside it speaks for the row
		case fd.meaning == "":
			fd.row.say("")
		default:
			text := meaning(fd.meaning)
			if text == "" {
				text = fd.wanted
			}
			fd.row.say(text)
		}
	}
}

// note lists what is worth knowing; it says whether that is something else than before.
func (f *form) note(sentences []string) bool {
	if slices.Equal(sentences, f.told) {
		return false
	}
	f.told = sentences
	f.notes.RemoveAll()
	for _, s := range sentences {
		f.notes.Add(newProse(sizeSmall+1, span{text: "! ", bold: true, color: colAccent}, span{text: s}))
	}
	return true
}

// heldFields are the fields whose text is not part of the answer.
func (f *form) heldFields() []*field {
	var held []*field
	for _, fd := range f.fields {
		if fd.held != "" {
			held = append(held, fd)
		}
	}
	return held
}
