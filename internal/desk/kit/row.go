package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Row is one field of a form: label, field, unit, and beside it what the value means
// or what is wrong with it. Its height changes only for a complaint that has no room
// beside the field: that stands below it, whole.
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
	Grew    func()  // the row is higher or lower than before; nil where nobody asks
	high    float32 // when that was told last
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
	if now := r.HeightFor(r.Size().Width); now != r.high {
		was := r.high
		if r.high = now; was > 0 && r.Grew != nil {
			r.Grew()
		}
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
	r.Meaning.MaxLines = 0
	r.Meaning.Set(Span{Text: "✗ ", Color: Fault, Bold: true}, Span{Text: text, Color: Fault})
	r.mark(true)
}

func (r *Row) HeightFor(width float32) float32 {
	if r.isBelow(width) {
		return RowHeight + r.Meaning.HeightFor(width-LabelWidth) + belowGap
	}
	return RowHeight
}

// belowGap is the room between a complaint below its field and the next row.
const belowGap = 4

// isBelow says whether a complaint has no room beside the field in a row that wide.
func (r *Row) isBelow(width float32) bool {
	if !r.faulty || len(r.Answers) > 0 || width <= LabelWidth {
		return false
	}
	room := max(1, width-r.beside())
	return r.Meaning.widestWord() > room || r.Meaning.HeightFor(room) > RowHeight
}

// beside is where what stands beside the field begins.
func (r *Row) beside() float32 {
	x := LabelWidth + r.width + 8
	if unit := r.Unit.NaturalWidth(); unit > 0 && !r.faulty {
		x += unit + 9
	}
	if r.Choice != nil {
		x += unitChoiceWidth + 4
	}
	return x
}

func (r *Row) MinSize() fyne.Size {
	r.ExtendBaseWidget(r)
	return fyne.NewSize(0, r.HeightFor(r.Size().Width))
}

func (r *Row) CreateRenderer() fyne.WidgetRenderer { return &rowRenderer{r} }

type rowRenderer struct{ r *Row }

func (rr *rowRenderer) Layout(size fyne.Size) {
	r := rr.r
	below := r.isBelow(size.Width)
	height := size.Height
	if below {
		height = RowHeight
	}
	centre := func(o fyne.CanvasObject, x, w, h float32) { Place(o, x, (height-h)/2, w, h) }
	centre(r.Label, 0, LabelWidth-6, height)
	x := LabelWidth
	centre(r.Field, x, r.width, FieldHeight)
	x += r.width + 8
	if r.faulty {
		r.Unit.Hide()
	} else {
		r.Unit.Show()
	}
	if unit := r.Unit.NaturalWidth(); unit > 0 && !r.faulty {
		centre(r.Unit, x, unit+1, height)
		x += unit + 9
	}
	if r.Choice != nil {
		if len(r.Answers) > 1 {
			r.Choice.Hide()
		} else {
			r.Choice.Show()
		}
		centre(r.Choice, x-PlainEdge, unitChoiceWidth+4, FieldHeight)
	}
	at := size.Width
	for i := len(r.Answers) - 1; i >= 0; i-- {
		w := r.Answers[i].MinSize().Width
		at -= w
		Place(r.Answers[i], at, (height-r.Answers[i].MinSize().Height)/2+2, w, r.Answers[i].MinSize().Height)
		at -= 10
	}
	rr.layMeaning(size.Width, height, below)
}

// layMeaning puts what the value means, or what is wrong with it, beside the field, or
// below it.
func (rr *rowRenderer) layMeaning(width, height float32, below bool) {
	m, x, y, h, align := rr.r.Meaning, rr.r.beside(), float32(0), height, fyne.TextAlignTrailing
	if below {
		x, y, align = LabelWidth, height, fyne.TextAlignLeading
		h = m.HeightFor(width - x)
	}
	Place(m, x, y, max(0, width-x), h)
	if m.align != align {
		m.align = align
		m.Refresh()
	}
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
