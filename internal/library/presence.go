package library

import (
	"bytes"
	"os"
	"path/filepath"
	"strconv"
	"time"
)

// Claim says that a window of this program has a file open, for the other windows to
// see. It forbids nothing. What other programs do shows in Watch.
type Claim struct {
	dir, path string
	lock      *lock
	disk      disk
}

// Other is another window that has the same file open.
type Other struct {
	PID   int       // the number of its process, which may be this one
	Since time.Time // when it opened the file; zero if that cannot be read
}

const (
	claimTitle = "# Reelworth: a window has this file open.\n"
	noteSince  = "since"
)

// NewClaim claims a file, which need not be there, in a state folder, which is made if
// it is not there. Errors are *Problem; without a claim everything else works still.
func NewClaim(dir, path string, now time.Time) (*Claim, error) {
	return newClaim(dir, path, now, realDisk{})
}

func newClaim(dir, path string, now time.Time, on disk) (*Claim, error) {
	full, err := filepath.Abs(path)
	if err == nil {
		full, err = follow(full)
	}
	if err != nil {
		return nil, problem(Opening, path, err)
	}
	if err := makeStateFolder(dir); err != nil {
		return nil, problem(Saving, dir, err)
	}
	var text bytes.Buffer
	text.WriteString(claimTitle)
	writeNotes(&text, []note{{noteFile, strconv.Quote(full)}, {noteSince, now.Format(time.RFC3339)}})
	lockPath := filepath.Join(dir, newName(claimStart)+lockEnd)
	l, err := take(on, lockPath, text.Bytes())
	if err != nil {
		return nil, problem(Saving, lockPath, err)
	}
	return &Claim{dir, full, l, on}, nil
}

// Others are the other windows that have the file open now, under whatever name: a
// link leads to the same file. Claims of dead processes are removed.
func (c *Claim) Others() []Other {
	names, err := namesIn(c.dir, claimStart, lockEnd)
	if err != nil {
		return nil
	}
	var list []Other
	for _, name := range names {
		path := filepath.Join(c.dir, name+lockEnd)
		process, _ := processIn(name, claimStart)
		if path == c.lock.path || ifDead(c.disk, path, process, func() { os.Remove(path) }) {
			continue
		}
		data, err := os.ReadFile(path)
		if err != nil {
			continue // released just now
		}
		notes := readNotes(data)
		claimed, err := strconv.Unquote(notes[noteFile])
		if err != nil || !sameFile(claimed, c.path) {
			continue
		}
		since, _ := time.Parse(time.RFC3339, notes[noteSince])
		list = append(list, Other{process, since})
	}
	return list
}

// Release ends the claim. It may be called twice.
func (c *Claim) Release() { c.lock.free() }
