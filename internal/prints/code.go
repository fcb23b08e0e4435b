package prints

import (
	"strconv"

	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// Areas is how large and where the code's areas are, in millimetres. They are the
// user's to measure.
type Areas struct {
	W, H       float64 // of one area; W along the spool
	GapX, GapY float64 // between two
}

// UsualAreas are a start, from memory, without a source: measure yours.
var UsualAreas = Areas{W: 6, H: 5}

func (a Areas) width() float64  { return a.W*reels.Areas + a.GapX*(reels.Areas-1) }
func (a Areas) height() float64 { return 2*a.H + a.GapY }

// Fine says whether a code of these areas can be drawn on a page.
func (a Areas) Fine() bool {
	return a.W >= 1 && a.H >= 1 && a.GapX >= 0 && a.GapY >= 0 && a.width() <= 80 && a.height() <= 40
}

// usual are the areas, or those to begin with where they cannot be drawn.
func (a Areas) usual() Areas {
	if a.Fine() {
		return a
	}
	return UsualAreas
}

// CodeTemplate is a page with a speed code: once large, to read it, and at its true size
// as often as there is room, with what to know beforehand. A code that is none gives nil.
func CodeTemplate(c reels.SpeedCode, a Areas, size paper.Size) *paper.Page {
	if c.Row1 == "" {
		return nil
	}
	a = a.usual()
	p := paper.NewPage(size)
	width := size.W - 2*edge
	p.Text(edge, edge+5, titleFace, words.SpeedCodeTitle(c), black)
	y := said(p, edge+13, words.SpeedCodeNote(c))
	y = legend(p, y+3)

	large := a
	by := min(0.7*width/a.width(), 50/a.height())
	large.W, large.H, large.GapX, large.GapY = a.W*by, a.H*by, a.GapX*by, a.GapY*by
	x := edge + (width-large.width())/2
	drawCode(p, c, large, x, y+5, true)
	y += 5 + large.height() + 9

	f := textFace
	p.Text(edge, y, paper.Face{Bold: true, Size: f.Size}, words.CodeTrueSize, black)
	p.Text(edge, y+5, f, words.AreaMeasures(millimetres(a.W), millimetres(a.H)), black)
	y = trueSizes(p, c, a, y+10)

	for _, text := range append(words.SpeedCodeCautions(), words.SpeedCodeSource) {
		y = said(p, y, text) + 1.2
	}
	calibration(p, size.H-calibrationFoot-4, "")
	return p
}

// trueSizes draws rows of the code and returns where the next text may begin.
func trueSizes(p *paper.Page, c reels.SpeedCode, a Areas, y float64) float64 {
	const rows, apart = 2, 9
	for range rows {
		for x := edge + 4; x+a.width() <= p.Size.W-edge; x += a.width() + apart {
			drawCode(p, c, a, x, y, false)
		}
		y += a.height() + apart - 3
	}
	return y + 4
}

// drawCode draws the two rows of areas, metal white and covered black, the post at the
// left; named with the areas' numbers.
func drawCode(p *paper.Page, c reels.SpeedCode, a Areas, x, y float64, named bool) {
	for row, areas := range []string{c.Row1, c.Row2} {
		top := y + float64(row)*(a.H+a.GapY)
		for i, area := range areas {
			left, ink := x+float64(i)*(a.W+a.GapX), black
			if area == '0' {
				p.Box(left, top, a.W, a.H, black)
				ink = faint
			}
			p.Frame(left, top, a.W, a.H, 0.15, grey)
			if named {
				p.TextMiddle(left+a.W/2, top+a.H/2+1.5, paper.Face{Size: 12}, strconv.Itoa(row*reels.Areas+i+1), ink)
			}
		}
	}
	post := a.H * 0.4
	p.Box(x-2.6, y+a.height()/2-post/2, 2, post, grey)
	if named {
		p.TextRight(x-3.6, y+a.height()/2+1, headFace, words.SpoolPost, grey)
	}
}

// legend says what white and black are.
func legend(p *paper.Page, y float64) float64 {
	x := edge
	p.Frame(x, y, 4, 4, 0.15, grey)
	x = p.Text(x+5.5, y+3.2, textFace, words.AreaMetal, black) + 8
	p.Box(x, y, 4, 4, black)
	p.Text(x+5.5, y+3.2, textFace, words.AreaCovered, black)
	return y + 4
}

// said sets a paragraph from a baseline on and returns the next one's.
func said(p *paper.Page, y float64, text string) float64 {
	for _, line := range textFace.Wrap(text, p.Size.W-2*edge, 6) {
		p.Text(edge, y, textFace, line, black)
		y += 4.6
	}
	return y
}

func millimetres(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
