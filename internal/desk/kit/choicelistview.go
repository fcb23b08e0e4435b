package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
)

// width is what the longest option needs.
func (l *choiceList) width() float32 {
	w := Measure(Labels.FindOne, SizeSmall, false) + 2*choiceEdge()
	for _, r := range l.rows {
		w = max(w, r.width())
	}
	return w + Scaled(12) // and the scroll bar
}

// height of the options, or of as many as one looks over.
func (l *choiceList) height() float32 {
	return l.hintHeight() + float32(min(len(l.options), mostSeen))*choiceHeight() + 2*listEdge
}

// listEdge is the room above and below the options.
const listEdge = 4

func (l *choiceList) hintHeight() float32 {
	if len(l.options) <= longList {
		return 0
	}
	return l.hint.LineHeight() + Scaled(8)
}

func (l *choiceList) MinSize() fyne.Size {
	return fyne.NewSize(l.width(), min(l.height(), l.hintHeight()+4*choiceHeight()))
}

func (l *choiceList) CreateRenderer() fyne.WidgetRenderer {
	r := &choiceListRenderer{l}
	r.paint()
	return r
}

type choiceListRenderer struct{ l *choiceList }

func (r *choiceListRenderer) Layout(size fyne.Size) {
	l, top := r.l, r.l.hintHeight()
	l.ground.Resize(size)
	if top > 0 {
		Place(l.hint, choiceEdge(), Scaled(5), size.Width-2*choiceEdge(), l.hint.LineHeight())
	}
	Place(l.scroll, 0, top+listEdge, size.Width, size.Height-top-2*listEdge)
	l.reveal()
}

func (r *choiceListRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *choiceListRenderer) Objects() []fyne.CanvasObject {
	if r.l.hintHeight() == 0 {
		return []fyne.CanvasObject{r.l.ground, r.l.scroll}
	}
	return []fyne.CanvasObject{r.l.ground, r.l.hint, r.l.scroll}
}
func (r *choiceListRenderer) Destroy() {}
func (r *choiceListRenderer) Refresh() { r.paint(); r.l.scroll.Refresh() }

func (r *choiceListRenderer) paint() {
	r.l.ground.FillColor, r.l.ground.StrokeColor = theme.Color(Ground), theme.Color(Rule)
	canvas.Refresh(r.l)
}
