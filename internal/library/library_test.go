package library

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"reelworth/internal/scenario"
)

// fails says whether an error is a problem of a cause.
func fails(err error, doing Deed, cause Cause) bool {
	var p *Problem
	return errors.As(err, &p) && p.Doing == doing && p.Cause == cause
}

// titled is the demo under another name.
func titled(name string) scenario.File {
	f := scenario.Demo()
	f.Scenarios[0].Name = name
	return f
}

// saved is a fresh file on disk, opened.
func saved(t *testing.T, data []byte) *Document {
	t.Helper()
	path := filepath.Join(t.TempDir(), "year.toml")
	write(t, path, data)
	d, err := Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func write(t *testing.T, path string, data []byte) {
	t.Helper()
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
}

func read(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// names are the files in a document's folder.
func names(t *testing.T, d *Document) string {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(d.Path))
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return strings.Join(list, " ")
}

var one, two = scenario.Write(titled("one")), scenario.Write(titled("two"))

func TestSavingReplacesTheFileAndKeepsABak(t *testing.T) {
	d := saved(t, one)
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	if read(t, d.Path) != string(two) || read(t, d.Path+".bak") != string(one) {
		t.Error("not what was saved")
	}
	if got := names(t, d); got != "year.toml year.toml.bak" {
		t.Error(got)
	}
	if d.File.Scenarios[0].Name != "two" || d.Changed() {
		t.Error("the document is not what was saved")
	}
	if err := d.Save(titled("three"), Options{}); err != nil {
		t.Fatal(err)
	}
	if read(t, d.Path+".bak") != string(two) {
		t.Error("the .bak is not the file before")
	}
	if err := d.Save(titled("three"), Options{}); err != nil || read(t, d.Path+".bak") != string(two) {
		t.Error("saving the same again must leave the .bak alone", err)
	}
}

func TestSavingOverAChangeFromOutsideIsRefused(t *testing.T) {
	for name, change := range map[string]func(path string){
		"other content":           func(p string) { write(t, p, two) },
		"other content, old time": func(p string) { touchLike(t, p, two) },
		"deleted":                 func(p string) { os.Remove(p) },
		"grown beyond measure":    func(p string) { write(t, p, make([]byte, MaxBytes+1)) },
	} {
		t.Run(name, func(t *testing.T) {
			d := saved(t, one)
			change(d.Path)
			before, _ := os.ReadFile(d.Path)
			var changed *ChangedOutside
			if err := d.Save(titled("three"), Options{}); !errors.As(err, &changed) || changed.Gone != (name == "deleted") {
				t.Fatalf("%v", err)
			}
			if after, _ := os.ReadFile(d.Path); !bytes.Equal(before, after) || isThere(d.Path+".bak") {
				t.Error("something was written")
			}
			if name != "other content, old time" && !d.Changed() {
				t.Error("the change is not noticed")
			}
			err := d.Save(titled("three"), Options{Overwrite: true})
			if name == "grown beyond measure" {
				if !fails(err, Saving, BackupTooLarge) {
					t.Error(err)
				}
				return
			}
			if err != nil || d.File.Scenarios[0].Name != "three" {
				t.Error(err)
			}
			if name != "deleted" && read(t, d.Path+".bak") != string(two) {
				t.Error("the .bak is not what was overwritten")
			}
		})
	}
}

// touchLike writes other content of the same size with the old time.
func touchLike(t *testing.T, path string, data []byte) {
	info, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	write(t, path, data)
	os.Chtimes(path, info.ModTime(), info.ModTime())
	if after, _ := os.Stat(path); after.Size() != info.Size() {
		t.Fatal("the sizes differ")
	}
}

func TestATouchedFileIsNotChanged(t *testing.T) {
	d := saved(t, one)
	later := time.Now().Add(time.Hour)
	os.Chtimes(d.Path, later, later)
	if d.Changed() {
		t.Error("only its time is another")
	}
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Error(err)
	}
}

func TestAChangeWhileSavingIsNoticed(t *testing.T) {
	d := saved(t, one)
	d.disk = failing{onCreate: func(path string) error {
		if !strings.Contains(path, ".bak") {
			write(t, d.Path, []byte("schema = 1\n# someone else's"))
		}
		return nil
	}}
	var changed *ChangedOutside
	if err := d.Save(titled("two"), Options{}); !errors.As(err, &changed) {
		t.Error(err)
	}
	if !strings.Contains(read(t, d.Path), "someone else's") || strings.Contains(names(t, d), tempEnd) {
		t.Error(names(t, d))
	}
	if err := d.Save(titled("two"), Options{Overwrite: true}); err != nil || read(t, d.Path) != string(two) {
		t.Error(err)
	}
}

func TestAVanishedFolder(t *testing.T) {
	d := saved(t, one)
	if err := os.RemoveAll(filepath.Dir(d.Path)); err != nil {
		t.Fatal(err)
	}
	var changed *ChangedOutside
	if err := d.Save(titled("two"), Options{}); !errors.As(err, &changed) || !changed.Gone {
		t.Error(err)
	}
	if err := d.Save(titled("two"), Options{Overwrite: true}); !fails(err, Saving, NoFolder) {
		t.Error(err)
	}
}

func TestOpeningWhatIsNoScenarioFile(t *testing.T) {
	dir := t.TempDir()
	huge := filepath.Join(dir, "huge.toml")
	f, err := os.Create(huge)
	if err != nil {
		t.Fatal(err)
	}
	f.Truncate(70 << 20)
	f.Close()
	for path, want := range map[string]Cause{
		dir:                                   IsFolder,
		huge:                                  TooLarge,
		filepath.Join(dir, "none.toml"):       NoSuchFile,
		filepath.Join(dir, "no", "none.toml"): NoFolder,
		filepath.Join(huge, "none.toml"):      FileAsFolder,
		filepath.Join(dir, strings.Repeat("n", 300)): NameTooLong,
	} {
		if _, err := Open(path); !fails(err, Opening, want) {
			t.Errorf("%v\nwant %s", err, want)
		}
	}
	if runtime.GOOS != "windows" {
		if _, err := Open("/dev/zero"); !fails(err, Opening, NoOrdinaryFile) {
			t.Error(err)
		}
	}
}

func TestCommentsAndWhatCouldNotBeReadStay(t *testing.T) {
	text := "# mine\n" + strings.Replace(string(one), `"14.80"`, `14.80 # bare`, 1)
	d := saved(t, []byte(text))
	if len(d.Faults) != 1 || d.Faults[0].Line < 10 || d.Unreadable() {
		t.Error(d.Faults)
	}
	f := d.File
	f.Scenarios = []scenario.Scenario{f.Scenarios[0].Clone()}
	f.Scenarios[0].Name = "two"
	if err := d.Save(f, Options{}); err != nil {
		t.Fatal(err)
	}
	if read(t, d.Path) != strings.Replace(text, `name = "one"`, `name = "two"`, 1) || d.Rewritten {
		t.Error(read(t, d.Path))
	}
	for _, text := range []string{"schema = 2\n[[scenario]]\nname = 1", "schema = ["} {
		d := saved(t, []byte(text))
		if !d.Unreadable() {
			t.Error(text)
		}
		if err := d.Save(titled("one"), Options{}); err != nil || !d.Rewritten || read(t, d.Path) != string(one) {
			t.Error(err, read(t, d.Path))
		}
	}
	d = saved(t, []byte(strings.Replace(string(one), "units = 2", "unit = 2", 1)))
	if len(d.Notices) != 1 || len(d.Faults) != 0 || d.Unreadable() {
		t.Error(d.Notices, d.Faults)
	}
}

func TestALinkStaysALink(t *testing.T) {
	d := saved(t, one)
	link := filepath.Join(t.TempDir(), "link.toml")
	if err := os.Symlink(d.Path, link); err != nil {
		t.Skip(err)
	}
	l, err := Open(link)
	if err != nil {
		t.Fatal(err)
	}
	if err := l.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	info, _ := os.Lstat(link)
	if info.Mode()&fs.ModeSymlink == 0 || read(t, d.Path) != string(two) || read(t, link+".bak") != string(one) {
		t.Error(info.Mode())
	}
	// A link to nothing yet.
	os.Remove(d.Path)
	near := filepath.Join(filepath.Dir(d.Path), "near.toml")
	if err := os.Symlink(filepath.Base(d.Path), near); err != nil {
		t.Fatal(err)
	}
	for _, link := range []string{link, near} {
		os.Remove(d.Path)
		n := New(titled("three"))
		if err := n.SaveAs(link, n.File, Options{}); err != nil {
			t.Fatal(err)
		}
		if info, _ := os.Lstat(link); info.Mode()&fs.ModeSymlink == 0 || !isThere(d.Path) {
			t.Error("the link is gone")
		}
	}
}

func TestPermissionsAreKept(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("permissions are others there")
	}
	for _, mode := range []fs.FileMode{0o600, 0o640, 0o664} {
		d := saved(t, one)
		os.Chmod(d.Path, mode)
		if err := d.Save(titled("two"), Options{}); err != nil {
			t.Fatal(err)
		}
		for _, path := range []string{d.Path, d.Path + ".bak"} {
			if info, _ := os.Stat(path); info.Mode().Perm() != mode {
				t.Errorf("%s: %v, want %v", path, info.Mode(), mode)
			}
		}
	}
	// A new file has what the umask leaves, as any other program's.
	plain := filepath.Join(t.TempDir(), "plain")
	f, _ := os.OpenFile(plain, os.O_CREATE|os.O_WRONLY, 0o666)
	f.Close()
	want, _ := os.Stat(plain)
	d := New(titled("one"))
	if err := d.SaveAs(filepath.Join(t.TempDir(), "new.toml"), d.File, Options{}); err != nil {
		t.Fatal(err)
	}
	if got, _ := os.Stat(d.Path); got.Mode() != want.Mode() {
		t.Errorf("%v, want %v", got.Mode(), want.Mode())
	}
}

func TestNewDocumentsAndSaveAs(t *testing.T) {
	d := New(scenario.Demo())
	if err := d.Save(d.File, Options{}); !fails(err, Saving, NoName) {
		t.Error(err)
	}
	if d.Changed() {
		t.Error("a new document changed")
	}
	path := filepath.Join(t.TempDir(), "a.toml")
	if err := d.SaveAs(path, titled("one"), Options{}); err != nil || d.Path != path || read(t, path) != string(one) {
		t.Fatal(err)
	}
	other := saved(t, two)
	var there *AlreadyThere
	if err := d.SaveAs(other.Path, titled("one"), Options{}); !errors.As(err, &there) || d.Path != path || read(t, other.Path) != string(two) {
		t.Error(err)
	}
	if err := d.SaveAs(other.Path, titled("one"), Options{Overwrite: true}); err != nil || d.Path != other.Path || read(t, other.Path+".bak") != string(two) {
		t.Error(err)
	}
	if err := d.SaveAs(d.Path, titled("three"), Options{}); err != nil {
		t.Error("its own name is no other file:", err)
	}
}

func TestAFileTooLargeToReadAgainIsNotWritten(t *testing.T) {
	d := saved(t, one)
	f := titled("two")
	f.Scenarios[0].Note = strings.Repeat("x", MaxBytes)
	if err := d.Save(f, Options{}); !fails(err, Saving, WouldBeTooLarge) || read(t, d.Path) != string(one) {
		t.Error(err)
	}
}

func TestWhatAKilledSaveLeftIsSweptLater(t *testing.T) {
	d := saved(t, one)
	old, fresh := tempStart(d.Path)+"00000000"+tempEnd, tempStart(d.Path)+"00000001"+tempEnd
	write(t, old, one)
	write(t, fresh, one)
	past := time.Now().Add(-time.Hour)
	os.Chtimes(old, past, past)
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	if isThere(old) || !isThere(fresh) {
		t.Error(names(t, d))
	}
}
