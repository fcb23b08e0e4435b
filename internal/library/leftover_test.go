package library

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"reelworth/internal/scenario"
)

// crashed is what a window left that had d open and changed it to f.
func crashed(t *testing.T, d *Document, f scenario.File) (dir string) {
	t.Helper()
	r := recovery(t)
	keep(t, r, d, f)
	crash(r)
	return r.dir
}

func TestALeftoverKnowsHowTheUsersFileStands(t *testing.T) {
	for name, c := range map[string]struct {
		outside func(path string)
		want    FileState
		save    func(err error) bool // what saving the work taken up comes to
	}{
		"as opened": {func(string) {}, AsOpened, func(err error) bool { return err == nil }},
		"only touched": {func(path string) { os.Chtimes(path, morning, morning) }, AsOpened,
			func(err error) bool { return err == nil }},
		"changed": {func(path string) { write(t, path, []byte("schema = 1\n# someone else's")) }, ChangedSince,
			func(err error) bool { var c *ChangedOutside; return errors.As(err, &c) && !c.Gone }},
		"gone": {func(path string) { os.Remove(path) }, GoneSince,
			func(err error) bool { var c *ChangedOutside; return errors.As(err, &c) && c.Gone }},
		"saved before the crash": {func(path string) { write(t, path, two) }, HoldsWork,
			func(err error) bool { return err == nil }},
		"saved with its comments": {func(path string) { write(t, path, []byte("# my own words\n"+string(two))) }, HoldsWork,
			func(err error) bool { return err == nil }},
	} {
		t.Run(name, func(t *testing.T) {
			d := saved(t, one)
			dir := crashed(t, d, titled("two"))
			c.outside(d.Path)
			l := onlyOne(t, dir)
			if l.OnDisk != c.want {
				t.Errorf("%v, want %v", l.OnDisk, c.want)
			}
			doc := l.Document()
			if doc.Path != d.Path || string(scenario.Write(doc.File)) != string(two) {
				t.Error("not the work:", doc.Path)
			}
			if changed := doc.Changed(); changed != (c.want == ChangedSince || c.want == GoneSince) {
				t.Error("Changed:", changed)
			}
			if err := doc.Save(doc.File, Options{}); !c.save(err) {
				t.Error(err)
			}
		})
	}
}

func TestWorkWithoutAFile(t *testing.T) {
	l := onlyOne(t, crashed(t, nil, titled("two")))
	if l.Path != "" || l.OnDisk != NoFile {
		t.Error(l.Path, l.OnDisk)
	}
	d := l.Document()
	path := filepath.Join(t.TempDir(), "new.toml")
	if err := d.SaveAs(path, d.File, Options{}); err != nil || read(t, path) != string(two) {
		t.Error(err)
	}
}

func TestWorkTakenUpIsSavedWithTheCommentsOfItsFile(t *testing.T) {
	d := saved(t, []byte("# mine\n"+string(one)))
	l := onlyOne(t, crashed(t, d, titled("two")))
	doc := l.Document()
	if err := doc.Save(doc.File, Options{}); err != nil || read(t, d.Path) != "# mine\n"+string(two) {
		t.Error(err, read(t, d.Path))
	}
}

// tornLike says whether such a damage is among a problem's.
func tornLike(p *Problem, path string, like Damage) bool {
	return p.Path == path && slices.ContainsFunc(p.Torn, func(d Damage) bool {
		return d.Note == like.Note && (d.Text == "") == (like.Text == "")
	})
}

func TestDamagedRecoveryFilesAreReportedAndStay(t *testing.T) {
	cut := func(at string) func(string) string {
		return func(text string) string { before, _, _ := strings.Cut(text, at); return before }
	}
	swap := func(was, is string) func(string) string {
		return func(text string) string { return strings.Replace(text, was, is, 1) }
	}
	for name, c := range map[string]struct {
		damage func(text string) string
		torn   *Damage // one of them, nil where it is whole; of a text only whether there is one
		rest   string  // what can be read: "all", "some" or "none"
	}{
		"empty":             {func(string) string { return "" }, &Damage{Note: noteWritten}, "none"},
		"no text":           {func(string) string { return "\x00\x01\xff\xfe" }, &Damage{}, "none"},
		"no notes":          {func(string) string { return string(two) }, &Damage{Note: noteFile}, "all"},
		"a wrong time":      {swap("= 2027", "= yesterday"), &Damage{noteWritten, "x"}, "all"},
		"a wrong path":      {swap(`file = "`, `file = \`), &Damage{noteFile, "x"}, "all"},
		"a wrong stamp":     {swap("bytes", "stones"), &Damage{noteOpened, "x"}, "all"},
		"a short hash":      {swap("sha256 ", "sha256 z"), &Damage{noteOpened, "x"}, "all"},
		"cut off":           {cut("[[scenario.offer]]"), &Damage{}, "some"},
		"cut in the middle": {cut("ternlight 500"), &Damage{}, "none"},
		"no TOML":           {swap("[[scenario]]", "[[scenario"), nil, "none"},
		"from a newer one":  {swap("schema = 1", "schema = 99"), nil, "none"},
		"a wrong number":    {swap(`"118.00"`, `118.00`), nil, "some"},
	} {
		t.Run(name, func(t *testing.T) {
			dir := crashed(t, saved(t, one), titled("two"))
			path := onlyOne(t, dir).Recovery
			damaged := c.damage(read(t, path))
			write(t, path, []byte(damaged))
			l := onlyOne(t, dir)
			if c.torn == nil && l.Damaged != nil || c.torn != nil && !(fails(l.Damaged, Opening, Damaged) && tornLike(l.Damaged.(*Problem), path, *c.torn)) {
				t.Errorf("%v\nwant %+v", l.Damaged, c.torn)
			}
			if c.torn == nil && len(l.Faults) == 0 {
				t.Error("no fault is told")
			}
			got := "none"
			if len(l.File.Scenarios) > 0 {
				got = "some"
				if string(scenario.Write(l.File)) == string(two) {
					got = "all"
				}
			}
			if got != c.rest {
				t.Errorf("%s can be read, want %s", got, c.rest)
			}
			if l.When.IsZero() || read(t, path) != damaged {
				t.Error("no time, or the file was touched")
			}
			l.Document() // whatever is in it
			if err := l.Discard(); err != nil || isThere(path) {
				t.Error("not discarded:", err)
			}
		})
	}
}

// A recovery file cut off anywhere, as by a failing disk, is reported.
func TestARecoveryFileCutOffAnywhereIsReported(t *testing.T) {
	dir := crashed(t, saved(t, one), titled("two"))
	path := onlyOne(t, dir).Recovery
	whole := read(t, path)
	on := realDisk{}
	for n := range len(whole) - 1 { // without its last line break it is whole still
		if n%7 != 0 && n < len(whole)-50 {
			continue
		}
		write(t, path, []byte(whole[:n]))
		if l := readLeftover(path, on); l.Damaged == nil {
			t.Fatalf("cut to %d of %d bytes it is called whole", n, len(whole))
		}
	}
}

func TestWhatIsNoReadableFileIsReportedToo(t *testing.T) {
	dir := t.TempDir()
	folder, large := filepath.Join(dir, "unsaved-1-00000001.toml"), filepath.Join(dir, "unsaved-1-00000002.toml")
	os.Mkdir(folder, 0o700)
	write(t, filepath.Join(folder, "inside"), nil)
	write(t, large, nil)
	os.Truncate(large, MaxBytes+1)
	for _, name := range []string{"unsaved-x-00000003.toml", "unsaved-1.toml", "notes.toml", "unsaved-1-00000004.txt"} {
		write(t, filepath.Join(dir, name), one)
	}
	list := left(t, dir)
	if len(list) != 2 {
		t.Fatal(len(list), "leftovers, want the folder and the large file")
	}
	for _, l := range list {
		if l.Damaged == nil {
			t.Error(l.Recovery, "is called whole")
		}
		if err := l.Discard(); (err == nil) != (l.Recovery == large) {
			t.Error(err)
		}
	}
	if !isThere(filepath.Join(folder, "inside")) {
		t.Error("a folder was removed")
	}
	if got := len(inFolder(t, dir)); got != 6 {
		t.Error("other files were touched:", inFolder(t, dir))
	}
}

func TestAMendedRecoveryFileIsReadAndNotDiscardedUnread(t *testing.T) {
	dir := crashed(t, saved(t, one), titled("two"))
	l := onlyOne(t, dir)
	mended := strings.Replace(read(t, l.Recovery), `"118.00"`, `"121.00"`, 1)
	write(t, l.Recovery, []byte(strings.ReplaceAll(mended, "\n", "\r\n"))) // as an editor may
	if err := l.Discard(); err == nil || !isThere(l.Recovery) {
		t.Error("what was mended meanwhile is gone:", err)
	}
	l = onlyOne(t, dir)
	if l.Damaged != nil || len(l.Faults) > 0 || l.File.Scenarios[0].Offers[2].Price.String() != "121" {
		t.Error(l.Damaged, l.Faults)
	}
}

func TestHalvesOfDeadWindowsAreSweptAndThoseOfLivingOnesNot(t *testing.T) {
	dead := recovery(t)
	living := recoveryIn(t, dead.dir)
	write(t, tempStart(dead.path())+"00000001"+tempEnd, one)
	write(t, tempStart(living.path())+"00000002"+tempEnd, one)
	crash(dead)
	left(t, dead.dir)
	got := strings.Join(inFolder(t, dead.dir), " ")
	if strings.Contains(got, "00000001"+tempEnd) || strings.Contains(got, dead.name) || !strings.Contains(got, "00000002"+tempEnd) || !strings.Contains(got, living.name+lockEnd) {
		t.Error(got)
	}
}

// noLocks is a disk whose file system knows none.
type noLocks struct{ realDisk }

func (noLocks) own(path string) (*os.File, error) { return os.Create(path) }

func (noLocks) ifAbandoned(path string, do func()) (bool, error) {
	if _, err := os.Stat(path); err != nil {
		return false, err
	}
	return false, &os.PathError{Op: "lock", Path: path, Err: syscall.EOPNOTSUPP}
}

func TestWithoutLocksTheProcessNumberTells(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("there are always locks there")
	}
	dir := t.TempDir()
	r, err := newRecovery(dir, noLocks{})
	if err != nil {
		t.Fatal(err)
	}
	keep(t, r, nil, titled("one"))
	d := saved(t, one)
	k := killOne(t, d.Path, filepath.Join(t.TempDir(), "state"), 1, 0, func(process int) {
		if !running(process) {
			t.Error("the living process is not seen")
		}
	})
	if running(k.process) || !running(os.Getpid()) || !running(1) {
		t.Error("the dead are taken for living, or the living for dead")
	}
	gone := filepath.Join(dir, unsavedStart+strconv.Itoa(k.process)+"-00000001")
	write(t, gone+lockEnd, nil)
	write(t, gone+unsavedEnd, unsaved(nil, titled("two"), time.Now()))
	list, err := r.Leftovers()
	if err != nil || len(list) != 1 || list[0].File.Scenarios[0].Name != "two" {
		t.Error(list, err)
	}
}
