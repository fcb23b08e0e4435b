package library

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// Export writes a file that is no scenario file, such as a chart or a report: whole or
// not at all, over one that is there. A link stays a link and its target is written.
// parted says that the file had other names, hard links, which keep the old content.
// Errors: *Protected unless forced, *Problem.
func Export(path string, data []byte, o Options) (parted bool, err error) {
	return export(path, data, o, realDisk{})
}

func export(path string, data []byte, o Options, on disk) (parted bool, err error) {
	target, looks, err := exportTo(path)
	if err != nil {
		return false, problem(Writing, path, err)
	}
	if !o.Force {
		if err := protects(path, target); err != nil {
			return false, err
		}
	}
	parted = parts(target)
	if _, err := replace(on, target, data, looks, nil); err != nil {
		return false, problem(Writing, path, err)
	}
	return parted, nil
}

// exportTo is the file that an export to a path writes, and what it is to look like.
func exportTo(path string) (target string, looks guise, err error) {
	full, err := filepath.Abs(path)
	if err == nil {
		target, err = follow(full)
	}
	if err != nil {
		return "", asNew, err
	}
	info, err := os.Stat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return target, asNew, nil
	case err != nil:
		return "", asNew, err
	case info.IsDir():
		return "", asNew, &Problem{Cause: IsFolder, Doing: Writing, Path: path}
	case !info.Mode().IsRegular():
		return "", asNew, &Problem{Cause: NoOrdinaryFile, Doing: Writing, Path: path}
	}
	return target, guiseOf(target, info.Mode().Perm(), true), nil
}
