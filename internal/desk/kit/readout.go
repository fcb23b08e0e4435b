package kit

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Readout is the little note beside the pointer.
type Readout struct {
	widget.BaseWidget
	box    *canvas.Rectangle
	Text   *Text
	rested func(then func()) (stop func()) // calls when the pointer has rested
	stop   func()                          // that call; nil for none
}

// restsFor is after what time without a move the note goes: the toolkit does not tell when
// the pointer leaves the window, and what is read out beside no pointer puzzles.
const restsFor = 8 * time.Second

func afterRest(then func()) (stop func()) {
	t := time.AfterFunc(restsFor, func() { fyne.Do(then) })
	return func() { t.Stop() }
}

func newReadout() *Readout {
	n := &Readout{box: canvas.NewRectangle(theme.Color(Field)), Text: NewText(SizeSmall).AtMost(4), rested: afterRest}
	n.box.CornerRadius, n.box.StrokeWidth = 4, 1
	n.ExtendBaseWidget(n)
	return n
}

// say shows text beside a point, inside the room there is.
func (n *Readout) say(text string, at fyne.Position, room fyne.Size) {
	n.Text.Set(Span{Text: text})
	const pad, widest = 8, 260
	w := min(n.Text.NaturalWidth()+1, widest, room.Width-2*pad)
	size := fyne.NewSize(w+2*pad, n.Text.HeightFor(w)+pad)
	x := at.X + 14
	if x+size.Width > room.Width {
		x = at.X - 14 - size.Width
	}
	y := at.Y + 16
	if y+size.Height > room.Height {
		y = at.Y - 8 - size.Height
	}
	n.Move(fyne.NewPos(max(0, x), max(0, y)))
	n.Resize(size)
	n.Show()
	n.endWait()
	n.stop = n.rested(n.Hide)
}

// await ends the wait for a rest.
func (n *Readout) endWait() {
	if n.stop != nil {
		n.stop()
		n.stop = nil
	}
}

func (n *Readout) Hide() {
	n.endWait()
	n.BaseWidget.Hide()
}

func (n *Readout) CreateRenderer() fyne.WidgetRenderer { return &readoutRenderer{n} }

type readoutRenderer struct{ n *Readout }

func (r *readoutRenderer) Layout(size fyne.Size) {
	r.n.box.Resize(size)
	r.n.Text.Move(fyne.NewPos(8, 4))
	r.n.Text.Resize(fyne.NewSize(size.Width-16, size.Height-8))
}
func (r *readoutRenderer) MinSize() fyne.Size { return fyne.NewSize(10, 10) }
func (r *readoutRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.n.box, r.n.Text}
}
func (r *readoutRenderer) Destroy() {}
func (r *readoutRenderer) Refresh() {
	r.n.box.FillColor = theme.Color(Field)
	r.n.box.StrokeColor = theme.Color(Rule)
	r.n.box.Refresh()
	r.n.Text.Refresh()
}
