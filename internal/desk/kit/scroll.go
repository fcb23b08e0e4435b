package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// Scroll shows a part of something larger. The wheel moves it along the wheel's own axis
// only, where the toolkit's scrolls turn sideways what is meant downward; what a scroll has
// no use for goes to the one around it.
type Scroll struct {
	container.Scroll
	Around *Scroll // nil for none
}

// NewScroll scrolls up and down, NewSideways left and right, NewBothWays both.
func NewScroll(content fyne.CanvasObject) *Scroll {
	return newScroll(container.ScrollVerticalOnly, content)
}

func NewSideways(content fyne.CanvasObject) *Scroll {
	return newScroll(container.ScrollHorizontalOnly, content)
}

func NewBothWays(content fyne.CanvasObject) *Scroll {
	return newScroll(container.ScrollBoth, content)
}

func newScroll(d container.ScrollDirection, content fyne.CanvasObject) *Scroll {
	s := &Scroll{}
	s.Direction, s.Content = d, content
	s.ExtendBaseWidget(s)
	return s
}

// Scrolled moves what is shown, as the wheel says.
func (s *Scroll) Scrolled(e *fyne.ScrollEvent) {
	own, rest := *e, *e
	need, room := s.Content.MinSize(), s.Size()
	if s.Direction == container.ScrollVerticalOnly || need.Width <= room.Width {
		own.Scrolled.DX = 0
	} else {
		rest.Scrolled.DX = 0
	}
	if s.Direction == container.ScrollHorizontalOnly || need.Height <= room.Height {
		own.Scrolled.DY = 0
	} else {
		rest.Scrolled.DY = 0
	}
	// Without a part sideways the toolkit takes the part downward for one.
	if own.Scrolled.DX != 0 || own.Scrolled.DY != 0 {
		s.Scroll.Scrolled(&own)
	}
	if s.Around != nil && (rest.Scrolled.DX != 0 || rest.Scrolled.DY != 0) {
		s.Around.Scrolled(&rest)
	}
}

// Reveal moves what is shown as little as it takes until an object of it can be seen, the
// beginning of one that is higher than the room.
func (s *Scroll) Reveal(o fyne.CanvasObject) {
	s.Refresh() // it may have grown
	d := fyne.CurrentApp().Driver()
	top := d.AbsolutePositionForObject(o).Y - d.AbsolutePositionForObject(s.Content).Y
	bottom, at := top+o.Size().Height, s.Offset.Y
	switch {
	case top < at, bottom-top > s.Size().Height:
		s.ScrollToOffset(fyne.NewPos(s.Offset.X, top))
	case bottom > at+s.Size().Height:
		s.ScrollToOffset(fyne.NewPos(s.Offset.X, bottom-s.Size().Height))
	}
}

// Turn moves what is shown by a key: a line, a page, to the beginning or the end. It says
// whether the key is for that.
func (s *Scroll) Turn(key fyne.KeyName) bool {
	const line = 40
	page, at := s.Size().Height-line, s.Offset.Y
	to, is := map[fyne.KeyName]float32{
		fyne.KeyUp: at - line, fyne.KeyDown: at + line, fyne.KeyPageUp: at - page, fyne.KeyPageDown: at + page,
		fyne.KeyHome: 0, fyne.KeyEnd: s.Content.MinSize().Height,
	}[key]
	if is {
		s.ScrollToOffset(fyne.NewPos(s.Offset.X, to))
	}
	return is
}

// Wheel is clear room over or under others that hands the wheel's turns on, to a scroll that
// is not around it.
type Wheel struct {
	widget.BaseWidget
	To func(*fyne.ScrollEvent) // nil for nowhere
}

// NewWheel hands the wheel's turns to a function.
func NewWheel(to func(*fyne.ScrollEvent)) *Wheel {
	w := &Wheel{To: to}
	w.ExtendBaseWidget(w)
	return w
}

func (w *Wheel) Scrolled(e *fyne.ScrollEvent) {
	if w.To != nil {
		w.To(e)
	}
}

// AccessibilityLabel is nothing: there is nothing to see either.
func (w *Wheel) AccessibilityLabel() string             { return "" }
func (w *Wheel) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }

func (w *Wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout())
}
