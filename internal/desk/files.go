package desk

import (
	"errors"
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/desk/kit"
	"reelworth/internal/draft"
	"reelworth/internal/library"
)

// folder is where file questions begin.
func (d *Desk) folder() string {
	if d.session.doc != nil && d.session.doc.Path != "" {
		return filepath.Dir(d.session.doc.Path)
	}
	if d.Home != "" {
		return d.Home
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	return home
}

// askOpen asks which file to open.
func (d *Desk) askOpen() {
	d.leaving(func() {
		chooser := dialog.NewFileOpen(func(f fyne.URIReadCloser, err error) {
			if err != nil {
				d.dialogs.Report("The file was not opened", err)
				return
			}
			if f != nil {
				f.Close()
				d.Open(f.URI().Path())
			}
		}, d.win)
		chooser.SetFilter(storage.NewExtensionFileFilter([]string{".toml"}))
		if at, err := storage.ListerForURI(storage.NewFileURI(d.folder())); err == nil {
			chooser.SetLocation(at)
		}
		chooser.Resize(fyne.NewSize(820, 560))
		d.dialogs.Choose(chooser)
	})
}

// Open reads a scenario file away from the interface thread and shows it, or what is
// wrong with it.
func (d *Desk) Open(path string) {
	s, mark := d.session, d.session.draft.Mark()
	d.background(func() func() {
		doc, err := library.Open(path)
		return func() {
			if d.session != s || d.session.draft.Mark() != mark { // something was typed meanwhile
				d.leaving(func() { d.opened(doc, err) })
				return
			}
			d.opened(doc, err)
		}
	})
}

// background does something away from the interface thread, and then runs there what
// it came to.
func (d *Desk) background(do func() (then func())) {
	d.pending.Add(1)
	go func() {
		defer d.pending.Done()
		then := do()
		d.Post(then)
	}()
}

func (d *Desk) opened(doc *library.Document, err error) {
	switch {
	case err != nil:
		d.dialogs.Report("The file was not opened", err)
	case len(doc.Faults) > 0:
		d.showFaults(doc)
	case len(doc.File.Scenarios) == 0:
		d.dialogs.Report("The file was not opened", errors.New(doc.Path+" holds no scenario."))
	default:
		d.showColumns()
		d.session = newSession(doc.File)
		d.session.doc = doc
		d.session.switchTo(d.App.Preferences().String(keepPlace + doc.Path))
		d.rememberFile(doc.Path)
		d.dropKept()
		d.claimFile(doc.Path)
		d.shown = nil
		d.rebuild()
		if n := len(doc.Notices); n > 0 {
			d.answer.announce(notices(doc))
		}
	}
}

// notices says which keys of the file count for nothing.
func notices(doc *library.Document) string {
	text := ""
	for i, n := range doc.Notices {
		if i == 3 {
			text += " …"
			break
		}
		text += n.Path + ": " + n.Text + ". "
	}
	return text
}

// showFaults puts the list of faults in the place of the columns.
func (d *Desk) showFaults(doc *library.Document) {
	list := newFaultList(doc.Path, doc.Faults, func() { d.leaving(func() { d.Open(doc.Path) }) }, d.showColumns)
	d.faults = list
	d.win.SetContent(list.content)
	d.win.SetTitle("Reelworth – " + filepath.Base(doc.Path))
}

// showColumns goes back from the list of faults.
func (d *Desk) showColumns() {
	if d.faults != nil {
		d.faults = nil
		d.win.SetContent(d.root)
		d.title()
	}
}

// save writes the work to its file, asking for one where it has none. then runs after it
// is saved.
func (d *Desk) save(then func()) {
	doc := d.session.doc
	if doc == nil || doc.Path == "" {
		d.askSaveAs(then)
		return
	}
	d.write(d.session, doc.Path, library.Options{}, then)
}

// askSaveAs asks for a file to write the work to.
func (d *Desk) askSaveAs(then func()) {
	path := filepath.Join(d.folder(), fileSafe(d.current().Name)+".toml")
	own := ""
	if d.session.doc != nil && d.session.doc.Path != "" {
		path, own = d.session.doc.Path, d.session.doc.Path
	}
	d.ask(pathQuestion{
		title: "Save as", confirm: "Save", path: path, own: own, endings: []string{".toml"},
		then: func(path string) {
			if path == own {
				d.save(then)
				return
			}
			d.write(d.session, path, library.Options{Overwrite: true}, then)
		},
	})
}

// write saves away from the interface thread. What is typed meanwhile counts as not
// saved.
func (d *Desk) write(s *session, path string, o library.Options, then func()) {
	if d.saving {
		return // the one under way is waited for
	}
	d.saving = true
	s.draft.Seal()
	file, mark := s.draft.File(), s.draft.Mark()
	next := library.New(file)
	if s.doc != nil {
		same := *s.doc
		next = &same
	}
	d.background(func() func() {
		err := next.SaveAs(path, file, o)
		return func() { d.written(s, next, mark, err, then) }
	})
}

func (d *Desk) written(s *session, doc *library.Document, mark draft.Mark, err error, then func()) {
	d.saving = false
	var changed *library.ChangedOutside
	switch {
	case errors.As(err, &changed):
		what := "Another program changed this file after it was opened. Overwriting it loses that change; the file as it is now stays beside it as .bak."
		if changed.Gone {
			what = "The file was deleted after it was opened."
		}
		d.dialogs.Confirm("Overwrite "+filepath.Base(changed.Path)+"?", what, "Overwrite",
			func() { d.write(s, changed.Path, library.Options{Overwrite: true}, then) })
	case err != nil:
		d.dialogs.Report("Nothing was saved", err)
	default:
		s.doc = doc
		s.draft.Saved(mark)
		d.rememberFile(doc.Path)
		if d.session != s {
			return // another file is open now
		}
		if !s.draft.Modified() {
			d.dropKept()
		}
		d.claimFile(doc.Path)
		d.show()
		if then != nil {
			d.leaving(then) // asks again about what was typed meanwhile
		}
	}
}

// leaving asks what to do with unsaved work, then goes on.
func (d *Desk) leaving(then func()) {
	if !d.session.draft.Modified() {
		then()
		return
	}
	d.dialogs.Ask("Save the changes?", kit.Paragraphs("The changes to "+d.session.called()+" are not saved.", 400*kit.TextFactor), nil,
		kit.Reply{Label: "Cancel"}, kit.Reply{Label: "Discard", Do: then}, kit.Reply{Label: "Save", Do: func() { d.save(then) }})
}

// close ends the program, asking about unsaved work.
func (d *Desk) close() {
	if d.win.Canvas().Overlays().Top() != nil {
		return // a question is open already
	}
	d.leaving(func() {
		d.rememberSize()
		d.rememberPlace()
		d.release()
		d.worker.stop()
		d.ahead.stop()
		d.win.SetCloseIntercept(nil)
		d.win.Close()
	})
}
