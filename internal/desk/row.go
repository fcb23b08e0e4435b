package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// row is one field of a form: label, field, unit, and beside it what the value means
// or what is wrong with it. Its height never changes.
type row struct {
	widget.BaseWidget
	label   *prose
	field   fyne.CanvasObject
	width   float32 // of the field
	unit    *prose
	choice  *picker // in the place of the unit, where it can be chosen; else nil
	meaning *prose
	faulty  bool
	answers []*link // to a question beside the field, nil for none
}

func newRow(label string, field fyne.CanvasObject, width float32, unit string) *row {
	r := &row{field: field, width: width}
	r.label = newProse(sizeText, span{text: label}).atMost(2)
	r.label.centred = true
	r.unit = newProse(sizeText, span{text: unit, color: colMuted}).atMost(1)
	r.unit.centred = true
	r.meaning = newProse(sizeSmall).atMost(2).trailing()
	r.meaning.centred = true
	r.ExtendBaseWidget(r)
	return r
}

// say puts what the value means beside it.
func (r *row) say(text string) {
	r.meaning.maxLines = 2
	r.meaning.set(span{text: text, color: colMuted})
	r.mark(false)
}

// mark makes room for a complaint, in the place of the unit.
func (r *row) mark(faulty bool) {
	if r.faulty != faulty {
		r.faulty = faulty
		r.Refresh()
	}
}

// ask puts a question beside the value: the answers, to be chosen.
func (r *row) ask(q *question) {
	r.answers = nil
	for _, a := range q.answers {
		r.answers = append(r.answers, newLink(a.label, a.do))
	}
	r.meaning.set()
	r.faulty = true
	r.Refresh()
}

// complain puts what is wrong beside the value, with a sign and words.
func (r *row) complain(text string) {
	r.meaning.maxLines = 3
	r.meaning.set(span{text: "✗ ", color: colFault, bold: true}, span{text: text, color: colFault})
	r.mark(true)
}

func (r *row) heightFor(float32) float32 { return rowHeight }

func (r *row) MinSize() fyne.Size {
	r.ExtendBaseWidget(r)
	return fyne.NewSize(0, rowHeight)
}

func (r *row) CreateRenderer() fyne.WidgetRenderer { return &rowRenderer{r} }

type rowRenderer struct{ r *row }

func (rr *rowRenderer) Layout(size fyne.Size) {
	r := rr.r
	centre := func(o fyne.CanvasObject, x, w, h float32) {
		o.Move(fyne.NewPos(x, (size.Height-h)/2))
		o.Resize(fyne.NewSize(w, h))
	}
	centre(r.label, 0, labelWidth-6, size.Height)
	x := labelWidth
	centre(r.field, x, r.width, fieldHeight)
	x += r.width + 8
	unit := r.unit.naturalWidth()
	if r.faulty {
		r.unit.Hide()
	} else {
		r.unit.Show()
	}
	if unit > 0 && !r.faulty {
		unit++
		centre(r.unit, x, unit, size.Height)
		x += unit + 8
	}
	if r.choice != nil {
		if len(r.answers) > 1 {
			r.choice.Hide()
		} else {
			r.choice.Show()
		}
		centre(r.choice, x-2, unitChoiceWidth, fieldHeight)
		x += unitChoiceWidth + 4
	}
	at := size.Width
	for i := len(r.answers) - 1; i >= 0; i-- {
		w := r.answers[i].MinSize().Width
		at -= w
		place(r.answers[i], at, (size.Height-r.answers[i].MinSize().Height)/2+2, w, r.answers[i].MinSize().Height)
		at -= 10
	}
	centre(r.meaning, x, max(0, size.Width-x), size.Height)
}

func (rr *rowRenderer) MinSize() fyne.Size { return rr.r.MinSize() }
func (rr *rowRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{rr.r.label, rr.r.field, rr.r.unit}
	if rr.r.choice != nil {
		o = append(o, rr.r.choice)
	}
	o = append(o, rr.r.meaning)
	return append(o, toObjects(rr.r.answers...)...)
}
func (rr *rowRenderer) Destroy() {}
func (rr *rowRenderer) Refresh() {
	for _, o := range rr.Objects() {
		o.Refresh()
	}
	rr.Layout(rr.r.Size())
}
