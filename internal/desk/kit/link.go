package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Link is words that do something: in the accent colour, underlined while focused.
type Link struct {
	widget.BaseWidget
	Label   *Text
	line    *canvas.Rectangle
	Do      func()
	focused bool
	hovered bool
}

// NewLink is a link that does what tapped does.
func NewLink(text string, tapped func()) *Link {
	l := &Link{Do: tapped, line: canvas.NewRectangle(theme.Color(Accent))}
	l.Label = NewText(SizeText, Span{Text: text, Color: Accent}).AtMost(1)
	l.ExtendBaseWidget(l)
	return l
}

// NewSmallLink is a link of the small size.
func NewSmallLink(text string, tapped func()) *Link {
	l := NewLink(text, tapped)
	l.Label.FontSize = SizeSmall
	return l
}

func (l *Link) Tapped(*fyne.PointEvent) { l.Do() }
func (l *Link) Cursor() desktop.Cursor  { return desktop.PointerCursor }

func (l *Link) FocusGained() { l.focused = true; l.Refresh() }
func (l *Link) FocusLost()   { l.focused = false; l.Refresh() }
func (l *Link) TypedRune(r rune) {
	if r == ' ' {
		l.Do()
	}
}

func (l *Link) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		l.Do()
	case fyne.KeyF10:
		handOn(l, e)
	}
}

func (l *Link) MouseIn(*desktop.MouseEvent)    { l.hovered = true; l.Refresh() }
func (l *Link) MouseMoved(*desktop.MouseEvent) {}
func (l *Link) MouseOut()                      { l.hovered = false; l.Refresh() }

func (l *Link) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(l.Label.NaturalWidth()+1, l.Label.LineHeight()+2)
}

func (l *Link) CreateRenderer() fyne.WidgetRenderer { return &linkRenderer{l} }

type linkRenderer struct{ l *Link }

func (r *linkRenderer) Layout(size fyne.Size) {
	w := min(size.Width, r.l.Label.NaturalWidth()+1)
	r.l.Label.Resize(fyne.NewSize(w, r.l.Label.LineHeight()))
	r.l.line.Move(fyne.NewPos(0, r.l.Label.LineHeight()))
	height := float32(1)
	if r.l.focused {
		height = 2
	}
	r.l.line.Resize(fyne.NewSize(w, height))
}

func (r *linkRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *linkRenderer) Objects() []fyne.CanvasObject {
	if r.l.focused || r.l.hovered {
		return []fyne.CanvasObject{r.l.Label, r.l.line}
	}
	return []fyne.CanvasObject{r.l.Label}
}
func (r *linkRenderer) Destroy() {}
func (r *linkRenderer) Refresh() {
	r.l.line.FillColor = theme.Color(Accent)
	r.l.Label.Refresh()
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}
