package desk

import "time"

// haste says whether the headline may change at once or waits for the typing to end.
type haste bool

const (
	now     haste = true
	settles haste = false
)

// pace keeps the headline still while somebody types.
type pace struct {
	delay   time.Duration
	post    func(func())
	settled func()
	timer   *time.Timer
	waiting bool
}

func newPace(delay time.Duration, post func(func()), settled func()) *pace {
	return &pace{delay: delay, post: post, settled: settled}
}

// touch starts the wait anew, or ends it.
func (p *pace) touch(h haste) {
	if p.timer != nil {
		p.timer.Stop()
		p.timer = nil
	}
	p.waiting = h == settles
	if !p.waiting {
		return
	}
	var mine *time.Timer
	mine = time.AfterFunc(p.delay, func() {
		p.post(func() {
			if p.timer == mine {
				p.waiting = false
				p.settled()
			}
		})
	})
	p.timer = mine
}
