//go:build unix

package scenario

import (
	"syscall"
	"time"
)

// cpu is the processor time this process has had, which a busy machine does not
// stretch as it does the time of day.
func cpu() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		panic(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
