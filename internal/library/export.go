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
	full, err := filepath.Abs(path)
	if err != nil {
		return false, problem("written", path, err)
	}
	target, err := follow(full)
	if err != nil {
		return false, problem("written", full, err)
	}
	info, err := os.Stat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return false, problem("written", full, err)
	case info.IsDir():
		return false, &Problem{Path: full, Wrong: "this is a folder", Remedy: "name a file in it"}
	case !info.Mode().IsRegular():
		return false, &Problem{Path: full, Wrong: "this is a device or a pipe, not a file", Remedy: "choose another name"}
	}
	if !o.Force {
		if err := protects(full, target); err != nil {
			return false, err
		}
	}
	parted = parts(target)
	if _, err := replace(on, target, data, modeOf(info, err), nil); err != nil {
		return false, problem("written", full, err)
	}
	return parted, nil
}
