package rates

import (
	"bytes"
	"os"
	"path/filepath"

	"github.com/natefinch/atomic"
)

// NotKept is the error of a file that was fetched and could not be kept.
type NotKept struct{ Err error }

func (e *NotKept) Error() string { return "rates: the file was not kept: " + e.Err.Error() }

// Unwrap is the error of the file system.
func (e *NotKept) Unwrap() error { return e.Err }

// Kept is the last good file of a publication; nil where there is none. The day it is of
// is its newest.
func (f Fetcher) Kept(p Publication) *File {
	folder, err := f.folder()
	if err != nil {
		return nil
	}
	file, err := Load(filepath.Join(folder, string(p)))
	if err != nil {
		return nil
	}
	return file
}

// keep puts a good file in the place of the one before, in one step.
func (f Fetcher) keep(p Publication, data []byte) error {
	folder, err := f.folder()
	if err == nil {
		err = os.MkdirAll(folder, 0o755)
	}
	if err == nil {
		err = atomic.WriteFile(filepath.Join(folder, string(p)), bytes.NewReader(data))
	}
	if err != nil {
		return &NotKept{err}
	}
	return nil
}

// Where is the folder that files are kept in, "" where the system has none.
func (f Fetcher) Where() string {
	folder, _ := f.folder()
	return folder
}

// folder is where files are kept.
func (f Fetcher) folder() (string, error) {
	if f.Folder != "" {
		return f.Folder, nil
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		return "", err
	}
	return filepath.Join(cache, "reelworth", "rates"), nil
}
