package prints

import (
	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// The loader's sheet, in millimetres; its type can be read in poor light.
const (
	edge      = 18.0
	rowHeight = 11.0
	boxSide   = 6.5
)

var (
	titleFace = paper.Face{Bold: true, Size: 17}
	textFace  = paper.Face{Size: 9.5}
	headFace  = paper.Face{Size: 9}
	rowFace   = paper.Face{Bold: true, Size: 15}
)

// LoadingSheet is a plan as a list of cassettes, with boxes to tick.
func LoadingSheet(reel string, steps []reels.Step, size paper.Size) []*paper.Page {
	var pages []*paper.Page
	var p *paper.Page
	y, foot := 0.0, size.H-edge
	for i := range steps {
		if p == nil || y+rowHeight > foot {
			p = paper.NewPage(size)
			pages = append(pages, p)
			y = loadingHead(p, reel)
		}
		loadingRow(p, words.LoadingRow(steps[i]), y)
		y += rowHeight
	}
	if p == nil {
		p = paper.NewPage(size)
		pages = append(pages, p)
		loadingHead(p, reel)
	}
	paper.Foot(pages, edge/2, words.LoadingTitle(reel), words.PageOf, grey)
	return pages
}

// loadingColumns are where the cells begin, as shares of the width.
var loadingColumns = []float64{0, 0.09, 0.27, 0.46, 0.86}

func loadingColumn(p *paper.Page, i int) (x, w float64) {
	width := p.Size.W - 2*edge
	end := 1.0
	if i+1 < len(loadingColumns) {
		end = loadingColumns[i+1]
	}
	return edge + width*loadingColumns[i], width*(end-loadingColumns[i]) - 2
}

// loadingHead sets what stands over the rows and returns where they begin.
func loadingHead(p *paper.Page, reel string) float64 {
	width := p.Size.W - 2*edge
	title := titleFace.Shrunk(words.LoadingTitle(reel), width, 10)
	p.Text(edge, edge+5, title, title.Fit(words.LoadingTitle(reel), width), black)
	y := edge + 12
	for _, text := range []string{words.LoadingUnder, words.NoScreenIsSafe} {
		for _, said := range textFace.Wrap(text, width, 2) {
			p.Text(edge, y, textFace, said, black)
			y += 4.6
		}
	}
	y += 4
	for i, name := range words.LoadingHeader() {
		x, w := loadingColumn(p, i)
		p.Text(x, y, headFace, headFace.Fit(name, w), grey)
	}
	p.Line(edge, y+1.8, p.Size.W-edge, y+1.8, 0.3, black)
	return y + 1.8
}

func loadingRow(p *paper.Page, cells []string, y float64) {
	p.Frame(edge+0.5, y+(rowHeight-boxSide)/2, boxSide, boxSide, 0.5, black)
	for i, text := range cells {
		x, w := loadingColumn(p, i)
		face := rowFace.Shrunk(text, w, 8)
		p.Text(x, y+rowHeight/2+1.9, face, face.Fit(text, w), black)
	}
	p.Line(edge, y+rowHeight, p.Size.W-edge, y+rowHeight, 0.1, faint)
}
