package figure

import (
	"bytes"
	"errors"
	"image/png"
	"io"
	"slices"
	"strings"
	"testing"

	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

func TestAnExportStandsAlone(t *testing.T) {
	e := Export{
		Figure: FigureSpend, Comparison: compared(demo()), Chosen: demoReel, Style: english(palette.Paper),
		Date: scenario.Date{Year: 2026, Month: 11, Day: 24},
	}
	d, err := e.Drawing()
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"From July on the reel has cost less cash",
		"Quayside year, colour",
		"EUR spent so far, month by month; dots are film orders",
		"43 rolls a year of 36 exposures, 12 months from January 2027 on. Developing is counted.",
		"Import tax 23 %, duty 4.2 % above EUR 150.00, handling EUR 6.50.",
		"Rates: 1 EUR = 163.36 JPY, 20 Nov 2026; 1 USD = 0.8875 EUR, 20 Nov 2026.",
		"Drawn by Reelworth " + version.Base + " on 24 Nov 2026",
	} {
		if !slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return spaces.Replace(b.Text) == want }) {
			t.Errorf("the export does not say %q", want)
		}
	}
	if d.Title() != "From July on the reel has cost less cash" {
		t.Errorf("the title is %q", d.Title())
	}
}

// spaces makes no-break spaces plain, so that tests can be read.
var spaces = strings.NewReplacer("\u00a0", " ", "\u202f", " ")

func TestExportsComeAtTheirScale(t *testing.T) {
	for scale, width := range map[float64]int{0: 960, 1: 960, 2: 1920, 3: 2880} {
		var b bytes.Buffer
		e := Export{Figure: FigureCost, Comparison: compared(demo()), Style: english(palette.Safelight), Scale: scale}
		if err := e.Write(&b, "png"); err != nil {
			t.Fatal(err)
		}
		c, err := png.DecodeConfig(&b)
		if err != nil || c.Width != width || c.Height*960 != width*600 {
			t.Errorf("at %v×: %d × %d, %v", scale, c.Width, c.Height, err)
		}
	}
}

func TestWhatCannotBeExportedIsSaidWithWhatCan(t *testing.T) {
	e := Export{Figure: "pie", Comparison: compared(demo()), Style: english(palette.Paper)}
	if err := e.Write(io.Discard, "png"); err == nil || !strings.Contains(err.Error(), `"pie", but cost-per-roll, spend, flip, swings, volumes, order-size`) {
		t.Errorf("an unknown figure: %v", err)
	}
	e.Figure = FigureCost
	if err := e.Write(io.Discard, "gif"); err == nil || !strings.Contains(err.Error(), `"gif", but png, svg, pdf`) {
		t.Errorf("an unknown format: %v", err)
	}
	if err := e.Write(full{}, "svg"); err == nil || !strings.Contains(err.Error(), "disc is full") {
		t.Errorf("a full disc: %v", err)
	}
}

// full is a writer that cannot take anything.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

var errFull = errors.New("the disc is full")
