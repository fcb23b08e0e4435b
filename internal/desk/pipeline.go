package desk

import (
	"sync"
	"time"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/jobs"
)

// screen is where the pipeline's answers are shown.
type screen interface {
	Epoch() uint64              // of the session; an answer from an earlier one is stale
	question() answer.Job       // the scenario as it is now
	outlook() answer.OutlookJob // what is wanted to be known of what would change the answer
	deliver(*answer.Answer)     // show all of it but the headline
	foresee(*answer.Foresight)  // show what would change it; nil for not known yet
	settle(*answer.Answer)      // let the headline follow
}

// pipeline works answers out away from the interface thread: first the figures and their
// pictures, then what would change them, and the headline when the typing has ended.
type pipeline struct {
	on     screen
	worker *jobs.Latest[answer.Job, *answer.Answer]
	ahead  *jobs.Latest[answer.OutlookJob, *answer.Foresight]
	pace   *jobs.Pace
	shown  *answer.Answer // the newest answer on the screen, nil for none
	flip   answer.FlipKey // the flip that is looked at
	gate   *sync.Mutex    // locked while a job is done
	also   []besides      // what else is worked out of an answer
}

// besides is work that follows on an answer, and gives way to the next one.
type besides interface {
	Cancel()
	Idle()
	Stop()
}

// apart is work that another answer does not concern.
type apart struct{ besides }

func (apart) Cancel() {}

// newPipeline shows on a screen; settle is how long after the last keystroke the headline
// follows, post runs a function on the interface thread.
func newPipeline(on screen, settle time.Duration, post func(func())) *pipeline {
	p := &pipeline{on: on}
	p.pace = jobs.NewPace(settle, post, p.settle)
	p.gate = new(sync.Mutex)
	p.worker = jobs.NewLatest(p.gate, true, answer.Work, jobs.NewMailbox(post, p.deliver).Put)
	p.ahead = jobs.NewLatest(p.gate, false, answer.LookAhead, jobs.NewMailbox(post, p.foresee).Put)
	p.also = []besides{p.ahead}
	return p
}

// compute asks for the figures of the scenario as it stands.
func (p *pipeline) compute(h jobs.Haste) {
	p.pace.Touch(h)
	p.redraw()
}

// redraw asks for the pictures again, in the room there is now.
func (p *pipeline) redraw() {
	for _, b := range p.also {
		b.Cancel()
	}
	p.on.foresee(nil)
	p.worker.Post(p.on.question())
}

// forget says that the answer on the screen is about something else.
func (p *pipeline) forget() { p.shown = nil }

// deliver shows what the worker found out, unless the window has moved on.
func (p *pipeline) deliver(a *answer.Answer) {
	if a.Job.Epoch != p.on.Epoch() {
		return
	}
	p.shown = a
	p.on.deliver(a)
	p.lookAhead()
}

// lookAhead asks what would change the answer on the screen.
func (p *pipeline) lookAhead() {
	if p.shown == nil {
		return
	}
	j := p.on.outlook()
	j.Answer, j.Comparison, j.Flip = p.shown, p.shown.Comparison, p.flip
	p.ahead.Post(j)
}

// lookAtFlip turns to another flip of the answer.
func (p *pipeline) lookAtFlip(k answer.FlipKey) {
	p.flip = k
	p.lookAhead()
}

// foresee shows what would change the answer, unless the window has moved on.
func (p *pipeline) foresee(f *answer.Foresight) {
	if p.shown != f.Job.Answer {
		return
	}
	p.shown.Comparison = f.Ahead
	p.on.foresee(f)
	if !p.pace.Waiting {
		p.settle()
	}
}

// settle lets the headline follow; the typing has ended.
func (p *pipeline) settle() {
	if p.shown != nil {
		p.on.settle(p.shown)
	}
	answer.Rest()
}

// settleNow ends the wait for the typing to end.
func (p *pipeline) settleNow() {
	if p.pace.Waiting {
		p.pace.Touch(jobs.Now)
		p.settle()
	}
}

// idle waits until nothing is under way.
func (p *pipeline) idle() {
	p.worker.Idle()
	for _, b := range p.also {
		b.Idle()
	}
}

func (p *pipeline) stop() {
	p.worker.Stop()
	for _, b := range p.also {
		b.Stop()
	}
}
