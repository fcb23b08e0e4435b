package handout

import "reelworth/internal/paper"

// tableRow is a row of cells; the first column is text, the others end at their right
// edges.
type tableRow struct {
	cells  []string
	strong bool
}

// table sets rows under a head. Its columns are as wide as what stands in them, the
// first takes the rest. Where the page ends it goes on over the next, under its head.
func (f *flow) table(b block, head []string, rows []tableRow) {
	widths := columnWidths(b.w, head, rows)
	f.headRow(b, head, widths)
	for _, row := range rows {
		if f.room() < pitch(bodyFace) {
			f.newPage()
			f.headRow(b, head, widths)
		}
		face := bodyFace
		if row.strong {
			face = strongFace
		}
		f.row(b, face, row.cells, widths, false)
	}
}

func (f *flow) headRow(b block, head []string, widths []float64) {
	for _, text := range head {
		if text != "" {
			f.row(b, smallFace, head, widths, true)
			f.y += 0.4
			return
		}
	}
}

func (f *flow) row(b block, face paper.Face, cells []string, widths []float64, quiet bool) {
	c := f.theme.Ink
	if quiet {
		c = f.theme.Muted
	}
	f.y += pitch(face)
	base, x := f.y-pitch(face)*0.28, b.x
	for i, text := range cells {
		if i == 0 {
			f.page().Text(x, base, face, face.Fit(text, widths[0]-2), c)
		} else {
			shrunk := face.Shrunk(text, widths[i], 5)
			f.page().TextRight(x+widths[i], base, shrunk, shrunk.Fit(text, widths[i]), c)
		}
		x += widths[i]
	}
}

// columnGap is between columns, in millimetres.
const columnGap = 4

// columnWidths leaves the first column at least a third.
func columnWidths(width float64, head []string, rows []tableRow) []float64 {
	widths := make([]float64, len(head))
	for i := 1; i < len(head); i++ {
		widths[i] = smallFace.Width(head[i])
		for _, row := range rows {
			widths[i] = max(widths[i], strongFace.Width(row.cells[i]))
		}
		widths[i] += columnGap
	}
	rest := 0.0
	for _, w := range widths[1:] {
		rest += w
	}
	if most := width * 2 / 3; rest > most {
		for i := range widths[1:] {
			widths[i+1] *= most / rest
		}
		rest = most
	}
	widths[0] = width - rest
	return widths
}
