package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// TabLabel is the name of a page.
type TabLabel struct {
	widget.BaseWidget
	Text    *Text
	mark    *canvas.Rectangle
	ring    *canvas.Rectangle
	choose  func()
	step    func(int)
	chosen  bool
	focused bool
}

func newTabLabel(name string, choose func(), step func(int)) *TabLabel {
	l := &TabLabel{choose: choose, step: step, Text: NewText(SizeText, Span{Text: name})}
	l.mark = canvas.NewRectangle(theme.Color(Accent))
	l.ring = canvas.NewRectangle(theme.Color(Clear))
	l.ExtendBaseWidget(l)
	return l
}

// choosing shows the name, and whether it is the one chosen.
func (l *TabLabel) choosing(name string, chosen bool) {
	l.chosen = chosen
	color := fyne.ThemeColorName(Muted)
	if chosen {
		color = Ink
	}
	l.Text.Set(Span{Text: name, Bold: chosen, Color: color})
	l.Refresh()
}

func (l *TabLabel) Tapped(*fyne.PointEvent) { l.choose() }
func (l *TabLabel) Cursor() desktop.Cursor  { return desktop.PointerCursor }
func (l *TabLabel) FocusGained()            { l.focused = true; l.Refresh() }
func (l *TabLabel) FocusLost()              { l.focused = false; l.Refresh() }
func (l *TabLabel) TypedRune(r rune) {
	if r == ' ' {
		l.choose()
	}
}

func (l *TabLabel) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyF10:
		handOn(l, e)
	case fyne.KeyReturn, fyne.KeyEnter:
		l.choose()
	case fyne.KeyRight:
		l.step(1)
	case fyne.KeyLeft:
		l.step(-1)
	}
}

func (l *TabLabel) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(Measure(l.Text.String(), SizeText, true)+1, tabsHeight)
}

func (l *TabLabel) CreateRenderer() fyne.WidgetRenderer { return &tabLabelRenderer{l} }

type tabLabelRenderer struct{ l *TabLabel }

func (r *tabLabelRenderer) Layout(size fyne.Size) {
	Place(r.l.Text, 0, 8, size.Width, r.l.Text.LineHeight())
	Place(r.l.mark, 0, size.Height-2, size.Width, 2)
	Place(r.l.ring, -5, 4, size.Width+10, size.Height-9)
}
func (r *tabLabelRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *tabLabelRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.l.Text}
	if r.l.chosen {
		o = append(o, r.l.mark)
	}
	if r.l.focused {
		o = append(o, r.l.ring)
	}
	return o
}
func (r *tabLabelRenderer) Destroy() {}
func (r *tabLabelRenderer) Refresh() {
	r.l.mark.FillColor = theme.Color(Accent)
	r.l.ring.FillColor = theme.Color(Clear)
	r.l.ring.StrokeColor, r.l.ring.StrokeWidth, r.l.ring.CornerRadius = theme.Color(Accent), 2, 4
	r.l.Text.Refresh()
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}
