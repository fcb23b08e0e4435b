package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Row is one field of a form: label, field, unit, and beside it what the value means
// or what is wrong with it. Its height never changes.
type Row struct {
	widget.BaseWidget
	Label   *Text
	Field   fyne.CanvasObject
	width   float32 // of the field
	Unit    *Text
	Choice  *Picker // in the place of the unit, where it can be chosen; else nil
	Meaning *Text
	faulty  bool
	Answers []*Link // to a question beside the field, nil for none
}

// NewRow is a row with a field of a width.
func NewRow(label string, field fyne.CanvasObject, width float32, unit string) *Row {
	r := &Row{Field: field, width: width}
	r.Label = NewText(SizeText, Span{Text: label}).AtMost(2)
	r.Label.Centred = true
	r.Unit = NewText(SizeText, Span{Text: unit, Color: Muted}).AtMost(1)
	r.Unit.Centred = true
	r.Meaning = NewText(SizeSmall).AtMost(2).Trailing()
	r.Meaning.Centred = true
	switch f := field.(type) {
	case *TextBox:
		f.Entry.Called = r.Label.String
	case *Picker:
		f.Called = r.Label.String
	}
	r.ExtendBaseWidget(r)
	return r
}

// ChooseUnit puts a choice in the place of the unit.
func (r *Row) ChooseUnit(p *Picker) {
	r.Choice = p
	p.Called = func() string { return r.Label.String() + ", " + Labels.Unit }
}

// Say puts what the value means beside it.
func (r *Row) Say(text string) {
	r.Meaning.MaxLines = 2
	r.Meaning.Set(Span{Text: text, Color: Muted})
	r.mark(false)
}

// mark makes room for a complaint, in the place of the unit.
func (r *Row) mark(faulty bool) {
	if r.faulty != faulty {
		r.faulty = faulty
		r.Refresh()
	}
}

// Ask puts a question beside the value: the answers, to be chosen.
func (r *Row) Ask(answers []Answer) {
	r.Answers = nil
	for _, a := range answers {
		r.Answers = append(r.Answers, NewLink(a.Label, a.Do))
	}
	r.Meaning.Set()
	r.faulty = true
	r.Refresh()
}

// Complain puts what is wrong beside the value, with a sign and words.
func (r *Row) Complain(text string) {
	r.Meaning.MaxLines = 3
	r.Meaning.Set(Span{Text: "✗ ", Color: Fault, Bold: true}, Span{Text: text, Color: Fault})
	r.mark(true)
}

func (r *Row) HeightFor(float32) float32 { return RowHeight }

func (r *Row) MinSize() fyne.Size {
	r.ExtendBaseWidget(r)
	return fyne.NewSize(0, RowHeight)
}

func (r *Row) CreateRenderer() fyne.WidgetRenderer { return &rowRenderer{r} }

type rowRenderer struct{ r *Row }

func (rr *rowRenderer) Layout(size fyne.Size) {
	r := rr.r
	centre := func(o fyne.CanvasObject, x, w, h float32) {
		o.Move(fyne.NewPos(x, (size.Height-h)/2))
		o.Resize(fyne.NewSize(w, h))
	}
	centre(r.Label, 0, LabelWidth-6, size.Height)
	x := LabelWidth
	centre(r.Field, x, r.width, FieldHeight)
	x += r.width + 8
	unit := r.Unit.NaturalWidth()
	if r.faulty {
		r.Unit.Hide()
	} else {
		r.Unit.Show()
	}
	if unit > 0 && !r.faulty {
		unit++
		centre(r.Unit, x, unit, size.Height)
		x += unit + 8
	}
	if r.Choice != nil {
		if len(r.Answers) > 1 {
			r.Choice.Hide()
		} else {
			r.Choice.Show()
		}
		centre(r.Choice, x-PlainEdge, unitChoiceWidth+4, FieldHeight)
		x += unitChoiceWidth + 4
	}
	at := size.Width
	for i := len(r.Answers) - 1; i >= 0; i-- {
		w := r.Answers[i].MinSize().Width
		at -= w
		Place(r.Answers[i], at, (size.Height-r.Answers[i].MinSize().Height)/2+2, w, r.Answers[i].MinSize().Height)
		at -= 10
	}
	centre(r.Meaning, x, max(0, size.Width-x), size.Height)
}

func (rr *rowRenderer) MinSize() fyne.Size { return rr.r.MinSize() }
func (rr *rowRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{rr.r.Label, rr.r.Field, rr.r.Unit}
	if rr.r.Choice != nil {
		o = append(o, rr.r.Choice)
	}
	o = append(o, rr.r.Meaning)
	return append(o, Objects(rr.r.Answers...)...)
}
func (rr *rowRenderer) Destroy() {}
func (rr *rowRenderer) Refresh() {
	for _, o := range rr.Objects() {
		o.Refresh()
	}
	rr.Layout(rr.r.Size())
}

// Answer is one answer: its words, and what it does.
type Answer struct {
	Label string
	Do    func()
}
