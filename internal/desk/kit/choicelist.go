package kit

import (
	"slices"
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// choiceList is the open list of a picker. Letters leave those options whose words begin
// so, up and down go through them, Enter takes the marked one and Esc none.
type choiceList struct {
	widget.BaseWidget
	options []Option
	fitting []Option
	chosen  string // the value the picker has
	at      int    // the marked one of those that fit, −1 for none
	typed   string
	take    func(value string)
	leave   func()

	hint   *Text
	rows   []*choiceRow // for all options; those that do not fit are hidden
	stack  *fyne.Container
	scroll *Scroll
	ground *canvas.Rectangle
}

// mostSeen is how many options are seen at once.
const mostSeen = 15

// longList is how many options need a word on how to find one.
const longList = 12

func newChoiceList(options []Option, chosen string, take func(string), leave func()) *choiceList {
	l := &choiceList{options: options, chosen: chosen, take: take, leave: leave}
	l.hint = Small("").AtMost(1)
	l.stack = NewStack(0, 0)
	for _, o := range options {
		row := newChoiceRow(o, o.Value == chosen, func() { take(o.Value) }, l.point)
		l.rows = append(l.rows, row)
		l.stack.Add(row)
	}
	l.align()
	l.scroll = NewScroll(l.stack)
	l.ground = canvas.NewRectangle(theme.Color(Ground))
	l.ground.StrokeWidth = 1
	l.ExtendBaseWidget(l)
	l.narrow("")
	return l
}

// align puts what stands behind the labels on one edge.
func (l *choiceList) align() {
	var longest float32
	for _, r := range l.rows {
		longest = max(longest, r.label.NaturalWidth())
	}
	for _, r := range l.rows {
		r.indent = longest + Scaled(10)
	}
}

// narrow leaves the options that fit what was typed, and marks the likeliest.
func (l *choiceList) narrow(typed string) {
	l.typed, l.fitting, l.at = typed, nil, -1
	for i, o := range l.options {
		if o.fits(typed) {
			l.fitting = append(l.fitting, o)
			l.rows[i].Show()
		} else {
			l.rows[i].Hide()
		}
	}
	l.hint.Set(Span{Text: l.hintText(), Color: Muted})
	best := slices.IndexFunc(l.fitting, func(o Option) bool {
		if typed == "" {
			return o.Value == l.chosen
		}
		return begins(o.Label, typed)
	})
	l.mark(max(best, 0))
}

func (l *choiceList) hintText() string {
	switch {
	case len(l.fitting) == 0:
		return l.typed + "  – " + Labels.FindNone
	case l.typed == "":
		return Labels.FindOne
	}
	return l.typed
}

// mark puts the mark on one of those that fit and brings it into sight.
func (l *choiceList) mark(at int) {
	l.at = min(max(at, 0), len(l.fitting)-1)
	for _, r := range l.rows {
		marked := l.at >= 0 && r.option.Value == l.fitting[l.at].Value
		if r.marked != marked {
			r.marked = marked
			r.Refresh()
		}
	}
	l.Refresh()
	l.reveal()
}

func (l *choiceList) reveal() {
	top, high := float32(l.at)*choiceHeight(), l.scroll.Size().Height
	switch at := l.scroll.Offset.Y; {
	case l.at < 0 || high <= 0:
	case top < at:
		l.scroll.ScrollToOffset(fyne.NewPos(0, top))
	case top+choiceHeight() > at+high:
		l.scroll.ScrollToOffset(fyne.NewPos(0, top+choiceHeight()-high))
	}
}

// point marks what the pointer is over.
func (l *choiceList) point(value string) {
	if i := slices.IndexFunc(l.fitting, func(o Option) bool { return o.Value == value }); i >= 0 && i != l.at {
		l.mark(i)
	}
}

func (l *choiceList) FocusGained() {}
func (l *choiceList) FocusLost()   {}

func (l *choiceList) TypedRune(r rune) {
	if r == ' ' && l.typed == "" {
		l.takeMarked()
		return
	}
	l.narrow(l.typed + string(unicode.ToLower(r)))
}

func (l *choiceList) TypedKey(e *fyne.KeyEvent) {
	page := max(1, int(l.scroll.Size().Height/choiceHeight())-1)
	switch e.Name {
	case fyne.KeyDown:
		l.mark(l.at + 1)
	case fyne.KeyUp:
		l.mark(l.at - 1)
	case fyne.KeyPageDown:
		l.mark(l.at + page)
	case fyne.KeyPageUp:
		l.mark(l.at - page)
	case fyne.KeyHome:
		l.mark(0)
	case fyne.KeyEnd:
		l.mark(len(l.fitting) - 1)
	case fyne.KeyReturn, fyne.KeyEnter:
		l.takeMarked()
	case fyne.KeyEscape:
		l.leave()
	case fyne.KeyBackspace:
		if typed := []rune(l.typed); len(typed) > 0 {
			l.narrow(string(typed[:len(typed)-1]))
		}
	}
}

func (l *choiceList) takeMarked() {
	if l.at >= 0 {
		l.take(l.fitting[l.at].Value)
	}
}

// fits says whether a word of the option begins with what was typed.
func (o Option) fits(typed string) bool {
	if begins(o.Label, typed) || begins(o.Also, typed) {
		return true
	}
	for _, word := range strings.Fields(o.Label + " " + o.Also) {
		if begins(word, typed) {
			return true
		}
	}
	return false
}

func begins(text, typed string) bool { return strings.HasPrefix(strings.ToLower(text), typed) }

// open shows the list below the picker, or above it where there is more room.
func (p *Picker) open() {
	c := fyne.CurrentApp().Driver().CanvasForObject(p)
	if c == nil {
		return
	}
	var popup *widget.PopUp
	leave := func() {
		popup.Hide()
		c.Focus(p)
	}
	list := newChoiceList(p.listed(), p.Value, func(value string) {
		leave()
		p.Choose(value)
	}, leave)
	popup = widget.NewPopUp(list, c)
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(p)
	const gap = 2
	above, below := at.Y-gap, c.Size().Height-at.Y-p.Size().Height-2*gap
	size := fyne.NewSize(max(list.width(), p.Size().Width), list.height())
	x := max(0, min(at.X, c.Size().Width-size.Width))
	if size.Height > below && above > below {
		size.Height = min(size.Height, above)
		popup.ShowAtPosition(fyne.NewPos(x, at.Y-gap-size.Height))
	} else {
		size.Height = min(size.Height, below)
		popup.ShowAtPosition(fyne.NewPos(x, at.Y+p.Size().Height+gap))
	}
	popup.Resize(size)
	c.Focus(list)
}
