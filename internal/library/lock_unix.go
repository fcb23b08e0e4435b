//go:build !windows

package library

import (
	"errors"
	"os"
	"syscall"
)

// own makes a file that is this process's until it ends. flock, and not fcntl: the
// latter would not keep two windows of one process apart, and is lost when the file is
// closed anywhere in it.
func (realDisk) own(path string) (*os.File, error) {
	for range 100 {
		f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE|os.O_EXCL, 0o600)
		if err != nil {
			return nil, err
		}
		// Waits for one who is just looking whether the file is abandoned, and may
		// remove it for that. Without locks the process number in the name must do.
		_ = flock(f, syscall.LOCK_EX)
		if (&lock{path, f}).inPlace() {
			return f, nil
		}
		f.Close()
	}
	return nil, &os.PathError{Op: "lock", Path: path, Err: syscall.EAGAIN}
}

// ifAbandoned calls do if nobody holds the file, while nobody can. An error is
// fs.ErrNotExist where there is none.
func (realDisk) ifAbandoned(path string, do func()) (bool, error) {
	f, err := os.Open(path)
	if err != nil {
		return false, err
	}
	defer f.Close()
	return whileNobodyHolds(f, path, do)
}

// whileNobodyHolds calls do if nobody holds the opened file and it is still the one at
// path. It takes a shared lock, so that two who look do not take each other for the owner.
// Who makes the file at path waits for that lock before it makes another, so that do can
// never meet the new one.
func whileNobodyHolds(f *os.File, path string, do func()) (bool, error) {
	err := flock(f, syscall.LOCK_SH|syscall.LOCK_NB)
	if errors.Is(err, syscall.EWOULDBLOCK) {
		return false, nil
	}
	if err != nil {
		return false, err
	}
	defer flock(f, syscall.LOCK_UN)
	if !(&lock{path, f}).inPlace() { // another looked before, and removed it
		return false, nil
	}
	do()
	return true, nil
}

// tryAlone makes a file, or takes one that a killed program left, and locks it until leave
// is called. Only who has the lock removes the file, so that nobody removes another's.
func (realDisk) tryAlone(path string) (leave func(), err error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o666)
	if err != nil {
		return nil, err
	}
	switch err := flock(f, syscall.LOCK_EX|syscall.LOCK_NB); {
	case errors.Is(err, syscall.EWOULDBLOCK):
		f.Close()
		return nil, errBusy
	case err != nil: // a file system without locks
		os.Remove(path)
		f.Close()
		return nil, err
	case !(&lock{path, f}).inPlace(): // who had it before has removed it just now
		f.Close()
		return nil, errBusy
	}
	return func() { letGo(f, path) }, nil
}

// letGo removes an owned file and ends the ownership, in this order so that nobody
// takes it for a dead one. The lock is given up by name, not only by closing: a child
// process just being started may hold a copy of the file.
func letGo(f *os.File, path string) {
	if (&lock{path, f}).inPlace() {
		os.Remove(path)
	}
	_ = flock(f, syscall.LOCK_UN)
	f.Close()
}

func flock(f *os.File, how int) error {
	for {
		if err := syscall.Flock(int(f.Fd()), how); err != syscall.EINTR {
			return err
		}
	}
}

// running says whether there is a process of that number.
func running(process int) bool {
	err := syscall.Kill(process, 0)
	return err == nil || err == syscall.EPERM
}
