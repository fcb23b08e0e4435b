package library

import (
	"io/fs"
	"os"
)

// Protected is the error of replacing a file that somebody protected from that: it is
// read-only, or another user's. Saving with Force goes ahead.
type Protected struct {
	Path  string
	Other bool // it belongs to another user; else it is read-only
}

func (e *Protected) Error() string {
	if e.Other {
		return e.Path + ": the file belongs to another user; choose another name, or replace it all the same"
	}
	return e.Path + ": the file is read-only; choose another name, or replace it all the same"
}

// protects says why a file must not be replaced unasked; nil if it may, or is not there.
func protects(path, target string) error {
	info, err := os.Stat(target)
	switch {
	case err != nil:
		return nil
	case ownedByOther(info):
		return &Protected{Path: path, Other: true}
	case info.Mode().Perm()&0o200 == 0:
		return &Protected{Path: path}
	}
	return nil
}

// parts says whether replacing a file parts it from hard links, which keep the old
// content.
func parts(target string) bool {
	info, err := os.Stat(target)
	return err == nil && hasOtherNames(info)
}

// keepAttributes gives a file that takes the place of another what the other had besides
// content and permissions.
func keepAttributes(old, to string) {
	info, err := os.Stat(old)
	if err != nil || !info.Mode().IsRegular() {
		return
	}
	keepOwner(info, to)
	keepExtended(old, to)
}

// modeOf are the permissions of a file that is to be replaced, 0 for none.
func modeOf(info fs.FileInfo, err error) fs.FileMode {
	if err != nil {
		return 0
	}
	return info.Mode().Perm()
}
