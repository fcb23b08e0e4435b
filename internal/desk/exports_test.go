package desk

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/compare"
	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// asked is the choice of the open dialog beside a label, nil where there is none in sight.
func (h *Harness) asked(label string) *kit.Picker {
	for _, o := range test.LaidOutObjects(h.Window().Canvas().Overlays().Top()) {
		if r, ok := o.(*kit.Row); ok && r.Visible() && r.Label.String() == label {
			return r.Field.(*kit.Picker)
		}
	}
	return nil
}

// Whatever can be handed on is among the choices, in each of its forms, and is what its
// ending says.
func TestEverythingIsExportedInEachOfItsForms(t *testing.T) {
	h := open(t)
	begins := map[string]string{".png": "\x89PNG", ".svg": "<", ".pdf": "%PDF-", ".csv": "scenario,", ".md": "# ", ".json": "", ".xlsx": "PK"}
	dir := t.TempDir()
	h.menu.item(words.MenuExport)()
	h.Settle()
	var whats []string
	for _, o := range h.asked(words.ExportWhat).Options {
		whats = append(whats, o.Value)
	}
	h.press(t, words.Cancel)
	written := map[string]bool{}
	for _, what := range whats {
		for i := 0; ; i++ {
			h.menu.item(words.MenuExport)()
			h.Settle()
			h.asked(words.ExportWhat).Choose(what)
			forms := h.asked(words.ExportForm)
			if i == len(forms.Options) {
				h.press(t, words.Cancel)
				break
			}
			form := forms.Options[i].Value
			forms.Choose(form)
			path := filepath.Join(dir, what+form)
			h.answerPath(t, filepath.Join(dir, what)) // the form gives the ending
			h.press(t, words.Export)
			data, err := os.ReadFile(path)
			if err != nil || !bytes.HasPrefix(data, []byte(begins[form])) || form == ".json" && !json.Valid(data) {
				t.Errorf("%s: %v, %.20q, %s", path, err, data, h.View().Status)
			}
			written[form] = true
		}
	}
	if len(whats) != 11 || len(written) != len(begins) { // the past is not looked at yet
		t.Error("exported:", whats, written)
	}
	h.agrees(t, demo())
}

// The rows that mean nothing for what is chosen go, and the name proposed follows, but not
// one that was typed.
func TestTheQuestionFollowsWhatIsExported(t *testing.T) {
	h := open(t)
	h.asker.AskExport(answer.Cost)
	path := h.panel(t, words.FieldFile).Entry
	if got := filepath.Base(path.Text); got != "Quayside year, colour, cost per roll.png" || h.asked(words.ExportScale) == nil || h.asked(words.ExportPaper) != nil {
		t.Error(got)
	}
	h.asked(words.ExportForm).Choose(".svg")
	if filepath.Base(path.Text) != "Quayside year, colour, cost per roll.svg" || h.asked(words.ExportScale) != nil || h.asked(words.ExportColours) == nil {
		t.Error(path.Text)
	}
	h.asked(words.ExportWhat).Choose(strconv.Itoa(answer.Report))
	if filepath.Base(path.Text) != "Quayside year, colour, report.pdf" || h.asked(words.ExportColours) != nil || h.asked(words.ExportPaper) == nil {
		t.Error(path.Text)
	}
	path.SetText(filepath.Join(filepath.Dir(path.Text), "mine.pdf"))
	h.asked(words.ExportWhat).Choose(strconv.Itoa(answer.Tables))
	h.asked(words.ExportForm).Choose(".md")
	if filepath.Base(path.Text) != "mine.md" {
		t.Error(path.Text)
	}
	path.SetText("mine.xlsx")
	h.press(t, words.Export)
	if !h.View().Asking {
		t.Error("tables are written as a spreadsheet")
	}
}

func TestTheSummaryIsTheCommandLines(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99")
	h.menu.item(words.MenuCopySummary)()
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("99")
	c := compare.Compare(s, scenario.Check(s), scenario.DateOf(noon))
	if got, want := fyne.CurrentApp().Clipboard().Content(), report.Summary(&c, scenario.DateOf(noon), "en"); got != want {
		t.Errorf("copied:\n%s\nnot:\n%s", got, want)
	}
}
