package compare

import (
	"context"
	"math"
	"sync/atomic"
	"testing"
	"time"

	"reelworth/internal/effort"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func BenchmarkLookAtPair(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAtPair(context.Background(), &c); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkOutlook6(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkVolumeRanges6 is who is cheaper of every offer and the baseline, at each number
// of rolls a year.
func BenchmarkVolumeRanges6(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		outlays, err := outlaysOf(b.Context(), &c)
		if err != nil {
			b.Fatal(err)
		}
		for i := range c.Offers {
			if o := &c.Offers[i]; o.Against != nil {
				if list, err := c.pair(o, c.Baseline(), outlays).volumeRanges(b.Context()); err != nil || len(list) == 0 {
					b.Fatal(list, err)
				}
			}
		}
	}
}

func BenchmarkOutlookAtTheLimits(b *testing.B) {
	c := Compare(awkward(), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAhead(b.Context(), &c, exact.Int(CeilingPercent)); err != nil {
			b.Fatal(err)
		}
	}
}

// stopsAfter is a context that is done once it has been asked so many times.
type stopsAfter struct {
	context.Context
	asked, most atomic.Int64
}

func (s *stopsAfter) Err() error {
	if s.asked.Add(1) > s.most.Load() {
		return context.Canceled
	}
	return nil
}

// BenchmarkOutlookStopped is how long the largest outlook goes on after it was stopped
// somewhere in its midst.
func BenchmarkOutlookStopped(b *testing.B) {
	c := Compare(awkward(), nil, scenario.Date{})
	whole := &stopsAfter{Context: b.Context()}
	whole.most.Store(math.MaxInt64)
	if _, err := LookAhead(whole, &c, exact.Int(CeilingPercent)); err != nil {
		b.Fatal(err)
	}
	for n := int64(1); b.Loop(); n++ {
		b.StopTimer()
		ctx, stop := context.WithCancel(b.Context())
		midst := &signalled{Context: ctx, at: whole.asked.Load() * (n%10 + 1) / 12, here: make(chan struct{})}
		done := make(chan error)
		go func() {
			_, err := LookAhead(midst, &c, exact.Int(CeilingPercent))
			done <- err
		}()
		<-midst.here
		b.StartTimer()
		stop()
		if err := <-done; err != context.Canceled {
			b.Fatal(err)
		}
	}
}

// signalled is a context that tells when it has been asked so many times.
type signalled struct {
	context.Context
	asked atomic.Int64
	at    int64
	here  chan struct{}
}

func (s *signalled) Err() error {
	if s.asked.Add(1) == s.at {
		close(s.here)
	}
	return s.Context.Err()
}

// Wherever it is stopped, looking ahead ends with that error, gives nothing and asks no more
// than once for each that works at it.
func TestLookingAheadStopsAnywhere(t *testing.T) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	whole := &stopsAfter{Context: t.Context()}
	whole.most.Store(math.MaxInt64)
	if _, err := LookAhead(whole, &c, exact.Int(CeilingPercent)); err != nil {
		t.Fatal(err)
	}
	all := whole.asked.Load()
	if all < 6*430 {
		t.Errorf("asked %d times, less than once for every number of rolls", all)
	}
	for part := range int64(24) {
		ctx := &stopsAfter{Context: t.Context()}
		ctx.most.Store(all * part / 24)
		ahead, err := LookAhead(ctx, &c, exact.Int(CeilingPercent))
		if err != context.Canceled || ahead != nil {
			t.Errorf("stopped after %d: %v, %v", ctx.most.Load(), ahead != nil, err)
		}
		if more := ctx.asked.Load() - ctx.most.Load(); more > 40 {
			t.Errorf("stopped after %d it asked %d times more", ctx.most.Load(), more)
		}
	}
}

// The time allowed is ten times what it takes, for slow machines.
func TestLookingAheadStaysQuick(t *testing.T) {
	c := Compare(manyOffers(50, 60), nil, scenario.Date{})
	start := effort.Spent()
	if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
		t.Fatal(err)
	}
	if took := effort.Spent() - start; took > 4*time.Second {
		t.Errorf("took %v for 50 offers and 60 months", took)
	}
}

func BenchmarkOutlookOfTheWorkedExample(b *testing.B) {
	c := Compare(quayside(), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
			b.Fatal(err)
		}
	}
}
