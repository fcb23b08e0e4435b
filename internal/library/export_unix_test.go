//go:build !windows

package library

import (
	"os"
	"path/filepath"
	"strings"
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
	for path, says := range map[string]string{
		pipe:         "this is a device or a pipe",
		link:         "this is a device or a pipe",
		"/dev/null":  "this is a device or a pipe",
		dir:          "this is a folder",
		dir + "/a/b": "is not there",
	} {
		if _, err := Export(path, []byte("x"), Options{Force: true}); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", path, err)
		}
	}
	if info, err := os.Lstat(pipe); err != nil || info.Mode()&os.ModeNamedPipe == 0 {
		t.Error("the pipe was replaced")
	}
}
