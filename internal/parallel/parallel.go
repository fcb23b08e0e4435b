// Package parallel does many pieces of work of one kind side by side. It promises that
// the outcome does not go by which of them ends first.
package parallel

import (
	"cmp"
	"runtime"
	"sync"
	"sync/atomic"
)

// All is on how many processors the program may work.
func All() int { return runtime.GOMAXPROCS(0) }

// AllButOne leaves a processor to whoever waits for the work.
func AllButOne() int { return max(1, All()-1) }

// Each calls do for 0 to n−1, in that order and each once, at most so many at a time, and
// returns when all have ended. After an error no more are begun; it returns the one of the
// lowest number.
func Each(workers, n int, do func(i int) error) error {
	errs := make([]error, n)
	var next atomic.Int64
	var failed atomic.Bool
	var wait sync.WaitGroup
	for range max(1, min(workers, n)) {
		wait.Go(func() {
			for !failed.Load() {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				if errs[i] = do(i); errs[i] != nil {
					failed.Store(true)
				}
			}
		})
	}
	wait.Wait()
	return cmp.Or(errs...)
}
