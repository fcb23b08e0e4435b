package answer

import (
	"context"
	"slices"

	"reelworth/internal/figure"
	"reelworth/internal/parallel"
	"reelworth/internal/sidebyside"
)

// BesideJob asks how scenarios stand beside each other.
type BesideJob struct {
	Asked    int // another number for each other Sources or Question
	Sources  []sidebyside.Source
	Question sidebyside.Question
	By       sidebyside.Key // the order
	Down     bool           // or the opposite one
	Before   *Beside        // the last that was made, nil for none; put in order and drawn again where it still holds
	Style    figure.Style
	Room     Room
}

// Beside is what came of it.
type Beside struct {
	Job     BesideJob
	Entries []sidebyside.Entry // in the order asked for
	came    []sidebyside.Entry // in the order they came
	Picture Picture
}

// SetBeside works out a BesideJob and draws it; it gives up when a newer one waits.
func SetBeside(ctx context.Context, j BesideJob) (*Beside, bool) {
	b := &Beside{Job: j}
	if before := j.Before; before != nil && before.Job.Asked == j.Asked {
		b.came = before.came
	} else {
		for _, src := range j.Sources {
			entries, err := j.Question.Of(ctx, parallel.AllButOne(), src)
			if err != nil {
				return nil, false
			}
			b.came = append(b.came, entries...)
		}
	}
	b.Job.Before = nil // else each would keep the one before
	b.Entries = slices.Clone(b.came)
	sidebyside.Order(b.Entries, j.By, j.Down)
	if !j.Room.empty() {
		b.Picture = Draw(j.Room, func(w, h float64) *figure.Drawing { return figure.SideBySide(b.Entries, w, h, j.Style) })
	}
	return b, true
}
