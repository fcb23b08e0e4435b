//go:build !windows

package library

import (
	"io/fs"
	"os"
	"syscall"
)

// ownedByOther says whether a file belongs to another user than this process runs as.
func ownedByOther(info fs.FileInfo) bool {
	st, ok := info.Sys().(*syscall.Stat_t)
	return ok && int(st.Uid) != os.Geteuid()
}

// hasOtherNames says whether a file has hard links besides this one.
func hasOtherNames(info fs.FileInfo) bool {
	st, ok := info.Sys().(*syscall.Stat_t)
	return ok && st.Nlink > 1
}

// keepOwner gives a file the owner and the group of another, as far as this user may.
func keepOwner(info fs.FileInfo, to string) {
	st, ok := info.Sys().(*syscall.Stat_t)
	if !ok {
		return
	}
	if os.Lchown(to, int(st.Uid), int(st.Gid)) != nil {
		_ = os.Lchown(to, -1, int(st.Gid))
	}
}
