package compare

import (
	"cmp"
	"runtime"
	"sync"
)

// sideBySide does jobs on all processors but one, which is left to whoever waits, and
// returns the first error in their order.
func sideBySide(jobs []func() error) error {
	errs := make([]error, len(jobs))
	var wait sync.WaitGroup
	workers := max(1, min(runtime.GOMAXPROCS(0)-1, len(jobs)))
	next := make(chan int)
	for range workers {
		wait.Go(func() {
			for i := range next {
				errs[i] = jobs[i]()
			}
		})
	}
	for i := range jobs {
		next <- i
	}
	close(next)
	wait.Wait()
	return cmp.Or(errs...)
}
