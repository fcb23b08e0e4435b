package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Tab is a page of the answer.
type Tab struct {
	Name    string
	Content fyne.CanvasObject
}

// Tabs is a line of names over the page that is chosen. Left and right change it.
type Tabs struct {
	widget.BaseWidget
	Pages   []Tab
	Labels  []*TabLabel
	At      int
	changed func()
	line    *canvas.Rectangle
}

// NewTabs shows the first page; changed is called when another is chosen.
func NewTabs(changed func(), pages ...Tab) *Tabs {
	t := &Tabs{Pages: pages, changed: changed, line: canvas.NewRectangle(theme.Color(Rule))}
	for i, p := range pages {
		t.Labels = append(t.Labels, newTabLabel(p.Name, func() { t.Choose(i) }, t.step))
	}
	t.ExtendBaseWidget(t)
	t.mark()
	return t
}

func (t *Tabs) Choose(i int) {
	if i < 0 || i >= len(t.Pages) {
		return
	}
	t.At = i
	t.mark()
	t.changed()
}

func (t *Tabs) step(by int) {
	i := t.At + by
	if i < 0 || i >= len(t.Pages) {
		return
	}
	t.Choose(i)
	if c := fyne.CurrentApp().Driver().CanvasForObject(t); c != nil {
		c.Focus(t.Labels[i])
	}
}

func (t *Tabs) mark() {
	for i, l := range t.Labels {
		l.choosing(t.Pages[i].Name, i == t.At)
		if l.chosen {
			t.Pages[i].Content.Show()
		} else {
			t.Pages[i].Content.Hide()
		}
	}
	t.Refresh()
}

// Rename gives the page at i another name.
func (t *Tabs) Rename(i int, name string) {
	if t.Pages[i].Name != name {
		t.Pages[i].Name = name
		t.mark()
	}
}

func (t *Tabs) CreateRenderer() fyne.WidgetRenderer { return &tabsRenderer{t} }

type tabsRenderer struct{ t *Tabs }

// Layout puts the names on one line, or where they have no room on several.
func (r *tabsRenderer) Layout(size fyne.Size) {
	gap := 26 * TextFactor
	if r.width(gap) > size.Width {
		gap = 14 * TextFactor
	}
	x, y, high := float32(0), float32(0), tabsHeight
	for _, l := range r.t.Labels {
		w := l.MinSize().Width
		if x > 0 && x+w > size.Width {
			x, y = 0, y+high-6
		}
		Place(l, x, y, w, high)
		x += w + gap
	}
	below := y + high
	Place(r.t.line, 0, below-1, size.Width, 1)
	for _, p := range r.t.Pages {
		Place(p.Content, 0, below, size.Width, size.Height-below)
	}
}

// width of all names on one line.
func (r *tabsRenderer) width(gap float32) (w float32) {
	for i, l := range r.t.Labels {
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
	for _, l := range r.t.Labels {
		o = append(o, l)
	}
	for _, p := range r.t.Pages {
		o = append(o, p.Content)
	}
	return o
}
func (r *tabsRenderer) Destroy() {}
func (r *tabsRenderer) Refresh() {
	r.t.line.FillColor = theme.Color(Rule)
	r.t.line.Refresh()
	for _, l := range r.t.Labels {
		l.Refresh()
	}
	r.Layout(r.t.Size())
	r.t.Pages[r.t.At].Content.Refresh()
}
