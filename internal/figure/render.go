package figure

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"io"
	"math"
	"regexp"
	"strings"

	"git.sr.ht/~sbinet/gg"
	"golang.org/x/image/font/sfnt"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgpdf"
	"gonum.org/v1/plot/vg/vgsvg"
)

// dotsPerInch makes one point of the canvas one pixel.
const dotsPerInch = 72

// Image renders the drawing; at scale 1 an image pixel is a pixel of the layout. A
// scale that is not above 0 is 1.
func (d *Drawing) Image(scale float64) *image.RGBA { return d.ImageOn(new(Shelf), scale) }

// ImageOn is Image, drawn on pixels from a shelf where it has fitting ones.
func (d *Drawing) ImageOn(shelf *Shelf, scale float64) *image.RGBA {
	if !(scale > 0) {
		scale = 1
	}
	w, h := math.Round(d.W*scale), math.Round(d.H*scale)
	img := shelf.take(int(w), int(h))
	on := gg.NewContextForRGBA(img)
	on.SetLineCapButt()
	on.InvertY()
	c := vgimg.NewWith(vgimg.UseImageWithContext(img, on), vgimg.UseDPI(dotsPerInch))
	draw.Draw(img, img.Bounds(), image.NewUniform(d.ground), image.Point{}, draw.Src)
	c.Scale(w/d.W, h/d.H)
	d.paint(c, scale)
	return img
}

// WritePNG renders the drawing at a scale as PNG.
func (d *Drawing) WritePNG(w io.Writer, scale float64) error {
	if err := png.Encode(w, d.Image(scale)); err != nil {
		return fmt.Errorf("writing the PNG: %w", err)
	}
	return nil
}

// pointUnits is how the canvas states its size; a viewer would make a point more than
// a pixel.
var pointUnits = regexp.MustCompile(`(width|height)="([0-9.]+)pt"`)

// WriteSVG writes the drawing as SVG, one user unit to a pixel.
func (d *Drawing) WriteSVG(w io.Writer) error {
	c := vgsvg.New(vg.Length(d.W), vg.Length(d.H))
	d.fillGround(c)
	d.paint(c, 1)
	var b bytes.Buffer
	if _, err := c.WriteTo(&b); err != nil {
		return fmt.Errorf("writing the SVG: %w", err)
	}
	head, body, _ := bytes.Cut(b.Bytes(), []byte("xlink\">\n"))
	head = pointUnits.ReplaceAll(head, []byte(`$1="$2"`))
	title := fmt.Sprintf("xlink\">\n<title>%s</title>\n", plainXML(d.title))
	for _, part := range [][]byte{head, []byte(title), body} {
		if _, err := w.Write(part); err != nil {
			return fmt.Errorf("writing the SVG: %w", err)
		}
	}
	return nil
}

// plainXML is text as XML can hold it: on one line, signs that it has no place for
// replaced.
func plainXML(text string) string {
	var b strings.Builder
	xml.EscapeText(&b, []byte(tidy(text))) // a Builder takes everything
	return b.String()
}

// stamp is a date within the PDF, which the canvas takes from the machine's clock.
var stamp = regexp.MustCompile(`\(D:\d{14}`)

// WritePDF writes the drawing as one page of PDF, one point to a pixel. Its date is
// that of the export, so that the same drawing gives the same file.
func (d *Drawing) WritePDF(w io.Writer) error {
	c := vgpdf.New(vg.Length(d.W), vg.Length(d.H))
	c.EmbedFonts(false)
	d.fillGround(c)
	d.paint(c, 1)
	var b bytes.Buffer
	if _, err := c.WriteTo(&b); err != nil {
		return fmt.Errorf("writing the PDF: %w", err)
	}
	date := "(D:20000101000000"
	if m := d.made; m.Year > 0 {
		date = fmt.Sprintf("(D:%04d%02d%02d000000", m.Year, int(m.Month), m.Day)
	}
	if _, err := w.Write(stamp.ReplaceAll(b.Bytes(), []byte(date))); err != nil {
		return fmt.Errorf("writing the PDF: %w", err)
	}
	return nil
}

func (d *Drawing) fillGround(c vg.Canvas) {
	c.SetColor(d.ground)
	c.Fill(vg.Rectangle{Max: vg.Point{X: vg.Length(d.W), Y: vg.Length(d.H)}}.Path())
}

// paint puts shapes and texts on a canvas. pen is what widths of lines are multiplied
// with: an image canvas scales paths but not its pen.
func (d *Drawing) paint(c vg.Canvas, pen float64) {
	for i := range d.shapes {
		s := &d.shapes[i]
		c.SetColor(s.colour)
		if s.width == 0 {
			c.Fill(s.path)
			continue
		}
		c.SetLineWidth(vg.Length(s.width * pen))
		dash := make([]vg.Length, len(s.dash))
		for i, l := range s.dash {
			dash[i] = vg.Length(l * pen)
		}
		c.SetLineDash(dash, 0)
		c.Stroke(s.path)
	}
	var path vg.Path
	for i := range d.texts {
		t := &d.texts[i]
		path = t.outline(path[:0], d.H)
		c.SetColor(t.colour)
		c.Fill(path)
	}
}

// outline appends the text's glyphs to a path.
func (t *TextBox) outline(path vg.Path, height float64) vg.Path {
	tf := face{bold: t.Bold, size: t.Size}.typeface()
	x, y := t.Rect.X, height-t.baseline
	at := func(p [2]float64) vg.Point {
		return vg.Point{X: vg.Length(x + p[0]*t.Size), Y: vg.Length(y + p[1]*t.Size)}
	}
	for _, r := range t.Text {
		g := tf.glyph(r)
		for i := range g.outline {
			switch s := &g.outline[i]; s.op {
			case sfnt.SegmentOpMoveTo:
				if i > 0 {
					path.Close()
				}
				path.Move(at(s.at[0]))
			case sfnt.SegmentOpLineTo:
				path.Line(at(s.at[0]))
			case sfnt.SegmentOpQuadTo:
				path.QuadTo(at(s.at[0]), at(s.at[1]))
			case sfnt.SegmentOpCubeTo:
				path.CubeTo(at(s.at[0]), at(s.at[1]), at(s.at[2]))
			}
		}
		if len(g.outline) > 0 {
			path.Close()
		}
		x += g.advance * t.Size
	}
	return path
}
