package paper

import (
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"io"
	"math"

	"golang.org/x/image/vector"
)

// Image is the page as it will print, at so many dots per inch.
func (p *Page) Image(dotsPerInch float64) *image.RGBA { return p.drawn(dotsPerInch / 25.4) }

// ImageAcross is the page as it will print, so many pixels wide.
func (p *Page) ImageAcross(pixels float64) *image.RGBA { return p.drawn(pixels / p.Size.W) }

// drawn is the page at a scale of pixels to a millimetre.
func (p *Page) drawn(scale float64) *image.RGBA {
	w, h := max(int(math.Round(p.Size.W*scale)), 1), max(int(math.Round(p.Size.H*scale)), 1)
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(img, img.Bounds(), image.White, image.Point{}, draw.Src)
	brush := &brush{to: img, scale: scale}
	for i := range p.marks {
		brush.mark(&p.marks[i])
	}
	return img
}

// WritePNG writes the page as PNG.
func (p *Page) WritePNG(w io.Writer, dotsPerInch float64) error {
	if err := png.Encode(w, p.Image(dotsPerInch)); err != nil {
		return fmt.Errorf("writing the PNG: %w", err)
	}
	return nil
}

// brush fills paths on a picture.
type brush struct {
	to    *image.RGBA
	scale float64 // pixels to a millimetre
	area  vector.Rasterizer
}

func (b *brush) mark(m *mark) {
	switch {
	case m.text != "":
		b.text(m)
	case m.width == 0:
		b.fill(m.path, 0, 0, 1, m.colour)
	default:
		for _, part := range m.path.outlined(max(m.width, 1/b.scale), m.dash) {
			b.fill(part, 0, 0, 1, m.colour)
		}
	}
}

func (b *brush) text(m *mark) {
	t, em, x := m.face.typeface(), m.face.em(), m.x
	for _, r := range m.text {
		g := t.glyph(r)
		b.fill(g.outline, x, m.y, em, m.colour)
		x += g.advance * em
	}
}

// fill fills a path that is enlarged by a factor and moved to x, y; millimetres. Only the
// part of the picture it covers is gone over.
func (b *brush) fill(path Path, x, y, by float64, c color.NRGBA) {
	x0, y0, x1, y1 := path.bounds()
	at := func(v, by, to float64) float64 { return (v*by + to) * b.scale }
	over := image.Rect(int(math.Floor(at(x0, by, x))), int(math.Floor(at(y0, by, y))),
		int(math.Ceil(at(x1, by, x)))+1, int(math.Ceil(at(y1, by, y)))+1).Intersect(b.to.Bounds())
	if len(path) == 0 || over.Empty() {
		return
	}
	b.area.Reset(over.Dx(), over.Dy())
	p := func(v [2]float64) (float32, float32) {
		return float32(at(v[0], by, x) - float64(over.Min.X)), float32(at(v[1], by, y) - float64(over.Min.Y))
	}
	for _, s := range path {
		ax, ay := p(s.at[0])
		bx, bb := p(s.at[1])
		cx, cy := p(s.at[2])
		switch s.op {
		case opMove:
			b.area.MoveTo(ax, ay)
		case opLine:
			b.area.LineTo(ax, ay)
		case opQuad:
			b.area.QuadTo(ax, ay, bx, bb)
		case opCube:
			b.area.CubeTo(ax, ay, bx, bb, cx, cy)
		case opClose:
			b.area.ClosePath()
		}
	}
	b.area.Draw(b.to, over, image.NewUniform(c), image.Point{})
}

// bounds is the rectangle that holds all points of a path, control points too.
func (p Path) bounds() (x0, y0, x1, y1 float64) {
	x0, y0, x1, y1 = math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	points := [...]int{opMove: 1, opLine: 1, opQuad: 2, opCube: 3, opClose: 0}
	for _, s := range p {
		for _, at := range s.at[:points[s.op]] {
			x0, y0, x1, y1 = min(x0, at[0]), min(y0, at[1]), max(x1, at[0]), max(y1, at[1])
		}
	}
	return x0, y0, x1, y1
}
