package library

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

var morning = time.Date(2027, 3, 4, 9, 30, 15, 0, time.FixedZone("", 3600))

// recovery is a window's recovery in a fresh state folder.
func recovery(t *testing.T) *Recovery {
	t.Helper()
	return recoveryIn(t, filepath.Join(t.TempDir(), "state", "reelworth"))
}

func recoveryIn(t *testing.T, dir string) *Recovery {
	t.Helper()
	r, err := NewRecovery(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { r.Close() })
	return r
}

func keep(t *testing.T, r *Recovery, d *Document, f scenario.File) {
	t.Helper()
	if err := r.Keep(d, f, morning); err != nil {
		t.Fatal(err)
	}
}

// crash lets go of a window's lock as the system does when its process is gone.
func crash(r *Recovery) {
	unfreed.Delete(r.lock)
	r.lock.file.Close()
}

// left are the leftovers that a new window finds.
func left(t *testing.T, dir string) []Leftover {
	t.Helper()
	list, err := recoveryIn(t, dir).Leftovers()
	if err != nil {
		t.Fatal(err)
	}
	return list
}

func onlyOne(t *testing.T, dir string) Leftover {
	t.Helper()
	list := left(t, dir)
	if len(list) != 1 {
		t.Fatalf("%d leftovers, want 1", len(list))
	}
	return list[0]
}

func TestTheStateFolderOfEachSystem(t *testing.T) {
	for _, c := range []struct {
		system, home string
		env          map[string]string
		want         string
	}{
		{"linux", "/home/u", map[string]string{"XDG_STATE_HOME": "/var/u"}, "/var/u/reelworth"},
		{"linux", "/home/u", map[string]string{"XDG_STATE_HOME": "relative"}, "/home/u/.local/state/reelworth"},
		{"linux", "/home/u", nil, "/home/u/.local/state/reelworth"},
		{"freebsd", "/home/u", nil, "/home/u/.local/state/reelworth"},
		{"linux", "", map[string]string{"XDG_STATE_HOME": "/var/u"}, "/var/u/reelworth"},
		{"linux", "", nil, ""},
		{"darwin", "/Users/u", nil, "/Users/u/Library/Application Support/Reelworth"},
		{"darwin", "", nil, ""},
		{"windows", "/u", map[string]string{"LocalAppData": "/u/Local"}, "/u/Local/Reelworth"},
		{"windows", "/u", nil, "/u/AppData/Local/Reelworth"},
	} {
		got, err := stateFolder(c.system, c.home, func(k string) string { return c.env[k] })
		if filepath.ToSlash(got) != c.want || (err == nil) != (c.want != "") {
			t.Errorf("%+v: %s, %v", c, got, err)
		}
	}
	if got, err := StateFolder(); err != nil || !filepath.IsAbs(got) {
		t.Error(got, err)
	}
}

func TestACrashedWindowLeavesItsWork(t *testing.T) {
	r, d := recovery(t), saved(t, one)
	keep(t, r, d, titled("first"))
	keep(t, r, d, titled("second"))
	crash(r)
	l := onlyOne(t, r.dir)
	if l.Path != d.Path || !l.When.Equal(morning) || l.Damaged != nil || len(l.Faults) > 0 || l.OnDisk != AsOpened {
		t.Errorf("%+v", l)
	}
	if got := string(scenario.Write(l.File)); got != string(scenario.Write(titled("second"))) {
		t.Error(got)
	}
	if read(t, d.Path) != string(one) {
		t.Error("the user's file was touched")
	}
	if err := l.Discard(); err != nil {
		t.Fatal(err)
	}
	if err := l.Discard(); err != nil {
		t.Error("discarding twice:", err)
	}
	if got := left(t, r.dir); len(got) > 0 {
		t.Error("not discarded:", got)
	}
}

func TestARecoveryFileIsAScenarioFileForAPerson(t *testing.T) {
	r, d := recovery(t), saved(t, one)
	keep(t, r, d, titled("two"))
	text := read(t, r.path())
	for _, says := range []string{
		"# Reelworth: work that was not saved", "# written = 2027-03-04T09:30:15+01:00\n", "# file = \"" + d.Path + "\"\n", "\n" + string(two), "\n# That is all of it.\n",
	} {
		if !strings.Contains(text, says) {
			t.Errorf("nothing says %q:\n%.600s", says, text)
		}
	}
	elsewhere, err := Open(r.path())
	if err != nil || len(elsewhere.Faults) > 0 || string(scenario.Write(elsewhere.File)) != string(two) {
		t.Error(err, elsewhere.Faults)
	}
	if info, _ := os.Stat(r.path()); runtime.GOOS != "windows" && info.Mode().Perm() != 0o600 {
		t.Error("others may read it:", info.Mode())
	}
	if info, _ := os.Stat(r.dir); runtime.GOOS != "windows" && info.Mode().Perm() != 0o700 {
		t.Error("others may look into the folder:", info.Mode())
	}
}

func TestOddPathsComeBackAsTheyWere(t *testing.T) {
	for _, path := range []string{"", "/a/year = one.toml", "/a/\"quoted\"\\.toml", "/a/line\nbreak # =.toml", "/a/\xff.toml", "/a/Müller/年.toml"} {
		r := recovery(t)
		keep(t, r, &Document{Path: path}, titled("one"))
		crash(r)
		if l := onlyOne(t, r.dir); l.Path != path || l.Damaged != nil || len(l.Faults) > 0 {
			t.Errorf("%q came back as %q: %v %v", path, l.Path, l.Damaged, l.Faults)
		}
	}
}

// What is typed half is kept too: the file cannot be compared yet, but nothing of it
// may be lost.
func TestUnfinishedWorkComesBackAsItWas(t *testing.T) {
	f := scenario.Demo()
	s := &f.Scenarios[0]
	s.Months, s.RollExposures, s.Baseline, s.Home = 0, 100000, "nobody", "QQQ"
	s.Note = "line\n\ttab \"quoted\" # no comment"
	s.Offers[0].Name, s.Offers[0].Price = "", decimal.New(-5, 0)
	s.Offers[1].Name, s.Offers[1].Currency = s.Offers[2].Name, ""
	s.Offers[2].Reel.LengthUnit, s.Offers[2].Reel.SpoiledPercent = "", decimal.New(250, 0)
	s.Shooting.RollsPerMonth[0] = decimal.New(99999, 0)
	s.Rates = append(s.Rates, scenario.Rate{})
	s.Developing[0].Way = ""
	r := recovery(t)
	keep(t, r, nil, f)
	crash(r)
	l := onlyOne(t, r.dir)
	if len(l.Faults) == 0 || l.Damaged != nil {
		t.Error(l.Faults, l.Damaged)
	}
	if got, want := string(scenario.Write(l.File)), string(scenario.Write(f)); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
}

func TestTwoLivingWindowsHaveNoLeftovers(t *testing.T) {
	r := recovery(t)
	other := recoveryIn(t, r.dir)
	keep(t, r, nil, titled("one"))
	keep(t, other, nil, titled("two"))
	for _, w := range []*Recovery{r, other} {
		if list, err := w.Leftovers(); err != nil || len(list) > 0 {
			t.Error(list, err)
		}
	}
	crash(other)
	if list, _ := r.Leftovers(); len(list) != 1 || list[0].File.Scenarios[0].Name != "two" {
		t.Error(list)
	}
	if list, _ := r.Leftovers(); len(list) != 1 {
		t.Error("looking does not take a leftover away")
	}
	if !isThere(r.path()) {
		t.Error("the living window's work is gone")
	}
}

func TestTheNewestLeftoverComesFirst(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "state")
	for i, name := range []string{"old", "new", "middle"} {
		r := recoveryIn(t, dir)
		if err := r.Keep(nil, titled(name), morning.Add([]time.Duration{0, 2, 1}[i]*time.Hour)); err != nil {
			t.Fatal(err)
		}
		crash(r)
	}
	var got []string
	for _, l := range left(t, dir) {
		got = append(got, l.File.Scenarios[0].Name)
	}
	if strings.Join(got, " ") != "new middle old" {
		t.Error(got)
	}
}

func TestDropAndCloseLeaveNothing(t *testing.T) {
	r := recovery(t)
	if err := r.Drop(); err != nil {
		t.Error("nothing is kept yet:", err)
	}
	keep(t, r, nil, titled("one"))
	if err := r.Drop(); err != nil || isThere(r.path()) {
		t.Error("not dropped:", err)
	}
	keep(t, r, nil, titled("two"))
	if err := r.Close(); err != nil || len(inFolder(t, r.dir)) > 0 {
		t.Error(inFolder(t, r.dir), err)
	}
	if err := r.Close(); err != nil {
		t.Error("closing twice:", err)
	}
	if err := r.Keep(nil, titled("three"), morning); err == nil || len(inFolder(t, r.dir)) > 0 {
		t.Error("a closed window keeps work:", err)
	}
}

func TestTheUsersFileIsNeverOverwritten(t *testing.T) {
	r := recovery(t)
	keep(t, r, nil, titled("one"))
	d, err := Open(r.path()) // the person opens the recovery file itself
	if err != nil {
		t.Fatal(err)
	}
	was := read(t, d.Path)
	keep(t, r, d, titled("two"))
	if read(t, d.Path) != was {
		t.Error("Keep wrote over the user's file")
	}
	// The person saves over the recovery file.
	r = recovery(t)
	keep(t, r, nil, titled("one"))
	if err := New(titled("two")).SaveAs(r.path(), titled("two"), Options{Overwrite: true}); err != nil {
		t.Fatal(err)
	}
	if err := r.Drop(); err != nil || read(t, r.path()) != string(two) {
		t.Error("Drop removed the user's file:", err)
	}
	saved := r.path()
	keep(t, r, nil, titled("three")) // as another window does, which does not have it open
	if read(t, saved) != string(two) {
		t.Error("Keep wrote over a file saved in its place")
	}
}

func TestAnEmptiedStateFolderIsMadeAgain(t *testing.T) {
	r := recovery(t)
	keep(t, r, nil, titled("one"))
	if err := os.RemoveAll(r.dir); err != nil {
		t.Fatal(err)
	}
	keep(t, r, nil, titled("two"))
	if got := left(t, r.dir); len(got) > 0 {
		t.Error("the window lives, but its work is taken for a leftover")
	}
	// A folder put back from a copy holds a lock that is not ours.
	copied := filepath.Join(r.dir, r.name+lockEnd)
	os.Remove(copied)
	write(t, copied, nil)
	keep(t, r, nil, titled("three"))
	crash(r)
	if got := left(t, r.dir); len(got) != 2 {
		t.Error("want the work kept before and after the copy came back:", len(got))
	}
}

func TestAFailedKeepSaysWhyAndLeavesWhatWasKept(t *testing.T) {
	refuse := func(err error) func(string) error {
		return func(path string) error { return &fs.PathError{Op: "open", Path: path, Err: err} }
	}
	for name, c := range map[string]struct {
		disk failing
		want Cause
	}{
		"disk full":      {failing{onWrite: syscall.ENOSPC}, DiskFull},
		"full on sync":   {failing{onSync: syscall.ENOSPC}, DiskFull},
		"quota":          {failing{onSync: syscall.EDQUOT}, DiskFull},
		"read-only":      {failing{onCreate: refuse(syscall.EROFS)}, DiskReadOnly},
		"not allowed":    {failing{onCreate: refuse(syscall.EACCES)}, MayNotWrite},
		"rename refused": {failing{onReplace: refuse(syscall.EIO)}, Unclear},
	} {
		t.Run(name, func(t *testing.T) {
			r := recovery(t)
			keep(t, r, nil, titled("one"))
			r.disk = c.disk
			err := r.Keep(nil, titled("two"), morning)
			if !fails(err, Keeping, c.want) {
				t.Error(err)
			}
			if got := strings.Join(inFolder(t, r.dir), " "); strings.Contains(got, tempEnd) {
				t.Error("a half stays:", got)
			}
			r.disk = realDisk{}
			if list := func() []Leftover { crash(r); return left(t, r.dir) }(); len(list) != 1 || list[0].File.Scenarios[0].Name != "one" || list[0].Damaged != nil {
				t.Error("what was kept before is not there:", list)
			}
			keep(t, r, nil, titled("three"))
		})
	}
}

func TestAStateFolderThatCannotBe(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	write(t, file, nil)
	var p *Problem
	for _, dir := range []string{file, filepath.Join(file, "state")} {
		if _, err := NewRecovery(dir); !errors.As(err, &p) || p.Doing != Keeping {
			t.Error(err)
		}
		if _, err := NewClaim(dir, "/a/year.toml", morning); err == nil {
			t.Error("claimed in", dir)
		}
	}
	r := recovery(t)
	os.RemoveAll(r.dir)
	write(t, r.dir, nil)
	if err := r.Keep(nil, titled("one"), morning); !errors.As(err, &p) {
		t.Error(err)
	}
	if _, err := r.Leftovers(); !errors.As(err, &p) {
		t.Error(err)
	}
	os.Remove(r.dir)
	if list, err := r.Leftovers(); err != nil || len(list) > 0 {
		t.Error("a folder that is not there holds nothing:", list, err)
	}
	keep(t, r, nil, titled("one"))
}

func TestAReadOnlyStateFolder(t *testing.T) {
	r := recovery(t)
	keep(t, r, nil, titled("one"))
	os.Chmod(r.dir, 0o500)
	defer os.Chmod(r.dir, 0o700)
	if f, err := os.Create(filepath.Join(r.dir, "try")); err == nil {
		f.Close()
		os.Remove(f.Name())
		return // a superuser may write anywhere; the injected failures hold the same
	}
	if err := r.Keep(nil, titled("two"), morning); !fails(err, Keeping, MayNotWrite) {
		t.Error(err)
	}
	if _, err := NewRecovery(r.dir); err == nil {
		t.Error("begun in a folder that cannot be written")
	}
}

// Windows that start and end at once sweep and look for each other's leavings.
func TestManyWindowsStartingAtOnce(t *testing.T) {
	r := recovery(t)
	keep(t, r, nil, titled("one"))
	crash(r)
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() {
			for range 40 {
				w, err := NewRecovery(r.dir)
				if err != nil {
					t.Error(err)
					return
				}
				if list, err := w.Leftovers(); err != nil || len(list) != 1 {
					t.Errorf("%d leftovers, want the one of the crashed window (%v)", len(list), err)
				}
				if !w.lock.inPlace() {
					t.Error("another window swept a living one's lock")
				}
				if err := w.Close(); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
}

func TestTwoWhoLookDoNotTakeEachOtherForTheOwner(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.lock")
	write(t, path, nil)
	both := false
	one, err := realDisk{}.ifAbandoned(path, func() {
		other, err := realDisk{}.ifAbandoned(path, func() {})
		both = other && err == nil
	})
	if !one || !both || err != nil {
		t.Error(one, both, err)
	}
}

// Between a look into the folder and the look at a lock its name may be taken anew.
func TestWhereNoLockIsNothingIsSwept(t *testing.T) {
	swept := false
	if !ifDead(realDisk{}, filepath.Join(t.TempDir(), "x.lock"), os.Getpid(), func() { swept = true }) || swept {
		t.Error("swept where another had swept before:", swept)
	}
}
