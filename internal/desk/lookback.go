package desk

import (
	"sync"
	"time"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/pages"
	"reelworth/internal/history"
)

// pastScreen is where the past is shown.
type pastScreen interface {
	lookingBack() (j answer.PastJob, wanted bool) // what is in sight to look back on
	lookBack(pages.Back)                          // show what is known
}

// lookback works out what a roll has cost at the rates of the past, away from the
// interface thread, while the page about that is in sight.
type lookback struct {
	on     pastScreen
	worker *jobs.Latest[answer.PastJob, *answer.Past]
	post   func(func())
	back   pages.Back
	asked  int // rises with every job, so that progress of an earlier one counts for nothing
}

// newLookback shows on a screen; gate is locked while it works, post runs a function on
// the interface thread.
func newLookback(on pastScreen, gate *sync.Mutex, post func(func())) *lookback {
	b := &lookback{on: on, post: post}
	b.worker = jobs.NewLatest(gate, false, answer.LookBack, jobs.NewMailbox(post, b.deliver).Put)
	return b
}

// look asks for the past of an answer, if its page is in sight; nil is no answer yet.
func (b *lookback) look(a *answer.Answer) {
	j, wanted := b.on.lookingBack()
	if a == nil || !wanted || j.File == nil {
		return
	}
	b.asked++
	b.back.PastStopped, b.back.PastDone, b.back.PastOf = false, 0, 0
	j.Answer, j.Before, j.Progress = a, b.back.Past, b.progress(b.asked)
	b.worker.Post(j)
}

// patience is how long the past may take before its progress is told.
const patience = 300 * time.Millisecond

// progress tells, now and then, how far a job has come that takes long.
func (b *lookback) progress(asked int) history.Progress {
	began, told := time.Now(), 0
	return func(done, of int) {
		step := done * 20 / max(of, 1)
		if step == told || done == of || time.Since(began) < patience {
			return
		}
		told = step
		b.post(func() {
			if asked == b.asked {
				b.back.PastDone, b.back.PastOf = done, of
				b.on.lookBack(b.back)
			}
		})
	}
}

// deliver shows what the worker found out, unless something newer is asked for.
func (b *lookback) deliver(p *answer.Past) {
	b.asked++
	b.back = pages.Back{Past: p}
	b.on.lookBack(b.back)
}

// cancel drops what is under way, since the answer it is about will be another.
func (b *lookback) cancel() {
	b.asked++
	b.worker.Cancel()
}

// stop gives up what is under way for good; it says whether something was.
func (b *lookback) stop() bool {
	if !b.worker.Busy() {
		return false
	}
	b.cancel()
	b.back.PastStopped, b.back.PastDone, b.back.PastOf = true, 0, 0
	b.on.lookBack(b.back)
	return true
}
