package desk

import (
	"errors"
	"path/filepath"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/draft"
	"reelworth/internal/library"
	"reelworth/internal/words"
)

// save writes the work to its file, asking for one where it has none. then runs after it
// is saved.
func (f *files) save(then func()) {
	doc := f.win.Session().Doc
	if doc == nil || doc.Path == "" {
		f.askSaveAs(then)
		return
	}
	f.write(f.win.Session(), doc.Path, library.Options{}, then)
}

// scenarioEndings are what a file of scenarios may end in. The first is what the installed
// program is registered for: such a file opens with it from a folder.
var scenarioEndings = []string{".reelworth.toml", ".toml"}

// askSaveAs asks for a file to write the work to.
func (f *files) askSaveAs(then func()) {
	name := f.win.Session().Current().Name
	if !f.win.Session().IsLast() {
		name = words.FileOfSeveral
	}
	path := filepath.Join(f.folder(), dialogs.FileSafe(name)+scenarioEndings[0])
	own := ""
	if f.win.Session().Doc != nil && f.win.Session().Doc.Path != "" {
		path, own = f.win.Session().Doc.Path, f.win.Session().Doc.Path
	}
	f.asker.AskPath(dialogs.PathQuestion{
		Title: words.SaveAs, Confirm: words.Save, Path: path, Own: own, Endings: scenarioEndings,
		Then: func(path string) {
			if path == own {
				f.save(then)
				return
			}
			f.write(f.win.Session(), path, library.Options{Overwrite: true}, then)
		},
	})
}

// write saves away from the interface thread. What is typed meanwhile counts as not
// saved.
func (f *files) write(s *session.Session, path string, o library.Options, then func()) {
	if f.saving {
		return // the one under way is waited for
	}
	f.saving = true
	o.Backups = f.backups
	s.Draft.Seal()
	file, mark := s.Draft.File(), s.Draft.Mark()
	next := library.New(file)
	if s.Doc != nil {
		same := *s.Doc
		next = &same
	}
	f.work.Do(func() func() {
		err := next.SaveAs(path, file, o)
		return func() { f.written(s, next, mark, o, err, then) }
	})
}

func (f *files) written(s *session.Session, doc *library.Document, mark draft.Mark, o library.Options, err error, then func()) {
	f.saving = false
	var changed *library.ChangedOutside
	var protected *library.Protected
	switch {
	case errors.As(err, &changed):
		f.asker.Sure(words.ChangedFile(filepath.Base(changed.Path), changed.Gone),
			func() { f.write(s, changed.Path, library.Options{Overwrite: true}, then) })
	case errors.As(err, &protected):
		f.asker.Sure(words.ProtectedFile(filepath.Base(protected.Path), protected.Other),
			func() { f.write(s, protected.Path, library.Options{Overwrite: o.Overwrite, Force: true}, then) })
	case err != nil:
		f.on.Tell(words.NotSaved, words.Failure(err))
	default:
		f.settings.takePlans(s.Path(), doc.Path)
		s.Doc = doc
		s.Draft.Saved(mark)
		f.remember(doc.Path)
		if f.win.Session() != s {
			return // another file is open now
		}
		if !s.Draft.Modified() {
			f.keeper.Drop()
		}
		f.keeper.ClaimFile(doc.Path)
		f.win.Saved()
		f.tellOf(doc)
		if then != nil {
			f.leaving(then) // asks again about what was typed meanwhile
		}
	}
}

// tellOf tells what else saving did.
func (f *files) tellOf(doc *library.Document) {
	if doc.Parted {
		f.win.Announce(words.SavedApart)
	}
	if doc.Rewritten {
		f.on.Tell(words.CommentsLost.Title, words.CommentsLost.Text)
	}
}

// leaving asks what to do with unsaved work, then goes on.
func (f *files) leaving(then func()) {
	if !f.win.Session().Draft.Modified() {
		then()
		return
	}
	q := words.UnsavedChanges(f.win.Session().Called())
	f.on.Ask(q.Title, kit.Paragraphs(q.Text, 400*kit.TextFactor), nil,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: words.Discard, Do: then}, kit.Reply{Label: q.Yes, Do: func() { f.save(then) }})
}
