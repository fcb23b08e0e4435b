package paper

import "image/color"

// footSize is of the line at a page's foot, in points.
const footSize = 8

// Foot sets a line at the foot of each page: said at the left and, at the right, what
// number makes of the page and how many there are.
func Foot(pages []*Page, margin float64, said string, number func(page, of int) string, c color.NRGBA) {
	f := Face{Size: footSize}
	for i, p := range pages {
		y := p.Size.H - margin
		right := number(i+1, len(pages))
		p.TextRight(p.Size.W-margin, y, f, right, c)
		p.Text(margin, y, f, f.Fit(said, p.Size.W-2*margin-f.Width(right)-4), c)
	}
}
