package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// choiceRow is one option of an open list.
type choiceRow struct {
	widget.BaseWidget
	option Option
	marked bool
	label  *Text
	also   *Text
	indent float32 // where the second text stands, behind the longest label
	tick   *Text   // before the one that is chosen
	ground *canvas.Rectangle
	take   func()
	point  func(value string)
}

func choiceHeight() float32 { return LineHeight(SizeText) + Scaled(6) }

// choiceEdge is the room left and right of an option's words; the tick stands in it.
func choiceEdge() float32 { return Scaled(22) }

func newChoiceRow(o Option, chosen bool, take func(), point func(string)) *choiceRow {
	r := &choiceRow{option: o, take: take, point: point, ground: canvas.NewRectangle(theme.Color(Clear))}
	r.label = NewText(SizeText, Span{Text: o.Label}).AtMost(1)
	r.also = NewText(SizeText, Span{Text: o.Also, Color: Muted}).AtMost(1)
	r.label.Centred, r.also.Centred = true, true
	r.tick = NewText(SizeSmall).AtMost(1)
	r.tick.Centred = true
	if chosen {
		r.tick.Set(Span{Text: "✓", Bold: true, Color: Accent})
	}
	r.ExtendBaseWidget(r)
	return r
}

func (r *choiceRow) width() float32 {
	w := r.label.NaturalWidth()
	if r.option.Also != "" {
		w = r.indent + r.also.NaturalWidth()
	}
	return w + 2*choiceEdge()
}

func (r *choiceRow) Tapped(*fyne.PointEvent)        { r.take() }
func (r *choiceRow) Cursor() desktop.Cursor         { return desktop.PointerCursor }
func (r *choiceRow) MouseIn(*desktop.MouseEvent)    { r.point(r.option.Value) }
func (r *choiceRow) MouseMoved(*desktop.MouseEvent) {}
func (r *choiceRow) MouseOut()                      {}

func (r *choiceRow) HeightFor(float32) float32 { return choiceHeight() }

func (r *choiceRow) MinSize() fyne.Size {
	r.ExtendBaseWidget(r)
	return fyne.NewSize(0, choiceHeight())
}

func (r *choiceRow) CreateRenderer() fyne.WidgetRenderer { return &choiceRowRenderer{r} }

type choiceRowRenderer struct{ r *choiceRow }

func (rr *choiceRowRenderer) Layout(size fyne.Size) {
	r := rr.r
	Place(r.ground, 0, 0, size.Width, size.Height)
	Place(r.tick, Scaled(6), 0, choiceEdge()-Scaled(6), size.Height)
	end := size.Width - choiceEdge()
	if r.option.Also != "" {
		end = r.indent
		Place(r.also, choiceEdge()+r.indent, 0, size.Width-choiceEdge()-r.indent, size.Height)
	}
	Place(r.label, choiceEdge(), 0, end, size.Height)
}

func (rr *choiceRowRenderer) MinSize() fyne.Size { return rr.r.MinSize() }
func (rr *choiceRowRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{rr.r.ground, rr.r.tick, rr.r.label, rr.r.also}
}
func (rr *choiceRowRenderer) Destroy() {}
func (rr *choiceRowRenderer) Refresh() {
	r := rr.r
	r.ground.FillColor = theme.Color(Clear)
	if r.marked {
		r.ground.FillColor = theme.Color(Chosen)
	}
	canvas.Refresh(r)
}
