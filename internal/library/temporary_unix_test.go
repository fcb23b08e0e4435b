//go:build unix

package library

import (
	"errors"
	"os"
	"path/filepath"
	"testing"
)

func TestWorkOfAUserWithoutAHomeIsKeptInAFolderOfTheirOwn(t *testing.T) {
	in := t.TempDir()
	for range 2 { // made, and found again
		dir, err := temporaryState(in, 4711)
		if err != nil || dir != filepath.Join(in, "reelworth-4711") {
			t.Fatal(dir, err)
		}
		if info, err := os.Lstat(dir); err != nil || info.Mode() != os.ModeDir|0o700 {
			t.Error(info.Mode(), err)
		}
	}
	if r, err := NewRecovery(filepath.Join(in, "reelworth-4711")); err != nil {
		t.Error(err)
	} else {
		r.Close()
	}
}

func TestAFolderThatMayBeAnothersIsRefused(t *testing.T) {
	for name, make := range map[string]func(dir string) error{
		"a link":         func(dir string) error { return os.Symlink(t.TempDir(), dir) },
		"a file":         func(dir string) error { return os.WriteFile(dir, nil, 0o600) },
		"open to others": func(dir string) error { return errors.Join(os.Mkdir(dir, 0o755), os.Chmod(dir, 0o755)) },
		"writable":       func(dir string) error { return errors.Join(os.Mkdir(dir, 0o700), os.Chmod(dir, 0o722)) },
	} {
		in := t.TempDir()
		if err := make(filepath.Join(in, "reelworth-7")); err != nil {
			t.Fatal(err)
		}
		dir, err := temporaryState(in, 7)
		var p *Problem
		if dir != "" || !errors.As(err, &p) || p.Cause != NotPrivate {
			t.Errorf("%s: %q %v", name, dir, err)
		}
	}
	if dir, err := temporaryState(filepath.Join(t.TempDir(), "none"), 7); err == nil {
		t.Error("a folder in one that is not there:", dir)
	}
}
