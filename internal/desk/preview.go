package desk

import (
	"sync"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/pages"
	"reelworth/internal/words"
)

// previewScreen is the window as the preview of the report knows it.
type previewScreen interface {
	Letter() bool
	PrintOn(letter bool)
	report() answer.Export  // of what is open, as it stands
	scale() float32         // pixels of one unit
	instead(*pages.Preview) // of the columns
	Columns()               // back to them
	askReport(letter bool)  // where to write it
}

// preview shows the report as it will print, in the place of the columns.
type preview struct {
	on     previewScreen
	worker *jobs.Latest[answer.PreviewJob, *answer.Preview]
	view   *pages.Preview // nil while the columns are there
	asked  int            // another number for another report
	shown  *answer.Preview
}

func newPreview(on previewScreen, gate *sync.Mutex, post func(func())) *preview {
	p := &preview{on: on}
	p.worker = jobs.NewLatest(gate, false, answer.SeeReport, jobs.NewMailbox(post, p.deliver).Put)
	return p
}

// open shows the report in the place of the columns.
func (p *preview) open() {
	p.view, p.shown = pages.NewPreview(p, p.on.Letter()), nil
	p.on.instead(p.view)
	p.ask()
}

// close forgets the pages.
func (p *preview) close() {
	p.view, p.shown = nil, nil
	p.worker.Cancel()
}

// isOpen says whether it stands in the place of the columns.
func (p *preview) isOpen() bool { return p.view != nil }

// ask asks for other pages.
func (p *preview) ask() {
	p.asked++
	p.view.Wait()
	p.Redraw()
}

// Redraw asks for the pictures again, in the room there is now.
func (p *preview) Redraw() {
	if p.view == nil {
		return
	}
	j := answer.PreviewJob{Asked: p.asked, Export: p.on.report(), Page: p.view.At, Before: p.shown}
	j.Small, j.Large = p.view.Sheets(p.on.scale())
	p.worker.Post(j)
}

// repaint follows a change of theme.
func (p *preview) repaint() {
	if p.view != nil {
		p.view.Content.Refresh()
	}
}

// announce says in the view, while it is there, that something was done.
func (p *preview) announce(text string) {
	if p.view != nil {
		p.view.Announce(text)
	}
}

func (p *preview) deliver(came *answer.Preview) {
	if p.view == nil || came.Job.Asked != p.asked {
		return
	}
	p.shown = came
	e := &came.Job.Export
	caution := ""
	switch {
	case came.NoWay:
		caution = words.NotShownIn(e.Scenario.Home, e.In)
	case len(came.Pages.Lacking) > 0:
		caution = words.LettersLacking(came.Pages.Lacking)
	}
	p.view.Show(came, caution)
}

// PrintOn lays the report out on other sheets.
func (p *preview) PrintOn(letter bool) {
	p.on.PrintOn(letter)
	p.ask()
}

// Export asks where to write the report.
func (p *preview) Export() { p.on.askReport(p.on.Letter()) }

// Leave goes back to the columns.
func (p *preview) Leave() { p.on.Columns() }

// asPreview is the window as the preview knows it.
type asPreview struct{ d *Desk }

func (w asPreview) Letter() bool          { return w.d.settings.letter() }
func (w asPreview) PrintOn(letter bool)   { w.d.settings.printOn(letter) }
func (w asPreview) Columns()              { w.d.columns() }
func (w asPreview) scale() float32        { return w.d.win.Canvas().Scale() }
func (w asPreview) askReport(letter bool) { w.d.asker.AskReport(letter) }

func (w asPreview) report() answer.Export {
	return w.d.asker.Of(dialogs.ExportChoice{Figure: answer.Report, Letter: w.Letter()})
}

func (w asPreview) instead(v *pages.Preview) {
	w.d.win.SetContent(v.Content)
	w.d.win.SetTitle(words.WindowTitle(words.PreviewName, false))
	w.d.win.Canvas().Focus(v.Page)
}
