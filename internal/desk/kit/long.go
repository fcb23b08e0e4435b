package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Long is a list of any number of rows of one height, inside a scroll. Only those in sight
// are widgets; they are filled anew for others when they are scrolled out of it.
type Long struct {
	widget.BaseWidget
	row    func() fyne.CanvasObject
	fill   func(row fyne.CanvasObject, i int)
	height func() float32 // of a row
	count  int
	scroll *Scroll
	above  func() float32 // where the list begins within what is scrolled

	first int                 // the first row that there is a widget for
	rows  []fyne.CanvasObject // from first on
	spare []fyne.CanvasObject
}

// beyond is how many rows above and below those in sight are kept ready.
const beyond = 8

// NewLong is an empty list: row makes a row, fill puts the i-th into it.
func NewLong(height func() float32, row func() fyne.CanvasObject, fill func(row fyne.CanvasObject, i int)) *Long {
	l := &Long{row: row, fill: fill, height: height, above: func() float32 { return 0 }}
	l.ExtendBaseWidget(l)
	return l
}

// Within says what scrolls the list, and where in it the list begins. It takes the
// scroll's OnScrolled.
func (l *Long) Within(s *Scroll, above func() float32) {
	l.scroll, l.above = s, above
	s.OnScrolled = func(fyne.Position) { l.see() }
}

// SetCount shows so many rows, and fills those in sight anew.
func (l *Long) SetCount(n int) {
	l.count = n
	l.put(0, 0)
	l.see()
}

// see makes rows for what is in sight.
func (l *Long) see() {
	first, after := l.sight()
	if first != l.first || after != l.first+len(l.rows) {
		l.put(first, after)
	}
}

// sight is which rows can be seen, some beyond them included.
func (l *Long) sight() (first, after int) {
	top, high := float32(0), float32(2000)
	if l.scroll != nil {
		top, high = l.scroll.Offset.Y-l.above(), max(l.scroll.Size().Height, 200)
	}
	first = min(max(0, int(top/l.height())-beyond), l.count)
	after = min(max(first, int((top+high)/l.height())+1+beyond), l.count)
	return first, after
}

// put has widgets for the rows from first until after.
func (l *Long) put(first, after int) {
	was, from := l.rows, l.first
	rows := make([]fyne.CanvasObject, after-first)
	for i, o := range was {
		if at := from + i - first; at >= 0 && at < len(rows) {
			rows[at] = o
		} else {
			l.drop(o)
		}
	}
	for i, o := range rows {
		if o != nil {
			continue
		}
		if n := len(l.spare); n > 0 {
			rows[i], l.spare = l.spare[n-1], l.spare[:n-1]
		} else {
			rows[i] = l.row()
		}
		l.fill(rows[i], first+i)
	}
	l.first, l.rows = first, rows
	l.Refresh()
}

// drop lays a row aside for another place; the focus does not go there with it.
func (l *Long) drop(o fyne.CanvasObject) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(o); c != nil && any(c.Focused()) == any(o) {
		c.Unfocus()
	}
	l.spare = append(l.spare, o)
}

// Rows calls f with each row there is a widget for.
func (l *Long) Rows(f func(row fyne.CanvasObject, i int)) {
	for i, o := range l.rows {
		f(o, l.first+i)
	}
}

// Reveal scrolls so that a row can be seen, and gives its widget; nil for none.
func (l *Long) Reveal(i int) fyne.CanvasObject {
	if i < 0 || i >= l.count {
		return nil
	}
	if l.scroll != nil {
		top := l.above() + float32(i)*l.height()
		at, high := l.scroll.Offset.Y, l.scroll.Size().Height
		switch {
		case top < at:
			l.scroll.ScrollToOffset(fyne.NewPos(0, top))
		case top+l.height() > at+high:
			l.scroll.ScrollToOffset(fyne.NewPos(0, top+l.height()-high))
		}
		l.see()
	}
	if at := i - l.first; at >= 0 && at < len(l.rows) {
		return l.rows[at]
	}
	return nil
}

func (l *Long) HeightFor(float32) float32 { return l.height() * float32(l.count) }

func (l *Long) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(0, l.HeightFor(0))
}

func (l *Long) CreateRenderer() fyne.WidgetRenderer { return &longRenderer{l} }

type longRenderer struct{ l *Long }

func (r *longRenderer) Layout(size fyne.Size) {
	r.lay(size)
	r.l.see() // there may be more room now
}

func (r *longRenderer) lay(size fyne.Size) {
	h := r.l.height()
	for i, o := range r.l.rows {
		Place(o, 0, float32(r.l.first+i)*h, size.Width, h)
	}
}
func (r *longRenderer) MinSize() fyne.Size           { return r.l.MinSize() }
func (r *longRenderer) Objects() []fyne.CanvasObject { return r.l.rows }
func (r *longRenderer) Destroy()                     {}
func (r *longRenderer) Refresh() {
	r.lay(r.l.Size())
	for _, o := range r.l.rows {
		o.Refresh()
	}
}
