package library

import (
	"errors"
	"io/fs"
	"path/filepath"
	"strconv"
	"syscall"
)

// backupEnd is the ending of the file that a save replaced.
const backupEnd = ".bak"

// backupPath is where the file that a save replaces is kept; a name that would be too
// long is cut.
func backupPath(path, end string) string {
	return filepath.Join(filepath.Dir(path), cutName(filepath.Base(path), longestName-len(end))+end)
}

// freeBackup is where what a save replaces can be kept: in the .bak, or in .bak2, .bak3 …
// where others of that name are the user's own; done says that one of them holds it.
func freeBackup(path string, old []byte, apart *Backups) (to string, done bool) {
	for n := 1; ; n++ {
		end := backupEnd
		if n > 1 {
			end += strconv.Itoa(n)
		}
		to = backupPath(path, end)
		if free, done := apart.place(to, old); free || done {
			return to, done
		}
	}
}

// backUp keeps what a save replaces beside it: beside the link where the file is one,
// or else beside its target, if the link's folder cannot be written. What the first save
// of a session replaces is kept apart too.
func (d *Document) backUp(path, target string, old []byte, now stamp, apart *Backups) error {
	if d.kept != target && apart.keep(d.on(), path, old) == nil { // if it cannot be, there still is the .bak
		d.kept = target
	}
	looks := guiseOf(target, now.mode, now.there)
	err := d.writeBackup(path, old, looks, apart)
	if target != path && (errors.Is(err, fs.ErrPermission) || errors.Is(err, syscall.EROFS)) {
		path = target
		err = d.writeBackup(path, old, looks, apart)
	}
	if err != nil {
		return problem(Saving, backupPath(path, backupEnd), err)
	}
	return nil
}

func (d *Document) writeBackup(path string, old []byte, looks guise, apart *Backups) error {
	to, done := freeBackup(path, old, apart)
	if done {
		return nil
	}
	_, err := replace(d.on(), to, old, looks, nil)
	if err == nil {
		apart.note(to, old)
	}
	return err
}
