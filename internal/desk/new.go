package desk

import (
	"time"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/library"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/words"
)

// Options are what a window needs from outside.
type Options struct {
	App    fyne.App
	Locale money.Locale     // how the user writes numbers
	Now    func() time.Time // the clock
	// Post runs a function on the interface thread; nil is the toolkit's own way.
	Post func(func())
	// Settle is how long after the last keystroke the headline changes; 0 is 400 ms.
	Settle time.Duration
	// Home is the folder that file dialogs start in; "" is the user's own.
	Home string
	// Bank publishes rates; nil is the real one.
	Bank market.Bank
	// State is the folder for unsaved work; "" keeps none.
	State string
	// Settings is the folder with the settings, where sets of border rules are kept; "" keeps
	// none.
	Settings string
	// Note is what a person must know of that folder, "" for nothing.
	Note string
	// Greet offers the tour at the first start.
	Greet bool
}

// New makes a window on the built-in demo. Show it with Window().Show.
func New(o Options) *Desk {
	if o.Post == nil {
		o.Post = fyne.Do
	}
	if o.Settle == 0 {
		o.Settle = 400 * time.Millisecond
	}
	l := &kit.Labels
	l.Close, l.Cancel, l.Copy, l.FindOne, l.FindNone = words.Close, words.Cancel, words.CopyTable, words.FindOne, words.FindNone
	l.Chosen, l.Empty, l.Page, l.Unit = words.SpokenChosen, words.SpokenEmpty, words.SpokenPage, words.SpokenUnit
	if o.Bank == nil {
		o.Bank = rates.Fetcher{}
	}
	kit.SeekBy(o.Now)
	d := &Desk{now: o.Now, settings: restore(o.App, o.Locale), session: session.NewDemo()}
	d.deeds, d.undoing, d.mending, d.focus = deeds{d}, undoing{d}, mending{d}, focus{d}
	d.telling, d.showing = telling{d}, showing{d}
	d.win = o.App.NewWindow(words.Program)
	d.win.SetPadded(false)
	d.win.Resize(d.settings.size())
	d.dialogs = kit.NewDialogs(d.win)
	d.work = jobs.NewBackground(o.Post)
	d.pipeline = newPipeline(onScreen{d}, o.Settle, o.Post)
	d.market = market.New(o.Bank, d.work, onScreen{d}.ratesChanged)
	d.back = newLookback(onScreen{d}, d.pipeline.gate, o.Post)
	d.beside = newBeside(asBeside{d}, d.work, d.pipeline.gate, o.Post)
	d.preview = newPreview(asPreview{d}, d.pipeline.gate, o.Post)
	d.pipeline.also = append(d.pipeline.also, d.back.worker, apart{d.beside.worker}, apart{d.preview.worker})
	d.hand = newHand(d, o.Post)
	d.tour = newTour(d)
	d.keeper = session.NewKeeper(asHost{d}, d.Session, func() bool { return d.files.saving }, o.Now, d.work)
	d.shelf = session.NewBorderShelf(o.Settings)
	d.asker = dialogs.New(d.dialogs, d.work, asHost{d})
	d.files = &files{win: asHost{d}, on: d.dialogs, asker: d.asker, work: d.work, keeper: d.keeper, settings: d.settings, home: o.Home, backups: library.NewBackups(o.State)}
	d.notices = pages.NewNotices(d.tell)
	d.layOut()
	d.win.SetCloseIntercept(d.close)
	d.win.SetOnDropped(d.dropped)
	d.win.Canvas().SetOnTypedKey(d.typed)
	d.setMenu()
	for _, note := range []string{o.Note, d.settings.odd()} {
		if note != "" {
			d.keeper.Note(note)
		}
	}
	if o.Greet && d.settings.first() {
		d.notices.Invite(words.TourOffer, words.LinkTakeATour, d.tour.start)
	}
	(&recovery{d.dialogs, d.keeper, d.files, d.take}).begin(o.State)
	o.App.Settings().AddListener(func(fyne.Settings) { o.Post(d.repaint) })
	return d
}
