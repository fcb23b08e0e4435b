package library

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

func claimed(t *testing.T, dir, path string, since time.Time) *Claim {
	t.Helper()
	c, err := NewClaim(dir, path, since)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(c.Release)
	return c
}

func TestTwoWindowsOnOneFileSeeEachOther(t *testing.T) {
	d, dir := saved(t, one), filepath.Join(t.TempDir(), "state")
	first := claimed(t, dir, d.Path, morning)
	if o := first.Others(); len(o) > 0 {
		t.Error("a window sees itself:", o)
	}
	second := claimed(t, dir, d.Path, morning.Add(time.Hour))
	elsewhere := claimed(t, dir, saved(t, one).Path, morning)
	if o := first.Others(); len(o) != 1 || o[0].PID != os.Getpid() || !o[0].Since.Equal(morning.Add(time.Hour)) {
		t.Error(o)
	}
	if o := second.Others(); len(o) != 1 || !o[0].Since.Equal(morning) {
		t.Error(o)
	}
	if o := elsewhere.Others(); len(o) > 0 {
		t.Error("another file:", o)
	}
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	if len(first.Others()) != 1 {
		t.Error("after a save they no longer see each other")
	}
	first.Release()
	first.Release()
	if o := second.Others(); len(o) > 0 {
		t.Error("released, but seen:", o)
	}
	second.Release()
	elsewhere.Release()
	if got := inFolder(t, dir); len(got) > 0 {
		t.Error("left in the state folder:", got)
	}
}

func TestAFileIsOneUnderAllItsNames(t *testing.T) {
	d, dir := saved(t, one), t.TempDir()
	link := filepath.Join(t.TempDir(), "link.toml")
	if err := os.Symlink(d.Path, link); err != nil {
		t.Skip(err)
	}
	first := claimed(t, dir, d.Path, morning)
	for _, path := range []string{link, filepath.Join(filepath.Dir(d.Path), ".", "x", "..", "year.toml")} {
		c := claimed(t, dir, path, morning)
		if len(c.Others()) != 1 || len(first.Others()) != 1 {
			t.Error(path, "is the same file")
		}
		c.Release()
	}
	// A file that is not there yet.
	next := filepath.Join(filepath.Dir(d.Path), "next.toml")
	if a, b := claimed(t, dir, next, morning), claimed(t, dir, next, morning); len(a.Others()) != 1 || len(b.Others()) != 1 {
		t.Error("not seen before the file is there")
	}
}

func TestClaimsOfTheDeadAndDamagedOnesCountForNothing(t *testing.T) {
	d, dir := saved(t, one), t.TempDir()
	c := claimed(t, dir, d.Path, morning)
	dead := filepath.Join(dir, "open-1-00000001.lock") // a process that lives, but not the one that claimed
	write(t, dead, []byte("# file = \""+d.Path+"\"\n# since = 2027-03-04T09:30:15+01:00\n"))
	for i, text := range []string{"", "\x00\xff", "# file = /no/quotes\n", "# since = never\n"} {
		l, err := take(realDisk{}, filepath.Join(dir, "open-1-0000001"+string(rune('0'+i))+lockEnd), []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		defer l.free()
	}
	if o := c.Others(); len(o) > 0 {
		t.Error(o)
	}
	if isThere(dead) {
		t.Error("the dead claim stays")
	}
	if got := len(inFolder(t, dir)); got != 5 {
		t.Error("claims of living windows were removed:", inFolder(t, dir))
	}
}

// collectGarbage returns when finalizers and cleanups of what was garbage have run.
func collectGarbage() {
	finalized, cleaned := make(chan bool), make(chan bool)
	func() {
		garbage := new([64]byte)
		runtime.SetFinalizer(garbage, func(*[64]byte) { close(finalized) })
		runtime.AddCleanup(new([64]byte), func(done chan bool) { close(done) }, cleaned)
	}()
	runtime.GC()
	<-finalized
	<-cleaned
}

// A lock is held until it is freed, even if nobody holds on to the claim.
func TestAForgottenClaimIsAClaimStill(t *testing.T) {
	d, dir := saved(t, one), t.TempDir()
	c := claimed(t, dir, d.Path, morning)
	if _, err := NewClaim(dir, d.Path, morning); err != nil {
		t.Fatal(err)
	}
	for range 3 {
		collectGarbage()
	}
	if len(c.Others()) != 1 {
		t.Error("the claim went with the garbage")
	}
	unfreed.Range(func(l, _ any) bool {
		if strings.HasPrefix(l.(*lock).path, dir) && l != c.lock {
			l.(*lock).free()
		}
		return true
	})
}

func TestAWatchTellsNewsOnce(t *testing.T) {
	d := saved(t, one)
	w := d.Watch()
	look := func(want FileState, news bool) {
		t.Helper()
		if s, n := w.Look(); s != want || n != news {
			t.Errorf("%v, %v; want %v, %v", s, n, want, news)
		}
	}
	look(AsOpened, false)
	look(AsOpened, false)
	write(t, d.Path, two)
	look(ChangedSince, true)
	look(ChangedSince, false)
	same := time.Now() // as large, and in the same instant by the clock of the disk
	os.Chtimes(d.Path, same, same)
	look(ChangedSince, false)
	write(t, d.Path, []byte(strings.Replace(string(two), `"two"`, `"six"`, 1)))
	os.Chtimes(d.Path, same, same)
	look(ChangedSince, true)
	look(ChangedSince, false)
	os.Remove(d.Path)
	look(GoneSince, true)
	look(GoneSince, false)
	write(t, d.Path, one)
	look(AsOpened, true)
	os.Remove(d.Path)
	os.Mkdir(d.Path, 0o700)
	look(ChangedSince, true)
	look(ChangedSince, false)

	w = New(titled("one")).Watch()
	look(NoFile, false)
	if err := d.SaveAs(filepath.Join(t.TempDir(), "other.toml"), titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	w = d.Watch()
	look(AsOpened, false)
}

// A file that was touched has another time for good; it must not be read at each look.
func TestAWatchReadsAFileOnce(t *testing.T) {
	f := titled("one")
	f.Scenarios[0].Note = strings.Repeat("x", 4<<20)
	d := New(f)
	path := filepath.Join(t.TempDir(), "large.toml")
	if err := d.SaveAs(path, f, Options{}); err != nil {
		t.Fatal(err)
	}
	past := time.Now().Add(-time.Hour)
	os.Chtimes(path, past, past)
	w := d.Watch()
	w.Look()
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	for range 100 {
		if s, news := w.Look(); s != AsOpened || news {
			t.Fatal(s, news)
		}
	}
	runtime.ReadMemStats(&after)
	if n := (after.TotalAlloc - before.TotalAlloc) / 100; n > 10000 {
		t.Errorf("a look takes %d bytes: the file is read", n)
	}
}

func BenchmarkLook(b *testing.B) {
	path := filepath.Join(b.TempDir(), "year.toml")
	d := New(titled("one"))
	if err := d.SaveAs(path, d.File, Options{}); err != nil {
		b.Fatal(err)
	}
	past := time.Now().Add(-time.Hour)
	os.Chtimes(path, past, past)
	w := d.Watch()
	for b.Loop() {
		w.Look()
	}
}

func BenchmarkKeep(b *testing.B) {
	r, err := NewRecovery(b.TempDir())
	if err != nil {
		b.Fatal(err)
	}
	defer r.Close()
	f := titled("one")
	for b.Loop() {
		if err := r.Keep(nil, f, morning); err != nil {
			b.Fatal(err)
		}
	}
}
