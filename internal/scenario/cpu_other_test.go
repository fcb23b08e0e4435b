//go:build !unix

package scenario

import "time"

// cpu is the time of day where the processor time is not to be had.
func cpu() time.Duration { return time.Duration(time.Now().UnixNano()) }
