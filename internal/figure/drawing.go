package figure

import (
	"image/color"
	"math"

	"gonum.org/v1/plot/vg"

	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Style is how a figure looks: its colours, and how it writes numbers. A Lit part
// is marked in every bar.
type Style struct {
	Theme  palette.Theme
	Locale money.Locale
	Lit    words.CostPart
}

// Rect is a rectangle in pixels at 1×, from the top left corner of the drawing.
type Rect struct{ X, Y, W, H float64 }

// TextBox is one text of a drawing and the rectangle its ink keeps within.
type TextBox struct {
	Text string
	Size float64 // of the type, in pixels
	Bold bool
	Rect Rect

	baseline float64
	colour   color.NRGBA
}

// Hit is a region of a drawing that stands for something, with the sentence a read-out
// says about it. Part is "" where it is no part of a cost, Month 0 where it is no
// month, Units 0 where it is no size of an order; months count from 1.
type Hit struct {
	Rect  Rect
	Offer string
	Part  words.CostPart
	Month int
	Units int
	Text  string
}

// Table is what a drawing shows, in cells.
type Table struct {
	Header []string
	Rows   [][]string
}

// Drawing is a finished figure. It never changes, so that several goroutines may
// render it at once.
type Drawing struct {
	W, H float64 // pixels at 1×

	title  string
	ground color.NRGBA
	made   scenario.Date // written into a PDF; unset says nothing
	shapes []shape
	texts  []TextBox
	hits   []Hit
	table  Table
}

// Texts are all texts of the drawing.
func (d *Drawing) Texts() []TextBox { return d.texts }

// Hits are the regions of the drawing that can be read out.
func (d *Drawing) Hits() []Hit { return d.hits }

// Table is the drawing's twin in cells.
func (d *Drawing) Table() Table { return d.table }

// Title is the sentence over the drawing.
func (d *Drawing) Title() string { return d.title }

// reach is how far from a hit the pointer may be, in pixels.
const reach = 12

// At is the hit nearest to a point, if one is near. The one on top goes first.
func (d *Drawing) At(x, y float64) (Hit, bool) {
	best, at := math.Inf(1), -1
	for i, h := range d.hits {
		if far := h.Rect.distance(x, y); far < best {
			best, at = far, i
		}
	}
	if best > reach {
		return Hit{}, false
	}
	return d.hits[at], true
}

func (r Rect) distance(x, y float64) float64 {
	return math.Hypot(max(r.X-x, 0, x-r.X-r.W), max(r.Y-y, 0, y-r.Y-r.H))
}

// overlaps says whether two rectangles share more than their edges.
func (r Rect) overlaps(o Rect) bool {
	return r.X < o.X+o.W && o.X < r.X+r.W && r.Y < o.Y+o.H && o.Y < r.Y+r.H
}

func (r Rect) right() float64  { return r.X + r.W }
func (r Rect) bottom() float64 { return r.Y + r.H }

// grow is the rectangle with a margin around it.
func (r Rect) grow(by float64) Rect { return Rect{r.X - by, r.Y - by, r.W + 2*by, r.H + 2*by} }

// shape is a path to fill, or to stroke where it has a width; in the canvas's own
// coordinates, which start at the bottom left.
type shape struct {
	path   vg.Path
	colour color.NRGBA
	width  float64
	dash   []float64
}

// Sizes of type, in pixels.
var (
	titleFace = face{bold: true, size: 15}
	nameFace  = face{size: 12}
	smallFace = face{size: 11}
	totalFace = face{bold: true, size: 14}
)

// The least canvas anything is laid out on.
const leastWidth, leastHeight = 240, 120

// sheet is a drawing in the making.
type sheet struct {
	*Drawing
	style Style
}

func newSheet(w, h float64, s Style) *sheet {
	d := &Drawing{W: math.Round(max(w, leastWidth)), H: math.Round(max(h, leastHeight)), ground: s.Theme.Ground}
	return &sheet{Drawing: d, style: s}
}

// point brings a pixel position to the canvas's coordinates.
func (s *sheet) point(x, y float64) vg.Point {
	return vg.Point{X: vg.Length(x), Y: vg.Length(s.H - y)}
}

// box fills a rectangle.
func (s *sheet) box(r Rect, c color.NRGBA) {
	if r.W <= 0 || r.H <= 0 {
		return
	}
	var p vg.Path
	p.Move(s.point(r.X, r.Y))
	p.Line(s.point(r.right(), r.Y))
	p.Line(s.point(r.right(), r.bottom()))
	p.Line(s.point(r.X, r.bottom()))
	p.Close()
	s.shapes = append(s.shapes, shape{path: p, colour: c})
}

// disc fills a circle, made of four curves so that every canvas draws it alike.
func (s *sheet) disc(x, y, r float64, c color.NRGBA) {
	const bend = 0.5522847498 // of the control points of a quarter circle
	k := r * bend
	var p vg.Path
	p.Move(s.point(x+r, y))
	p.CubeTo(s.point(x+r, y+k), s.point(x+k, y+r), s.point(x, y+r))
	p.CubeTo(s.point(x-k, y+r), s.point(x-r, y+k), s.point(x-r, y))
	p.CubeTo(s.point(x-r, y-k), s.point(x-k, y-r), s.point(x, y-r))
	p.CubeTo(s.point(x+k, y-r), s.point(x+r, y-k), s.point(x+r, y))
	p.Close()
	s.shapes = append(s.shapes, shape{path: p, colour: c})
}

// line strokes a line through points (x, y, x, y, …).
func (s *sheet) line(c color.NRGBA, width float64, dash []float64, xy ...float64) {
	var p vg.Path
	p.Move(s.point(xy[0], xy[1]))
	for i := 2; i+1 < len(xy); i += 2 {
		p.Line(s.point(xy[i], xy[i+1]))
	}
	s.shapes = append(s.shapes, shape{path: p, colour: c, width: width, dash: dash})
}

// hairline is a horizontal line of one pixel at y.
func (s *sheet) hairline(x0, x1, y float64, c color.NRGBA) {
	s.box(Rect{x0, math.Round(y), x1 - x0, 1}, c)
}

// write sets text with its baseline starting at x, y, and returns the x of its end.
func (s *sheet) write(f face, x, y float64, text string, c color.NRGBA) float64 {
	if text == "" {
		return x
	}
	s.texts = append(s.texts, textBox(f, x, y, text, c))
	return x + f.width(text)
}

func textBox(f face, x, y float64, text string, c color.NRGBA) TextBox {
	above, below := f.ink(text)
	return TextBox{
		Text: text, Size: f.size, Bold: f.bold, baseline: y, colour: c,
		Rect: Rect{X: x, Y: y - above, W: f.width(text), H: above + below},
	}
}

// clear says whether a rectangle touches no text yet.
func (s *sheet) clear(r Rect) bool {
	for _, t := range s.texts {
		if t.Rect.overlaps(r) {
			return false
		}
	}
	return true
}

// inset puts an empty margin around everything drawn so far.
func (s *sheet) inset(by float64) {
	for _, sh := range s.shapes {
		for i := range sh.path {
			p := &sh.path[i]
			move(&p.Pos, by)
			for j := range p.Control {
				move(&p.Control[j], by)
			}
		}
	}
	for i := range s.texts {
		t := &s.texts[i]
		t.Rect.X, t.Rect.Y, t.baseline = t.Rect.X+by, t.Rect.Y+by, t.baseline+by
	}
	for i := range s.hits {
		r := &s.hits[i].Rect
		r.X, r.Y = r.X+by, r.Y+by
	}
	s.W, s.H = s.W+2*by, s.H+2*by
}

func move(p *vg.Point, by float64) {
	p.X += vg.Length(by)
	p.Y += vg.Length(by)
}
