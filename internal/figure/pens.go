package figure

import (
	"image/color"

	"reelworth/internal/compare"
)

// role is why an offer's line is told apart, the most telling first.
type role int

const (
	roleChosen role = iota
	roleBaseline
	roleBest // best reel or best boxed
	roleQuiet
)

func roleOf(c *compare.Comparison, name, chosen string) role {
	switch name {
	case chosen:
		return roleChosen
	case c.Scenario.Baseline:
		return roleBaseline
	case c.Verdict.Reel, c.Verdict.Boxed:
		return roleBest
	}
	return roleQuiet
}

// pen is how a line is drawn; text is the colour of words about it, which must read.
type pen struct {
	colour, text color.NRGBA
	width        float64
	dash         []float64
}

// dashes tell lines apart without colour.
var dashes = [][]float64{{6, 4}, {2, 3}, {10, 3, 2, 3}, {4, 2}, {12, 4}, {7, 2, 2, 2, 2, 2}}

// penFor is the pen of a role; quiet counts the quiet lines so far. Of more than three
// offers the quiet ones are thinner.
func (s *sheet) penFor(r role, quiet, offers int) pen {
	t := s.style.Theme
	switch r {
	case roleChosen:
		return pen{colour: t.Accent, text: t.Accent, width: 2.6}
	case roleBaseline:
		return pen{colour: t.Ink, text: t.Ink, width: 2}
	case roleBest:
		return pen{colour: t.Ink, text: t.Ink, width: 2, dash: []float64{9, 4}}
	}
	p := pen{colour: t.Quiet, text: t.Muted, width: 1.8, dash: dashes[quiet%len(dashes)]}
	if offers > 3 {
		p.width = 1.3
	}
	return p
}
