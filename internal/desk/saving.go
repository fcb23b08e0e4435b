package desk

import (
	"errors"
	"path/filepath"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/draft"
	"reelworth/internal/library"
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

// askSaveAs asks for a file to write the work to.
func (f *files) askSaveAs(then func()) {
	path := filepath.Join(f.folder(), dialogs.FileSafe(f.win.Session().Current().Name)+".toml")
	own := ""
	if f.win.Session().Doc != nil && f.win.Session().Doc.Path != "" {
		path, own = f.win.Session().Doc.Path, f.win.Session().Doc.Path
	}
	f.asker.AskPath(dialogs.PathQuestion{
		Title: "Save as", Confirm: "Save", Path: path, Own: own, Endings: []string{".toml"},
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
	s.Draft.Seal()
	file, mark := s.Draft.File(), s.Draft.Mark()
	next := library.New(file)
	if s.Doc != nil {
		same := *s.Doc
		next = &same
	}
	f.work.Do(func() func() {
		err := next.SaveAs(path, file, o)
		return func() { f.written(s, next, mark, err, then) }
	})
}

func (f *files) written(s *session.Session, doc *library.Document, mark draft.Mark, err error, then func()) {
	f.saving = false
	var changed *library.ChangedOutside
	switch {
	case errors.As(err, &changed):
		what := "Another program changed this file after it was opened. Overwriting it loses that change; the file as it is now stays beside it as .bak."
		if changed.Gone {
			what = "The file was deleted after it was opened."
		}
		f.on.Confirm("Overwrite "+filepath.Base(changed.Path)+"?", what, "Overwrite",
			func() { f.write(s, changed.Path, library.Options{Overwrite: true}, then) })
	case err != nil:
		f.on.Report("Nothing was saved", err)
	default:
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
		if then != nil {
			f.leaving(then) // asks again about what was typed meanwhile
		}
	}
}

// leaving asks what to do with unsaved work, then goes on.
func (f *files) leaving(then func()) {
	if !f.win.Session().Draft.Modified() {
		then()
		return
	}
	f.on.Ask("Save the changes?", kit.Paragraphs("The changes to "+f.win.Session().Called()+" are not saved.", 400*kit.TextFactor), nil,
		kit.Reply{Label: "Cancel"}, kit.Reply{Label: "Discard", Do: then}, kit.Reply{Label: "Save", Do: func() { f.save(then) }})
}
