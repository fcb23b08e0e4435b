package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Switch is a line of names, one of them chosen: left and right change it.
type Switch struct {
	widget.BaseWidget
	names   []string
	Labels  []*TabLabel
	At      int
	changed func()
	line    *canvas.Rectangle
}

// NewSwitch has the first name chosen; changed is called when another is.
func NewSwitch(changed func(), names ...string) *Switch {
	s := &Switch{names: names, changed: changed, line: canvas.NewRectangle(theme.Color(Rule))}
	for i, name := range names {
		s.Labels = append(s.Labels, newTabLabel(name, func() { s.Choose(i) }, s.step))
	}
	s.ExtendBaseWidget(s)
	s.mark()
	return s
}

// Choose chooses a name, and stays where there is none.
func (s *Switch) Choose(i int) {
	if i < 0 || i >= len(s.Labels) || i == s.At {
		return
	}
	s.At = i
	s.mark()
	s.changed()
}

func (s *Switch) step(by int) {
	s.Choose(s.At + by)
	if c := fyne.CurrentApp().Driver().CanvasForObject(s); c != nil {
		c.Focus(s.Labels[s.At])
	}
}

func (s *Switch) mark() {
	for i, l := range s.Labels {
		l.choosing(s.names[i], i == s.At)
	}
}

// Height is that of the line.
func (s *Switch) Height() float32 { return tabsHeight }

// Wide is how much of the line the names take.
func (s *Switch) Wide() (w float32) {
	for _, l := range s.Labels {
		w += l.MinSize().Width + switchGap()
	}
	return w
}

func switchGap() float32 { return 26 * TextFactor }

func (s *Switch) CreateRenderer() fyne.WidgetRenderer { return &switchRenderer{s} }

type switchRenderer struct{ s *Switch }

func (r *switchRenderer) Layout(size fyne.Size) {
	x := float32(0)
	for _, l := range r.s.Labels {
		w := l.MinSize().Width
		Place(l, x, 0, w, tabsHeight)
		x += w + switchGap()
	}
	Place(r.s.line, 0, tabsHeight-1, size.Width, 1)
}

func (r *switchRenderer) MinSize() fyne.Size { return fyne.NewSize(0, tabsHeight) }

func (r *switchRenderer) Objects() []fyne.CanvasObject {
	return append([]fyne.CanvasObject{r.s.line}, Objects(r.s.Labels...)...)
}
func (r *switchRenderer) Destroy() {}
func (r *switchRenderer) Refresh() {
	r.s.line.FillColor = theme.Color(Rule)
	r.s.line.Refresh()
	for _, l := range r.s.Labels {
		l.Refresh()
	}
	r.Layout(r.s.Size())
}
