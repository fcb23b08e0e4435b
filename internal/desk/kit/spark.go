package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Spark is a small line without an axis: how something went, and a level to hold it
// against.
type Spark struct {
	widget.BaseWidget
	points []SparkPoint
	level  float32
}

// SparkPoint is a place of the line, from 0 to 1 each way, 0 at the left and at the
// bottom. A Strong one is told apart.
type SparkPoint struct {
	X, Y   float32
	Strong bool
}

const (
	sparkHeight float32 = 34
	sparkDot    float32 = 3
)

// NewSpark is a line through points, and a level to hold it against.
func NewSpark(points []SparkPoint, level float32) *Spark {
	s := &Spark{points: points, level: level}
	s.ExtendBaseWidget(s)
	return s
}

func (s *Spark) HeightFor(float32) float32 { return sparkHeight }

func (s *Spark) MinSize() fyne.Size {
	s.ExtendBaseWidget(s)
	return fyne.NewSize(80, sparkHeight)
}

func (s *Spark) CreateRenderer() fyne.WidgetRenderer {
	r := &sparkRenderer{s: s, level: canvas.NewLine(color.Transparent)}
	for range s.points {
		r.dots = append(r.dots, canvas.NewCircle(color.Transparent))
	}
	for range max(len(s.points)-1, 0) {
		r.lines = append(r.lines, canvas.NewLine(color.Transparent))
	}
	r.Refresh()
	return r
}

type sparkRenderer struct {
	s     *Spark
	level *canvas.Line
	lines []*canvas.Line
	dots  []*canvas.Circle
}

func (r *sparkRenderer) Layout(size fyne.Size) {
	const edge = sparkDot + 1
	at := func(x, y float32) fyne.Position {
		return fyne.NewPos(edge+x*(size.Width-2*edge), size.Height-edge-y*(size.Height-2*edge))
	}
	r.level.Position1, r.level.Position2 = at(0, r.s.level), at(1, r.s.level)
	for i, p := range r.s.points {
		here := at(p.X, p.Y)
		d := sparkDot - 1
		if p.Strong {
			d = sparkDot
		}
		r.dots[i].Position1, r.dots[i].Position2 = here.SubtractXY(d, d), here.AddXY(d, d)
		if i > 0 {
			before := r.s.points[i-1]
			r.lines[i-1].Position1, r.lines[i-1].Position2 = at(before.X, before.Y), here
		}
	}
}

func (r *sparkRenderer) MinSize() fyne.Size { return r.s.MinSize() }

func (r *sparkRenderer) Objects() []fyne.CanvasObject {
	o := append([]fyne.CanvasObject{r.level}, Objects(r.lines...)...)
	return append(o, Objects(r.dots...)...)
}

func (r *sparkRenderer) Destroy() {}

func (r *sparkRenderer) Refresh() {
	r.level.StrokeColor, r.level.StrokeWidth = theme.Color(Rule), 1
	for _, l := range r.lines {
		l.StrokeColor, l.StrokeWidth = theme.Color(Muted), 1
	}
	for i, d := range r.dots {
		d.FillColor = theme.Color(Muted)
		if r.s.points[i].Strong {
			d.FillColor = theme.Color(Accent)
		}
	}
	r.Layout(r.s.Size())
	canvas.Refresh(r.s)
}
