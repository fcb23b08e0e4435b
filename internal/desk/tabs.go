package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// tab is a page of the answer.
type tab struct {
	name    string
	content fyne.CanvasObject
}

// tabs is a line of names over the page that is chosen. Left and right change it.
type tabs struct {
	widget.BaseWidget
	pages   []tab
	labels  []*tabLabel
	at      int
	changed func()
	line    *canvas.Rectangle
}

func newTabs(changed func(), pages ...tab) *tabs {
	t := &tabs{pages: pages, changed: changed, line: canvas.NewRectangle(theme.Color(colRule))}
	for i, p := range pages {
		l := &tabLabel{choose: func() { t.choose(i) }, step: t.step, text: newProse(sizeText, span{text: p.name})}
		l.mark = canvas.NewRectangle(theme.Color(colAccent))
		l.ring = canvas.NewRectangle(theme.Color(colNothing))
		l.ExtendBaseWidget(l)
		t.labels = append(t.labels, l)
	}
	t.ExtendBaseWidget(t)
	t.mark()
	return t
}

func (t *tabs) choose(i int) {
	if i < 0 || i >= len(t.pages) {
		return
	}
	t.at = i
	t.mark()
	t.changed()
}

func (t *tabs) step(by int) {
	i := t.at + by
	if i < 0 || i >= len(t.pages) {
		return
	}
	t.choose(i)
	if c := fyne.CurrentApp().Driver().CanvasForObject(t); c != nil {
		c.Focus(t.labels[i])
	}
}

func (t *tabs) mark() {
	for i, l := range t.labels {
		l.chosen = i == t.at
		color := fyne.ThemeColorName(colMuted)
		if l.chosen {
			color = colInk
		}
		l.text.set(span{text: t.pages[i].name, bold: l.chosen, color: color})
		l.Refresh()
		if l.chosen {
			t.pages[i].content.Show()
		} else {
			t.pages[i].content.Hide()
		}
	}
	t.Refresh()
}

// rename gives the page at i another name.
func (t *tabs) rename(i int, name string) {
	if t.pages[i].name != name {
		t.pages[i].name = name
		t.mark()
	}
}

func (t *tabs) CreateRenderer() fyne.WidgetRenderer { return &tabsRenderer{t} }

type tabsRenderer struct{ t *tabs }

// Layout puts the names on one line, or where they have no room on several.
func (r *tabsRenderer) Layout(size fyne.Size) {
	gap := 26 * textFactor
	if r.width(gap) > size.Width {
		gap = 14 * textFactor
	}
	x, y, high := float32(0), float32(0), tabsHeight
	for _, l := range r.t.labels {
		w := l.MinSize().Width
		if x > 0 && x+w > size.Width {
			x, y = 0, y+high-6
		}
		place(l, x, y, w, high)
		x += w + gap
	}
	below := y + high
	place(r.t.line, 0, below-1, size.Width, 1)
	for _, p := range r.t.pages {
		place(p.content, 0, below, size.Width, size.Height-below)
	}
}

// width of all names on one line.
func (r *tabsRenderer) width(gap float32) (w float32) {
	for i, l := range r.t.labels {
		if i > 0 {
			w += gap
		}
		w += l.MinSize().Width
	}
	return w
}

func (r *tabsRenderer) MinSize() fyne.Size { return fyne.NewSize(300, tabsHeight+200) }

func (r *tabsRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.t.line}
	for _, l := range r.t.labels {
		o = append(o, l)
	}
	for _, p := range r.t.pages {
		o = append(o, p.content)
	}
	return o
}
func (r *tabsRenderer) Destroy() {}
func (r *tabsRenderer) Refresh() {
	r.t.line.FillColor = theme.Color(colRule)
	r.t.line.Refresh()
	for _, l := range r.t.labels {
		l.Refresh()
	}
	r.Layout(r.t.Size())
	r.t.pages[r.t.at].content.Refresh()
}

// tabLabel is the name of a page.
type tabLabel struct {
	widget.BaseWidget
	text    *prose
	mark    *canvas.Rectangle
	ring    *canvas.Rectangle
	choose  func()
	step    func(int)
	chosen  bool
	focused bool
}

func (l *tabLabel) Tapped(*fyne.PointEvent) { l.choose() }
func (l *tabLabel) Cursor() desktop.Cursor  { return desktop.PointerCursor }
func (l *tabLabel) FocusGained()            { l.focused = true; l.Refresh() }
func (l *tabLabel) FocusLost()              { l.focused = false; l.Refresh() }
func (l *tabLabel) TypedRune(r rune) {
	if r == ' ' {
		l.choose()
	}
}

func (l *tabLabel) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		l.choose()
	case fyne.KeyRight:
		l.step(1)
	case fyne.KeyLeft:
		l.step(-1)
	}
}

func (l *tabLabel) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(measure(l.text.text(), sizeText, true)+1, tabsHeight)
}

func (l *tabLabel) CreateRenderer() fyne.WidgetRenderer { return &tabLabelRenderer{l} }

type tabLabelRenderer struct{ l *tabLabel }

func (r *tabLabelRenderer) Layout(size fyne.Size) {
	place(r.l.text, 0, 8, size.Width, r.l.text.lineHeight())
	place(r.l.mark, 0, size.Height-2, size.Width, 2)
	place(r.l.ring, -5, 4, size.Width+10, size.Height-9)
}
func (r *tabLabelRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *tabLabelRenderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.l.text}
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
	r.l.mark.FillColor = theme.Color(colAccent)
	r.l.ring.FillColor = theme.Color(colNothing)
	r.l.ring.StrokeColor, r.l.ring.StrokeWidth, r.l.ring.CornerRadius = theme.Color(colAccent), 2, 4
	r.l.text.Refresh()
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}
