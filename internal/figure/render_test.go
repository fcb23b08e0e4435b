package figure

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// rendered is a drawing at 2×, drawn by a program that shares no code with this one:
// librsvg for SVG, Poppler for PDF.
func rendered(t *testing.T, d *Drawing, format string) image.Image {
	t.Helper()
	dir := t.TempDir()
	in, out := filepath.Join(dir, "figure."+format), filepath.Join(dir, "figure.png")
	var b bytes.Buffer
	write := map[string]func(io.Writer) error{"svg": d.WriteSVG, "pdf": d.WritePDF}[format]
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(in, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("rsvg-convert", "--zoom=2", "-o", out, in)
	if format == "pdf" {
		cmd = exec.Command("pdftoppm", "-png", "-r", "144", "-singlefile", in, strings.TrimSuffix(out, ".png"))
	}
	if _, err := exec.LookPath(cmd.Args[0]); err != nil {
		if os.Getenv("CI") == "true" {
			t.Fatalf("%s is missing", cmd.Args[0])
		}
		t.Skipf("%s is not installed", cmd.Args[0])
	}
	if text, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v: %v: %s", cmd.Args, err, text)
	}
	data, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// difference is how two images differ: the mean over all channels, of 255, and the
// share of pixels that differ by more than a third in one channel.
func difference(a, b image.Image) (mean, share float64, err error) {
	if a.Bounds().Size() != b.Bounds().Size() {
		return 0, 0, fmt.Errorf("sizes %v and %v differ", a.Bounds().Size(), b.Bounds().Size())
	}
	size := a.Bounds().Size()
	sum, far := 0, 0
	p, q := pixels(a), pixels(b)
	for i := 0; i < len(p); i += 4 {
		most := 0
		for j := range 3 {
			diff := max(p[i+j], q[i+j]) - min(p[i+j], q[i+j])
			most = max(most, int(diff))
			sum += int(diff)
		}
		if most > 255/3 {
			far++
		}
	}
	count := float64(size.X * size.Y)
	return float64(sum) / 3 / count, float64(far) / count, nil
}

// pixels are an image's as red, green, blue and alpha.
func pixels(img image.Image) []uint8 {
	if rgba, ok := img.(*image.RGBA); ok {
		return rgba.Pix
	}
	rgba := image.NewRGBA(image.Rectangle{Max: img.Bounds().Size()})
	draw.Draw(rgba, rgba.Bounds(), img, img.Bounds().Min, draw.Src)
	return rgba.Pix
}

// mostDifference is what anti-aliasing may change. Poppler moves the edges of strokes to
// whole pixels, so a PDF differs more.
var mostDifference = map[string]struct{ mean, share float64 }{
	"svg": {mean: 0.2, share: 0.0005},
	"pdf": {mean: 0.8, share: 0.005},
}

func TestSVGAndPDFLookLikeTheImage(t *testing.T) {
	c := compared(demo())
	scripts := odd()["several scripts"]
	_, pack := demoAhead(demoPack)
	drawings := map[string]*Drawing{
		"flip":   demoFlip(demoReel, scenario.InputRollsAYear, "1", "80", 640, 300, english(palette.Safelight)),
		"swings": Swings(c, demoPack, swingsAgainst(pack), 640, 300, english(palette.Paper)),
		"sizes":  Sizes(c, demoPack, pack.OrderSizes, 640, 300, english(palette.Paper)),
	}
	for _, theme := range palette.Themes {
		drawings["cost "+theme.Name] = CostPerRoll(c, demoReel, 640, 260, english(theme))
		drawings["spend "+theme.Name] = Spend(c, demoReel, 640, 260, english(theme))
		drawings["strip "+theme.Name] = Strip(c.Find(demoReel), 640, StripHeight, english(theme))
		drawings["scripts "+theme.Name] = CostPerRoll(scripts, "", 640, 260, Style{Theme: theme, Locale: "pl"})
	}
	for name, d := range drawings {
		for _, format := range []string{"svg", "pdf"} {
			t.Run(name+" as "+format, func(t *testing.T) {
				mean, share, err := difference(d.Image(2), rendered(t, d, format))
				if err != nil {
					t.Fatal(err)
				}
				t.Logf("mean %.3f of 255, %.4f %% of the pixels far off", mean, share*100)
				if most := mostDifference[format]; mean > most.mean || share > most.share {
					t.Errorf("mean difference %.3f of 255 and %.4f %% of the pixels far off", mean, share*100)
				}
			})
		}
	}
}

// oneGlyph is a drawing of one large character.
func oneGlyph(r rune, weight bool) *Drawing {
	sh := newSheet(leastWidth, leastHeight, english(palette.Paper))
	sh.write(face{bold: weight, size: 80}, 60, 95, string(r), sh.style.Theme.Ink)
	return sh.Drawing
}

func TestLettersOfManyLanguagesAreDrawnInEveryFormat(t *testing.T) {
	const missing = '\uFFFE' // no character, so every font shows its box
	for _, weight := range []bool{false, true} {
		box := oneGlyph(missing, weight).Image(2)
		for _, r := range "€łřžąÅñçЖйЩ×÷…−" {
			d := oneGlyph(r, weight)
			images := map[string]image.Image{"png": d.Image(2)}
			if r == '€' || r == 'ł' || r == 'ř' || r == 'Ж' {
				images["svg"], images["pdf"] = rendered(t, d, "svg"), rendered(t, d, "pdf")
			}
			ink := d.Texts()[0].Rect
			for format, img := range images {
				if n := inked(img, ink); n < 100 {
					t.Errorf("%c as %s (bold %v): %d pixels of ink in its box", r, format, weight, n)
				}
				if n := inked(img, Rect{0, 0, d.W, d.H}) - inked(img, ink.grow(4)); n > 0 {
					t.Errorf("%c as %s (bold %v): %d pixels of ink outside its box", r, format, weight, n)
				}
				if _, share, err := difference(img, box); err != nil || share < 0.005 {
					t.Errorf("%c as %s (bold %v) is the box of a missing character: %.4f %v", r, format, weight, share, err)
				}
			}
		}
	}
}

// inked counts the dark pixels of a 2× image within a rectangle at 1×.
func inked(img image.Image, r Rect) int {
	n := 0
	for y := int(2 * r.Y); y < int(2*r.bottom()); y++ {
		for x := int(2 * r.X); x < int(2*r.right()); x++ {
			if v, _, _, _ := img.At(x, y).RGBA(); v < 0x6000 {
				n++
			}
		}
	}
	return n
}

func TestEveryLocalesNumbersCanBeSet(t *testing.T) {
	c := compared(demo())
	for _, l := range money.Locales() {
		text := l.Amount(c.Offers[0].Year.Total.Mul(c.Offers[0].Year.Total).Neg(), "EUR") + "−–·…°"
		for _, f := range []face{{}, {bold: true}} {
			for _, r := range text {
				if g := f.typeface().glyph(r); g.missing {
					t.Errorf("%s writes %q, which the typeface lacks", l, r)
				}
			}
		}
	}
}

func TestSVGIsWellFormedAndNamesItsFinding(t *testing.T) {
	var b bytes.Buffer
	s := demo()
	s.Name = `Rolls & <reels> "here"`
	e := Export{Figure: FigureCost, Comparison: compared(s), Style: english(palette.Paper)}
	if err := e.Write(&b, "svg"); err != nil {
		t.Fatal(err)
	}
	text := b.String()
	for dec := xml.NewDecoder(&b); ; {
		if _, err := dec.Token(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
	for _, want := range []string{`width="960" height="600" viewBox="0 0 960 600"`, "<title>A roll from the reel costs"} {
		if !strings.Contains(text, want) {
			t.Errorf("the SVG does not contain %q", want)
		}
	}
}

func TestTheSameExportGivesTheSameFile(t *testing.T) {
	date := scenario.Date{Year: 2026, Month: 11, Day: 24}
	for _, format := range Formats() {
		for _, fig := range Figures() {
			e := Export{Figure: fig, Comparison: compared(demo()), Chosen: demoReel, Style: english(palette.Paper), Date: date}
			var first, second bytes.Buffer
			if err := errors.Join(e.Write(&first, format), e.Write(&second, format)); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(first.Bytes(), second.Bytes()) {
				t.Errorf("%s as %s differs from call to call", fig, format)
			}
			if format == "pdf" && bytes.Count(first.Bytes(), []byte("(D:20261124000000")) == 0 {
				t.Errorf("%s as PDF does not carry the export's date", fig)
			}
		}
	}
}

func TestImagesAreAsLargeAsTheScaleSays(t *testing.T) {
	d := CostPerRoll(compared(demo()), demoReel, 640, 260, english(palette.Paper))
	for scale, want := range map[float64]image.Point{1: {X: 640, Y: 260}, 1.25: {X: 800, Y: 325}, 2: {X: 1280, Y: 520}, 3: {X: 1920, Y: 780}, 0: {X: 640, Y: 260}} {
		if got := d.Image(scale).Bounds().Size(); got != want {
			t.Errorf("at %v×: %v, want %v", scale, got, want)
		}
	}
}

func TestDrawingSideBySide(t *testing.T) {
	c := compared(demo())
	d := Spend(c, demoReel, 640, 260, english(palette.Paper))
	want := d.Image(1).Pix
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			if !bytes.Equal(d.Image(1).Pix, want) {
				t.Error("the same drawing gave another image")
			}
			fresh := CostPerRoll(odd()["several scripts"], demoReel, 400, 260, english(palette.Safelight))
			if err := errors.Join(fresh.WriteSVG(io.Discard), fresh.WritePDF(io.Discard)); err != nil {
				t.Error(err)
			}
		})
	}
	all.Wait()
}
