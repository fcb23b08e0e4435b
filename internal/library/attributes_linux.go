package library

import (
	"strings"
	"syscall"
)

// keepExtended gives a file the extended attributes of another, as far as the system
// lets it: access lists, labels, what file managers note.
func keepExtended(from, to string) {
	names := make([]byte, 64<<10) // the most that Linux lists
	n, err := syscall.Listxattr(from, names)
	if err != nil || n <= 0 {
		return
	}
	value := make([]byte, 64<<10) // the most that Linux keeps in one
	for _, name := range strings.Split(strings.TrimRight(string(names[:n]), "\x00"), "\x00") {
		if size, err := syscall.Getxattr(from, name, value); err == nil {
			_ = syscall.Setxattr(to, name, value[:size], 0)
		}
	}
}
