package figure

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"gonum.org/v1/plot/cmpimg"

	"reelworth/internal/history"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// Machines round anti-aliasing differently; anything moved or recoloured is far more.
const (
	goldenMean  = 0.1   // of 255
	goldenShare = 0.001 // of the pixels far off
)

func TestFiguresLookAsTheyDid(t *testing.T) {
	c, pack := demoAhead(demoPack)
	_, reel := demoAhead(demoReel)
	export, err := Export{
		Figure: FigureCost, Comparison: c, Chosen: demoReel, Style: english(palette.Paper),
		Date: scenario.Date{Year: 2026, Month: 11, Day: 24},
	}.Drawing()
	if err != nil {
		t.Fatal(err)
	}
	for name, d := range map[string]*Drawing{
		"cost":    CostPerRoll(c, demoReel, 640, 260, english(palette.Paper)),
		"spend":   Spend(c, demoReel, 640, 260, english(palette.Safelight)),
		"strip":   Strip(c.Find(demoReel), 640, StripHeight, english(palette.Paper)),
		"export":  export,
		"flip":    demoFlip(demoReel, scenario.InputRollsAYear, "1", "80", 640, 300, english(palette.Safelight)),
		"swings":  Swings(c, demoPack, swingsAgainst(pack), 640, 300, english(palette.Paper)),
		"history": History(past(demo(), 1300, history.Span{Years: 3}), demoReel, 640, 300, english(palette.Safelight)),
		"beside":  SideBySide(besides(t, "EUR", wandering(3)), 640, 340, english(palette.Paper)),
		"sizes":   Sizes(c, demoReel, reel.OrderSizes, 640, 300, english(palette.Paper)),
	} {
		t.Run(name, func(t *testing.T) { compareGolden(t, name, d.Image(1)) })
	}
}

func compareGolden(t *testing.T, name string, got *image.RGBA) {
	path := filepath.Join("testdata", name+".png")
	if *cmpimg.GenerateTestData { // the flag -regen
		writePicture(t, path, got)
		return
	}
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatalf("%v; run the test with -regen to write it", err)
	}
	want, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	mean, share, err := difference(want, got)
	if err == nil && mean <= goldenMean && share <= goldenShare {
		return
	}
	dir, dirErr := os.MkdirTemp("", "figure-"+name+"-")
	if dirErr != nil {
		t.Fatal(dirErr)
	}
	writePicture(t, filepath.Join(dir, "got.png"), got)
	apart := image.NewRGBA(got.Bounds().Union(want.Bounds()))
	cmpimg.Diff(apart, want, got)
	writePicture(t, filepath.Join(dir, "difference.png"), apart)
	t.Errorf("%s: mean difference %.3f of 255, %.3f %% of the pixels far off, %v; see %s", name, mean, share*100, err, dir)
}

func writePicture(t *testing.T, path string, img image.Image) {
	t.Helper()
	var b bytes.Buffer
	best := png.Encoder{CompressionLevel: png.BestCompression}
	if err := best.Encode(&b, img); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}
