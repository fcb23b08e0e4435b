package figure

import (
	"context"
	"errors"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
)

// ErrNothing is the error of an export of what would change the answer where nothing is
// held against anything.
var ErrNothing = errors.New("there is nothing to draw: choose a way to buy that can be computed and held against another")

// Foresee works out what a figure of an outlook shows, for the chosen offer: of a flip the
// turn of that input, or the nearest where it has none. It does nothing for the other
// figures. Errors: ErrNothing, and ctx's.
func (e *Export) Foresee(ctx context.Context, input compare.Input, up bool) error {
	if !slices.Contains(OutlookFigures(), e.Figure) {
		return nil
	}
	c := *e.Comparison
	var err error
	if c.Outlook, err = compare.LookAhead(ctx, &c, exact.Int(compare.CeilingPercent)); err != nil {
		return err
	}
	e.Comparison = &c
	s := c.StandingOf(e.Chosen)
	switch e.Figure {
	case FigureSizes:
		e.Sizes = c.Outlook.Of(e.Chosen).OrderSizes
		return orNothing(len(e.Sizes))
	case FigureCuts:
		e.Cuts = c.Outlook.Of(e.Chosen).CutSizes
		return orNothing(len(e.Cuts))
	case FigureSwings:
		e.Swings, e.Chosen = s.Swings, s.Offer
		return orNothing(len(e.Swings))
	}
	turns := compare.Turns(s.Flips)
	at := compare.PickTurn(turns, input, up)
	if at < 0 {
		return ErrNothing
	}
	from, to := FlipRange(&turns[at].Flip)
	if e.Curve, err = c.CurveAt(ctx, s, turns[at], from, to); err != nil {
		return err
	}
	return nil
}

func orNothing(n int) error {
	if n == 0 {
		return ErrNothing
	}
	return nil
}
