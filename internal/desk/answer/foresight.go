package answer

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/figure"
)

// OutlookJob asks what would change an answer that is on the screen.
type OutlookJob struct {
	Answer     *Answer
	Comparison compare.Comparison // a copy, so that the screen's can be added to meanwhile
	All        bool               // of every offer, not only of the verdict's pair
	Offer      string             // the chosen one
	Flip       FlipKey            // the flip that is looked at
	Style      figure.Style
	Room       Rooms
}

// Foresight is what came of it.
type Foresight struct {
	Job      OutlookJob
	Outlook  *compare.Outlook
	Rival    compare.Standing
	Flips    []compare.Turn
	At       int            // of the flip that is drawn, −1 for none
	curve    *compare.Curve // of that flip
	Pictures [Figures]Picture
}

// FlipKey names a flip across answers: what moves, and whether up or down.
type FlipKey struct {
	Input compare.Input
	Up    bool
}

// LookAhead works out an outlookJob and draws it; it gives up when a newer one waits.
func LookAhead(ctx context.Context, j OutlookJob) (*Foresight, bool) {
	f, err := foresee(ctx, j)
	if err != nil {
		return nil, false
	}
	f.Pictures = drawAll(j.Room, f.draw)
	return f, true
}

// foresee works out an outlookJob; its only error is ctx's.
func foresee(ctx context.Context, j OutlookJob) (*Foresight, error) {
	f := &Foresight{Job: j, At: -1}
	c := &f.Job.Comparison
	var err error
	if !j.All {
		f.Outlook = &compare.Outlook{}
		f.Outlook.Pair, err = compare.PairFlips(ctx, c)
		return f, err
	}
	if f.Outlook, err = compare.LookAhead(ctx, c, exact.Int(compare.CeilingPercent)); err != nil {
		return nil, err
	}
	c.Outlook = f.Outlook
	f.Rival = c.StandingOf(j.Offer)
	f.Flips = compare.Turns(f.Rival.Flips)
	if f.At = compare.PickTurn(f.Flips, j.Flip.Input, j.Flip.Up); f.At < 0 {
		return f, nil
	}
	from, to := figure.FlipRange(&f.Flips[f.At].Flip)
	f.curve, err = c.CurveAt(ctx, f.Rival, f.Flips[f.At], from, to)
	return f, err
}

// draw draws a figure of it, nil where there is nothing to draw.
func (f *Foresight) draw(i int, w, h float64) *figure.Drawing {
	c, style := &f.Job.Comparison, f.Job.Style
	switch {
	case i == Flip && f.curve != nil:
		return figure.Flip(c, f.curve, w, h, style)
	case i == Swings && len(f.Rival.Swings) > 0:
		return figure.Swings(c, f.Rival.Offer, f.Rival.Swings, w, h, style)
	case i == Sizes:
		if o := f.OrderSizesOf(f.Job.Offer); o != nil {
			return figure.Sizes(c, f.Job.Offer, o.OrderSizes, w, h, style)
		}
	}
	return nil
}

// OrderSizesOf is the outlook of an offer, nil where there is none.
func (f *Foresight) OrderSizesOf(offer string) *compare.OfferOutlook {
	if o := f.Outlook.Of(offer); len(o.OrderSizes) > 0 {
		return o
	}
	return nil
}
