package library

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"
)

func TestAnExportIsWholeOrNotAtAll(t *testing.T) {
	path := filepath.Join(t.TempDir(), "chart.svg")
	for _, data := range []string{"first", "second"} {
		if _, err := Export(path, []byte(data), Options{}); err != nil || read(t, path) != data {
			t.Fatal(err)
		}
	}
	for want, on := range map[Cause]disk{
		DiskFull:    failing{onWrite: syscall.ENOSPC},
		MayNotWrite: failing{onReplace: func(string) error { return os.ErrPermission }},
		Unclear:     failing{onSync: syscall.EIO},
	} {
		_, err := export(path, []byte("third"), Options{}, on)
		if !fails(err, Writing, want) || read(t, path) != "second" {
			t.Errorf("%v\nwant %s", err, want)
		}
	}
	if entries := inFolder(t, filepath.Dir(path)); len(entries) != 1 {
		t.Error("left behind:", entries)
	}
}

func TestAnExportOntoALinkWritesItsTarget(t *testing.T) {
	dir := t.TempDir()
	target := filepath.Join(dir, "target.svg")
	first, second := filepath.Join(dir, "first.svg"), filepath.Join(dir, "second.svg")
	if err := errors.Join(os.Symlink(second, first), os.Symlink("target.svg", second)); err != nil {
		t.Skip(err)
	}
	for _, data := range []string{"where nothing was", "where something was"} {
		if _, err := Export(first, []byte(data), Options{}); err != nil || read(t, target) != data {
			t.Fatal(err)
		}
		for _, link := range []string{first, second} {
			if info, _ := os.Lstat(link); info.Mode()&os.ModeSymlink == 0 {
				t.Error(link, "is no link any more")
			}
		}
	}
	circle := filepath.Join(dir, "circle.svg")
	if err := os.Symlink(circle, circle); err != nil {
		t.Fatal(err)
	}
	if _, err := Export(circle, nil, Options{}); !fails(err, Writing, LinkCircle) {
		t.Error(err)
	}
}

func TestPermissionsOfAnExportStay(t *testing.T) {
	path := filepath.Join(t.TempDir(), "chart.svg")
	if _, err := Export(path, []byte("x"), Options{}); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := Export(path, []byte("y"), Options{}); err != nil {
		t.Fatal(err)
	}
	if info, _ := os.Stat(path); info.Mode().Perm() != 0o600 {
		t.Error(info.Mode())
	}
}

// What other programs noted about a file stays with it, and with its .bak.
func TestExtendedAttributesStay(t *testing.T) {
	if runtime.GOOS != "linux" {
		t.Skip("Go's own library reaches them on Linux only")
	}
	d := saved(t, one)
	const name = "user.reelworth.test"
	if err := setAttribute(d.Path, name, []byte("kept")); errors.Is(err, syscall.ENOTSUP) {
		t.Log("the file system of the temporary folder has no extended attributes")
		return
	} else if err != nil {
		t.Fatal(err)
	}
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{d.Path, d.Path + backupEnd} {
		if got := attribute(path, name); !bytes.Equal(got, []byte("kept")) {
			t.Errorf("%s: %q", path, got)
		}
	}
}
