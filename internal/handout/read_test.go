package handout

import (
	"encoding/xml"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/paper"
)

// reader is a PDF reader of another house.
const reader = "pdftotext"

// word is a word on a page, in points from its top left corner.
type word struct {
	X0   float64 `xml:"xMin,attr"`
	Y0   float64 `xml:"yMin,attr"`
	X1   float64 `xml:"xMax,attr"`
	Y1   float64 `xml:"yMax,attr"`
	Text string  `xml:",chardata"`
}

// read are the words of each page as a reader finds them.
func read(t *testing.T, h *Handout) (pages [][]word) {
	t.Helper()
	if _, err := exec.LookPath(reader); err != nil {
		t.Skip("pdftotext is not installed, so nobody reads the report")
	}
	pdf, err := h.PDF()
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "r.pdf")
	if err := os.WriteFile(file, pdf, 0o644); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(reader, "-bbox", file, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	var doc struct {
		Pages []struct {
			Words []word `xml:"word"`
		} `xml:"body>doc>page"`
	}
	if err := xml.Unmarshal(out, &doc); err != nil {
		t.Fatal(err)
	}
	for _, p := range doc.Pages {
		pages = append(pages, p.Words)
	}
	return pages
}

// A reader finds every text, within the margins, and none over another.
func TestTextsKeepClearOfEachOther(t *testing.T) {
	for name, test := range cases() {
		for _, size := range []paper.Size{paper.A4, paper.Letter} {
			h, c := made(t, test.s, Options{Paper: size})
			pages := read(t, h)
			if len(pages) != len(h.Pages) {
				t.Fatalf("%s: the reader finds %d pages", name, len(pages))
			}
			var found []string
			for n, words := range pages {
				for i, a := range words {
					found = append(found, a.Text)
					const edge = (margin - 1) * paper.PointsPerMillimetre
					if a.X0 < edge || a.X1 > size.W*paper.PointsPerMillimetre-edge || a.Y0 < edge-5 || a.Y1 > size.H*paper.PointsPerMillimetre-edge+8 {
						t.Errorf("%s on %s, page %d: %q leaves the margins", name, size.Name, n+1, a.Text)
					}
					for _, b := range words[i+1:] {
						// A word's box is as high as its line; so much of it is ink.
						w, h := min(a.X1, b.X1)-max(a.X0, b.X0), min(a.Y1, b.Y1)-max(a.Y0, b.Y0)
						if w > 1 && h > 0.45*min(a.Y1-a.Y0, b.Y1-b.Y0) {
							t.Errorf("%s on %s, page %d: %q and %q overlap", name, size.Name, n+1, a.Text, b.Text)
						}
					}
				}
			}
			for _, w := range strings.Fields(c.Scenario.Name) {
				if !strings.Contains(strings.Join(found, " "), w) {
					t.Errorf("%s: the reader does not find %q", name, w)
				}
			}
		}
	}
}
