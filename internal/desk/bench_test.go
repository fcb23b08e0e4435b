package desk

import (
	"fmt"
	"testing"
	"time"

	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// ways is the demo with so many ways to buy.
func ways(n int) scenario.File {
	f := scenario.Demo()
	s := f.Scenarios[0].Clone()
	for i := 0; len(s.Offers) < n; i++ {
		o := s.Offers[i%3]
		o.Name = fmt.Sprintf("%s, %d", o.Name, i+1)
		s.Offers = append(s.Offers, o)
	}
	f.Scenarios = []scenario.Scenario{s}
	return f
}

// BenchmarkKeystroke is from a key to the pictures on the screen, at 1×.
func BenchmarkKeystroke(b *testing.B) {
	for _, c := range []struct {
		name string
		file scenario.File
	}{{"3offers", scenario.Demo()}, {"8offers", ways(8)}} {
		b.Run(c.name, func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			h := NewHarness(app, noon)
			h.Window().Show()
			h.Resize(1280, 800)
			h.Put(c.file)
			for i := 0; b.Loop(); i++ {
				h.Type("offer[3].price", fmt.Sprint(100+i%50))
				h.pipeline.worker.Idle()
				h.drain()
			}
		})
	}
}

// BenchmarkProbe is the longest wait of something posted to the interface thread while
// 200 keys are typed 30 ms apart with eight ways to buy. One round takes six seconds.
func BenchmarkProbe(b *testing.B) {
	app := test.NewApp()
	defer app.Quit()
	thread := make(chan func(), 1000)
	done := make(chan bool)
	post := func(f func()) {
		select {
		case thread <- f:
		case <-done: // the round is over
		}
	}
	d := New(Options{App: app, Locale: "en", Now: func() time.Time { return noon }, Post: post})
	h := &Harness{Desk: d}
	d.Window().Show()
	h.win.Resize(h.win.Canvas().Size())
	h.take(session.New(ways(8)))
	go func() { // the interface thread
		for {
			select {
			case f := <-thread:
				f()
			case <-done:
				return
			}
		}
	}()
	typeAndProbe(h, post, 5) // the first keys fill caches
	var longest time.Duration
	b.ResetTimer()
	for range b.N {
		longest = max(longest, typeAndProbe(h, post, 200))
	}
	b.StopTimer()
	close(done)
	b.ReportMetric(float64(longest.Nanoseconds()), "ns/op")
}

func typeAndProbe(h *Harness, post func(func()), keys int) (longest time.Duration) {
	waits := make(chan time.Duration, 4000)
	probes := 0
	for key := range keys {
		post(func() { h.Type("offer[3].price", fmt.Sprint(100+key)) })
		for range 6 {
			time.Sleep(5 * time.Millisecond)
			asked := time.Now()
			probes++
			post(func() { waits <- time.Since(asked) })
		}
	}
	for range probes {
		longest = max(longest, <-waits)
	}
	return longest
}
