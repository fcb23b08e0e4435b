package library

import (
	"errors"
	"io/fs"
	"os"
	"time"
)

// FileState is how a file on disk relates to work that was begun from it.
type FileState int

// The states.
const (
	NoFile       FileState = iota // the work has no file
	AsOpened                      // the content is what was opened or last saved
	ChangedSince                  // it is another, or cannot be read
	GoneSince                     // the file was deleted
	HoldsWork                     // it is the work itself: there is nothing to recover
)

// stateOf compares a file with its stamp; now is the stamp of what is there.
func stateOf(path string, opened stamp) (s FileState, now stamp) {
	if path == "" {
		return NoFile, stamp{}
	}
	_, now, err := load(path)
	switch {
	case errors.Is(err, fs.ErrNotExist) && !opened.there:
		return AsOpened, now
	case errors.Is(err, fs.ErrNotExist):
		return GoneSince, now
	case err == nil && now.same(opened):
		return AsOpened, now
	}
	return ChangedSince, now
}

// Watch looks, as often as it is asked to, whether a document's file was changed by
// another program. It belongs to one goroutine.
type Watch struct {
	path   string
	opened stamp

	at   FileState
	now  stamp       // of what was there at the last look
	info fs.FileInfo // the same; nil for none, or where it must be read again
}

// Watch begins to watch the document's file as it was read or last saved. After a save
// begin anew: the watch goes by a copy.
func (d *Document) Watch() *Watch {
	w := &Watch{path: d.Path, opened: d.stamp, now: d.stamp}
	if d.Path != "" {
		w.at = AsOpened
	}
	return w
}

// coarse is how far apart two changes of a file are told by their time on any file
// system in use: FAT keeps it to two seconds.
const coarse = 2 * time.Second

// Look says how the file stands now, and whether that is news: another state or
// another content than at the look before. It costs one look at the file's size and
// time; the content is read only where those are others than at the last look.
func (w *Watch) Look() (s FileState, news bool) {
	info, err := os.Stat(w.path)
	if err == nil && w.info != nil && info.Size() == w.info.Size() && info.ModTime().Equal(w.info.ModTime()) {
		return w.at, false
	}
	s, now := stateOf(w.path, w.opened)
	news = s != w.at || !now.same(w.now)
	w.at, w.now, w.info = s, now, nil
	if err == nil && time.Since(info.ModTime()) > coarse {
		w.info = info
	}
	return s, news
}
