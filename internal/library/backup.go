package library

import (
	"errors"
	"io/fs"
	"path/filepath"
	"syscall"
)

// backupEnd is the ending of the file that a save replaced.
const backupEnd = ".bak"

// backupPath is where the file that a save replaces is kept; a name that would be too
// long is cut.
func backupPath(path, end string) string {
	return filepath.Join(filepath.Dir(path), cutName(filepath.Base(path), longestName-len(end))+end)
}

// backUp keeps what a save replaces beside it: beside the link where the file is one,
// or else beside its target, if the link's folder cannot be written.
func (d *Document) backUp(path, target string, old []byte, now stamp) error {
	looks := guiseOf(target, now.mode, now.there)
	err := d.writeBackup(path, old, looks)
	if target != path && (errors.Is(err, fs.ErrPermission) || errors.Is(err, syscall.EROFS)) {
		path = target
		err = d.writeBackup(path, old, looks)
	}
	if err != nil {
		return problem(Saving, backupPath(path, backupEnd), err)
	}
	return nil
}

func (d *Document) writeBackup(path string, old []byte, looks guise) error {
	_, err := replace(d.on(), backupPath(path, backupEnd), old, looks, nil)
	return err
}
