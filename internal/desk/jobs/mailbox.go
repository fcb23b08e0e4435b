package jobs

import "sync"

// Mailbox hands answers over to the interface thread. Of those that lie there only the
// newest is opened: a thread that is busy drawing must not gather them, each with its
// pictures.
type Mailbox[A any] struct {
	post func(func())
	open func(A)

	mu   sync.Mutex
	lies *A // nil for nothing
}

// NewMailbox opens by post, which runs a function on the interface thread.
func NewMailbox[A any](post func(func()), open func(A)) *Mailbox[A] {
	return &Mailbox[A]{post: post, open: open}
}

// Put lays an answer in, in the place of one that still lies there.
func (m *Mailbox[A]) Put(a A) {
	m.mu.Lock()
	empty := m.lies == nil
	m.lies = &a
	m.mu.Unlock()
	if empty {
		m.post(m.empty)
	}
}

func (m *Mailbox[A]) empty() {
	m.mu.Lock()
	a := *m.lies
	m.lies = nil
	m.mu.Unlock()
	m.open(a)
}
