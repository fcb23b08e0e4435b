package draft

import (
	"reflect"
	"slices"

	"reelworth/internal/scenario"
)

// splice replaces before, from index, by after.
type splice[T any] struct {
	index         int
	before, after []T
}

func (s *splice[T]) do(list []T) []T   { return spliced(list, s.index, len(s.before), s.after) }
func (s *splice[T]) undo(list []T) []T { return spliced(list, s.index, len(s.after), s.before) }

// spliced replaces n of a list from index by with, leaving the list itself as it is. A
// list that was not there is not there again once it is empty.
func spliced[T any](list []T, index, n int, with []T) []T {
	switch {
	case n == 0 && len(with) == 0:
		return list
	case len(list)-n+len(with) == 0:
		return nil
	}
	now := make([]T, 0, len(list)-n+len(with))
	now = append(now, list[:index]...)
	now = append(now, with...)
	return append(now, list[index+n:]...)
}

func (s *step) do(f *scenario.File) {
	f.Scenarios, f.Reels = s.scenarios.do(f.Scenarios), s.reels.do(f.Reels)
}

func (s *step) undo(f *scenario.File) {
	f.Scenarios, f.Reels = s.scenarios.undo(f.Scenarios), s.reels.undo(f.Reels)
}

// changesNothing says whether the step leads back to where it began.
func (s *step) changesNothing() bool {
	return slices.EqualFunc(s.scenarios.before, s.scenarios.after, scenario.Same) && reflect.DeepEqual(s.reels.before, s.reels.after)
}
