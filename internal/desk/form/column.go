package form

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Window is what the form's column asks of the window around it.
type Window interface {
	Session() *session.Session
	Locale() money.Locale
	Today() scenario.Date
	Typed()    // a field was changed: what follows can wait until the typing ends
	Changed()  // so much was changed that all must be laid out anew
	Withheld() // what was typed is kept out of the scenario
	Explain()  // fields came into sight that say nothing yet
	Redraw()   // the figures stress another part now
	InSight()  // the form is to be seen, where it shares its place with the answer
	AskSeen(offer int)
	AskDayRates()   // for a day's published rates
	AskStatement()  // for a purchase on a card statement
	AskBorderSets() // for border rules that are kept
	ReelActions
}

// ReelActions are what can be done with reels beyond typing.
type ReelActions interface {
	PutInHand()      // the reel of the offer that is chosen has come
	PlanCut()        // how the reel of the offer that is chosen could be cut
	MeasureCounter() // the counter of the reel in hand that is chosen
	RemoveReel()     // the reel in hand that is chosen
}

// Column is the middle column: the form of what is chosen, and help for the field under
// the cursor.
type Column struct {
	Content *fyne.Container
	Scroll  *kit.Scroll
	help    *help
	form    *Form
	canvas  fyne.Canvas
	win     Window
	inside  *Field            // the one that has the focus, nil for none
	built   scenario.Scenario // what the form was made of
	months  pattern           // of the year's rolls
	further string            // the currency that a rate may be added for
}

// NewColumn is a column without a form yet.
func NewColumn(win Window, canvas fyne.Canvas) *Column {
	c := &Column{win: win, canvas: canvas, help: newHelp(), form: &Form{}}
	c.Scroll = kit.NewScroll(container.NewWithoutLayout())
	c.Content = container.New(columnLayout{}, c.Scroll, c.help.content, kit.NewWheel(c.Scroll.Scrolled))
	return c
}

// WantRate offers a field for the rate of a currency, when the rates are looked at next.
func (c *Column) WantRate(currency string) { c.further = currency }

// Build lays the form of what is chosen out anew, and keeps the focus where it was if that
// field is still there.
func (c *Column) Build() {
	c.win.Session().EndField() // the old form's field is left without a word
	c.focusOn(c.replace())
	c.putBack()
}

// replace makes the form anew, without a focus; it tells which field had it.
func (c *Column) replace() (focused string) {
	focused, folds := c.focusedKey(), c.form.openFolds()
	c.inside = nil
	now := c.win.Session()
	s := now.Current()
	c.built = s
	c.form = forms{c, c.win.Today(), &c.months, &c.further, now.Reel, now.ReelKey(), c.win}.build(&s, now.Chosen)
	if focused != "" {
		c.canvas.Unfocus() // the old form's field must not go on taking keys
	}
	c.form.unfold(folds)
	c.form.unfoldFaulty(now.Faults())
	c.lay()
	return focused
}

// putBack writes again what was typed and could not be taken.
func (c *Column) putBack() {
	now := c.win.Session()
	for _, f := range c.form.fields {
		if text, ok := now.Withheld[f.Key]; ok {
			f.Input.Set(text)
			c.Edit(f, text)
		}
	}
}

// Entered is the key of the field under the cursor, "" for none.
func (c *Column) Entered() string {
	if c.inside == nil {
		return ""
	}
	return c.inside.Key
}

// lay puts the form into the column.
func (c *Column) lay() {
	body := c.form.build(func() { c.lay(); c.win.Explain() })
	c.Show()
	at := c.Scroll.Offset
	for _, f := range c.form.fields {
		f.Row.Grew = c.Scroll.Refresh
		if box, ok := f.Input.(*kit.TextBox); ok {
			box.Entry.Wheel.To = c.Scroll.Scrolled
		}
	}
	c.Scroll.Content = body
	c.Scroll.Refresh()
	c.Scroll.ScrollToOffset(at)
}

// UnfoldAll opens every fold.
func (c *Column) UnfoldAll() {
	for i := range c.form.groups {
		c.form.groups[i].open = c.form.groups[i].fold != ""
	}
	c.lay()
}

// Show puts the scenario into the fields.
func (c *Column) Show() {
	now := c.win.Session()
	s := now.Current()
	c.form.show(&s, c.win.Locale())
	faults := now.Faults()
	if f := now.NameFault(); f != nil {
		faults = append(slices.Clip(faults), *f)
	}
	c.form.stand(faults, now.Chosen)
}

// Top scrolls to the form's beginning.
func (c *Column) Top() { c.Scroll.ScrollToTop() }

// Explain puts beside the fields what their values come to, and below them what is worth
// knowing. meaning is asked by the key in the file, and the place of the offer it is of.
func (c *Column) Explain(notes []string, meaning func(key string, offer int) string) {
	if c.form.note(notes) {
		c.Scroll.Refresh()
	}
	s, l := c.win.Session().Current(), c.win.Locale()
	c.form.explain(func(f *Field) string {
		if i, ok := quoteMeant(&s, f.meaning); ok {
			return words.QuoteMeaning(&s, i, l)
		}
		offer, _ := offerOf(f.Key)
		return meaning(f.meaning, offer)
	})
}

// columnLayout puts the help under the form, and there the wheel turns the form too.
type columnLayout struct{}

func (columnLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	kit.Place(o[0], 0, 0, size.Width, size.Height-helpHeight())
	kit.Place(o[1], 0, size.Height-helpHeight(), size.Width, helpHeight())
	kit.Place(o[2], 0, size.Height-helpHeight(), size.Width, helpHeight())
}

func (columnLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(Width(), helpHeight()+100)
}
