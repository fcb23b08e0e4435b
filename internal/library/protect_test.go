package library

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"testing"
)

// othersFile is a file of another user's, or of root's where this user cannot give one away.
func othersFile(t *testing.T) string {
	t.Helper()
	if runtime.GOOS == "windows" {
		t.Skip("files are not owned that way there")
	}
	if os.Geteuid() != 0 {
		return "/etc/passwd"
	}
	path := filepath.Join(t.TempDir(), "theirs.toml")
	write(t, path, one)
	if err := os.Chown(path, 4711, 4711); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestAReadOnlyFileIsNotReplacedUnasked(t *testing.T) {
	d := saved(t, one)
	if err := os.Chmod(d.Path, 0o444); err != nil {
		t.Fatal(err)
	}
	var protected *Protected
	for _, save := range []func() error{
		func() error { return d.Save(titled("two"), Options{}) },
		func() error { return d.Save(titled("two"), Options{Overwrite: true}) },
		func() error { return New(titled("two")).SaveAs(d.Path, titled("two"), Options{Overwrite: true}) },
		func() error { _, err := Export(d.Path, two, Options{}); return err },
	} {
		if err := save(); !errors.As(err, &protected) || protected.Other || protected.Path != d.Path {
			t.Errorf("%v", err)
		}
		if read(t, d.Path) != string(one) || names(t, d) != "year.toml" {
			t.Fatal("something was written:", names(t, d))
		}
	}
	if err := d.Save(titled("two"), Options{Force: true}); err != nil || read(t, d.Path) != string(two) {
		t.Fatal(err)
	}
	if info, _ := os.Stat(d.Path); info.Mode().Perm() != 0o444 {
		t.Error("it is no longer read-only:", info.Mode())
	}
	if err := d.Save(titled("three"), Options{}); err != nil {
		t.Error("asked twice about one file:", err)
	}
	again, err := Open(d.Path)
	if err != nil {
		t.Fatal(err)
	}
	if err := again.Save(titled("four"), Options{}); !errors.As(err, &protected) {
		t.Error("opened anew and not asked:", err)
	}
}

func TestAnotherUsersFileIsNotReplacedUnasked(t *testing.T) {
	path := othersFile(t)
	before := read(t, path)
	var protected *Protected
	if _, err := Export(path, two, Options{}); !errors.As(err, &protected) || !protected.Other {
		t.Errorf("%v", err)
	}
	if read(t, path) != before {
		t.Fatal("it was replaced")
	}
	if os.Geteuid() != 0 {
		return // the file is root's own
	}
	if _, err := Export(path, two, Options{Force: true}); err != nil || read(t, path) != string(two) {
		t.Error(err)
	}
	if info, _ := os.Stat(path); !ownedByOther(info) {
		t.Error("the file was taken from its owner")
	}
}

func TestAFileThatCannotBeReadIsNotReplaced(t *testing.T) {
	denied := &os.PathError{Op: "open", Path: "x", Err: os.ErrPermission}
	for _, o := range []Options{{}, {Overwrite: true}} {
		if err := irreplaceable("/a/year.toml", denied, o); !fails(err, Saving, BackupUnreadable) {
			t.Error(err)
		}
	}
}

func TestHardLinksAreSaidToPart(t *testing.T) {
	d := saved(t, one)
	other := filepath.Join(filepath.Dir(d.Path), "other.toml")
	if err := os.Link(d.Path, other); err != nil {
		t.Fatal(err)
	}
	if err := d.Save(titled("two"), Options{}); err != nil || !d.Parted {
		t.Error(err, d.Parted)
	}
	if read(t, other) != string(one) || read(t, d.Path) != string(two) {
		t.Error("the other name holds what was saved")
	}
	if err := d.Save(titled("three"), Options{}); err != nil || d.Parted {
		t.Error("they are parted already:", err, d.Parted)
	}
	if parted, err := Export(other, two, Options{}); err != nil || parted {
		t.Error(err, parted)
	}
	if err := os.Link(other, other+"2"); err != nil {
		t.Fatal(err)
	}
	if parted, err := Export(other, one, Options{}); err != nil || !parted || read(t, other+"2") != string(two) {
		t.Error(err, parted)
	}
}

// A link whose own folder cannot be written is saved still: its target is what is written,
// and the .bak stands beside that.
func TestALinkInAFolderThatCannotBeWritten(t *testing.T) {
	d := saved(t, one)
	link := filepath.Join(t.TempDir(), "link.toml")
	if err := os.Symlink(d.Path, link); err != nil {
		t.Skip(err)
	}
	l, err := Open(link)
	if err != nil {
		t.Fatal(err)
	}
	l.disk = failing{onCreate: func(path string) error {
		if filepath.Dir(path) == filepath.Dir(link) {
			return &os.PathError{Op: "open", Path: path, Err: os.ErrPermission}
		}
		return nil
	}}
	if err := l.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	if read(t, d.Path) != string(two) || read(t, d.Path+backupEnd) != string(one) || isThere(link+backupEnd) {
		t.Error(names(t, d), names(t, l))
	}
}
