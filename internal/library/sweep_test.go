package library

import (
	"path/filepath"
	"testing"
	"time"
)

// A file that is being written now is another save's; what is older than a minute nobody
// finishes any more.
func TestOnlyWhatNobodyWritesAnyMoreIsSwept(t *testing.T) {
	path := filepath.Join(t.TempDir(), "year.toml")
	half := tempStart(path) + "0a1b2c3d" + tempEnd
	for _, other := range []string{half, tempStart(path) + "lock", tempStart(path) + "x" + tempEnd, path} {
		write(t, other, one)
	}
	written := modified(t, half)
	for age, stays := range map[time.Duration]bool{
		0: true, 2 * time.Second: true, 59 * time.Second: true, 60 * time.Second: true,
	} {
		if sweep(path, written.Add(age)); isThere(half) != stays {
			t.Fatalf("after %v it is there: %v", age, isThere(half))
		}
	}
	if sweep(path, written.Add(61*time.Second)); isThere(half) {
		t.Error("after a minute it is there still")
	}
	if sweep(path, written.Add(time.Hour)); !isThere(path) || !isThere(tempStart(path)+"lock") || !isThere(tempStart(path)+"x"+tempEnd) {
		t.Error("something else was swept")
	}
}

func modified(t *testing.T, path string) time.Time {
	t.Helper()
	_, st, err := load(path)
	if err != nil {
		t.Fatal(err)
	}
	return st.modified
}
