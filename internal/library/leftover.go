package library

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"reelworth/internal/scenario"
)

// Leftover is unsaved work of a window that did not end as it should. To take it up:
// show File, Keep it in this window's own recovery, and only then Discard it.
type Leftover struct {
	// Path is the user's file, "" for none.
	Path string
	// When it was last written down.
	When time.Time
	// File is the work, Faults what of it could not be read.
	File   scenario.File
	Faults []scenario.Fault
	// OnDisk says how the user's file stands to the work now.
	OnDisk FileState
	// Recovery is the recovery file itself. A person can read and mend it.
	Recovery string
	// Damaged is what is wrong with the recovery file, a *Problem; nil if nothing is.
	// File is then what could still be read.
	Damaged error

	opened stamp             // the user's file, as the window had opened it
	hash   [sha256.Size]byte // of the recovery file; zero where it could not be read
	disk   disk
}

// Leftovers finds the unsaved work of windows that are no more, the newest first. What
// belongs to a living window is none. Damaged recovery files are listed too; nothing
// is removed but empty-handed locks and halves of files that were being written.
// Errors are *Problem.
func (r *Recovery) Leftovers() ([]Leftover, error) {
	locks, err := namesIn(r.dir, unsavedStart, lockEnd)
	if err != nil {
		return nil, problem(Opening, r.dir, err)
	}
	names, err := namesIn(r.dir, unsavedStart, unsavedEnd)
	if err != nil {
		return nil, problem(Opening, r.dir, err)
	}
	var list []Leftover
	for _, name := range names {
		if r.isDead(name, nil) {
			list = append(list, readLeftover(filepath.Join(r.dir, name+unsavedEnd), r.disk))
		}
	}
	for _, name := range locks {
		if !slices.Contains(names, name) {
			r.isDead(name, func() { r.tidy(name) })
		}
	}
	slices.SortStableFunc(list, func(a, b Leftover) int { return b.When.Compare(a.When) })
	return list, nil
}

// isDead says whether the window of that name is no more, and calls do if so.
func (r *Recovery) isDead(name string, do func()) bool {
	process, _ := processIn(name, unsavedStart)
	return ifDead(r.disk, filepath.Join(r.dir, name+lockEnd), process, do)
}

// tidy removes what a dead window left that holds no work: its lock, and the file it
// was writing when it died.
func (r *Recovery) tidy(name string) {
	removeHalves(filepath.Join(r.dir, name+unsavedEnd))
	os.Remove(filepath.Join(r.dir, name+lockEnd))
}

// removeHalves removes files that were being written to take the place of path.
func removeHalves(path string) {
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil {
		return
	}
	for _, e := range entries {
		full := filepath.Join(filepath.Dir(path), e.Name())
		if strings.HasPrefix(full, tempStart(path)) && strings.HasSuffix(full, tempEnd) {
			os.Remove(full)
		}
	}
}

// readLeftover never fails: what is wrong is in the Leftover.
func readLeftover(path string, on disk) Leftover {
	l := Leftover{Recovery: path, disk: on}
	if info, err := os.Stat(path); err == nil {
		l.When = info.ModTime()
	}
	data, st, err := load(path)
	if err != nil {
		l.Damaged = problem(Opening, path, err)
		return l
	}
	l.hash = st.hash
	l.Damaged = l.readNotes(data)
	l.File, l.Faults = scenario.Read(data)
	l.OnDisk = l.stateOf()
	return l
}

// readNotes fills in what the notes say; what cannot be read is told in one problem.
func (l *Leftover) readNotes(data []byte) error {
	notes := readNotes(data)
	var torn []Damage
	note := func(key string, read func(text string) error) {
		text, there := notes[key]
		if !there {
			torn = append(torn, Damage{Note: key})
		} else if err := read(text); err != nil {
			torn = append(torn, Damage{Note: key, Text: text})
		}
	}
	note(noteWritten, func(text string) error {
		when, err := time.Parse(time.RFC3339, text)
		if err == nil {
			l.When = when
		}
		return err
	})
	note(noteFile, func(text string) (err error) {
		l.Path, err = strconv.Unquote(text)
		return err
	})
	note(noteOpened, func(text string) (err error) {
		l.opened, err = readStamp(text)
		return err
	})
	if !bytes.HasSuffix(bytes.TrimRight(data, "\r\n\t "), []byte(strings.TrimSpace(unsavedLast))) {
		torn = append(torn, Damage{})
	}
	if torn == nil {
		return nil
	}
	return &Problem{Cause: Damaged, Doing: Opening, Path: l.Recovery, Torn: torn}
}

func (l *Leftover) stateOf() FileState {
	at, _ := stateOf(l.Path, l.opened)
	if (at == AsOpened || at == ChangedSince) && l.isIn(l.Path) {
		return HoldsWork
	}
	return at
}

// isIn says whether a file says all that the work does, however it is written.
func (l *Leftover) isIn(path string) bool {
	data, _, err := load(path)
	if err != nil || l.Damaged != nil {
		return false
	}
	there, _ := scenario.Read(data)
	return len(there.Scenarios) > 0 && bytes.Equal(scenario.Write(there), scenario.Write(l.File))
}

// Document is the user's file to go on with: its File is the work, and saving it finds
// out, as if the window had never crashed, what was changed outside meanwhile. For
// work without a file it is a new document.
func (l Leftover) Document() *Document {
	d := New(l.File)
	d.Path, d.stamp = l.Path, l.opened
	if l.Path == "" {
		return d
	}
	data, now, err := load(l.Path)
	if err != nil {
		return d
	}
	d.take(scenario.TextOf(data))
	if now.same(l.opened) || l.OnDisk == HoldsWork {
		d.stamp = now
	}
	return d
}

// Discard removes the recovery file: the work is taken up or not wanted. What was
// discarded already is no error, but a file that is no longer what Leftovers read
// stays. Errors are *Problem.
func (l Leftover) Discard() error {
	if _, now, err := load(l.Recovery); err == nil && now.hash != l.hash {
		return &Problem{Cause: ChangedMeanwhile, Doing: Removing, Path: l.Recovery}
	}
	if err := os.Remove(l.Recovery); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return problem(Removing, l.Recovery, err)
	}
	removeHalves(l.Recovery)
	os.Remove(strings.TrimSuffix(l.Recovery, unsavedEnd) + lockEnd)
	return nil
}
