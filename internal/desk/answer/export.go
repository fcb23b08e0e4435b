package answer

import (
	"bytes"
	"context"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/natefinch/atomic"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// Export is a chart to be written to a file.
type Export struct {
	Path     string // its ending says the form
	Figure   int
	Theme    string // by name
	Scale    string // pixels of a PNG for a unit
	Scenario scenario.Scenario
	Chosen   string // the offer that is stressed
	Today    scenario.Date
	Locale   money.Locale
	Flip     FlipKey // the one to draw
}

// Write computes the chart and writes it whole or not at all.
func (e Export) Write() error {
	theme, ok := palette.Find(e.Theme)
	if !ok {
		return errors.New("no theme " + e.Theme)
	}
	scale, err := strconv.Atoi(e.Scale)
	if err != nil {
		return err
	}
	c := compare.Compare(e.Scenario, scenario.Check(e.Scenario), e.Today)
	drawn := figure.Export{
		Figure: exportFigures[e.Figure], Comparison: &c, Chosen: e.Chosen,
		Style: figure.Style{Theme: theme, Locale: e.Locale}, Date: e.Today, Scale: float64(scale),
	}
	if err := drawn.Foresee(context.Background(), e.Flip.Input, e.Flip.Up); err != nil {
		return err
	}
	var b bytes.Buffer
	if err := drawn.Write(&b, strings.TrimPrefix(strings.ToLower(filepath.Ext(e.Path)), ".")); err != nil {
		return err
	}
	mode := fs.FileMode(0o644) // a new file of the library's would be for its owner alone
	if info, err := os.Stat(e.Path); err == nil {
		mode = info.Mode().Perm()
	}
	if err := atomic.WriteFile(e.Path, &b); err != nil {
		return err
	}
	return os.Chmod(e.Path, mode)
}

var exportFigures = map[int]string{
	Cost: figure.FigureCost, Spend: figure.FigureSpend, Flip: figure.FigureFlip,
	Swings: figure.FigureSwings, Sizes: figure.FigureSizes,
}
