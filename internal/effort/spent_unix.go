//go:build unix

package effort

import (
	"syscall"
	"time"
)

// Spent is the processor time this process has had, on all processors together.
func Spent() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		panic(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
