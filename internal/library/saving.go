package library

import (
	"errors"
	"io/fs"
	"os"
	"time"
)

// savingFor is how long another program's save is waited for. One takes some
// milliseconds; a disk that has to wake up, some seconds.
const savingFor = 20 * time.Second

// alone lets one program at a time save over a file: who comes second waits for the
// first, and then sees what it saved. release must be called. A folder where no lock can
// be made has none: the save itself will say what is wrong.
func alone(on disk, target string) (release func(), err error) {
	path := tempStart(target) + "lock"
	for began := time.Now(); ; {
		f, err := on.own(path)
		if err == nil {
			return func() { letGo(f, path) }, nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return func() {}, nil
		}
		abandoned, err := on.ifAbandoned(path, func() { os.Remove(path) })
		switch {
		case err == nil && abandoned, errors.Is(err, fs.ErrNotExist):
			continue
		case time.Since(began) > savingFor:
			return nil, &Problem{Path: target, Wrong: "another program has been saving this file for a while", Remedy: "try again, or save under another name"}
		}
		time.Sleep(time.Millisecond)
	}
}
