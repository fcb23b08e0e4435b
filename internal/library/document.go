package library

import (
	"crypto/sha256"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"reelworth/internal/scenario"
)

// MaxBytes is the size of the largest file that is opened or saved.
const MaxBytes = scenario.MaxBytes

// Document is a scenario file, as it was read or last saved.
type Document struct {
	// Path is absolute; "" for a document that was never saved.
	Path    string
	File    scenario.File
	Faults  []scenario.Fault
	Notices []scenario.Notice
	// Rewritten says that the last save could not change the text in place and wrote it
	// anew, without its comments; the .bak has them.
	Rewritten bool
	// Parted says that the last save parted the file from other names that it had, hard
	// links: they keep the old content.
	Parted bool

	said   scenario.Text // as it was read or last saved
	forced bool          // it may be replaced though it is protected
	kept   string        // the file of which the state before this session is kept apart
	stamp  stamp
	disk   disk
}

// stamp tells one state of a file from another.
type stamp struct {
	there    bool
	size     int64
	modified time.Time
	hash     [sha256.Size]byte
	mode     fs.FileMode
}

// New is a document that is not on disk yet.
func New(f scenario.File) *Document {
	return &Document{File: f, disk: realDisk{}}
}

// Open reads a scenario file. Faults in it are no error: they are in the Document,
// with what could be read. Errors are *Problem.
func Open(path string) (*Document, error) {
	full, err := filepath.Abs(path)
	if err != nil {
		return nil, problem(Opening, path, err)
	}
	data, st, err := load(full)
	if err != nil {
		return nil, problem(Opening, full, err)
	}
	d := &Document{Path: full, stamp: st, disk: realDisk{}}
	d.take(scenario.TextOf(data))
	d.File = d.said.File
	return d, nil
}

// take makes a text what the document says on disk.
func (d *Document) take(t scenario.Text) {
	d.said, d.Faults, d.Notices = t, t.Faults, t.Notices
}

// Unreadable says that not one scenario of the file could be read: it is no TOML, or of
// a newer program. Saving over it would lose everything in it; the .bak keeps it.
func (d *Document) Unreadable() bool { return len(d.said.File.Scenarios) == 0 && len(d.Faults) > 0 }

// Changed says whether the file on disk is no longer what was read or last saved. It
// reads the file only where its size or time differ. A new document never changes.
func (d *Document) Changed() bool {
	if d.Path == "" {
		return false
	}
	info, err := os.Stat(d.Path)
	if err != nil {
		return d.stamp.there
	}
	if d.stamp.there && info.Size() == d.stamp.size && info.ModTime().Equal(d.stamp.modified) {
		return false
	}
	_, now, err := load(d.Path)
	return err != nil || !now.same(d.stamp)
}

// same says whether the content is; a file that was only touched is the same.
func (s stamp) same(other stamp) bool {
	return s.there == other.there && s.size == other.size && s.hash == other.hash
}

// Load reads a file of at most MaxBytes that is no scenario file. Errors are *Problem.
func Load(path string) ([]byte, error) {
	data, _, err := load(path)
	if err != nil {
		return nil, problem(Opening, path, err)
	}
	return data, nil
}

// load reads a file of at most MaxBytes, with its size looked at first, so that
// neither a huge file nor a device is read.
func load(path string) ([]byte, stamp, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, stamp{}, err
	}
	if err := fit(path, info); err != nil {
		return nil, stamp{}, err
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, stamp{}, err
	}
	defer f.Close()
	// One byte more than allowed, for a file that has grown in between.
	data, err := io.ReadAll(io.LimitReader(f, MaxBytes+1))
	if err != nil {
		return nil, stamp{}, err
	}
	if len(data) > MaxBytes {
		return nil, stamp{}, tooLarge(path, int64(len(data)))
	}
	return data, stampOf(data, info), nil
}

func stampOf(data []byte, info fs.FileInfo) stamp {
	return stamp{true, int64(len(data)), info.ModTime(), sha256.Sum256(data), info.Mode().Perm()}
}

// fit refuses what cannot be a scenario file.
func fit(path string, info fs.FileInfo) error {
	switch {
	case info.IsDir():
		return &Problem{Cause: IsFolder, Doing: Opening, Path: path}
	case !info.Mode().IsRegular():
		return &Problem{Cause: NoOrdinaryFile, Doing: Opening, Path: path}
	case info.Size() > MaxBytes:
		return tooLarge(path, info.Size())
	}
	return nil
}

func tooLarge(path string, size int64) error {
	return &Problem{Cause: TooLarge, Doing: Opening, Path: path, Size: size}
}
