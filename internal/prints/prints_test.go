package prints

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/paper"
	"reelworth/internal/paper/papertest"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func pdf(t *testing.T, pages []*paper.Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := paper.WritePDF(&b, paper.About{Title: "labels"}, pages); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func full(n int) []reels.Label {
	day := scenario.Date{Year: 2027, Month: 1, Day: 31}
	var list []reels.Label
	for i := range n {
		list = append(list, reels.Label{
			Name: "Tidewater 250 für Łódź", Number: i + 1, Of: n + 2, Speed: scenario.MaybeWhole{Int: 250, Set: true}, Exposures: 36,
			Loaded: day, UseBy: scenario.Date{Year: 2028, Month: 2, Day: 29}, Process: "C at home, € 4", Note: "a stop more in shade", Remjet: true,
		})
	}
	return list
}

func TestLabelsSayEverythingSelectably(t *testing.T) {
	pages, fault := Labels(full(3), paper.Grids()[0], 1)
	if fault != paper.GridFine {
		t.Fatal(fault)
	}
	text := papertest.Text(t, pdf(t, pages))
	for _, want := range []string{
		"Tidewater 250 für Łódź", "1 of 5", "3 of 5", "EI 250 · 36 exp.", "loaded 31 Jan 2027 · use by 29 Feb 2028", "C at home, € 4", "a stop more in shade",
		"Remjet backing: no ordinary lab", "loaded at home, end taped", "camera", "shot", "Keep labels clear of the film's mouth and of the speed code.",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
}

// 100 mm are 283.46 of a PDF's units, 72 to an inch; every sheet can be measured.
func TestCalibrationLineIsTrue(t *testing.T) {
	narrow := paper.Grid{Size: paper.A4, Columns: 3, Rows: 8}
	for _, g := range append(paper.Grids(), narrow) {
		pages, _ := Labels(full(1), g, g.PerSheet())
		last := pages[len(pages)-1]
		found := 0
		for _, l := range papertest.Lines(t, pdf(t, []*paper.Page{last})) {
			if math.Abs(l.X1-l.X0-100/25.4*72) < 0.011 && l.Y0 == l.Y1 {
				found++
				if l.Y0 < 5/25.4*72 {
					t.Errorf("%s: the line is %.1f pt from the edge, where few printers reach", g.Name, l.Y0)
				}
			}
		}
		if found != 1 {
			t.Errorf("%s %s: %d lines of 100 mm", g.Name, g.Size.Name, found)
		}
	}
}

func TestLabelsGoOnFromTheFirstFree(t *testing.T) {
	g := paper.Grids()[0] // 24 a sheet
	pages, _ := Labels(full(30), g, 20)
	var counts []int
	for _, p := range pages {
		n := 0
		for _, text := range p.Texts() {
			if strings.HasPrefix(text, "EI ") {
				n++
			}
		}
		counts = append(counts, n)
	}
	if !slices.Equal(counts, []int{5, 24, 1}) {
		t.Errorf("labels a sheet: %v", counts)
	}
	for first, want := range map[int]paper.GridFault{0: paper.GridFirstFree, 25: paper.GridFirstFree, 24: paper.GridFine} {
		if _, fault := Labels(full(1), g, first); fault != want {
			t.Errorf("first free %d: %q", first, fault)
		}
	}
	g.GapX = math.NaN()
	if _, fault := Labels(full(1), g, 1); fault != paper.GridNegative || words.GridWrong(fault) == "" {
		t.Errorf("a gap that is no number: %q", fault)
	}
}

// Whatever is typed and however small the label: nothing stands out of it, the remjet
// line stays, and the note goes before anything else does.
func TestLabelsFit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := full(1)[0]
		l.Name, l.Process, l.Note = rapid.String().Draw(t, "name"), rapid.String().Draw(t, "process"), rapid.StringN(0, 400, -1).Draw(t, "note")
		size := paper.Size{W: rapid.Float64Range(paper.LeastLabelW, 110).Draw(t, "w"), H: rapid.Float64Range(paper.LeastLabelH, 60).Draw(t, "h")}
		w, h := size.W-2*padding, size.H-2*padding
		lines := fitted(&l, w, h)
		if height(lines) > h+1e-9 && len(lines) > 1 {
			t.Fatalf("%d lines, %.2f mm in %.2f", len(lines), height(lines), h)
		}
		note, others := 0, 0
		for _, line := range lines {
			if line.keep == keepNote {
				note++
			} else {
				others++
			}
		}
		whole := len(linesOf(&l, w, 1, 0))
		if note > 0 && others < whole {
			t.Fatalf("the note stays while something else is left out: %v", lines)
		}
		p := Label(l, size)
		if !slices.Contains(p.Texts(), words.RemjetLine) && !slices.ContainsFunc(p.Texts(), func(s string) bool { return strings.HasPrefix(s, "Remjet") }) {
			t.Fatalf("no remjet line in %q", p.Texts())
		}
	})
}

func TestLackingLettersAreToldOf(t *testing.T) {
	list := full(2)
	list[1].Note = "東 and 西"
	if got := string(Lacking(list)); got != "東西" {
		t.Errorf("lacking %q", got)
	}
	if got := words.LettersLacking(Lacking(list)); !strings.Contains(got, "東 西") {
		t.Error(got)
	}
}

func TestLoadingSheetTicksEveryCassette(t *testing.T) {
	steps := []reels.Step{{Number: 7, Exposures: 36, Counts: 28, Rounds: 1, Rest: 8, Counted: true, After: 39}}
	for i := range 39 {
		steps = append(steps, reels.Step{Number: 8 + i, Exposures: 12, After: 38 - i})
	}
	pages := LoadingSheet("Tidewater 250", steps, paper.Letter)
	text := papertest.Text(t, pdf(t, pages))
	for _, want := range []string{"At the loader: Tidewater 250", "once round, then 8", "No screen is safe near open panchromatic film", fmt.Sprintf("page 1 of %d", len(pages))} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
	rows := regexp.MustCompile(`(?m)^\s+(\d+)\s+(12|36)\s+.*\s(\d+)$`).FindAllString(text, -1)
	if len(rows) != 40 {
		t.Errorf("%d rows of 40 in\n%s", len(rows), text)
	}
	if empty := LoadingSheet("x", nil, paper.A4); len(empty) != 1 {
		t.Errorf("%d pages for nothing", len(empty))
	}
}

func TestCodeTemplateSaysItsWarnings(t *testing.T) {
	p := CodeTemplate(reels.Code(50, 36, reels.ToleranceOne), UsualAreas, paper.A4)
	text := strings.Join(strings.Fields(papertest.Text(t, pdf(t, []*paper.Page{p}))), " ")
	want := append([]string{
		"Speed code 50, 36 exposures, ±1 stop", "set 800", "spool's post", "Areas 6 × 5 mm: measure yours.", words.SpeedCodeSource, words.CalibrationSay,
	}, words.SpeedCodeCautions()...)
	for _, want := range want {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
	if p := CodeTemplate(reels.Code(12, 36, reels.ToleranceOne), UsualAreas, paper.A4); p != nil {
		t.Error("a template of no code")
	}
	if got := (Areas{W: math.NaN(), H: 5}).usual(); got != UsualAreas {
		t.Errorf("areas %v", got)
	}
}
