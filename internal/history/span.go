package history

import (
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// Span is the days of a file that a history is of, both ends included: the last Years
// years back from the newest day, or From and To, each as far as it is said. The zero
// value is the whole file.
type Span struct {
	Years    int
	From, To scenario.Date
}

// places are the first day of the span, and the one after its last.
func (s Span) places(f *rates.File) (from, to int) {
	from, to = 0, f.Len()
	if s.Years > 0 {
		return f.Place(f.Newest().Date().YearsBefore(s.Years)), to
	}
	if s.From != (scenario.Date{}) {
		from = f.Place(s.From)
	}
	if s.To != (scenario.Date{}) {
		to = f.Place(s.To.AddDays(1))
	}
	return from, max(from, to)
}
