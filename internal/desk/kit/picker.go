package kit

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Option is one choice of a picker.
type Option struct {
	Value, Label string
	Also         string // stands behind the label in the open list, and is found by its words
}

// Picker is a field that offers a few words. Space or Enter opens the list; up and
// down choose without opening it.
type Picker struct {
	widget.BaseWidget
	Options []Option
	First   []string // values to put first in the open list
	Value   string
	changed func(value string)
	Entered func(in bool)
	Escape  func() // nil where Esc means nothing
	Rename  func() // F2; nil where it means nothing
	Plain   bool   // no box: a title that opens a list
	Bold    bool
	Called  called // by what stands beside it, nil for nothing
	focused bool
	faulty  bool
	frame   *frame
	label   *Text
	arrow   *canvas.Text
}

// NewPicker offers options; changed is told what was chosen, nil for nobody.
func NewPicker(options []Option, changed func(string)) *Picker {
	p := &Picker{Options: options, changed: changed, frame: newFrame()}
	p.label = NewText(SizeText).AtMost(1).Trailing()
	p.label.Centred = true
	p.arrow = canvas.NewText("▾", theme.Color(Ink))
	p.arrow.TextSize, p.arrow.TextStyle = SizeText, styleOf(false)
	p.ExtendBaseWidget(p)
	return p
}

// Set chooses a value without telling anyone.
func (p *Picker) Set(value string) {
	p.Value = value
	p.Refresh()
}

func (p *Picker) SetFaulty(f bool) {
	if p.faulty != f {
		p.faulty = f
		p.Refresh()
	}
}

func (p *Picker) Shown() string {
	for _, o := range p.Options {
		if o.Value == p.Value {
			return o.Label
		}
	}
	return p.Value
}

func (p *Picker) Choose(value string) {
	if value == p.Value {
		return
	}
	p.Set(value)
	if p.changed != nil {
		p.changed(value)
	}
}

func (p *Picker) step(by int) {
	for i, o := range p.Options {
		if o.Value == p.Value {
			if j := i + by; j >= 0 && j < len(p.Options) {
				p.Choose(p.Options[j].Value)
			}
			return
		}
	}
	if len(p.Options) > 0 {
		p.Choose(p.Options[0].Value)
	}
}

// listed are the options in the order of the open list.
func (p *Picker) listed() []Option {
	var first, rest []Option
	for _, o := range p.Options {
		if slices.Contains(p.First, o.Value) {
			first = append(first, o)
		} else {
			rest = append(rest, o)
		}
	}
	return append(first, rest...)
}

// seek chooses the first option that begins with the letters typed, or has a word that does.
func (p *Picker) seek(r rune) {
	typed := letters.add(r)
	for _, found := range []func(Option) bool{
		func(o Option) bool { return begins(o.Label, typed) },
		func(o Option) bool { return o.fits(typed) },
	} {
		if i := slices.IndexFunc(p.Options, found); i >= 0 {
			p.Choose(p.Options[i].Value)
			return
		}
	}
}

func (p *Picker) Tapped(*fyne.PointEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(p); c != nil {
		c.Focus(p)
	}
	p.open()
}

func (p *Picker) Cursor() desktop.Cursor { return desktop.PointerCursor }

func (p *Picker) FocusGained() { p.setFocus(true) }
func (p *Picker) FocusLost()   { p.setFocus(false) }

func (p *Picker) setFocus(in bool) {
	p.focused = in
	p.Refresh()
	if p.Entered != nil {
		p.Entered(in)
	}
}

func (p *Picker) TypedRune(r rune) {
	if r == ' ' {
		p.open()
		return
	}
	p.seek(r)
}

func (p *Picker) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyF10:
		handOn(p, e)
	case fyne.KeyReturn, fyne.KeyEnter:
		p.open()
	case fyne.KeyDown:
		p.step(1)
	case fyne.KeyUp:
		p.step(-1)
	case fyne.KeyF2:
		if p.Rename != nil {
			p.Rename()
		}
	case fyne.KeyEscape:
		if p.Escape != nil {
			p.Escape()
		}
	}
}

func (p *Picker) MinSize() fyne.Size {
	p.ExtendBaseWidget(p)
	return fyne.NewSize(60, FieldHeight)
}

func (p *Picker) CreateRenderer() fyne.WidgetRenderer {
	r := &pickerRenderer{p}
	r.Refresh()
	return r
}

// PlainEdge is the room beside the words of a picker without a box.
const PlainEdge = 6

type pickerRenderer struct{ p *Picker }

func (r *pickerRenderer) Layout(size fyne.Size) {
	p := r.p
	p.frame.layout(size)
	const arrow, edge = 12, 9
	if p.Plain {
		const edge = PlainEdge
		p.label.align = fyne.TextAlignLeading
		w := min(p.label.NaturalWidth()+1, size.Width-arrow-4-2*edge)
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
	if r.p.Plain && !r.p.focused {
		return []fyne.CanvasObject{r.p.label, r.p.arrow}
	}
	return append(r.p.frame.objects(), r.p.label, r.p.arrow)
}

func (r *pickerRenderer) Destroy() {}

func (r *pickerRenderer) Refresh() {
	p := r.p
	p.frame.paint(p.focused, p.faulty)
	p.label.Set(Span{Text: p.Shown(), Bold: p.Bold})
	p.label.Refresh()
	p.arrow.Color = theme.Color(Ink)
	r.Layout(p.Size())
	canvas.Refresh(p)
}
