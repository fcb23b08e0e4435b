package library

import (
	"errors"
	"io/fs"
	"os"
	"sync"
)

// lock is a file in the state folder that says its process lives. It is locked, not
// only written: the system itself lets go of a lock when the process ends, however
// that comes. The number of the process alone would not do, since numbers are given
// again and a crashed window would then look alive; it only serves on file systems
// that have no locks. The lock is a file of its own because what it protects is
// replaced by renaming, and a lock would go with the file that is replaced.
type lock struct {
	path string
	file *os.File
}

// take makes the file and locks it, with text in it for whoever reads it.
func take(on disk, path string, text []byte) (*lock, error) {
	f, err := on.own(path)
	if err != nil {
		return nil, err
	}
	if _, err := f.Write(text); err != nil {
		letGo(f, path)
		return nil, err
	}
	l := &lock{path, f}
	unfreed.Store(l, true)
	return l, nil
}

// unfreed are the locks not freed yet. Without it the garbage collector would close the
// file of one that nobody looks at any more, and so let go of it.
var unfreed sync.Map

// inPlace says whether the file is still where it was made, for others to see.
func (l *lock) inPlace() bool {
	if l == nil {
		return false
	}
	mine, err := l.file.Stat()
	if err != nil {
		return false
	}
	there, err := os.Stat(l.path)
	return err == nil && os.SameFile(mine, there)
}

// free removes the file and lets go of it. A nil lock is free, and so is a free one.
func (l *lock) free() {
	if l != nil && l.file != nil {
		letGo(l.file, l.path)
		unfreed.Delete(l)
		l.file = nil
	}
}

// ifDead calls do, which may be nil, if the process that made the lock at path is gone,
// and says whether it is. Where there is no lock any more do is not called: whoever removed
// it has tidied up, and its name may just be taken again.
func ifDead(on disk, path string, process int, do func()) bool {
	if do == nil {
		do = func() {}
	}
	dead, err := on.ifAbandoned(path, do)
	switch {
	case err == nil:
		return dead
	case errors.Is(err, fs.ErrNotExist):
		return true
	case !running(process):
		do()
		return true
	}
	return false
}
