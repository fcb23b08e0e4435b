package paper

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"io"
	"math"
	"os"
	"regexp"
	"strings"
	"testing"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"pgregory.net/rapid"

	"reelworth/assets"
	"reelworth/internal/paper/papertest"
)

var black = color.NRGBA{A: 255}

func body(size float64) Face { return Face{Size: size} }

func written(t *testing.T, about About, pages ...*Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := WritePDF(&b, about, pages); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestTextIsSelectableInAnyLetter(t *testing.T) {
	said := []string{"€ 14.80, grün, Łódź, Žižkov, œuvre", "Ωmega, Москва, ½ × 36", "bold: € ü Ł"}
	p := NewPage(A4)
	p.Text(20, 30, body(11), said[0], black)
	p.Text(20, 40, body(11), said[1], black)
	p.Text(20, 50, Face{Bold: true, Size: 11}, said[2], black)
	text := papertest.Text(t, written(t, About{}, p))
	for _, want := range said {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in %q", want, text)
		}
	}
}

// A letter that the typeface lacks keeps its place: as a box in the PDF and the picture,
// as itself where it is selected. One beyond 16 bits is a box there too.
func TestLackingLettersAreBoxes(t *testing.T) {
	const name = "Reel 東 of 😀"
	if got := string(Lacking(name + " 東")); got != "東😀" {
		t.Errorf("lacking %q", got)
	}
	if got := Lacking("a − b\t€\u00a0Łe\u0301"); got != nil {
		t.Errorf("lacking %q", string(got))
	}
	p := NewPage(A4)
	p.Text(20, 30, body(11), name, black)
	text := papertest.Text(t, written(t, About{}, p))
	if want := "Reel 東 of □"; !strings.Contains(text, want) {
		t.Errorf("%q is not in %q", want, text)
	}
	alone := NewPage(Size{"", 20, 20})
	alone.Text(5, 10, body(20), "東", black)
	_, out := papertest.Run(t, written(t, About{}, alone), "pdftoppm", "-png", "-r", "72", "-singlefile", "IN", "OUT")
	f, err := os.Open(out + ".png")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	printed, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	for what, img := range map[string]image.Image{"PDF": printed, "picture": alone.Image(72)} {
		if inked(img) == 0 {
			t.Errorf("the %s leaves the letter out", what)
		}
	}
}

func inked(img image.Image) (n int) {
	b := img.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if r, _, _, _ := img.At(x, y).RGBA(); r < 0x8000 {
				n++
			}
		}
	}
	return n
}

// The width we lay out by is what the PDF's own writer computes from the same font.
func TestWidthsAgreeWithTheWriter(t *testing.T) {
	pdf := fpdf.New("P", "mm", "A4", "")
	pdf.AddUTF8FontFromBytes(family, "", assets.Regular)
	pdf.AddUTF8FontFromBytes(family, "B", assets.Bold)
	for _, bold := range []bool{false, true} {
		f := Face{Bold: bold, Size: 12}
		pdf.SetFont(family, map[bool]string{true: "B"}[bold], 12)
		for _, text := range []string{"Tidewater 250, 100 ft", "€ ü Ł 0123456789", "WWW iii"} {
			if got, want := f.Width(text), pdf.GetStringWidth(text); math.Abs(got-want) > 0.02 {
				t.Errorf("%q is %.3f mm wide, the writer says %.3f", text, got, want)
			}
		}
	}
}

// A length on the page is that length in the PDF's own units, 72 to an inch, and no
// longer by the pen.
func TestLengthsAreTrue(t *testing.T) {
	p := NewPage(Letter)
	p.Line(20, 50, 120, 50, 0.5, black)
	lines := papertest.Lines(t, written(t, About{}, p))
	if len(lines) != 1 {
		t.Fatalf("lines %v", lines)
	}
	if got, want := lines[0].X1-lines[0].X0, 100/25.4*72; math.Abs(got-want) > 0.011 {
		t.Errorf("100 mm are %.3f pt, want %.3f", got, want)
	}
	if got, want := lines[0].Y0, (279.4-50)/25.4*72; math.Abs(got-want) > 0.006 {
		t.Errorf("the line is at %.3f pt, want %.3f", got, want)
	}
	if content := papertest.Content(t, written(t, About{}, p)); regexp.MustCompile(`[12] J`).MatchString(content) {
		t.Errorf("the pen's ends stand out: %q", content)
	}
	info, _ := papertest.Run(t, written(t, About{}, p), "pdfinfo", "IN")
	if !strings.Contains(info, "612 x 792 pts (letter)") {
		t.Errorf("the sheet is no Letter:\n%s", info)
	}
}

func TestPDFSaysWhatItIs(t *testing.T) {
	p := NewPage(A4)
	p.Text(20, 30, body(11), "one", black)
	about := About{Title: "Étiquettes, Łódź", Language: "de-CH", Program: "Reelworth 1", Made: time.Date(2027, 1, 31, 0, 0, 0, 0, time.UTC)}
	info, _ := papertest.Run(t, written(t, about, p, NewPage(A4)), "pdfinfo", "-isodates", "IN")
	for _, want := range []string{about.Title, "Reelworth 1", "2027-01-31", "Pages:           2", "(A4)"} {
		if !strings.Contains(info, want) {
			t.Errorf("%q is not in\n%s", want, info)
		}
	}
	if !bytes.Contains(written(t, about, p), []byte("/Lang (de-CH)")) {
		t.Error("the PDF does not say its language")
	}
	fonts, _ := papertest.Run(t, written(t, about, p), "pdffonts", "IN")
	if !regexp.MustCompile(`(?m)^utf8notosans\s.*\syes (yes|no)\s+yes\s`).MatchString(fonts) {
		t.Errorf("the typeface is not embedded with its letters:\n%s", fonts)
	}
}

func TestSamePagesGiveTheSameBytes(t *testing.T) {
	make := func() []byte {
		p := NewPage(A4)
		for i := range 200 {
			p.Text(20, float64(i), Face{Bold: i%2 == 0, Size: 9}, fmt.Sprintf("line %d ä%c", i, rune('А'+i%60)), black)
		}
		return written(t, About{Title: "same"}, p)
	}
	first := make()
	for range 3 {
		if !bytes.Equal(first, make()) {
			t.Fatal("the same page gives other bytes")
		}
	}
	if len(first) > 60_000 {
		t.Errorf("%d bytes: more of the typeface is embedded than is used", len(first))
	}
}

func TestFootNumbersThePages(t *testing.T) {
	pages := []*Page{NewPage(A4), NewPage(A4)}
	Foot(pages, 12, "Harbour", func(n, of int) string { return fmt.Sprintf("page %d of %d", n, of) }, black)
	if got := strings.Join(pages[1].Texts(), "|"); got != "page 2 of 2|Harbour" {
		t.Error(got)
	}
}

// What is set into a width stays within it, whatever is typed.
func TestTextStaysWithinItsWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text")
		f, width := body(rapid.Float64Range(4, 30).Draw(t, "size")), rapid.Float64Range(0, 80).Draw(t, "width")
		if got := f.Fit(text, width); f.Width(got) > width+1e-9 {
			t.Fatalf("%q is %.3f mm wide", got, f.Width(got))
		}
		lines := f.Wrap(text, width, 3)
		if len(lines) > 3 {
			t.Fatalf("%d lines", len(lines))
		}
		for _, line := range lines {
			if f.Width(line) > width+1e-9 {
				t.Fatalf("%q is %.3f mm wide", line, f.Width(line))
			}
		}
		if s := f.Shrunk(text, width, 4); s.Size < 4 || s.Size > 4 && s.Width(text) > width+1e-9 {
			t.Fatalf("shrunk to %.3f pt, %.3f mm", s.Size, s.Width(text))
		}
	})
}

// Any text makes a PDF, also one that is no text at all.
func TestAnyTextIsWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := NewPage(A4)
		p.Text(10, 10, body(10), string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes"))+rapid.String().Draw(t, "text"), black)
		if err := WritePDF(io.Discard, About{Title: rapid.String().Draw(t, "title")}, []*Page{p}); err != nil {
			t.Fatal(err)
		}
		p.Image(20)
	})
}

func TestNoPagesAreAnError(t *testing.T) {
	if err := WritePDF(io.Discard, About{}, nil); err == nil {
		t.Error("no error")
	}
}

// The preview is what prints: page and picture hardly differ, pixel by pixel.
func TestPictureIsWhatPrints(t *testing.T) {
	p := NewPage(Size{"", 90, 50})
	p.Text(5, 12, Face{Bold: true, Size: 14}, "Tidewater 250 – 7 of 18", black)
	p.Text(5, 20, body(9), "loaded at home, end taped; € ü Ł", black)
	p.Box(5, 25, 20, 10, color.NRGBA{200, 60, 20, 255})
	p.Frame(30, 25, 20, 10, 0.8, black)
	var curve Path
	curve.Move(55, 35)
	curve.Quad(65, 15, 85, 35)
	curve.Cube(70, 40, 60, 45, 55, 35)
	p.Stroke(curve, 0.6, []float64{2, 1}, black)
	_, out := papertest.Run(t, written(t, About{}, p), "pdftoppm", "-png", "-r", "120", "-singlefile", "IN", "OUT")
	f, err := os.Open(out + ".png")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	printed, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	shown := p.Image(120)
	if d := printed.Bounds().Size().Sub(shown.Bounds().Size()); max(d.X, -d.X, d.Y, -d.Y) > 1 { // rounded up or down
		t.Fatalf("unlike sizes: %v and %v", printed.Bounds(), shown.Bounds())
	}
	off, all := 0, 0
	for y := range shown.Bounds().Dy() {
		for x := range shown.Bounds().Dx() {
			a, b := grey(printed.At(x, y)), grey(shown.At(x, y))
			if a < 128 || b < 128 {
				all++
				if math.Abs(a-b) > 128 {
					off++
				}
			}
		}
	}
	if off*100 > all*8 {
		t.Errorf("%d of %d dark pixels differ", off, all)
	}
}

func grey(c color.Color) float64 { return float64(color.GrayModel.Convert(c).(color.Gray).Y) }
