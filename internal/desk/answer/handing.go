package answer

import (
	"bytes"
	"context"
	"errors"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/handout"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/workbook"
)

// What is handed on beside the figures, numbered on from them.
const (
	Tables      = Figures + iota // csv or md
	Data                         // json
	Report                       // pdf, on two pages
	Spreadsheet                  // xlsx, with live formulas
)

// Make is what the file is to hold. lacking are the letters that the typeface has not, a
// box in each one's place.
func (e Export) Make(ctx context.Context) (data []byte, lacking []rune, err error) {
	if e.Figure < Figures {
		data, err = e.Draw()
		return data, nil, err
	}
	switch e.Figure {
	case Report:
		h, _, err := e.handout(ctx)
		if err != nil {
			return nil, nil, err
		}
		data, err = h.PDF()
		return data, h.Lacking, err
	case Spreadsheet:
		c, _ := e.compare()
		data, err = workbook.Make(ctx, c, workbook.Options{On: e.Today, Locale: e.Locale})
		return data, nil, err
	}
	c, _ := e.compare()
	data, err = e.tables(ctx, c)
	return data, nil, err
}

// Summary is the finding in a few lines, as the command line prints it.
func (e Export) Summary() string {
	c, _ := e.compare()
	return report.Summary(c, e.Today, e.Locale)
}

// compare is the comparison in the currency it is to be shown in, as far as there is a way.
func (e Export) compare() (_ *compare.Comparison, noWay bool) {
	faults := scenario.Check(e.Scenario)
	return shown(compare.Compare(e.Scenario, faults, e.Today), faults, e.In)
}

// handout is the report, laid out on pages. Its only error is ctx's.
func (e Export) handout(ctx context.Context) (_ *handout.Handout, noWay bool, err error) {
	c, noWay := e.compare()
	size := paper.A4
	if e.Letter {
		size = paper.Letter
	}
	h, err := handout.Make(ctx, c, handout.Options{
		Paper: size, Locale: e.Locale, On: e.Today, InHand: reels.StandAll(e.Reels, scenario.CheckReels(e.Reels)),
	})
	return h, noWay, err
}

// tables are the comparison and what would change it, as the command line writes them.
func (e Export) tables(ctx context.Context, c *compare.Comparison) ([]byte, error) {
	ahead, err := compare.LookAhead(ctx, c, exact.Int(compare.CeilingPercent))
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	all := []compare.Comparison{*ahead}
	switch e.Format {
	case "csv":
		err = report.CSV(&b, all)
	case "md":
		err = report.Markdown(&b, all, e.Locale)
	case "json":
		err = report.JSON(&b, all)
	default:
		err = errors.New("answer: no table as " + e.Format)
	}
	return b.Bytes(), err
}
