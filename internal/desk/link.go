package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// link is words that do something: in the accent colour, underlined while focused.
type link struct {
	widget.BaseWidget
	label   *prose
	line    *canvas.Rectangle
	tapped  func()
	focused bool
	hovered bool
}

func newLink(text string, tapped func()) *link {
	l := &link{tapped: tapped, line: canvas.NewRectangle(theme.Color(colAccent))}
	l.label = newProse(sizeText, span{text: text, color: colAccent}).atMost(1)
	l.ExtendBaseWidget(l)
	return l
}

func (l *link) Tapped(*fyne.PointEvent) { l.tapped() }
func (l *link) Cursor() desktop.Cursor  { return desktop.PointerCursor }

func (l *link) FocusGained() { l.focused = true; l.Refresh() }
func (l *link) FocusLost()   { l.focused = false; l.Refresh() }
func (l *link) TypedRune(r rune) {
	if r == ' ' {
		l.tapped()
	}
}

func (l *link) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyReturn || e.Name == fyne.KeyEnter {
		l.tapped()
	}
}

func (l *link) MouseIn(*desktop.MouseEvent)    { l.hovered = true; l.Refresh() }
func (l *link) MouseMoved(*desktop.MouseEvent) {}
func (l *link) MouseOut()                      { l.hovered = false; l.Refresh() }

func (l *link) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(l.label.naturalWidth()+1, l.label.lineHeight()+2)
}

func (l *link) CreateRenderer() fyne.WidgetRenderer { return &linkRenderer{l} }

type linkRenderer struct{ l *link }

func (r *linkRenderer) Layout(size fyne.Size) {
	w := min(size.Width, r.l.label.naturalWidth()+1)
	r.l.label.Resize(fyne.NewSize(w, r.l.label.lineHeight()))
	r.l.line.Move(fyne.NewPos(0, r.l.label.lineHeight()))
	height := float32(1)
	if r.l.focused {
		height = 2
	}
	r.l.line.Resize(fyne.NewSize(w, height))
}

func (r *linkRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *linkRenderer) Objects() []fyne.CanvasObject {
	if r.l.focused || r.l.hovered {
		return []fyne.CanvasObject{r.l.label, r.l.line}
	}
	return []fyne.CanvasObject{r.l.label}
}
func (r *linkRenderer) Destroy() {}
func (r *linkRenderer) Refresh() {
	r.l.line.FillColor = theme.Color(colAccent)
	r.l.label.Refresh()
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}
