package jobs

import "sync"

// Background does things away from the interface thread, each once.
type Background struct {
	Post    func(func()) // runs a function on the interface thread
	pending sync.WaitGroup
}

// NewBackground reports back by post, which runs a function on the interface thread.
func NewBackground(post func(func())) *Background { return &Background{Post: post} }

// Do does something, and then runs on the interface thread what it came to.
func (b *Background) Do(what func() (then func())) {
	b.pending.Add(1)
	go func() {
		defer b.pending.Done()
		then := what()
		b.Post(then)
	}()
}

// Wait waits until nothing is under way.
func (b *Background) Wait() { b.pending.Wait() }

// Sequence does things in the background one after another, in the order they came.
type Sequence struct {
	in   *Background
	last chan struct{} // closed when what came before is done; nil for nothing
}

// NewSequence does things in order, in the background.
func NewSequence(in *Background) *Sequence { return &Sequence{in: in} }

// Do does something when what came before is done.
func (q *Sequence) Do(what func() (then func())) {
	before, done := q.last, make(chan struct{})
	q.last = done
	q.in.Do(func() func() {
		if before != nil {
			<-before
		}
		defer close(done)
		return what()
	})
}
