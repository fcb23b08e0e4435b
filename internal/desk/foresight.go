package desk

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/figure"
)

// outlookJob asks what would change an answer that is on the screen.
type outlookJob struct {
	answer     *answer
	comparison compare.Comparison // a copy, so that the screen's can be added to meanwhile
	all        bool               // of every offer, not only of the verdict's pair
	offer      string             // the chosen one
	turn       turnKey            // the turn that is looked at
	style      figure.Style
	room       [figureCount]canvasSize
}

// foresight is what came of it.
type foresight struct {
	job      outlookJob
	outlook  *compare.Outlook
	rival    compare.Standing
	turns    []compare.Turn
	at       int            // of the turn that is drawn, −1 for none
	curve    *compare.Curve // of that turn
	pictures [figureCount]picture
}

// turnKey names a turn across answers: what moves, and whether up or down.
type turnKey struct {
	input compare.Input
	up    bool
}

// lookAhead works out an outlookJob and draws it; it gives up when a newer one waits.
func lookAhead(ctx context.Context, j outlookJob) (*foresight, bool) {
	f, err := foresee(ctx, j)
	if err != nil {
		return nil, false
	}
	f.pictures = drawAll(j.room, f.draw)
	return f, true
}

// foresee works out an outlookJob; its only error is ctx's.
func foresee(ctx context.Context, j outlookJob) (*foresight, error) {
	f := &foresight{job: j, at: -1}
	c := &f.job.comparison
	var err error
	if !j.all {
		f.outlook = &compare.Outlook{}
		f.outlook.Pair, err = compare.PairFlips(ctx, c)
		return f, err
	}
	if f.outlook, err = compare.LookAhead(ctx, c, exact.Int(compare.CeilingPercent)); err != nil {
		return nil, err
	}
	c.Outlook = f.outlook
	f.rival = c.StandingOf(j.offer)
	f.turns = compare.Turns(f.rival.Flips)
	if f.at = compare.PickTurn(f.turns, j.turn.input, j.turn.up); f.at < 0 {
		return f, nil
	}
	from, to := figure.FlipRange(&f.turns[f.at].Flip)
	f.curve, err = c.CurveAt(ctx, f.rival, f.turns[f.at], from, to)
	return f, err
}

// draw draws a figure of it, nil where there is nothing to draw.
func (f *foresight) draw(i int, w, h float64) *figure.Drawing {
	c, style := &f.job.comparison, f.job.style
	switch {
	case i == figureFlip && f.curve != nil:
		return figure.Flip(c, f.curve, w, h, style)
	case i == figureSwings && len(f.rival.Swings) > 0:
		return figure.Swings(c, f.rival.Offer, f.rival.Swings, w, h, style)
	case i == figureSizes:
		if o := f.of(f.job.offer); o != nil {
			return figure.Sizes(c, f.job.offer, o.OrderSizes, w, h, style)
		}
	}
	return nil
}

// of is the outlook of an offer, nil where there is none.
func (f *foresight) of(offer string) *compare.OfferOutlook {
	if o := f.outlook.Of(offer); len(o.OrderSizes) > 0 {
		return o
	}
	return nil
}

// askAhead asks what would change the answer on the screen.
func (d *Desk) askAhead() {
	if d.shown == nil {
		return
	}
	j := outlookJob{
		answer: d.shown, comparison: *d.shown.comparison, style: d.style(), turn: d.turn,
		all: d.answer.wantsAll(), room: d.answer.roomAhead(d.win.Canvas().Scale()),
	}
	if s := d.current(); d.session.sel.offer < len(s.Offers) {
		j.offer = s.Offers[d.session.sel.offer].Name
	}
	d.ahead.post(j)
}

// foreseen shows what would change the answer, unless the window has moved on.
func (d *Desk) foreseen(f *foresight) {
	if d.shown != f.job.answer {
		return
	}
	d.shown.comparison.Outlook = f.outlook
	d.answer.foresee(f)
	if !d.pace.waiting {
		d.settled()
	}
}

// lookAt turns to another turn of the answer.
func (d *Desk) lookAt(k turnKey) {
	d.turn = k
	d.askAhead()
}
