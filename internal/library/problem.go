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

// Problem is why a file could not be opened or saved.
type Problem struct {
	Path          string
	Wrong, Remedy string
	Err           error // the system's own; may be nil
}

func (p *Problem) Error() string { return fmt.Sprintf("%s: %s; %s", p.Path, p.Wrong, p.Remedy) }

func (p *Problem) Unwrap() error { return p.Err }

// ChangedOutside is the error of saving over a file that is no longer what was
// opened. Saving with Overwrite goes ahead.
type ChangedOutside struct {
	Path string
	Gone bool // deleted, not changed
}

func (e *ChangedOutside) Error() string {
	if e.Gone {
		return e.Path + ": the file was deleted after it was opened; save it again anyway, or under another name"
	}
	return e.Path + ": the file was changed by another program after it was opened; open it again, or save under another name, or overwrite it"
}

// AlreadyThere is the error of saving under the name of another file. Saving with
// Overwrite goes ahead.
type AlreadyThere struct{ Path string }

func (e *AlreadyThere) Error() string {
	return e.Path + ": a file of this name is there already; choose another name, or overwrite it"
}

// problem puts a system's error into words; done is "opened", "saved", "written",
// "kept" or "removed".
func problem(done, path string, err error) error {
	var p *Problem
	if err == nil || errors.As(err, &p) {
		return err
	}
	p = &Problem{Path: path, Err: err}
	folder := filepath.Dir(path)
	switch {
	case isFull(err):
		p.Wrong, p.Remedy = "the disk is full, so the file was not "+done+" and is as it was", "make room, or save elsewhere"
	case errors.Is(err, syscall.EROFS):
		p.Wrong, p.Remedy = "the disk is read-only, so the file was not "+done, "save under another name elsewhere"
	case errors.Is(err, fs.ErrPermission) && done != "opened":
		p.Wrong, p.Remedy = "there is no permission to write in "+folder, "save under another name elsewhere"
	case errors.Is(err, fs.ErrPermission):
		p.Wrong, p.Remedy = "there is no permission to read it", "ask its owner, or change its permissions"
	case errors.Is(err, fs.ErrNotExist) && !isThere(folder):
		p.Wrong, p.Remedy = "the folder "+folder+" is not there", "put it back, or choose another"
	case errors.Is(err, fs.ErrNotExist):
		p.Wrong, p.Remedy = "there is no such file", "check its name"
	case errors.Is(err, syscall.ELOOP):
		p.Wrong, p.Remedy = "the link leads in a circle", "choose the file itself"
	case errors.Is(err, syscall.ENAMETOOLONG):
		p.Wrong, p.Remedy = "the name is too long", "choose a shorter one"
	case errors.Is(err, syscall.ENOTDIR):
		p.Wrong, p.Remedy = "a part of the path is a file, not a folder", "check the path"
	default:
		p.Wrong, p.Remedy = "the file could not be "+done+" ("+plain(err)+")", "try again, or choose another place"
	}
	if done == "removed" {
		p.Remedy = "remove it by hand"
	}
	return p
}

// plain is an error without the call and the path in front of it.
func plain(err error) string {
	var pe *fs.PathError
	var le *os.LinkError
	switch {
	case errors.As(err, &pe):
		return pe.Err.Error()
	case errors.As(err, &le):
		return le.Err.Error()
	}
	return err.Error()
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
