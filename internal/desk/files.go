package desk

import (
	"os"
	"path/filepath"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/library"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// fileWindow is what the files ask of the window.
type fileWindow interface {
	Session() *session.Session
	Take(*session.Session)               // work on something else
	Saved()                              // the state of the work is another
	Recent()                             // the list of recent files is another
	ShowFaults(*pages.FaultList, string) // in the place of the columns, under a title
	Columns()                            // back from there
	Announce(text string)                // what was done
	Object(text string)                  // what is wrong
}

// files opens and saves, and asks before something is lost.
type files struct {
	win      fileWindow
	on       *kit.Dialogs
	asker    *dialogs.Asker
	work     *jobs.Background
	keeper   *session.Keeper
	settings *settings
	home     string // the folder that file questions start in; "" is the user's own
	saving   bool   // a file is being written
	backups  *library.Backups
	asked    int    // how often something was to be opened
	unshown  string // the file that was opened and is not on the screen yet, "" for none
}

// folder is where file questions begin.
func (f *files) folder() string {
	if f.win.Session().Doc != nil && f.win.Session().Doc.Path != "" {
		return filepath.Dir(f.win.Session().Doc.Path)
	}
	if f.home != "" {
		return f.home
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	return home
}

// askOpen asks which file to open.
func (f *files) askOpen() {
	f.leaving(func() { f.choose(f.open) })
}

// Open reads a scenario file away from the interface thread and shows it, or what is
// wrong with it.
func (f *files) open(path string) {
	s, mark := f.win.Session(), f.win.Session().Draft.Mark()
	f.asked++
	mine := f.asked
	f.work.Do(func() func() {
		doc, err := library.Open(path)
		return func() {
			if mine != f.asked {
				return // something else is wanted by now
			}
			if f.win.Session() != s || f.win.Session().Draft.Mark() != mark { // something was typed meanwhile
				f.leaving(func() { f.opened(doc, err) })
				return
			}
			f.opened(doc, err)
		}
	})
}

// openAt opens a file at a scenario of it.
func (f *files) openAt(path, name string) {
	f.settings.lookAt(path, name)
	f.open(path)
}

func (f *files) opened(doc *library.Document, err error) {
	switch {
	case err != nil:
		f.on.Tell(words.NotOpened, words.Failure(err))
	case doc.Unreadable(), scenario.Partial(doc.Faults):
		f.showFaults(doc)
	case len(doc.File.Scenarios) == 0:
		f.on.Tell(words.NotOpened, words.NoScenarioIn(doc.Path))
	default:
		s := session.New(doc.File)
		s.Doc = doc
		s.SwitchTo(f.settings.place(doc.Path))
		f.unshown = doc.Path
		f.keeper.Drop()
		f.win.Take(s)
		f.keeper.ClaimFile(doc.Path)
		f.tellOfOpened(s, doc)
	}
}

// tellOfOpened says what is odd about a file.
func (f *files) tellOfOpened(s *session.Session, doc *library.Document) {
	switch {
	case len(doc.Faults) > 0:
		told, more := words.TellFaults(doc.Faults)
		f.win.Object(words.FaultsInFile(filepath.Base(doc.Path), s.CountFaults(), len(told)+more))
	case len(doc.Notices) > 0:
		f.win.Announce(notices(doc))
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
		text += n.Path + ": " + words.Notice(n) + ". "
	}
	return text
}

// shown remembers the file that was opened, once it is on the screen: one that could not be
// shown is not opened again at the next start.
func (f *files) shown() {
	if f.unshown != "" {
		f.remember(f.unshown)
		f.unshown = ""
	}
}

// remember puts a file first among the recent ones.
func (f *files) remember(path string) {
	f.settings.keepFile(path)
	f.win.Recent()
}

// showFaults puts the list of faults in the place of the columns.
func (f *files) showFaults(doc *library.Document) {
	again := func() { f.leaving(func() { f.open(doc.Path) }) }
	f.win.ShowFaults(pages.NewFaultList(doc.Path, doc.Faults, again, f.win.Columns), filepath.Base(doc.Path))
}

// openLast opens the file that was open last, if it is still there.
func (f *files) openLast() {
	if list := f.settings.recent(); len(list) > 0 {
		if _, err := os.Stat(list[0]); err == nil {
			f.open(list[0])
		}
	}
}
