package desk

import (
	"bytes"
	"path/filepath"
	"testing"

	"reelworth/internal/desk/stock"
	"reelworth/internal/paper"
)

// Labels, one of them and the speed code are written as files of their kind.
func TestLabelsAreWritten(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Labels)
	for _, c := range []struct{ link, file, begins string }{
		{"Labels as PDF", "labels.pdf", "%PDF-"},
		{"This label as PNG", "label.png", "\x89PNG"},
		{"Speed code as PDF", "code.pdf", "%PDF-"},
	} {
		path := filepath.Join(t.TempDir(), c.file)
		h.click(t, c.link)
		h.answerPath(t, path)
		h.press(t, "Export")
		if !bytes.HasPrefix(read(t, path), []byte(c.begins)) {
			t.Errorf("%s begins with %q", c.file, read(t, path)[:8])
		}
	}
	h.Reel(0, stock.Cut)
	path := filepath.Join(t.TempDir(), "sheet.pdf")
	h.click(t, "Print the sheet")
	h.answerPath(t, path)
	h.press(t, "Export")
	if !bytes.HasPrefix(read(t, path), []byte("%PDF-")) {
		t.Error("the loader's sheet is no PDF")
	}
}

// How labels are printed is kept between starts; what was kept and makes no sense is
// passed over.
func TestTheSheetIsKept(t *testing.T) {
	h := open(t)
	first := h.settings.sheet()
	if first.Grid.Check(first.FirstFree) != paper.GridFine {
		t.Fatalf("%+v cannot be printed on", first)
	}
	own := first
	own.Grid.Name, own.Grid.Columns, own.Grid.GapX, own.FirstFree, own.ToCome = "own", 2, 3.5, 4, true
	h.settings.setSheet(own)
	if got := h.settings.sheet(); got != own {
		t.Errorf("%+v was kept as %+v", own, got)
	}
	h.settings.app.Preferences().SetString(keepSheet, `{"Tolerance": "9"}`)
	if got := h.settings.sheet(); got != first {
		t.Errorf("nonsense gives %+v", got)
	}
}
