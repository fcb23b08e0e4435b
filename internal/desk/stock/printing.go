package stock

import (
	"image"
	"io"
	"time"

	"reelworth/internal/paper"
	"reelworth/internal/prints"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

// Sheet is how labels and the speed code are printed.
type Sheet struct {
	Grid      paper.Grid
	FirstFree int  // label of the sheet, from 1
	ToCome    bool // the cassettes that the rest gives, not those that are loaded
	Tolerance reels.Tolerance
}

// Printed is a reel's labels and speed code as they will print.
type Printed struct {
	Fault   paper.GridFault // why there are none
	Pages   []*paper.Page
	Labels  []reels.Label
	Preview *image.RGBA // of the first page, nil for none
	Lacking []rune      // letters that are printed as boxes
	Code    *reels.SpeedCode
	Drawn   *paper.Page // the code's template, nil for none
	Seen    *image.RGBA
}

// previewDots is how fine a page is drawn on the screen, in dots per inch.
const previewDots = 96

// printed lays out the labels of the reel that is looked at, nil for none.
func printed(j Job, s *reels.Standing) *Printed {
	if j.Of.Thought || s == nil {
		return nil
	}
	r := &j.Reels[j.Of.Reel]
	p := &Printed{}
	loaded, toCome := reels.Labels(r, s)
	if p.Labels = loaded; j.Sheet.ToCome {
		p.Labels = toCome
	}
	p.Lacking = prints.Lacking(p.Labels)
	p.Pages, p.Fault = prints.Labels(p.Labels, j.Sheet.Grid, j.Sheet.FirstFree)
	if len(p.Pages) > 0 {
		p.Preview = p.Pages[0].Image(previewDots)
	}
	if r.Speed.Set {
		code := reels.Code(r.Speed.Int, r.Exposures, j.Sheet.Tolerance)
		p.Code = &code
		if p.Drawn = prints.CodeTemplate(code, prints.UsualAreas, j.Sheet.Grid.Size); p.Drawn != nil {
			p.Seen = p.Drawn.Image(previewDots)
		}
	}
	return p
}

// labelDots is how fine a single label is drawn as a picture, in dots per inch.
const labelDots = 300

// WriteLabel writes one label as a PNG.
func WriteLabel(w io.Writer, l reels.Label, g paper.Grid) error {
	return prints.Label(l, g.Label()).WritePNG(w, labelDots)
}

// WritePages writes pages as a PDF that says what it is.
func WritePages(w io.Writer, title string, pages []*paper.Page, today scenario.Date) error {
	made := time.Date(today.Year, today.Month, today.Day, 0, 0, 0, 0, time.UTC)
	return paper.WritePDF(w, paper.About{Title: title, Program: words.Program + " " + version.String(), Made: made}, pages)
}

// LoadingSheet is a plan's cassettes with boxes to tick, on A4.
func LoadingSheet(name string, steps []reels.Step) []*paper.Page {
	return prints.LoadingSheet(name, steps, paper.A4)
}
