package answer

import (
	"bytes"
	"context"
	"errors"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/handout"
	"reelworth/internal/paper"
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
	faults := scenario.Check(e.Scenario)
	c := compare.Compare(e.Scenario, faults, e.Today)
	switch e.Figure {
	case Report:
		return e.pages(ctx, &c)
	case Spreadsheet:
		data, err = workbook.Make(ctx, &c, workbook.Options{On: e.Today, Locale: e.Locale})
		return data, nil, err
	}
	in, _ := shown(c, faults, e.In)
	data, err = e.tables(ctx, in)
	return data, nil, err
}

// Summary is the finding in a few lines, as the command line prints it.
func (e Export) Summary() string {
	c := compare.Compare(e.Scenario, scenario.Check(e.Scenario), e.Today)
	return report.Summary(&c, e.Today, e.Locale)
}

func (e Export) pages(ctx context.Context, c *compare.Comparison) (data []byte, lacking []rune, err error) {
	size := paper.A4
	if e.Letter {
		size = paper.Letter
	}
	h, err := handout.Make(ctx, c, handout.Options{Paper: size, Locale: e.Locale, On: e.Today})
	if err != nil {
		return nil, nil, err
	}
	data, err = h.PDF()
	return data, h.Lacking, err
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
