package library

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
)

// Problem is why something could not be done with a file. Package words says it in a
// sentence.
type Problem struct {
	Cause Cause
	Doing Deed
	Path  string
	Size  int64    // in bytes, where Cause is TooLarge
	Torn  []Damage // where Cause is Damaged
	Err   error    // the system's own; may be nil
}

// Deed is what was to be done with a file.
type Deed string

// The deeds.
const (
	Opening  Deed = "open"
	Saving   Deed = "save"
	Writing  Deed = "write" // what is no scenario file
	Keeping  Deed = "keep"  // unsaved work
	Removing Deed = "remove"
)

// Cause is what stands against it.
type Cause string

// The causes.
const (
	Unclear          Cause = "unclear" // Err has the system's words
	DiskFull         Cause = "disk-full"
	DiskReadOnly     Cause = "disk-read-only"
	MayNotWrite      Cause = "may-not-write" // in the file's folder
	MayNotRead       Cause = "may-not-read"
	NoFolder         Cause = "no-folder"
	NoSuchFile       Cause = "no-file"
	LinkCircle       Cause = "link-circle"
	NameTooLong      Cause = "name-too-long"
	FileAsFolder     Cause = "file-as-folder" // a part of the path is a file
	IsFolder         Cause = "is-folder"
	NoOrdinaryFile   Cause = "no-ordinary-file" // a device or a pipe
	TooLarge         Cause = "too-large"
	WouldBeTooLarge  Cause = "would-be-too-large"
	BackupUnreadable Cause = "backup-unreadable" // what is to be replaced cannot be kept
	BackupTooLarge   Cause = "backup-too-large"
	NoName           Cause = "no-name" // a new document has none yet
	Busy             Cause = "busy"    // another program goes on saving it
	Damaged          Cause = "damaged" // a recovery file
	ChangedMeanwhile Cause = "changed-meanwhile"
	NoHome           Cause = "no-home"
	NotPrivate       Cause = "not-private" // a folder for temporary work: another's, a link, or open to others
	Closed           Cause = "closed"      // the window that keeps its work
)

// Damage is one thing that is wrong with a recovery file: a note is missing or, with its
// text, cannot be read; without a note, the end is missing.
type Damage struct{ Note, Text string }

func (p *Problem) Error() string {
	text := fmt.Sprintf("%s: %s: %s", p.Doing, p.Path, p.Cause)
	if p.Err != nil {
		text += fmt.Sprintf(" (%v)", p.Err)
	}
	return text
}

func (p *Problem) Unwrap() error { return p.Err }

// ChangedOutside is the error of saving over a file that is no longer what was
// opened. Saving with Overwrite goes ahead.
type ChangedOutside struct {
	Path string
	Gone bool // deleted, not changed
}

func (e *ChangedOutside) Error() string { return e.Path + ": changed outside" }

// AlreadyThere is the error of saving under the name of another file. Saving with
// Overwrite goes ahead.
type AlreadyThere struct{ Path string }

func (e *AlreadyThere) Error() string { return e.Path + ": already there" }

// problem finds the cause of a system's error.
func problem(doing Deed, path string, err error) error {
	var p *Problem
	if err == nil || errors.As(err, &p) {
		return err
	}
	return &Problem{Cause: causeOf(doing, path, err), Doing: doing, Path: path, Err: err}
}

func causeOf(doing Deed, path string, err error) Cause {
	switch {
	case isFull(err):
		return DiskFull
	case errors.Is(err, syscall.EROFS):
		return DiskReadOnly
	case errors.Is(err, fs.ErrPermission) && doing != Opening:
		return MayNotWrite
	case errors.Is(err, fs.ErrPermission):
		return MayNotRead
	case errors.Is(err, fs.ErrNotExist) && !isThere(filepath.Dir(path)):
		return NoFolder
	case errors.Is(err, fs.ErrNotExist):
		return NoSuchFile
	case errors.Is(err, syscall.ELOOP):
		return LinkCircle
	case errors.Is(err, syscall.ENAMETOOLONG):
		return NameTooLong
	case errors.Is(err, syscall.ENOTDIR):
		return FileAsFolder
	}
	return Unclear
}

// isFull says whether a disk or a quota is used up. The numbers are those of Windows,
// ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL.
func isFull(err error) bool {
	if errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) {
		return true
	}
	var n syscall.Errno
	return runtime.GOOS == "windows" && errors.As(err, &n) && (n == 39 || n == 112)
}

func isThere(path string) bool {
	_, err := os.Stat(path)
	return err == nil
}
