package compare_test

import (
	"context"
	"reflect"
	"sync"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// The engine keeps nothing between calls: asked from many sides at once about one scenario,
// it gives all the same answer.
func TestComparingSideBySide(t *testing.T) {
	s := quaysideByHand()
	look := func() *compare.Comparison {
		c := compare.Compare(s, nil, scenario.Date{})
		o, err := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
		if err != nil {
			t.Error(err)
		}
		return o
	}
	want := look()
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			if got := look(); !reflect.DeepEqual(got, want) {
				t.Error("another answer")
			}
		})
	}
	all.Wait()
}
