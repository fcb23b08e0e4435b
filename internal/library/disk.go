package library

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"time"
	"unicode/utf8"

	"github.com/natefinch/atomic"
)

// disk is what saving does to the file system; tests let it fail.
type disk interface {
	create(path string, mode fs.FileMode) (file, error) // fails where path is there
	replace(from, to string) error
	syncFolder(path string) error
	own(path string) (*os.File, error)                              // made, and locked while the process lives
	ifAbandoned(path string, do func()) (abandoned bool, err error) // do is called if so
	tryAlone(path string) (leave func(), err error)                 // errBusy while another is
}

type file interface {
	Write([]byte) (int, error)
	Chmod(fs.FileMode) error
	Sync() error
	Close() error
}

type realDisk struct{}

func (realDisk) create(path string, mode fs.FileMode) (file, error) {
	return os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
}

// replace is the atomic library's: a rename, which on Windows is asked to go through
// to the disk. The library's WriteFile is not used because it does not sync the
// folder, so that a save could be undone by a power cut, and because it leaves new
// files unreadable for others whatever the umask says.
func (realDisk) replace(from, to string) error { return atomic.ReplaceFile(from, to) }

func (realDisk) syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil // folders cannot be synced there
	}
	d, err := os.Open(path)
	if err != nil {
		return err
	}
	defer d.Close()
	return d.Sync()
}

// guise is what a file is to look like besides its content.
type guise struct {
	mode fs.FileMode // 0 is what new files get
	like string      // the file whose owner and attributes it takes, "" for none
}

// asNew is the guise of a file that replaces none.
var asNew = guise{}

// replace puts data in the place of path, whole or not at all. ready, which may be nil,
// has the last word before the old file goes. The info is that of the new file.
func replace(on disk, path string, data []byte, as guise, ready func() error) (info fs.FileInfo, err error) {
	f, temp, err := createBeside(on, path)
	if err != nil {
		return nil, err
	}
	defer func() {
		if err != nil {
			os.Remove(temp)
		}
	}()
	err = fill(f, data, func() error { return as.put(f, temp) })
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		info, err = os.Stat(temp)
	}
	if err == nil && ready != nil {
		err = ready()
	}
	if err == nil {
		err = on.replace(temp, path)
	}
	if err != nil {
		return nil, err
	}
	sweep(path, time.Now())
	// The file is whole in its place; a folder that cannot be synced is no failure.
	_ = on.syncFolder(filepath.Dir(path))
	return info, nil
}

// fill writes a new file, for good. finish is called before it goes to the disk.
func fill(f file, data []byte, finish func() error) error {
	if _, err := f.Write(data); err != nil {
		return err
	}
	if err := finish(); err != nil {
		return err
	}
	return f.Sync()
}

// createBeside makes a new file in the folder of path, so that it can be renamed
// into its place.
func createBeside(on disk, path string) (f file, temp string, err error) {
	for range 100 {
		temp = fmt.Sprintf("%s%08x%s", tempStart(path), rand.Uint32(), tempEnd)
		f, err = on.create(temp, 0o666)
		if !errors.Is(err, fs.ErrExist) {
			return f, temp, err
		}
	}
	return nil, "", err
}

const tempEnd = ".saving"

func tempStart(path string) string {
	return filepath.Join(filepath.Dir(path), "."+cutName(filepath.Base(path), 200)+".")
}

// longestName is how many bytes a file's name may have on any system in use.
const longestName = 255

// cutName is a name of at most so many bytes, cut between two letters.
func cutName(name string, most int) string {
	for most < len(name) && most > 0 && !utf8.RuneStart(name[most]) {
		most--
	}
	return name[:min(most, len(name))]
}

// sweep removes what a save that was killed has left beside path: after a minute
// nobody writes it any more.
func sweep(path string, now time.Time) {
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil {
		return
	}
	start := filepath.Base(tempStart(path))
	for _, e := range entries {
		middle, ok := strings.CutPrefix(e.Name(), start)
		if middle, isTemp := strings.CutSuffix(middle, tempEnd); !ok || !isTemp || len(middle) != 8 {
			continue
		}
		if info, err := e.Info(); err == nil && now.Sub(info.ModTime()) > time.Minute {
			os.Remove(filepath.Join(filepath.Dir(path), e.Name()))
		}
	}
}
