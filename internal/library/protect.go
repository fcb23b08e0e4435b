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

func (e *Protected) Error() string { return e.Path + ": protected" }

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

// guiseOf is what a file that is to be replaced looks like; asNew where there is none.
func guiseOf(path string, mode fs.FileMode, there bool) guise {
	if !there {
		return asNew
	}
	return guise{mode, path}
}

// put gives a new file, at path, its guise. Owner and attributes first: giving a file away
// may take permissions from it.
func (g guise) put(f file, path string) error {
	if info, err := os.Stat(g.like); g.like != "" && err == nil {
		keepOwner(info, path)
		keepExtended(g.like, path)
	}
	if g.mode == 0 {
		return nil
	}
	return f.Chmod(g.mode)
}
