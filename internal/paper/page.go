package paper

import "image/color"

// Size is a sheet, in millimetres.
type Size struct {
	Name string
	W, H float64
}

// The sheets that printers take: A4 of ISO 216, and Letter, 8.5 × 11 in (ANSI Y14.1).
var (
	A4     = Size{"A4", 210, 297}
	Letter = Size{"Letter", 215.9, 279.4}
)

// Page is one sheet and what is on it. Positions are millimetres from its top left
// corner; later marks cover earlier ones. Colours are opaque.
type Page struct {
	Size  Size
	marks []mark
}

// mark is a text, or a path to fill, or to stroke where it has a width.
type mark struct {
	text   string
	face   Face
	x, y   float64 // of a text's baseline
	path   Path
	width  float64   // of a stroke, mm
	dash   []float64 // of a stroke, mm
	colour color.NRGBA
}

// NewPage is an empty page.
func NewPage(size Size) *Page { return &Page{Size: size} }

// Text sets text with its baseline starting at x, y, and returns the x of its end.
func (p *Page) Text(x, y float64, f Face, text string, c color.NRGBA) float64 {
	text = settable(text)
	if text == "" {
		return x
	}
	p.marks = append(p.marks, mark{text: text, face: f, x: x, y: y, colour: c})
	return x + f.Width(text)
}

// TextRight sets text so that it ends at x.
func (p *Page) TextRight(x, y float64, f Face, text string, c color.NRGBA) {
	p.Text(x-f.Width(text), y, f, text, c)
}

// TextMiddle sets text around x.
func (p *Page) TextMiddle(x, y float64, f Face, text string, c color.NRGBA) {
	p.Text(x-f.Width(text)/2, y, f, text, c)
}

// Fill fills a path.
func (p *Page) Fill(path Path, c color.NRGBA) {
	p.marks = append(p.marks, mark{path: path, colour: c})
}

// Stroke draws along a path with a pen of a width; dash holds lengths drawn and left out
// in turn, nil for a whole line.
func (p *Page) Stroke(path Path, width float64, dash []float64, c color.NRGBA) {
	p.marks = append(p.marks, mark{path: path, width: width, dash: dash, colour: c})
}

// Line draws from x0, y0 to x1, y1.
func (p *Page) Line(x0, y0, x1, y1, width float64, c color.NRGBA) {
	var path Path
	path.Move(x0, y0)
	path.Line(x1, y1)
	p.Stroke(path, width, nil, c)
}

// Box fills a rectangle.
func (p *Page) Box(x, y, w, h float64, c color.NRGBA) { p.Fill(Rectangle(x, y, w, h), c) }

// Frame draws around a rectangle.
func (p *Page) Frame(x, y, w, h, width float64, c color.NRGBA) {
	p.Stroke(Rectangle(x, y, w, h), width, nil, c)
}

// Texts are the texts of the page in the order they were set.
func (p *Page) Texts() []string {
	var all []string
	for i := range p.marks {
		if p.marks[i].text != "" {
			all = append(all, p.marks[i].text)
		}
	}
	return all
}

// Path is a line of straight pieces and curves. Its methods take millimetres.
type Path []piece

// piece is one step of a path and its points: control points first, then where it ends.
type piece struct {
	op pieceOp
	at [3][2]float64
}

type pieceOp byte

const (
	opMove pieceOp = iota
	opLine
	opQuad
	opCube
	opClose
)

// Move begins a new line.
func (p *Path) Move(x, y float64) { *p = append(*p, piece{op: opMove, at: [3][2]float64{{x, y}}}) }

// Line goes straight on.
func (p *Path) Line(x, y float64) { *p = append(*p, piece{op: opLine, at: [3][2]float64{{x, y}}}) }

// Quad goes on in a curve with one control point.
func (p *Path) Quad(cx, cy, x, y float64) {
	*p = append(*p, piece{op: opQuad, at: [3][2]float64{{cx, cy}, {x, y}}})
}

// Cube goes on in a curve with two control points.
func (p *Path) Cube(ax, ay, bx, by, x, y float64) {
	*p = append(*p, piece{op: opCube, at: [3][2]float64{{ax, ay}, {bx, by}, {x, y}}})
}

// Close goes back to where the line began.
func (p *Path) Close() { *p = append(*p, piece{op: opClose}) }

// Rectangle is the path around a rectangle.
func Rectangle(x, y, w, h float64) Path {
	var p Path
	p.Move(x, y)
	p.Line(x+w, y)
	p.Line(x+w, y+h)
	p.Line(x, y+h)
	p.Close()
	return p
}
