package figure

import (
	"math"
	"slices"

	"reelworth/internal/compare"
)

// rowPlan is how the rows of bars share the height.
type rowPlan struct {
	rows    int // that fit
	dropped int
	inline  bool // names stand beside the bars, not above them
	top     float64
	pitch   float64 // from row to row
	height  float64 // of a bar
	name    face
	total   face
	end     float64 // below the last row
}

// Heights in pixels: of a row with its name above, of one with its name beside it,
// of the line that says what the bars are compared with.
const (
	tallRow, tallestRow    = 40, 57
	inlineRow, tallestLine = 15, 34
	compareLabel           = 24
)

// rowGap is the share of a tall row that is left empty below its bar; the last bar has
// none below it.
const rowGap = 0.4

// exportRow is as high as an export has room: two offers fill its page as eight do.
var exportRow = math.Inf(1)

// CostHeight is the height at which n offers have a comfortable row each, in pixels,
// when title and legend take a line each.
func CostHeight(n int) float64 { return 52 + float64(n)*tallestRow + compareLabel }

// LeastCostHeight is the height at which n offers still have a row each, in pixels, when
// title and legend take two lines each.
func LeastCostHeight(n int) float64 { return 52 + 40 + float64(n+1)*inlineRow + compareLabel }

// planRows shares out the space between top and bottom.
func planRows(n int, top, bottom, tallest float64, compares bool) rowPlan {
	p := rowPlan{top: top, rows: n, total: totalFace, name: nameFace}
	room := bottom - top
	if compares {
		room -= compareLabel
	}
	pitch := room / float64(max(n, 1))
	switch {
	case pitch > tallestRow && tallest > tallestRow:
		p.pitch = math.Floor(min(room/(float64(max(n, 1))-rowGap), tallest))
		p.height = math.Round((1-rowGap)*p.pitch - 17)
	case pitch >= tallRow:
		p.pitch = math.Floor(min(pitch, tallest))
		p.height = math.Round(min(max(24, 0.4*p.pitch), p.pitch-17))
	case pitch >= inlineRow:
		p.inline = true
		p.pitch = math.Floor(min(pitch, tallestLine))
		p.height = math.Round(min(22, p.pitch-4))
	default:
		p.inline = true
		p.pitch = inlineRow
		p.rows = max(int((room-inlineRow)/inlineRow), 1)
		p.dropped = n - p.rows
		p.height = 11
	}
	if p.inline && p.pitch < 22 {
		p.name, p.total = smallFace, face{bold: true, size: 11.5}
	}
	p.end = p.bar(p.rows-1) + p.height + 6
	return p
}

// bar is the top of the bar of row i.
func (p rowPlan) bar(i int) float64 {
	y := p.top + float64(i)*p.pitch
	if !p.inline {
		return math.Round(y + 16)
	}
	return math.Round(y + (p.pitch-p.height)/2)
}

// mostTelling are the places of n offers in their order: all, or else the baseline,
// the chosen, the verdict's pair, and then the first ones.
func mostTelling(c *compare.Comparison, chosen string, n int) []int {
	rank := func(i int) int {
		switch c.Offers[i].Name {
		case chosen:
			return 0
		case c.Scenario.Baseline:
			return 1
		case c.Verdict.Reel, c.Verdict.Boxed:
			return 2
		}
		return 3
	}
	places := make([]int, len(c.Offers))
	for i := range places {
		places[i] = i
	}
	slices.SortStableFunc(places, func(a, b int) int { return rank(a) - rank(b) })
	places = places[:min(n, len(places))]
	slices.Sort(places)
	return places
}
