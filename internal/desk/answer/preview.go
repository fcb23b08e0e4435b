package answer

import (
	"context"
	"image"

	"reelworth/internal/handout"
	"reelworth/internal/paper"
)

// PreviewJob asks how a report will print.
type PreviewJob struct {
	Asked  int    // another number for each other Export
	Export Export // of a report
	Page   int    // the one that is looked at, from 0
	Small  Sheet  // all pages, to choose one by
	Large  Sheet  // the one that is looked at
	Before *Preview
}

// Sheet is how large a page is shown: its width in the window's units, and how many
// pixels one unit has.
type Sheet struct{ Width, Scale float32 }

// Preview is what came of it.
type Preview struct {
	Job   PreviewJob
	Pages *handout.Handout
	NoWay bool          // amounts stay at home, for want of a rate
	Small []*image.RGBA // nil for one without room
	Large *image.RGBA
}

// SeeReport lays a report out as it will print, and draws it; it gives up when a newer job
// waits.
func SeeReport(ctx context.Context, j PreviewJob) (*Preview, bool) {
	p := &Preview{Job: j}
	before := j.Before
	p.Job.Before = nil // else each would keep the one before
	if before == nil || before.Job.Asked != j.Asked {
		before = nil
		var err error
		if p.Pages, p.NoWay, err = j.Export.handout(ctx); err != nil {
			return nil, false
		}
	} else {
		p.Pages, p.NoWay = before.Pages, before.NoWay
	}
	pages := p.Pages.Pages
	p.Job.Page = min(max(j.Page, 0), len(pages)-1)
	if before != nil && before.Job.Small == j.Small {
		p.Small = before.Small
	} else {
		for _, page := range pages {
			p.Small = append(p.Small, j.Small.draw(page))
		}
	}
	if ctx.Err() != nil {
		return nil, false
	}
	p.Large = j.Large.draw(pages[p.Job.Page])
	return p, true
}

// draw draws a page as wide as the sheet.
func (s Sheet) draw(page *paper.Page) *image.RGBA {
	if s.Width < 1 {
		return nil
	}
	return page.ImageAcross(float64(s.Width * s.Scale))
}
