//go:build !unix

package effort

import "time"

// Spent is the time of day, where the processor time is not to be had.
func Spent() time.Duration { return time.Duration(time.Now().UnixNano()) }
