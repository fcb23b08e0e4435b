package desk

import (
	"image"
	"sync"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
)

// canvasSize is the room for one figure: in the window's units, and how many pixels
// one unit has.
type canvasSize struct {
	width, height, scale float32
	text                 float32 // how much larger than drawn text is to be
}

func (c canvasSize) empty() bool { return c.width < 1 || c.height < 1 }

// job is what is to be worked out.
type job struct {
	epoch    uint64 // of the session; an answer from an earlier one is stale
	scenario scenario.Scenario
	faults   []scenario.Fault
	today    scenario.Date
	chosen   string // the offer the figures stress
	style    figure.Style
	room     [figureCount]canvasSize // empty for a figure that is not on the screen
}

// The figures of the window.
const (
	figureCost = iota
	figureSpend
	figureStrip
	figureCount
)

// picture is a drawing and what it looks like on the screen.
type picture struct {
	drawing *figure.Drawing
	text    float32 // the window's units in one of the drawing's
	image   image.Image
}

// answer is what came of a job.
type answer struct {
	job        job
	comparison *compare.Comparison
	pictures   [figureCount]picture
}

// worker computes and draws away from the interface thread. Only the newest job
// counts: one that waits is replaced.
type worker struct {
	deliver func(*answer) // called on the worker's own goroutine

	mu      sync.Mutex
	wake    *sync.Cond
	waiting *job
	busy    bool
	stopped bool
}

func newWorker(deliver func(*answer)) *worker {
	w := &worker{deliver: deliver}
	w.wake = sync.NewCond(&w.mu)
	go w.run()
	return w
}

// post asks for a job, in the place of one that still waits.
func (w *worker) post(j job) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.waiting = &j
	w.wake.Broadcast()
}

// idle waits until nothing waits and nothing is under way.
func (w *worker) idle() {
	w.mu.Lock()
	defer w.mu.Unlock()
	for w.waiting != nil || w.busy {
		w.wake.Wait()
	}
}

func (w *worker) stop() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.stopped = true
	w.wake.Broadcast()
}

func (w *worker) run() {
	for {
		j, ok := w.take()
		if !ok {
			return
		}
		w.deliver(work(j))
		w.mu.Lock()
		w.busy = false
		w.wake.Broadcast()
		w.mu.Unlock()
	}
}

func (w *worker) take() (job, bool) {
	w.mu.Lock()
	defer w.mu.Unlock()
	for w.waiting == nil && !w.stopped {
		w.wake.Wait()
	}
	if w.stopped {
		return job{}, false
	}
	j := *w.waiting
	w.waiting, w.busy = nil, true
	return j, true
}

// work computes a job and draws what is on the screen.
func work(j job) *answer {
	c := compare.Compare(j.scenario, j.faults, j.today)
	a := &answer{job: j, comparison: &c}
	for i, room := range j.room {
		if room.empty() {
			continue
		}
		w, h := float64(room.width/room.text), float64(room.height/room.text)
		var d *figure.Drawing
		switch i {
		case figureCost:
			d = figure.CostPerRoll(&c, j.chosen, w, h, j.style)
		case figureSpend:
			d = figure.Spend(&c, j.chosen, w, h, j.style)
		case figureStrip:
			if o := c.Find(j.chosen); o != nil {
				d = figure.Strip(o, w, h, j.style)
			}
		}
		if d != nil {
			a.pictures[i] = picture{d, room.text, d.Image(float64(room.scale * room.text))}
		}
	}
	return a
}
