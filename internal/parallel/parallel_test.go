package parallel

import (
	"errors"
	"fmt"
	"sync/atomic"
	"testing"
)

func TestEachPieceIsDoneOnce(t *testing.T) {
	for _, n := range []int{0, 1, 2, 7, 1000} {
		for _, workers := range []int{0, 1, 2, 16} {
			done := make([]atomic.Int32, n)
			if err := Each(workers, n, func(i int) error { done[i].Add(1); return nil }); err != nil {
				t.Fatal(err)
			}
			for i := range done {
				if times := done[i].Load(); times != 1 {
					t.Errorf("%d of %d by %d: done %d times", i, n, workers, times)
				}
			}
		}
	}
}

func TestNoMoreAreAtWorkThanAllowed(t *testing.T) {
	var at, most atomic.Int32
	_ = Each(3, 500, func(int) error {
		for now := at.Add(1); ; {
			was := most.Load()
			if now <= was || most.CompareAndSwap(was, now) {
				break
			}
		}
		at.Add(-1)
		return nil
	})
	if most.Load() > 3 {
		t.Errorf("%d at a time", most.Load())
	}
}

// The lowest is told of although a higher one fails before it.
func TestTheErrorIsThatOfTheLowestNumber(t *testing.T) {
	higher := make(chan struct{})
	err := Each(2, 100, func(i int) error {
		switch i {
		case 0:
			<-higher
		case 1:
			defer close(higher)
		}
		return fmt.Errorf("%d", i)
	})
	if err == nil || err.Error() != "0" {
		t.Errorf("it is %v", err)
	}
}

func TestNothingIsBegunAfterAnError(t *testing.T) {
	begun := 0
	fail := errors.New("fail")
	err := Each(1, 100, func(i int) error {
		begun++
		if i == 4 {
			return fail
		}
		return nil
	})
	if !errors.Is(err, fail) || begun != 5 {
		t.Errorf("%v after %d", err, begun)
	}
}
