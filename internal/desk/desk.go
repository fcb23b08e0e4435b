package desk

import (
	"sync"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
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
	// State is the folder for unsaved work; "" keeps none.
	State string
}

// Desk is one window: the session, and the regions that show it.
type Desk struct {
	Options
	win     fyne.Window
	session *session

	ways   *ways
	form   *form
	scroll *container.Scroll // of the form
	help   *help
	answer *answerColumn
	root   *fyne.Container
	faults *faultList // shown in the place of the columns, nil otherwise

	menu   *menu
	worker *latest[job, *answer]
	ahead  *latest[outlookJob, *foresight]
	pace   *pace
	shown  *answer // the newest answer on the screen
	turn   turnKey // the turn of the answer that is looked at
	inside *field  // the one that has the focus, nil for none

	saving  bool // a file is being written
	dialogs *kit.Dialogs
	safety  safety
	pending sync.WaitGroup // reading and writing under way
}

// New makes a window on the built-in demo. Show it with Window().Show.
func New(o Options) *Desk {
	if o.Post == nil {
		o.Post = fyne.Do
	}
	if o.Settle == 0 {
		o.Settle = 400 * time.Millisecond
	}
	d := &Desk{Options: o}
	d.restore()
	o.App.Settings().SetTheme(kit.Look)
	d.win = o.App.NewWindow("Reelworth")
	d.dialogs = kit.NewDialogs(d.win)
	d.session = newSession(scenario.Demo())
	d.session.demo = true
	d.pace = newPace(o.Settle, o.Post, d.settled)
	turn := new(sync.Mutex)
	d.worker = newLatest(turn, true, work, func(a *answer) { o.Post(func() { d.deliver(a) }) })
	d.ahead = newLatest(turn, false, lookAhead, func(f *foresight) { o.Post(func() { d.foreseen(f) }) })
	d.win.SetPadded(false)
	d.win.Resize(d.rememberedSize())
	d.layOut()
	d.win.SetCloseIntercept(d.close)
	d.win.SetOnDropped(d.dropped)
	d.win.Canvas().SetOnTypedKey(d.dialogs.Escape)
	d.setMenu()
	d.secure()
	o.App.Settings().AddListener(func(fyne.Settings) { d.Post(d.repaint) })
	return d
}

// layOut makes the regions anew: at the start, and when the size of the text changes.
func (d *Desk) layOut() {
	page, standing := 0, ""
	if d.answer != nil {
		page, standing = d.answer.tabs.At, d.answer.standing
	}
	d.ways = newWays(d.choose, d.switchTo, d.addOffer, d.askDeal, d.numbers)
	d.answer = newAnswerColumn(d.redraw, d.chooseOffer, d.numbers, d)
	d.scroll = container.NewVScroll(container.NewWithoutLayout())
	d.help = newHelp()
	d.root = container.New(columns{}, container.NewVScroll(d.ways.content), kit.NewRule(),
		d.scroll, d.help.content, kit.NewRule(), d.answer.content)
	d.faults = nil
	d.answer.standing = standing
	d.answer.tabs.Choose(page)
	d.win.SetContent(d.root)
	d.shown = nil
	d.rebuild()
}

// Window is the toolkit's window.
func (d *Desk) Window() fyne.Window { return d.win }

func (d *Desk) numbers() money.Locale { return d.Locale }

func (d *Desk) today() scenario.Date { return scenario.DateOf(d.Now()) }

// current is the scenario in the window.
func (d *Desk) current() scenario.Scenario { return d.session.current() }

// rebuild lays everything out anew, after another thing was chosen or the scenario
// changed its shape.
func (d *Desk) rebuild() {
	d.session.clamp()
	s := d.current()
	onCard := d.columnOfFocus() == 0
	d.ways.build(&s)
	d.rebuildForm()
	d.show()
	if onCard {
		d.win.Canvas().Focus(d.chosenCard())
	}
	d.compute(now)
}

// rebuildForm lays the form of what is chosen out anew, and keeps the focus where it
// was if that field is still there.
func (d *Desk) rebuildForm() {
	focused, folds := d.focusedKey(), d.openFolds()
	d.inside = nil
	s := d.current()
	d.form = forms{d, d.today(), d}.build(&s, d.session.sel)
	if focused != "" {
		d.win.Canvas().Unfocus() // the old form's field must not go on taking keys
	}
	for i := range d.form.groups {
		if g := &d.form.groups[i]; g.fold != "" && folds[g.fold] {
			g.open = true
		}
	}
	d.layForm()
	d.focusKey(focused)
	d.bringBack()
}

// bringBack puts what was typed and could not be taken into the form's fields again.
func (d *Desk) bringBack() {
	for _, f := range d.form.fields {
		if text, ok := d.session.held[f.key]; ok {
			f.input.Set(text)
			d.edit(f, text)
		}
	}
}

// layForm puts the form into its column.
func (d *Desk) layForm() {
	body := d.form.build(func() { d.layForm(); d.explain() })
	s := d.current()
	d.form.show(&s, d.Locale)
	at := d.scroll.Offset
	d.scroll.Content = body
	d.scroll.Refresh()
	d.scroll.ScrollToOffset(at)
}

// show puts what is known without computing into the left column and the form.
func (d *Desk) show() {
	s := d.current()
	d.ways.show(&s, d.session.names(), d.session.state(&s), d.session.sel)
	d.form.show(&s, d.Locale)
	d.title()
	d.refreshMenu()
	d.keep()
}

func (d *Desk) title() {
	t := "Reelworth – " + d.session.fileName()
	if d.session.draft.Modified() {
		t = "● " + t
	}
	d.win.SetTitle(t)
}

// choose turns the window to another way to buy or topic.
func (d *Desk) choose(sel selection) {
	if sel == d.session.sel {
		return
	}
	same := sel.offer == d.session.sel.offer
	d.session.sel = sel
	d.session.draft.Seal()
	d.scroll.ScrollToTop()
	d.rebuildForm()
	d.show()
	d.explain()
	if !same {
		d.compute(now)
	}
}

func (d *Desk) chooseOffer(name string) {
	for i, o := range d.current().Offers {
		if o.Name == name {
			d.choose(selection{topicOffer, i})
			return
		}
	}
}

// switchTo turns the window to another scenario of the file.
func (d *Desk) switchTo(name string) {
	if d.session.switchTo(name) {
		d.rebuild()
	}
}

// repaint follows a change of theme.
func (d *Desk) repaint() {
	d.root.Refresh()
	d.compute(now)
}

// style is how figures look in this window.
func (d *Desk) style() figure.Style {
	return figure.Style{Theme: kit.Palette(), Locale: d.Locale}
}

// columns lays the three columns out with rules between them.
type columns struct{}

func (columns) Layout(o []fyne.CanvasObject, size fyne.Size) {
	kit.Place(o[0], 0, 0, waysWidth(), size.Height)
	kit.Place(o[1], waysWidth()-1, 0, 1, size.Height)
	kit.Place(o[2], waysWidth(), 0, formColumn(), size.Height-helpHeight())
	kit.Place(o[3], waysWidth(), size.Height-helpHeight(), formColumn(), helpHeight())
	kit.Place(o[4], waysWidth()+formColumn()-1, 0, 1, size.Height)
	x := waysWidth() + formColumn()
	kit.Place(o[5], x, 0, max(0, size.Width-x), size.Height)
}

func (columns) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(waysWidth()+formColumn()+380*kit.TextFactor, 500)
}
