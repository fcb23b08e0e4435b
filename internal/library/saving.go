package library

import (
	"errors"
	"time"
)

// savingFor is how long another program's save is waited for. One takes some
// milliseconds; a disk that has to wake up, some seconds.
const savingFor = 20 * time.Second

// errBusy says that another is saving at this moment.
var errBusy = errors.New("library: another program is saving this file")

// alone lets one program at a time save over a file: who comes second waits for the
// first, and then sees what it saved. leave must be called. A folder where no lock can
// be made has none: the save itself will say what is wrong.
func alone(on disk, target string) (leave func(), err error) {
	path := tempStart(target) + "lock"
	for began := time.Now(); ; time.Sleep(time.Millisecond) {
		leave, err := on.tryAlone(path)
		switch {
		case err == nil:
			return leave, nil
		case !errors.Is(err, errBusy):
			return func() {}, nil
		case time.Since(began) > savingFor:
			return nil, &Problem{Cause: Busy, Doing: Saving, Path: target}
		}
	}
}
