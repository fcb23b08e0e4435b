package figure

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"runtime"
	"strings"
	"testing"
	"unicode"

	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// filled is the share of an export's page, from the title to the line at its foot, that
// what can be read out reaches over.
func filled(t *testing.T, e Export) float64 {
	t.Helper()
	d, err := e.Drawing()
	if err != nil {
		t.Fatal(err)
	}
	top, bottom := math.Inf(1), 0.0
	for _, h := range d.Hits() {
		top, bottom = min(top, h.Rect.Y), max(bottom, h.Rect.bottom())
	}
	return (bottom - top) / d.H
}

func TestChartsFillTheirPageWithTwoWaysAsWithEight(t *testing.T) {
	for _, figure := range Figures() {
		least, most := 1.0, 0.0
		for n := 2; n <= 8; n++ {
			share := filled(t, Export{Figure: figure, Comparison: compared(manyOffers(n, 12, "EUR")), Style: english(palette.Paper)})
			least, most = min(least, share), max(most, share)
		}
		if figure == FigureCost && (least < 0.5 || least < 0.8*most) {
			t.Errorf("%s reaches over %.2f to %.2f of its page", figure, least, most)
		}
	}
	c, pack := demoAhead(demoPack)
	for n := 2; n <= min(8, len(pack.Pair.Swings)); n++ {
		share := filled(t, Export{Figure: FigureSwings, Comparison: c, Chosen: demoPack, Swings: pack.Pair.Swings[:n], Style: english(palette.Paper)})
		if share < 0.5 {
			t.Errorf("%d swings reach over %.2f of their page", n, share)
		}
	}
}

// What is measured is the memory that goes through the hands of the layout: it grows
// with the time, and is the same on every machine.
func TestLayoutTakesNoMoreThanItsNamesLength(t *testing.T) {
	taken := func(letters int) float64 {
		s := demo()
		s.Name = strings.Repeat("reel of ", letters/8)
		for i := range s.Offers {
			s.Offers[i].Name = string(rune('A'+i)) + s.Name
		}
		s.Baseline = s.Offers[0].Name
		c := compared(s)
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		for _, figure := range Figures() {
			if _, err := (Export{Figure: figure, Comparison: c, Chosen: s.Offers[2].Name, Style: english(palette.Paper)}).Drawing(); err != nil {
				t.Fatal(err)
			}
		}
		f := face{size: 12}
		f.wrap(s.Name, 1e9, 2) // all on one line
		runtime.ReadMemStats(&after)
		return float64(after.TotalAlloc - before.TotalAlloc)
	}
	taken(80) // glyphs are parsed
	if once, tenfold := taken(4000), taken(40000); tenfold > 15*once {
		t.Errorf("names ten times as long take %.0f times as much", tenfold/once)
	}
}

// An SVG holds typed text in its title alone; a PDF none but drawn letters.
func TestNoSignThatSteersReachesAnExport(t *testing.T) {
	signs := []rune{0x7f, 0x061c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069, 0xfffe}
	for r := rune(0); r < 0x20; r++ {
		signs = append(signs, r)
	}
	for r := rune(0x80); r < 0xa0; r++ {
		signs = append(signs, r)
	}
	for _, sign := range signs {
		s := demo()
		s.Offers[2].Name = "Lantern" + string(sign) + "light <&>, reel"
		c := compared(s)
		curve := demoCurve(c, s.Offers[2].Name, scenario.InputRollsAYear, "1", "80")
		for _, e := range []Export{
			{Figure: FigureFlip, Comparison: c, Chosen: s.Offers[2].Name, Curve: curve, Style: english(palette.Paper)},
			{Figure: FigureCost, Comparison: c, Chosen: s.Offers[2].Name, Style: english(palette.Paper)},
		} {
			var svg, pdf bytes.Buffer
			if err := errors.Join(e.Write(&svg, "svg"), e.Write(&pdf, "pdf")); err != nil {
				t.Fatal(err)
			}
			if at := strings.IndexFunc(svg.String(), func(r rune) bool {
				return r != '\n' && r != '\t' && unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)
			}); at >= 0 {
				t.Errorf("%U reaches the SVG of %s", sign, e.Figure)
			}
			for dec := xml.NewDecoder(&svg); ; {
				if _, err := dec.Token(); errors.Is(err, io.EOF) {
					break
				} else if err != nil {
					t.Fatalf("with %U the SVG of %s is no XML: %v", sign, e.Figure, err)
				}
			}
			if bytes.Contains(pdf.Bytes(), []byte("Lantern")) {
				t.Errorf("%U: the PDF of %s holds typed text", sign, e.Figure)
			}
		}
	}
}
