//go:build !windows

package library

import (
	"os"
	"path/filepath"
	"testing"
)

// One who opened a lock that is then replaced by a living window's must not sweep that.
func TestALockThatTookAnothersPlaceIsNotSwept(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.lock")
	write(t, path, nil)
	old, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer old.Close()
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	l, err := take(realDisk{}, path, nil)
	if err != nil {
		t.Fatal(err)
	}
	defer l.free()
	abandoned, err := whileNobodyHolds(old, path, func() { os.Remove(path) })
	if abandoned || err != nil || !l.inPlace() {
		t.Error(abandoned, err, l.inPlace())
	}
}
