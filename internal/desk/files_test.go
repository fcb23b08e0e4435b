package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/desk/answer"
	"reelworth/internal/scenario"
)

func TestSavingAndOpening(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "mine.toml")
	h.mustType(t, "offer[3].price", "125.50")
	h.files.save(nil)
	h.answerPath(t, path)
	h.press(t, "Save")
	if v := h.View(); v.Asking || strings.Contains(v.State, "unsaved") || v.Title != "Reelworth – mine.toml" {
		t.Fatalf("%+v", v)
	}
	f, faults := scenario.Read(read(t, path))
	if len(faults) > 0 || f.Scenarios[0].Offers[2].Price.String() != "125.5" {
		t.Error(faults, f.Scenarios[0].Offers[2].Price)
	}
	other := open(t)
	other.Open(path)
	other.Settle()
	other.agrees(t, f.Scenarios[0])
	if v := other.View(); v.Title != "Reelworth – mine.toml" || strings.Contains(v.State, "unsaved") {
		t.Errorf("%+v", v)
	}
}

func TestCommentsStayWhenTheFileIsSaved(t *testing.T) {
	h := open(t)
	text := "# my own words\n" + string(scenario.Write(scenario.Demo()))
	path := write(t, text)
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.files.save(nil)
	h.Settle()
	if after := string(read(t, path)); h.View().Asking || !strings.HasPrefix(after, "# my own words\n") || !strings.Contains(after, `price = "99"`) {
		t.Error(after)
	}
	if string(read(t, path+".bak")) != text {
		t.Error("the file as it was is not in the .bak")
	}
}

func TestAFileChangedOutsideIsNotOverwritten(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	theirs := "schema = 1\n"
	if err := os.WriteFile(path, []byte(theirs), 0o644); err != nil {
		t.Fatal(err)
	}
	h.files.save(nil)
	h.Settle()
	if !h.View().Asking || string(read(t, path)) != theirs {
		t.Fatal("overwritten without asking")
	}
	h.press(t, "Cancel")
	if string(read(t, path)) != theirs || !strings.Contains(h.View().State, "unsaved") {
		t.Error("cancelled, but saved")
	}
	h.files.save(nil)
	h.Settle()
	h.press(t, "Overwrite")
	if string(read(t, path)) == theirs || string(read(t, path+".bak")) != theirs {
		t.Error("not overwritten after all")
	}
}

func TestAReadOnlyFileIsAskedAboutBeforeItIsReplaced(t *testing.T) {
	h := open(t)
	text := string(scenario.Write(scenario.Demo()))
	path := write(t, text)
	if err := os.Chmod(path, 0o444); err != nil {
		t.Fatal(err)
	}
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.files.save(nil)
	h.Settle()
	if !strings.Contains(h.dialogText(), "read-only") || string(read(t, path)) != text {
		t.Fatal("replaced without asking")
	}
	h.press(t, "Cancel")
	if string(read(t, path)) != text || !strings.Contains(h.View().State, "unsaved") {
		t.Error("cancelled, but saved")
	}
	h.files.save(nil)
	h.Settle()
	h.press(t, "Replace")
	if !strings.Contains(string(read(t, path)), `price = "99"`) || strings.Contains(h.View().State, "unsaved") {
		t.Error("not replaced after all")
	}
	h.mustType(t, "offer[3].price", "98")
	h.files.save(nil)
	h.Settle()
	if h.View().Asking || !strings.Contains(string(read(t, path)), `price = "98"`) {
		t.Error("asked again about the same file")
	}
}

func TestAFileThatIsChangedAndReadOnlyIsAskedAboutTwice(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	if err := os.WriteFile(path, []byte("schema = 1\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, 0o444); err != nil {
		t.Fatal(err)
	}
	h.files.save(nil)
	h.Settle()
	h.press(t, "Overwrite")
	h.press(t, "Replace")
	if h.View().Asking || !strings.Contains(string(read(t, path)), `price = "99"`) {
		t.Error("not saved:", h.dialogText())
	}
}

func TestAnExportAsksBeforeItReplacesAReadOnlyFile(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "cost.svg")
	if err := os.WriteFile(path, []byte("theirs"), 0o444); err != nil {
		t.Fatal(err)
	}
	h.asker.AskExport(answer.Cost)
	h.answerPath(t, path)
	h.press(t, "Export")
	h.press(t, "Replace") // it is there
	if !strings.Contains(h.dialogText(), "read-only") || string(read(t, path)) != "theirs" {
		t.Fatal("replaced without asking")
	}
	h.press(t, "Replace")
	if h.View().Asking || len(read(t, path)) < 5000 {
		t.Error("not written")
	}
}

func TestTheWindowSaysWhenCommentsCouldNotBeKept(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	doc := *h.Session().Doc
	doc.Rewritten = true
	h.files.tellOf(&doc)
	if !strings.Contains(h.dialogText(), "comments") {
		t.Error("it is not said")
	}
	h.press(t, "Close")
}

func TestClosingAsksAboutUnsavedWork(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.close()
	if !h.View().Asking {
		t.Fatal("closed without asking")
	}
	h.press(t, "Cancel")
	if h.View().Asking {
		t.Error("the question stays")
	}
	path := filepath.Join(t.TempDir(), "kept.toml")
	h.close()
	h.press(t, "Save")
	h.answerPath(t, path)
	h.press(t, "Save")
	if _, err := os.Stat(path); err != nil {
		t.Error("closing with Save saved nothing:", err)
	}
}

func TestAFileThatIsNoTOMLIsListedAndLeftAlone(t *testing.T) {
	h := open(t)
	text := strings.Replace(string(scenario.Write(scenario.Demo())), `price = "118.00"`, `price = 118.00`, 1)
	text = strings.Replace(text, `home = "EUR"`, `home = `, 1)
	path := write(t, text)
	h.Open(path)
	h.Settle()
	if v := h.View(); v.Faults != 1 {
		t.Errorf("%d faults are listed", v.Faults)
	}
	if string(read(t, path)) != text {
		t.Error("the file was changed")
	}
	if err := os.WriteFile(path, scenario.Write(scenario.Demo()), 0o644); err != nil {
		t.Fatal(err)
	}
	h.Open(path) // "Read it again"
	h.Settle()
	if h.View().Faults != 0 {
		t.Error("mended, but still listed")
	}
	h.agrees(t, demo())
}

func TestWhatCannotBeOpenedIsSaid(t *testing.T) {
	h := open(t)
	for _, path := range []string{filepath.Join(t.TempDir(), "none.toml"), t.TempDir()} {
		h.Open(path)
		h.Settle()
		if !h.View().Asking {
			t.Error("nothing is said about", path)
		}
		h.press(t, "Close")
	}
	h.agrees(t, demo())
}

func TestExportingAChart(t *testing.T) {
	h := open(t)
	dir := t.TempDir()
	for fig, name := range map[int]string{answer.Cost: "cost.png", answer.Spend: "year.svg", answer.Flip: "flip.pdf", answer.Swings: "swings.png", answer.Volumes: "volumes.svg", answer.Sizes: "sizes.png", answer.Cuts: "cuts.pdf"} {
		h.asker.AskExport(fig)
		path := filepath.Join(dir, name)
		h.answerPath(t, path)
		h.press(t, "Export")
		if info, err := os.Stat(path); err != nil || info.Size() < 5000 {
			t.Error(name, err)
		}
	}
	h.asker.AskExport(answer.Cost)
	h.answerPath(t, filepath.Join(dir, "nowhere", "cost.png"))
	h.press(t, "Export")
	if !h.View().Asking {
		t.Error("a folder that is not there was taken")
	}
}
