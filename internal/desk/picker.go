package desk

import (
	"slices"
	"strings"
	"time"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// option is one choice of a picker.
type option struct{ value, label string }

// picker is a field that offers a few words. Space or Enter opens the list; up and
// down choose without opening it.
type picker struct {
	widget.BaseWidget
	options []option
	first   []string // values to put first in the open list
	value   string
	changed func(value string)
	entered func(in bool)
	escape  func() // nil where Esc means nothing
	plain   bool   // no box: a title that opens a list
	bold    bool
	focused bool
	faulty  bool
	frame   *frame
	label   *prose
	arrow   *canvas.Text
}

func newPicker(options []option, changed func(string)) *picker {
	p := &picker{options: options, changed: changed, frame: newFrame()}
	p.label = newProse(sizeText).atMost(1).trailing()
	p.label.centred = true
	p.arrow = canvas.NewText("▾", theme.Color(colInk))
	p.arrow.TextSize = sizeText
	p.ExtendBaseWidget(p)
	return p
}

// show chooses a value without telling anyone.
func (p *picker) show(value string) {
	p.value = value
	p.Refresh()
}

func (p *picker) setFaulty(f bool) {
	if p.faulty != f {
		p.faulty = f
		p.Refresh()
	}
}

func (p *picker) shown() string {
	for _, o := range p.options {
		if o.value == p.value {
			return o.label
		}
	}
	return p.value
}

func (p *picker) choose(value string) {
	if value == p.value {
		return
	}
	p.show(value)
	if p.changed != nil {
		p.changed(value)
	}
}

func (p *picker) step(by int) {
	for i, o := range p.options {
		if o.value == p.value {
			if j := i + by; j >= 0 && j < len(p.options) {
				p.choose(p.options[j].value)
			}
			return
		}
	}
	if len(p.options) > 0 {
		p.choose(p.options[0].value)
	}
}

// listed are the options in the order of the open list.
func (p *picker) listed() []option {
	var first, rest []option
	for _, o := range p.options {
		if slices.Contains(p.first, o.value) {
			first = append(first, o)
		} else {
			rest = append(rest, o)
		}
	}
	return append(first, rest...)
}

// sought is what was typed to find an option. It outlives the picker: a choice lays the
// form out anew, with the focus on a new picker in the place of the old one.
var sought struct {
	text string
	at   time.Time
}

// seek chooses the first option that begins with what was typed within a second.
func (p *picker) seek(r rune) {
	if time.Since(sought.at) > time.Second {
		sought.text = ""
	}
	sought.text, sought.at = sought.text+string(unicode.ToLower(r)), time.Now()
	for _, o := range p.options {
		if strings.HasPrefix(strings.ToLower(o.label), sought.text) {
			p.choose(o.value)
			return
		}
	}
}

// open shows the list below the field.
func (p *picker) open() {
	c := fyne.CurrentApp().Driver().CanvasForObject(p)
	if c == nil {
		return
	}
	var items []*fyne.MenuItem
	for _, o := range p.listed() {
		item := fyne.NewMenuItem(o.label, func() {
			p.choose(o.value)
			c.Focus(p)
		})
		item.Checked = o.value == p.value
		items = append(items, item)
	}
	menu := widget.NewPopUpMenu(fyne.NewMenu("", items...), c)
	menu.ShowAtRelativePosition(fyne.NewPos(0, p.Size().Height+2), p)
	menu.Resize(fyne.NewSize(max(menu.MinSize().Width, p.Size().Width), menu.MinSize().Height))
	c.Focus(menu)
}

func (p *picker) Tapped(*fyne.PointEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(p); c != nil {
		c.Focus(p)
	}
	p.open()
}

func (p *picker) Cursor() desktop.Cursor { return desktop.PointerCursor }

func (p *picker) FocusGained() { p.setFocus(true) }
func (p *picker) FocusLost()   { p.setFocus(false) }

func (p *picker) setFocus(in bool) {
	p.focused = in
	p.Refresh()
	if p.entered != nil {
		p.entered(in)
	}
}

func (p *picker) TypedRune(r rune) {
	if r == ' ' {
		p.open()
		return
	}
	p.seek(r)
}

func (p *picker) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		p.open()
	case fyne.KeyDown:
		p.step(1)
	case fyne.KeyUp:
		p.step(-1)
	case fyne.KeyEscape:
		if p.escape != nil {
			p.escape()
		}
	}
}

func (p *picker) MinSize() fyne.Size {
	p.ExtendBaseWidget(p)
	return fyne.NewSize(60, fieldHeight)
}

func (p *picker) CreateRenderer() fyne.WidgetRenderer {
	r := &pickerRenderer{p}
	r.Refresh()
	return r
}

type pickerRenderer struct{ p *picker }

func (r *pickerRenderer) Layout(size fyne.Size) {
	p := r.p
	p.frame.layout(size)
	const arrow, edge = 12, 9
	if p.plain {
		const edge = 2
		p.label.align = fyne.TextAlignLeading
		w := min(p.label.naturalWidth()+1, size.Width-arrow-4-2*edge)
		p.label.Move(fyne.NewPos(edge, 0))
		p.label.Resize(fyne.NewSize(w, size.Height))
		r.placeArrow(edge+w+4, size.Height)
		return
	}
	p.label.Move(fyne.NewPos(edge, 0))
	p.label.Resize(fyne.NewSize(size.Width-2*edge-arrow-4, size.Height))
	r.placeArrow(size.Width-edge-arrow, size.Height)
}

func (r *pickerRenderer) placeArrow(x, height float32) {
	s := r.p.arrow.MinSize()
	r.p.arrow.Move(fyne.NewPos(x, (height-s.Height)/2))
	r.p.arrow.Resize(s)
}

func (r *pickerRenderer) MinSize() fyne.Size { return r.p.MinSize() }

func (r *pickerRenderer) Objects() []fyne.CanvasObject {
	if r.p.plain && !r.p.focused {
		return []fyne.CanvasObject{r.p.label, r.p.arrow}
	}
	return append(r.p.frame.objects(), r.p.label, r.p.arrow)
}

func (r *pickerRenderer) Destroy() {}

func (r *pickerRenderer) Refresh() {
	p := r.p
	p.frame.paint(p.focused, p.faulty)
	p.label.set(span{text: p.shown(), bold: p.bold})
	p.label.Refresh()
	p.arrow.Color = theme.Color(colInk)
	r.Layout(p.Size())
	canvas.Refresh(p)
}
