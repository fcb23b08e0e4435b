package jobs

import "time"

// Haste says whether the headline may change at once or waits for the typing to end.
type Haste bool

const (
	Now     Haste = true
	Settles Haste = false
)

// Pace keeps the headline still while somebody types.
type Pace struct {
	delay   time.Duration
	post    func(func())
	settled func()
	timer   *time.Timer
	Waiting bool
}

// NewPace calls settled by post when nothing was touched for a delay.
func NewPace(delay time.Duration, post func(func()), settled func()) *Pace {
	return &Pace{delay: delay, post: post, settled: settled}
}

// Touch starts the wait anew, or ends it.
func (p *Pace) Touch(h Haste) {
	if p.timer != nil {
		p.timer.Stop()
		p.timer = nil
	}
	p.Waiting = h == Settles
	if !p.Waiting {
		return
	}
	var mine *time.Timer
	mine = time.AfterFunc(p.delay, func() {
		p.post(func() {
			if p.timer == mine {
				p.Waiting = false
				p.settled()
			}
		})
	})
	p.timer = mine
}
