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
	Comparison *compare.Comparison
	All        bool    // of every offer, not only of the verdict's pair
	Offer      string  // the chosen one
	Flip       FlipKey // the flip that is looked at
	Style      figure.Style
	Room       Rooms
}

// Foresight is what came of it.
type Foresight struct {
	Job      OutlookJob
	Ahead    *compare.Comparison // with its outlook
	Look     *compare.Look       // at the flip that is drawn
	Pictures [Figures]Picture
}

// Pair is what is looked at, nil for nothing.
func (f *Foresight) Pair() *compare.PairOutlook { return f.Look.Pair }

// Swings are how far each input moves what is looked at; nil where it does not.
func (f *Foresight) Swings() []compare.Swing {
	if p := f.Pair(); p != nil {
		return p.Swings
	}
	return nil
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
	f := &Foresight{Job: j, Look: &compare.Look{At: -1}}
	var err error
	if !j.All {
		f.Ahead, err = compare.LookAtPair(ctx, j.Comparison)
		return f, err
	}
	if f.Ahead, err = compare.LookAhead(ctx, j.Comparison, exact.Int(compare.CeilingPercent)); err != nil {
		return nil, err
	}
	f.Look, err = f.Ahead.LookAt(ctx, j.Offer, j.Flip.Input, j.Flip.Up)
	return f, err
}

// draw draws a figure of it, nil where there is nothing to draw.
func (f *Foresight) draw(i int, w, h float64) *figure.Drawing {
	c, style := f.Ahead, f.Job.Style
	switch {
	case i == Flip && f.Look.Curve != nil:
		return figure.Flip(c, f.Look.Curve, w, h, style)
	case i == Swings && len(f.Swings()) > 0:
		return figure.Swings(c, f.Pair().Offer, f.Swings(), w, h, style)
	case i == Volumes && f.Pair() != nil && len(f.Pair().Volumes) > 0:
		return figure.Volumes(c, f.Job.Offer, w, h, style)
	case i == Sizes:
		if o := f.OrderSizesOf(f.Job.Offer); o != nil {
			return figure.Sizes(c, f.Job.Offer, o.OrderSizes, w, h, style)
		}
	case i == Cuts:
		if o := c.Outlook.Of(f.Job.Offer); len(o.CutSizes) > 0 {
			return figure.CutSizes(c, f.Job.Offer, o.CutSizes, w, h, style)
		}
	}
	return nil
}

// OrderSizesOf is the outlook of an offer, nil where there is none.
func (f *Foresight) OrderSizesOf(offer string) *compare.OfferOutlook {
	if o := f.Ahead.Outlook.Of(offer); len(o.OrderSizes) > 0 {
		return o
	}
	return nil
}
