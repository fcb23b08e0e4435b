package desk

import (
	"context"
	"sync"
)

// latest does jobs away from the interface thread, one after another. Only the newest
// counts: one that waits is replaced, and one under way is told to give up.
type latest[J, A any] struct {
	do      func(context.Context, J) (A, bool) // false: it gave up
	deliver func(A)                            // called on the goroutine that does the jobs
	turn    *sync.Mutex                        // held while a job is done

	mu      sync.Mutex
	wake    *sync.Cond
	waiting *J
	cancel  context.CancelFunc // of the job under way, nil for none
	patient bool               // a job under way is finished, and its answer shown, though a newer one waits
	stopped bool
}

// newLatest begins to wait for jobs. Those that share a turn are done one at a time, so
// that a processor stays free for the interface.
func newLatest[J, A any](turn *sync.Mutex, patient bool, do func(context.Context, J) (A, bool), deliver func(A)) *latest[J, A] {
	l := &latest[J, A]{do: do, deliver: deliver, turn: turn, patient: patient}
	l.wake = sync.NewCond(&l.mu)
	go l.run()
	return l
}

// post asks for a job, in the place of one that still waits.
func (l *latest[J, A]) post(j J) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.waiting = &j
	if l.cancel != nil && !l.patient {
		l.cancel()
	}
	l.wake.Broadcast()
}

// idle waits until nothing waits and nothing is under way.
func (l *latest[J, A]) idle() {
	l.mu.Lock()
	defer l.mu.Unlock()
	for l.waiting != nil || l.cancel != nil {
		l.wake.Wait()
	}
}

func (l *latest[J, A]) stop() {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.stopped = true
	if l.cancel != nil {
		l.cancel()
	}
	l.wake.Broadcast()
}

func (l *latest[J, A]) run() {
	for {
		ctx, j, ok := l.take()
		if !ok {
			return
		}
		l.turn.Lock()
		a, done := l.do(ctx, j)
		l.turn.Unlock()
		if done {
			l.deliver(a)
		}
		l.mu.Lock()
		l.cancel()
		l.cancel = nil
		l.wake.Broadcast()
		l.mu.Unlock()
	}
}

func (l *latest[J, A]) take() (context.Context, J, bool) {
	l.mu.Lock()
	defer l.mu.Unlock()
	for l.waiting == nil && !l.stopped {
		l.wake.Wait()
	}
	if l.stopped {
		var none J
		return nil, none, false
	}
	ctx, cancel := context.WithCancel(context.Background())
	j := *l.waiting
	l.waiting, l.cancel = nil, cancel
	return ctx, j, true
}
