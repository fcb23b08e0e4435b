package jobs

import (
	"context"
	"sync"
)

// Latest does jobs away from the interface thread, one after another. Only the newest
// counts: one that waits is replaced, and one under way is told to give up.
type Latest[J, A any] struct {
	do      func(context.Context, J) (A, bool) // false: it gave up
	deliver func(A)                            // called on the goroutine that does the jobs
	gate    *sync.Mutex                        // locked while a job is done

	mu      sync.Mutex
	wake    *sync.Cond
	waiting *J
	cancel  context.CancelFunc // of the job under way, nil for none
	patient bool               // a job under way is finished, and its answer shown, though a newer one waits
	stopped bool
}

// NewLatest begins to wait for jobs. Those that share a gate are done one at a time, so
// that a processor stays free for the interface.
func NewLatest[J, A any](gate *sync.Mutex, patient bool, do func(context.Context, J) (A, bool), deliver func(A)) *Latest[J, A] {
	l := &Latest[J, A]{do: do, deliver: deliver, gate: gate, patient: patient}
	l.wake = sync.NewCond(&l.mu)
	go l.run()
	return l
}

// Post asks for a job, in the place of one that still waits.
func (l *Latest[J, A]) Post(j J) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.stopped {
		return // nobody would do it, and Idle wait for ever
	}
	l.waiting = &j
	if l.cancel != nil && !l.patient {
		l.cancel()
	}
	l.wake.Broadcast()
}

// Cancel drops a job that waits, and tells the one under way to give up.
func (l *Latest[J, A]) Cancel() {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.waiting = nil
	if l.cancel != nil {
		l.cancel()
	}
	l.wake.Broadcast()
}

// Busy says whether a job waits or is under way.
func (l *Latest[J, A]) Busy() bool {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.waiting != nil || l.cancel != nil
}

// Idle waits until nothing waits and nothing is under way.
func (l *Latest[J, A]) Idle() {
	l.mu.Lock()
	defer l.mu.Unlock()
	for l.waiting != nil || l.cancel != nil {
		l.wake.Wait()
	}
}

func (l *Latest[J, A]) Stop() {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.stopped, l.waiting = true, nil
	if l.cancel != nil {
		l.cancel()
	}
	l.wake.Broadcast()
}

func (l *Latest[J, A]) run() {
	for {
		ctx, j, ok := l.take()
		if !ok {
			return
		}
		l.gate.Lock()
		a, done := l.do(ctx, j)
		l.gate.Unlock()
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

func (l *Latest[J, A]) take() (context.Context, J, bool) {
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
