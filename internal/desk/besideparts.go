package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/pages"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// asBeside is the window as scenarios side by side know it.
type asBeside struct{ d *Desk }

func (w asBeside) Locale() money.Locale { return w.d.locale() }
func (w asBeside) Columns()             { w.d.columns() }
func (w asBeside) looked() string       { return w.d.session.Current().Name }

func (w asBeside) inWindow() sidebyside.Source {
	src := sidebyside.Source{File: w.d.session.Draft.File()}
	if doc := w.d.session.Doc; doc != nil {
		src.Name = doc.Path
	}
	for i := range src.File.Scenarios {
		for _, f := range scenario.Check(src.File.Scenarios[i]) {
			f.Place.Scenario = i
			src.Faults = append(src.Faults, f)
		}
	}
	return src
}

func (w asBeside) besideJob() answer.BesideJob {
	return answer.BesideJob{
		Question: sidebyside.Question{Today: w.d.today(), Rates: w.d.market.File},
		Style:    onScreen(w).style(),
	}
}

func (w asBeside) roomOf(v *pages.BesideView) answer.Room {
	return v.Room(w.d.win.Canvas().Scale())
}

func (w asBeside) instead(v *pages.BesideView) {
	w.d.win.SetContent(v.Content)
	w.d.win.SetTitle(words.WindowTitle(words.SideBySideName, false))
	w.d.win.Canvas().Focus(v.Grid)
	w.d.market.Recall()
}

func (w asBeside) openAt(file, name string) {
	own := w.inWindow()
	if file != own.Name {
		w.d.files.leaving(func() { w.d.files.openAt(file, name) })
		return
	}
	w.d.columns()
	if w.d.session.SwitchTo(name) {
		w.d.rebuild()
	}
}

func (w asBeside) askBesideFile() {
	w.d.files.choose(func(path string) {
		if w.d.beside.isOpen() {
			w.d.beside.add(path)
		}
	})
}

func (w asBeside) askBesideExport(b *answer.Beside) { w.d.asker.AskExportBeside(b.Entries) }

// choose asks for a scenario file.
func (f *files) choose(then func(path string)) {
	chooser := dialog.NewFileOpen(func(chosen fyne.URIReadCloser, err error) {
		if err != nil {
			f.on.Tell(words.NotOpened, words.Failure(err))
			return
		}
		if chosen != nil {
			chosen.Close()
			then(chosen.URI().Path())
		}
	}, f.on.Window)
	chooser.SetFilter(storage.NewExtensionFileFilter([]string{".toml"}))
	if at, err := storage.ListerForURI(storage.NewFileURI(f.folder())); err == nil {
		chooser.SetLocation(at)
	}
	chooser.Resize(fyne.NewSize(820, 560))
	f.on.Choose(chooser)
}

// dropped takes files that were let fall on scenarios side by side; it says whether
// it did.
func (w asBeside) dropped(uris []fyne.URI) bool {
	d := w.d
	if !d.beside.isOpen() || d.win.Canvas().Overlays().Top() != nil {
		return false
	}
	var files []string
	for _, u := range uris {
		if isRates(u.Path()) {
			d.market.Read(u.Path())
		} else {
			files = append(files, u.Path())
		}
	}
	if len(files) > 0 {
		d.beside.add(files...)
	}
	return true
}
