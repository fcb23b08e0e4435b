package desk

import (
	"path/filepath"
	"slices"
	"sync"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/pages"
	"reelworth/internal/library"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// besideScreen is the window as scenarios side by side know it.
type besideScreen interface {
	Locale() money.Locale
	inWindow() sidebyside.Source          // the file that is worked on
	looked() string                       // the scenario of it that is looked at
	besideJob() answer.BesideJob          // what is the same for all: the day, the rates, the style
	roomOf(*pages.BesideView) answer.Room // of its figure
	instead(*pages.BesideView)            // of the columns
	Columns()                             // back to them
	openAt(file, scenario string)         // look at a scenario, of another file too
	askBesideFile()                       // which to add
	askBesideExport(*answer.Beside)       // where to
}

// beside sets the scenarios of the file in the window beside each other, and beside those
// of other files, in the place of the columns.
type beside struct {
	on     besideScreen
	work   *jobs.Background
	worker *jobs.Latest[answer.BesideJob, *answer.Beside]
	view   *pages.BesideView   // nil while the columns are there
	own    sidebyside.Source   // the file in the window
	others []sidebyside.Source // in the order they came
	common string              // the currency that all are brought to, "" for none
	by     sidebyside.Key
	down   bool
	asked  int            // another number for another question
	shown  *answer.Beside // nil until the first is there
}

func newBeside(on besideScreen, work *jobs.Background, gate *sync.Mutex, post func(func())) *beside {
	b := &beside{on: on, work: work}
	b.worker = jobs.NewLatest(gate, false, answer.SetBeside, jobs.NewMailbox(post, b.deliver).Put)
	return b
}

// open shows the scenarios in the place of the columns.
func (b *beside) open() {
	b.own, b.shown = b.on.inWindow(), nil
	b.others = slices.DeleteFunc(b.others, func(s sidebyside.Source) bool { return s.Name == b.own.Name })
	b.view = pages.NewBesideView(b, form.AllCurrencies)
	b.view.Turn(b.own.Name, b.on.looked())
	b.on.instead(b.view)
	b.ask()
}

// close forgets the view; what was added to it stays for the next time.
func (b *beside) close() {
	b.view, b.shown = nil, nil
	b.worker.Cancel()
}

// isOpen says whether they stand in the place of the columns.
func (b *beside) isOpen() bool { return b.view != nil }

// ask asks a new question.
func (b *beside) ask() {
	if b.view == nil {
		return
	}
	b.asked++
	b.view.Wait(words.SideWorking)
	b.Redraw()
}

// Redraw asks for the picture again, in the room and the order there are now.
func (b *beside) Redraw() {
	if b.view == nil {
		return
	}
	j := b.on.besideJob()
	j.Asked, j.Before, j.By, j.Down = b.asked, b.shown, b.by, b.down
	j.Sources = append([]sidebyside.Source{b.own}, b.others...)
	j.Question.Currency, j.Question.Word, j.Question.Empty = b.common, besideFault, words.SideEmpty
	j.Room = b.on.roomOf(b.view)
	b.worker.Post(j)
}

// repaint follows a change of theme.
func (b *beside) repaint() {
	if b.view != nil {
		b.view.Content.Refresh()
		b.Redraw()
	}
}

// announce says in the view, while it is there, that something was done.
func (b *beside) announce(text string) {
	if b.view != nil {
		b.view.Announce(text)
	}
}

// besideFault says what is wrong in a file.
func besideFault(_ sidebyside.Source, f scenario.Fault) string { return words.SideFault(f) }

func (b *beside) deliver(came *answer.Beside) {
	if b.view == nil || came.Job.Asked != b.asked {
		return
	}
	b.shown = came
	var homes []string
	for i := range came.Entries {
		if c := came.Entries[i].Comparison; c != nil {
			homes = append(homes, c.Scenario.Home)
		}
	}
	b.view.Show(came, homes, len(b.others) == 0)
}

// add reads scenario files away from the interface thread and sets theirs beside the
// others. One that cannot be read stands there with its reason.
func (b *beside) add(paths ...string) {
	b.view.Wait(words.SideWorking)
	b.work.Do(func() func() {
		var read []sidebyside.Source
		for _, path := range paths {
			read = append(read, sourceOf(path))
		}
		return func() {
			for _, src := range read {
				b.put(src)
			}
			b.ask()
		}
	})
}

// sourceOf reads a scenario file.
func sourceOf(path string) sidebyside.Source {
	doc, err := library.Open(path)
	if err != nil {
		if full, err := filepath.Abs(path); err == nil {
			path = full
		}
		return sidebyside.Source{Name: path, Wrong: words.Failure(err)}
	}
	return sidebyside.Source{Name: doc.Path, File: doc.File, Faults: doc.Faults}
}

// put adds a file, in the place of what it was before.
func (b *beside) put(src sidebyside.Source) {
	if src.Name == b.own.Name {
		return // as it stands in the window
	}
	for i := range b.others {
		if b.others[i].Name == src.Name {
			b.others[i] = src
			return
		}
	}
	b.others = append(b.others, src)
}

// Locale is how the user writes numbers.
func (b *beside) Locale() money.Locale { return b.on.Locale() }

// BringTo brings all to a currency, "" for none.
func (b *beside) BringTo(currency string) {
	b.common = currency
	b.ask()
}

// SortBy puts them in order by a key, or in the opposite order where they are so already.
// What is saved begins with the most.
func (b *beside) SortBy(by sidebyside.Key) {
	if b.by == by {
		b.down = !b.down
	} else {
		b.by, b.down = by, by == sidebyside.ByPercent || by == sidebyside.BySaving
	}
	b.Redraw()
}

// OpenEntry turns the window to a scenario.
func (b *beside) OpenEntry(e *sidebyside.Entry) { b.on.openAt(e.File, e.Scenario) }

// AddFile asks for a file to add.
func (b *beside) AddFile() { b.on.askBesideFile() }

// OnlyThis takes the other files away.
func (b *beside) OnlyThis() {
	b.others = nil
	b.ask()
}

// Export asks where to write them to.
func (b *beside) Export() {
	if b.shown != nil {
		b.on.askBesideExport(b.shown)
	}
}

// Leave goes back to the columns.
func (b *beside) Leave() { b.on.Columns() }
