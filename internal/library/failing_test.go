package library

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// failing is a disk that fails where it is told to.
type failing struct {
	realDisk
	onCreate, onReplace func(path string) error
	onWrite, onSync     error
}

type failingFile struct {
	file
	failing
}

func (d failing) create(path string, mode fs.FileMode) (file, error) {
	if d.onCreate != nil {
		if err := d.onCreate(path); err != nil {
			return nil, err
		}
	}
	f, err := realDisk{}.create(path, mode)
	return failingFile{f, d}, err
}

func (d failing) replace(from, to string) error {
	if d.onReplace != nil {
		if err := d.onReplace(to); err != nil {
			return err
		}
	}
	return realDisk{}.replace(from, to)
}

func (f failingFile) Write(b []byte) (int, error) {
	if f.onWrite != nil {
		n, _ := f.file.Write(b[:len(b)/2])
		return n, f.onWrite
	}
	return f.file.Write(b)
}

func (f failingFile) Sync() error {
	if f.onSync != nil {
		return f.onSync
	}
	return f.file.Sync()
}

func TestAFailedSaveSaysWhyAndLeavesTheFile(t *testing.T) {
	fail := func(err error) func(string) error {
		return func(path string) error { return &fs.PathError{Op: "open", Path: path, Err: err} }
	}
	notTheBak := func(err error) func(string) error {
		return func(path string) error {
			if strings.HasSuffix(path, ".bak") {
				return nil
			}
			return &os.LinkError{Op: "rename", Old: path, New: path, Err: err}
		}
	}
	for name, c := range map[string]struct {
		disk failing
		want Cause
	}{
		"disk full while writing": {failing{onWrite: syscall.ENOSPC}, DiskFull},
		"disk full while syncing": {failing{onSync: syscall.ENOSPC}, DiskFull},
		"quota":                   {failing{onSync: syscall.EDQUOT}, DiskFull},
		"no permission":           {failing{onCreate: fail(syscall.EACCES)}, MayNotWrite},
		"read-only disk":          {failing{onCreate: fail(syscall.EROFS)}, DiskReadOnly},
		"rename refused":          {failing{onReplace: notTheBak(syscall.EPERM)}, MayNotWrite},
		"broken disk":             {failing{onSync: syscall.EIO}, Unclear},
	} {
		t.Run(name, func(t *testing.T) {
			d := saved(t, one)
			d.disk = c.disk
			err := d.Save(titled("two"), Options{})
			if !fails(err, Saving, c.want) || !strings.HasPrefix(err.(*Problem).Path, d.Path) {
				t.Errorf("%v\nwant %s", err, c.want)
			}
			if read(t, d.Path) != string(one) || strings.Contains(names(t, d), tempEnd) {
				t.Error(names(t, d))
			}
			if d.File.Scenarios[0].Name != "one" {
				t.Error("the document says it was saved")
			}
			d.disk = realDisk{}
			if err := d.Save(titled("two"), Options{}); err != nil {
				t.Error("after the trouble is over:", err)
			}
		})
	}
}

func TestARealFullDiskIsToldAsOne(t *testing.T) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip("this system has no /dev/full")
	}
	defer full.Close()
	err = fill(full, one, func() error { return nil })
	if err := problem(Saving, "/a/year.toml", err); !fails(err, Saving, DiskFull) {
		t.Error(err)
	}
}

// noting is a disk that writes down what it is asked to do.
type noting struct {
	realDisk
	did *[]string
}

type notingFile struct {
	file
	noting
}

func (d noting) note(what string) { *d.did = append(*d.did, what) }

func (d noting) create(path string, mode fs.FileMode) (file, error) {
	d.note("create")
	f, err := realDisk{}.create(path, mode)
	return notingFile{f, d}, err
}

func (d noting) replace(from, to string) error {
	d.note("replace " + filepath.Base(to))
	return realDisk{}.replace(from, to)
}

func (d noting) syncFolder(path string) error {
	d.note("sync folder")
	return realDisk{}.syncFolder(path)
}

func (f notingFile) Write(b []byte) (int, error) { f.note("write"); return f.file.Write(b) }
func (f notingFile) Sync() error                 { f.note("sync"); return f.file.Sync() }
func (f notingFile) Close() error                { f.note("close"); return f.file.Close() }

// A power cut cannot be tried here; the order that survives one can be held.
func TestEverythingIsOnTheDiskBeforeTheOldFileGoes(t *testing.T) {
	d := saved(t, one)
	var did []string
	d.disk = noting{did: &did}
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	want := "create, write, sync, close, replace year.toml.bak, sync folder, create, write, sync, close, replace year.toml, sync folder"
	if got := strings.Join(did, ", "); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
}
