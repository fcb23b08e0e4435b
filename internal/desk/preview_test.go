package desk

import (
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/paper"
	"reelworth/internal/paper/papertest"
	"reelworth/internal/words"
)

// packed is a text without what a reader of PDF sets between its letters.
func packed(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) {
			return -1
		}
		return r
	}, text)
}

// What the preview shows is what is written: as many pages, with the same words on each.
func TestThePreviewIsWhatPrints(t *testing.T) {
	h := open(t)
	h.SetTheme("safelight")
	h.menu.item(words.MenuReport)()
	h.Settle()
	path := filepath.Join(t.TempDir(), "year.pdf")
	h.click(t, words.PreviewExport)
	h.answerPath(t, path)
	h.press(t, words.Export)
	if !h.preview.isOpen() || !strings.Contains(h.preview.view.State.String(), "year.pdf") {
		t.Fatal("the preview does not say what was written:", h.View().Status)
	}
	printed := strings.Split(strings.TrimSuffix(papertest.Text(t, read(t, path)), "\f"), "\f")
	view := h.preview.view
	if len(printed) != 2 || len(view.Pages) != len(printed) {
		t.Fatalf("%d pages are shown, %d written", len(view.Pages), len(printed))
	}
	for i, text := range printed {
		if i > 0 {
			h.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyPageDown})
			h.Settle()
		}
		shown := h.preview.shown
		for _, said := range shown.Pages.Pages[i].Texts() {
			if !strings.Contains(packed(text), packed(said)) || !strings.Contains(view.Page.Caption, said) {
				t.Errorf("page %d: %q is not printed, or not read out", i+1, said)
			}
		}
		if r, g, b, _ := view.Page.Image().At(1, 1).RGBA(); r&g&b != 0xffff || shown.Large.Bounds().Dx() < 700 {
			t.Errorf("page %d is not as white as paper, or too small: %v", i+1, shown.Large.Bounds())
		}
	}
	h.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if h.preview.isOpen() || h.win.Content() != h.root {
		t.Error("Esc does not go back to the columns")
	}
}

// The paper that is chosen holds from then on, wherever pages print; amounts are in the
// currency they are shown in.
func TestThePreviewFollowsPaperAndCurrency(t *testing.T) {
	h := open(t)
	h.ShowIn("USD")
	h.Preview(0)
	h.preview.view.Paper.Choose(words.PaperLetter)
	h.Settle()
	if got := h.preview.shown.Pages.Pages[0].Size; got != paper.Letter {
		t.Errorf("printed on %v", got)
	}
	if said := strings.ReplaceAll(kit.Spoken(h.win.Content()), "\u00a0", " "); !strings.Contains(said, "Shown in USD at 1 EUR = ") || !strings.Contains(said, "saves USD 238") {
		t.Errorf("the dollars are not read out: %q", said)
	}
	h.columns()
	h.menu.item(words.MenuExport)()
	if !h.settings.letter() {
		t.Error("the paper is forgotten")
	}
	h.press(t, words.Cancel)
	h.showIn("AUD") // no rate leads there
	h.Preview(0)
	if got := h.preview.view.State.String(); !strings.Contains(got, words.NotShownIn("EUR", "AUD")) {
		t.Errorf("said is %q", got)
	}
}
