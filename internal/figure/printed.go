package figure

import (
	"gonum.org/v1/plot/vg"

	"reelworth/internal/paper"
)

// Print sets the drawing on a page, its top left corner at x, y and so wide, all in
// millimetres, and returns how high that is. Its texts stay texts, its ground is left
// out.
func (d *Drawing) Print(p *paper.Page, x, y, width float64) (height float64) {
	k := width / d.W
	at := func(q vg.Point) (float64, float64) { return x + float64(q.X)*k, y + (d.H-float64(q.Y))*k }
	for i := range d.shapes {
		s := &d.shapes[i]
		path := printed(s.path, at)
		if s.width == 0 {
			p.Fill(path, s.colour)
			continue
		}
		dash := make([]float64, len(s.dash))
		for i, l := range s.dash {
			dash[i] = l * k
		}
		p.Stroke(path, s.width*k, dash, s.colour)
	}
	for i := range d.texts {
		t := &d.texts[i]
		f := paper.Face{Bold: t.Bold, Size: t.Size * k * paper.PointsPerMillimetre}
		p.Text(x+t.Rect.X*k, y+t.baseline*k, f, t.Text, t.colour)
	}
	return d.H * k
}

// printed is a path of the canvas as a path on paper.
func printed(path vg.Path, at func(vg.Point) (x, y float64)) (out paper.Path) {
	for _, c := range path {
		x, y := at(c.Pos)
		switch c.Type {
		case vg.MoveComp:
			out.Move(x, y)
		case vg.LineComp:
			out.Line(x, y)
		case vg.CurveComp:
			ax, ay := at(c.Control[0])
			if len(c.Control) == 1 {
				out.Quad(ax, ay, x, y)
				continue
			}
			bx, by := at(c.Control[1])
			out.Cube(ax, ay, bx, by, x, y)
		case vg.CloseComp:
			out.Close()
		}
	}
	return out
}
