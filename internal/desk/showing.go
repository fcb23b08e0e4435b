package desk

import (
	"reelworth/internal/compare"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/scenario"
)

// showing is which currency figures are shown in: each file's own.
type showing struct{ d *Desk }

// showIn shows figures in a currency, "" for home, and remembers it for the file.
func (w showing) showIn(currency string) {
	w.d.shownIn = currency
	w.keepShown()
	w.d.pipeline.compute(jobs.Now)
}

// keepShown remembers it; work without a file has no memory.
func (w showing) keepShown() {
	if path := w.d.session.Path(); path != "" {
		w.d.settings.keep(keepShownIn+path, w.d.shownIn)
	}
}

// recall shows the figures of what was just opened in the currency they were shown in last,
// and forgets one that no scenario of it leads to any more.
func (w showing) recall() {
	d := w.d
	d.shownIn = ""
	path := d.session.Path()
	if path == "" {
		return
	}
	currency := d.settings.app.Preferences().String(keepShownIn + path)
	for _, s := range d.session.Draft.File().Scenarios {
		if currency == "" || currency == s.Home {
			continue
		}
		if _, fault := compare.Into(s, scenario.Check(s), currency); fault == nil {
			d.shownIn = currency
			return
		}
	}
	d.settings.keep(keepShownIn+path, "")
}
