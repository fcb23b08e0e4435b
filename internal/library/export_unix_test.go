//go:build !windows

package library

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

func TestAnExportIsNoDeviceNoPipeAndNoFolder(t *testing.T) {
	dir := t.TempDir()
	pipe := filepath.Join(dir, "pipe.svg")
	if err := syscall.Mkfifo(pipe, 0o644); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link.svg")
	if err := os.Symlink(pipe, link); err != nil {
		t.Fatal(err)
	}
	for path, want := range map[string]Cause{
		pipe:         NoOrdinaryFile,
		link:         NoOrdinaryFile,
		"/dev/null":  NoOrdinaryFile,
		dir:          IsFolder,
		dir + "/a/b": NoFolder,
	} {
		if _, err := Export(path, []byte("x"), Options{Force: true}); !fails(err, Writing, want) {
			t.Errorf("%s: %v", path, err)
		}
	}
	if info, err := os.Lstat(pipe); err != nil || info.Mode()&os.ModeNamedPipe == 0 {
		t.Error("the pipe was replaced")
	}
}
