package library

import (
	"errors"
	"os"
	"syscall"
)

// own makes a file that is this process's until it ends: it is opened so that others
// may read but not write it, which the system holds to until the process is gone.
// Making and owning are one step here, which they are not with LockFileEx.
func (realDisk) own(path string) (*os.File, error) {
	return open(path, syscall.GENERIC_READ|syscall.GENERIC_WRITE, syscall.FILE_SHARE_READ, syscall.CREATE_NEW)
}

// ifAbandoned calls do if nobody holds the file: if it may be opened to be written.
func (realDisk) ifAbandoned(path string, do func()) (bool, error) {
	f, err := open(path, syscall.GENERIC_WRITE, syscall.FILE_SHARE_READ|syscall.FILE_SHARE_WRITE|syscall.FILE_SHARE_DELETE, syscall.OPEN_EXISTING)
	if errors.Is(err, sharingViolation) {
		return false, nil
	}
	if err != nil {
		return false, err
	}
	f.Close() // an open file could not be removed; nobody takes an abandoned name again
	do()
	return true, nil
}

// tryAlone makes a file that nobody else can open and that the system removes when it is
// closed, however that comes.
func (realDisk) tryAlone(path string) (leave func(), err error) {
	const deleteOnClose = 0x04000000 // FILE_FLAG_DELETE_ON_CLOSE
	f, err := openWith(path, syscall.GENERIC_READ|syscall.GENERIC_WRITE, 0, syscall.OPEN_ALWAYS, deleteOnClose)
	if errors.Is(err, sharingViolation) {
		return nil, errBusy
	}
	if err != nil {
		return nil, err
	}
	return func() { f.Close() }, nil
}

const sharingViolation = syscall.Errno(32) // ERROR_SHARING_VIOLATION

// letGo ends the ownership and removes the file: an open one could not be.
func letGo(f *os.File, path string) {
	f.Close()
	os.Remove(path)
}

func open(path string, access, share, how uint32) (*os.File, error) {
	return openWith(path, access, share, how, syscall.FILE_ATTRIBUTE_NORMAL)
}

func openWith(path string, access, share, how, flags uint32) (*os.File, error) {
	name, err := syscall.UTF16PtrFromString(path)
	if err != nil {
		return nil, &os.PathError{Op: "open", Path: path, Err: err}
	}
	h, err := syscall.CreateFile(name, access, share, nil, how, flags, 0)
	if err != nil {
		return nil, &os.PathError{Op: "open", Path: path, Err: err}
	}
	return os.NewFile(uintptr(h), path), nil
}

// running says whether there is a process of that number.
func running(process int) bool {
	p, err := os.FindProcess(process) // here it fails where there is none
	if err == nil {
		p.Release()
	}
	return err == nil
}
