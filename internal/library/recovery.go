package library

import (
	"bytes"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"sync"
	"time"

	"reelworth/internal/scenario"
)

// Recovery keeps the unsaved work of one window in a file of its own, so that it
// outlives a crash. Its methods may be called from any goroutine and take turns; what
// is kept is what the last call that came said.
type Recovery struct {
	dir  string
	disk disk

	mu     sync.Mutex
	name   string // of the files in dir, without endings
	lock   *lock
	closed bool
}

// NewRecovery begins the recovery of one window in a state folder, which is made if it
// is not there. Nothing is kept yet. Errors are *Problem.
func NewRecovery(dir string) (*Recovery, error) { return newRecovery(dir, realDisk{}) }

func newRecovery(dir string, on disk) (*Recovery, error) {
	r := &Recovery{dir: dir, disk: on}
	if err := r.begin(newName(unsavedStart)); err != nil {
		return nil, problem(Keeping, filepath.Join(dir, unsavedStart+"…"), err)
	}
	return r, nil
}

// begin takes a name for this window's files.
func (r *Recovery) begin(name string) error {
	if err := makeStateFolder(r.dir); err != nil {
		return err
	}
	l, err := take(r.disk, filepath.Join(r.dir, name+lockEnd), nil)
	if err != nil {
		return err
	}
	r.lock.free()
	r.name, r.lock = name, l
	return nil
}

func (r *Recovery) path() string { return filepath.Join(r.dir, r.name+unsavedEnd) }

// Keep writes unsaved work down, in the place of what was kept before, whole or not at
// all, and on the disk when it returns. doc is the user's file that the work is about,
// nil for none; it is not touched. Errors are *Problem; what was kept before is then
// kept still.
func (r *Recovery) Keep(doc *Document, f scenario.File, now time.Time) error {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.closed {
		return &Problem{Cause: Closed, Doing: Keeping, Path: r.path()}
	}
	if err := r.ready(doc); err != nil {
		return problem(Keeping, r.path(), err)
	}
	if _, err := replace(r.disk, r.path(), unsaved(doc, f, now), guise{mode: 0o600}, nil); err != nil {
		return problem(Keeping, r.path(), err)
	}
	return nil
}

// ready sees that the lock is there, even if somebody emptied the folder, and that the
// recovery file has not become a file of the user's.
func (r *Recovery) ready(doc *Document) error {
	switch {
	case doc != nil && sameFile(doc.Path, r.path()), isForeign(r.path()):
		return r.begin(newName(unsavedStart))
	case r.lock.inPlace():
		return nil
	}
	err := r.begin(r.name)
	if errors.Is(err, fs.ErrExist) { // another lock under our name, from a copied folder
		err = r.begin(newName(unsavedStart))
	}
	return err
}

// Drop removes what is kept: it was saved, or is not wanted. Keep may go on after.
// Errors are *Problem.
func (r *Recovery) Drop() error {
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.drop()
}

func (r *Recovery) drop() error {
	if isForeign(r.path()) {
		return nil
	}
	if err := os.Remove(r.path()); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return problem(Removing, r.path(), err)
	}
	return nil
}

// isForeign says whether there is a file at path that is no recovery file, since
// somebody saved another there.
func isForeign(path string) bool {
	f, err := os.Open(path)
	if err != nil {
		return false
	}
	defer f.Close()
	first := make([]byte, len(unsavedTitle))
	_, err = io.ReadFull(f, first)
	return err != nil || string(first) != unsavedTitle
}

// Close ends the recovery of a window that ends as it should: it drops what is kept,
// and nothing is kept any more. Errors are *Problem.
func (r *Recovery) Close() error {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.closed {
		return nil
	}
	err := r.drop()
	r.lock.free()
	r.closed = true
	return err
}

// The form of a recovery file: notes in comments, then the scenario file, then a line
// that says it is all there. So it is a scenario file too, which a person can read,
// mend and open.
const (
	unsavedTitle = "# Reelworth: work that was not saved, kept in case the program is cut off.\n"
	unsavedHint  = "# This is a scenario file too: copy it to another folder, correct it there, and open it.\n"
	unsavedLast  = "# That is all of it.\n"

	noteWritten = "written"
	noteFile    = "file"
	noteOpened  = "file as opened"
	noStamp     = "not there"
)

func unsaved(doc *Document, f scenario.File, now time.Time) []byte {
	path, opened := "", stamp{}
	if doc != nil {
		path, opened = doc.Path, doc.stamp
	}
	var b bytes.Buffer
	b.WriteString(unsavedTitle + unsavedHint)
	writeNotes(&b, []note{
		{noteWritten, now.Format(time.RFC3339)},
		{noteFile, strconv.Quote(path)},
		{noteOpened, opened.text()},
	})
	b.WriteByte('\n')
	b.Write(scenario.Write(f))
	b.WriteString("\n" + unsavedLast)
	return b.Bytes()
}

// text is a stamp as a note; its permissions are not kept.
func (s stamp) text() string {
	if !s.there {
		return noStamp
	}
	return fmt.Sprintf("%d bytes, changed %s, sha256 %x", s.size, s.modified.UTC().Format(time.RFC3339Nano), s.hash)
}

func readStamp(text string) (s stamp, err error) {
	if text == noStamp {
		return s, nil
	}
	var modified, hash string
	if _, err := fmt.Sscanf(text, "%d bytes, changed %s sha256 %s", &s.size, &modified, &hash); err != nil {
		return stamp{}, err
	}
	if s.modified, err = time.Parse(time.RFC3339Nano+",", modified); err != nil {
		return stamp{}, err
	}
	if n, err := hex.Decode(s.hash[:], []byte(hash)[:min(len(hash), 2*len(s.hash))]); err != nil || n != len(s.hash) {
		return stamp{}, errors.New("no sha256")
	}
	s.there = true
	return s, nil
}

// sameFile says whether two paths lead to one file.
func sameFile(a, b string) bool {
	if a == b {
		return true
	}
	one, err := os.Stat(a)
	if err != nil {
		return false
	}
	other, err := os.Stat(b)
	return err == nil && os.SameFile(one, other)
}
