package jobs

import (
	"context"
	"slices"
	"sync"
	"testing"
	"time"
)

// later collects what would run on the interface thread.
type later struct {
	mu    sync.Mutex
	queue []func()
}

func (l *later) post(f func()) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.queue = append(l.queue, f)
}

func (l *later) run() {
	l.mu.Lock()
	queue := l.queue
	l.queue = nil
	l.mu.Unlock()
	for _, f := range queue {
		f()
	}
}

// While one job is under way, of those that come meanwhile only the newest is done.
func TestOnlyTheNewestWaitingJobIsDone(t *testing.T) {
	for _, patient := range []bool{true, false} {
		started, goOn := make(chan bool, 9), make(chan bool)
		var done, answers []int
		l := NewLatest(new(sync.Mutex), patient, func(ctx context.Context, j int) (int, bool) {
			done = append(done, j)
			started <- true
			<-goOn
			return j, ctx.Err() == nil
		}, func(a int) { answers = append(answers, a) })
		l.Post(1)
		<-started
		for j := 2; j <= 5; j++ {
			l.Post(j)
		}
		goOn <- true
		<-started
		goOn <- true
		l.Idle()
		l.Stop()
		want := []int{5}
		if patient {
			want = []int{1, 5}
		}
		if !slices.Equal(done, []int{1, 5}) || !slices.Equal(answers, want) {
			t.Errorf("patient %v: done %v, answers %v", patient, done, answers)
		}
	}
}

// Those that share a gate are never under way together.
func TestJobsOfOneGateTakeTurns(t *testing.T) {
	gate := new(sync.Mutex)
	busy := false // guarded by the gate alone; the race detector watches
	one := func(context.Context, int) (int, bool) {
		if busy {
			t.Error("two at once")
		}
		busy = true
		busy = false
		return 0, true
	}
	a := NewLatest(gate, true, one, func(int) {})
	b := NewLatest(gate, false, one, func(int) {})
	for range 50 {
		a.Post(1)
		b.Post(1)
	}
	a.Idle()
	b.Idle()
	a.Stop()
	b.Stop()
}

func TestASequenceKeepsItsOrder(t *testing.T) {
	thread := &later{}
	in := NewBackground(thread.post)
	q := NewSequence(in)
	first := make(chan bool)
	var done, came []int
	for i := range 5 {
		q.Do(func() func() {
			if i == 0 {
				<-first // the others would overtake it
			}
			done = append(done, i)
			return func() { came = append(came, i) }
		})
	}
	close(first)
	in.Wait()
	thread.run()
	want := []int{0, 1, 2, 3, 4}
	slices.Sort(came) // each is posted before the next begins, but by goroutines of their own
	if !slices.Equal(done, want) || !slices.Equal(came, want) {
		t.Error(done, came)
	}
}

func TestThePaceIsEndedByHaste(t *testing.T) {
	settled := 0
	thread := &later{}
	p := NewPace(time.Hour, thread.post, func() { settled++ })
	p.Touch(Settles)
	if !p.Waiting {
		t.Error("not waiting for the typing to end")
	}
	p.Touch(Now)
	thread.run()
	if p.Waiting || settled != 0 {
		t.Error(p.Waiting, settled)
	}
}

func TestABusyThreadFindsOneAnswer(t *testing.T) {
	thread := &later{}
	var opened []int
	m := NewMailbox(thread.post, func(a int) { opened = append(opened, a) })
	m.Put(1)
	thread.run()
	for a := 2; a <= 5; a++ {
		m.Put(a)
	}
	if len(thread.queue) != 1 {
		t.Errorf("%d errands wait for the thread, want 1", len(thread.queue))
	}
	thread.run()
	m.Put(6)
	thread.run()
	if !slices.Equal(opened, []int{1, 5, 6}) {
		t.Error("opened", opened)
	}
}

// A job that is cancelled is not done, and the next one is.
func TestACancelledJobGivesWay(t *testing.T) {
	started, done := make(chan bool), make(chan int, 9)
	l := NewLatest(new(sync.Mutex), false, func(ctx context.Context, j int) (int, bool) {
		if j == 1 {
			started <- true
			<-ctx.Done()
		}
		return j, ctx.Err() == nil
	}, func(a int) { done <- a })
	l.Post(1)
	<-started
	l.Post(2)
	l.Cancel()
	l.Idle()
	if l.Busy() || len(done) != 0 {
		t.Errorf("busy %v, %d answers", l.Busy(), len(done))
	}
	l.Post(3)
	l.Idle()
	l.Stop()
	if got := <-done; got != 3 {
		t.Error(got)
	}
}

// What is asked for after the end is not waited for.
func TestNothingIsWaitedForAfterTheEnd(t *testing.T) {
	l := NewLatest(new(sync.Mutex), true, func(_ context.Context, n int) (int, bool) { return n, true }, func(int) {})
	l.Stop()
	l.Post(1)
	l.Idle() // else this waits for ever
}
