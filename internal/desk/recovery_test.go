package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"reelworth/internal/library"
	"reelworth/internal/scenario"
)

// crash ends a window as a crash does: nothing is dropped, its lock is let go.
func (h *Harness) crash(t *testing.T, state string) {
	t.Helper()
	h.Settle()
	h.keeper.Crash()
	entries, err := os.ReadDir(state)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if strings.HasSuffix(e.Name(), ".lock") {
			os.Remove(filepath.Join(state, e.Name()))
		}
	}
}

func TestUnsavedWorkOutlivesACrash(t *testing.T) {
	state := t.TempDir()
	path := write(t, string(scenario.Write(scenario.Demo())))
	h := openWith(t, state)
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "123.45")
	h.Settle()
	h.keeper.KeepNow()
	h.crash(t, state)
	if strings.Contains(string(read(t, path)), "123.45") {
		t.Fatal("the user's file was written without being asked")
	}

	again := openWith(t, state)
	again.Settle()
	if !again.View().Asking {
		t.Fatal("what the crash left is not offered")
	}
	if text := again.dialogText(); !strings.Contains(text, "123.45") || !strings.Contains(text, filepath.Base(path)) {
		t.Error("the offer does not say what differs:", text)
	}
	again.press(t, "Take it up")
	s := demo()
	s.Offers[2].Price = decimalOf("123.45")
	again.agrees(t, s)
	if v := again.View(); !strings.Contains(v.State, "unsaved") {
		t.Error("taken up, but", v.State)
	}
	again.files.save(nil)
	again.Settle()
	if f, _ := scenario.Read(read(t, path)); !f.Scenarios[0].Offers[2].Price.Equal(decimalOf("123.45")) {
		t.Error("saving what was taken up does not reach the file")
	}
	third := openWith(t, state)
	third.Settle()
	if third.View().Asking {
		t.Error("what was taken up and saved is offered again")
	}
}

func TestACleanEndLeavesNothing(t *testing.T) {
	state := t.TempDir()
	h := openWith(t, state)
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.keeper.KeepNow()
	h.Settle()
	h.close()
	h.press(t, "Discard")
	again := openWith(t, state)
	again.Settle()
	if again.View().Asking {
		t.Error("discarded work is offered")
	}
}

func TestTwoWindowsOnOneFileNoticeEachOther(t *testing.T) {
	state := t.TempDir()
	path := write(t, string(scenario.Write(scenario.Demo())))
	one := openWith(t, state)
	one.Open(path)
	one.Settle()
	if s := one.View().Status; s != "" {
		t.Error("alone, but:", s)
	}
	claim, err := library.NewClaim(state, path, noon)
	if err != nil {
		t.Fatal(err)
	}
	one.keeper.Look()
	one.Settle()
	if s := one.View().Status; !strings.Contains(s, "Another window") {
		t.Error("not noticed:", s)
	}
	claim.Release()
	one.keeper.Look()
	one.Settle()
	if s := one.View().Status; s != "" {
		t.Error("alone again, but:", s)
	}
	if err := os.WriteFile(path, []byte("schema = 1\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	os.Chtimes(path, noon, noon.Add(time.Hour))
	one.keeper.Look()
	one.Settle()
	if s := one.View().Status; !strings.Contains(s, "changed this file") {
		t.Error("a change from outside is not noticed:", s)
	}
}

// A state folder that cannot be made is said, and the window works on.
func TestWithoutAStateFolder(t *testing.T) {
	file := write(t, "no folder")
	h := openWith(t, filepath.Join(file, "state"))
	if !strings.Contains(h.View().Status, "outlive") {
		t.Error("not said:", h.View().Status)
	}
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
}
