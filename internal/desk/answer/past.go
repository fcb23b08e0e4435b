package answer

import (
	"context"
	"errors"
	"reflect"

	"reelworth/internal/figure"
	"reelworth/internal/history"
	"reelworth/internal/rates"
)

// PastJob asks what a roll of an answer's scenario has cost at the rates of the past.
type PastJob struct {
	Answer   *Answer // the one on the screen
	File     *rates.File
	Span     history.Span
	Before   *Past // the last that was made, nil for none; drawn again where it still holds
	Style    figure.Style
	Room     Room
	Progress history.Progress
}

// Past is what came of it: a history, or why there is none.
type Past struct {
	Job     PastJob
	History *history.History
	Empty   *history.Empty // nil where there is a history
	Picture Picture
}

// LookBack works out a PastJob and draws it; it gives up when a newer one waits.
func LookBack(ctx context.Context, j PastJob) (*Past, bool) {
	p := &Past{Job: j}
	if before := j.Before; before != nil && before.holds(j) {
		p.History, p.Empty = before.History, before.Empty
	} else {
		var err error
		p.History, err = history.Of(ctx, j.Answer.Job.Scenario, j.Answer.Job.Faults, j.File, j.Span, j.Progress)
		if err != nil && !errors.As(err, &p.Empty) {
			return nil, false
		}
	}
	p.Job.Before = nil // else each would keep the one before
	if p.History != nil && !j.Room.empty() {
		p.Picture = Draw(j.Room, func(w, h float64) *figure.Drawing {
			return figure.History(p.History, j.Answer.Job.Chosen, w, h, j.Style)
		})
	}
	return p, true
}

// holds says whether the days of a history are those of another job too.
func (p *Past) holds(j PastJob) bool {
	return p.Job.File == j.File && p.Job.Span == j.Span &&
		reflect.DeepEqual(p.Job.Answer.Job.Scenario, j.Answer.Job.Scenario) &&
		reflect.DeepEqual(p.Job.Answer.Job.Faults, j.Answer.Job.Faults)
}
