package answer

import (
	"bytes"
	"context"
	"errors"
	"strconv"

	"reelworth/internal/figure"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// Export is a chart to be handed on, or more than a chart.
type Export struct {
	Format   string // png, svg or pdf of a figure
	Figure   int    // one of the window's, or what is handed on beside them
	Theme    string // by name
	Scale    string // pixels of a PNG for a unit
	Scenario scenario.Scenario
	Chosen   string // the offer that is stressed
	Today    scenario.Date
	Locale   money.Locale
	Flip     FlipKey           // the one to draw
	In       string            // the currency to show it in, "" for home
	Past     PastOf            // of the figure of the past
	Letter   bool              // pages are Letter and not A4
	Reels    []scenario.InHand // those of the file
}

// PastOf is which days of which rates are looked back on.
type PastOf struct {
	File *rates.File
	Span history.Span
}

// Draw computes the chart and draws it in its format.
func (e Export) Draw() ([]byte, error) {
	theme, ok := palette.Find(e.Theme)
	if !ok {
		return nil, errors.New("answer: no theme " + e.Theme)
	}
	scale, err := strconv.Atoi(e.Scale)
	if err != nil {
		return nil, err
	}
	c, _ := e.compare()
	drawn := figure.Export{
		Figure: exportFigures[e.Figure], Comparison: c, Chosen: e.Chosen,
		Style: figure.Style{Theme: theme, Locale: e.Locale}, Date: e.Today, Scale: float64(scale),
	}
	if e.Figure == Days {
		drawn.History, err = history.Of(context.Background(), e.Scenario, scenario.Check(e.Scenario), e.Past.File, e.Past.Span, nil)
	} else {
		err = drawn.Foresee(context.Background(), e.Flip.Input, e.Flip.Up)
	}
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if err := drawn.Write(&b, e.Format); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

var exportFigures = map[int]string{
	Cost: figure.FigureCost, Spend: figure.FigureSpend, Flip: figure.FigureFlip,
	Swings: figure.FigureSwings, Volumes: figure.FigureVolume,
	Sizes: figure.FigureSizes, Cuts: figure.FigureCuts, Days: figure.FigureHistory,
}
