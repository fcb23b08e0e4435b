package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// writeWhole writes a file as a whole or not at all: a reader never sees half of it,
// and a file that was there stays as it was when something fails.
func writeWhole(path string, draw func(io.Writer) error) error {
	var content bytes.Buffer
	if err := draw(&content); err != nil {
		return unwritable(path, err)
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real // a link stays a link
	}
	mode := fs.FileMode(0o666)
	if info, err := os.Stat(path); err == nil {
		if !info.Mode().IsRegular() {
			return unwritable(path, errors.New("it is no ordinary file"))
		}
		mode = info.Mode().Perm()
	}
	temporary := filepath.Join(filepath.Dir(path), fmt.Sprintf(".%s.%d", filepath.Base(path), os.Getpid()))
	f, err := os.OpenFile(temporary, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return unwritable(path, err)
	}
	_, err = f.Write(content.Bytes())
	if err == nil {
		err = f.Sync()
	}
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err == nil {
		err = os.Rename(temporary, path)
	}
	if err != nil {
		os.Remove(temporary)
		return unwritable(path, err)
	}
	return nil
}

func unwritable(path string, err error) error {
	why := err
	var file *fs.PathError
	if errors.As(err, &file) {
		why = file.Err
	}
	return fmt.Errorf("%s: could not be written (%v); name a file in a folder you may write to", path, why)
}
