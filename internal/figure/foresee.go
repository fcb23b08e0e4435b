package figure

import (
	"context"
	"errors"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// ErrNothing is the error of an export of what would change the answer where nothing is
// compared with anything.
var ErrNothing = errors.New(words.NothingToDraw)

// Foresee works out what a figure of an outlook shows, for the chosen offer: of a flip the
// crossing of that input, or the nearest where it has none. It does nothing for the other
// figures. Errors: ErrNothing, and ctx's.
func (e *Export) Foresee(ctx context.Context, input compare.Input, up bool) error {
	if !slices.Contains(OutlookFigures(), e.Figure) {
		return nil
	}
	c, err := compare.LookAhead(ctx, e.Comparison, exact.Int(compare.CeilingPercent))
	if err != nil {
		return err
	}
	e.Comparison = c
	switch e.Figure {
	case FigureSizes:
		e.Sizes = c.Outlook.Of(e.Chosen).OrderSizes
		return orNothing(len(e.Sizes))
	case FigureCuts:
		e.Cuts = c.Outlook.Of(e.Chosen).CutSizes
		return orNothing(len(e.Cuts))
	case FigureVolume:
		return orNothing(len(volumePairs(c.Outlook, e.Chosen)))
	case FigureSwings:
		if p := c.Outlook.PairOf(e.Chosen); p != nil {
			e.Swings, e.Chosen = p.Swings, p.Offer
		}
		return orNothing(len(e.Swings))
	}
	look, err := c.LookAt(ctx, e.Chosen, input, up)
	if err != nil {
		return err
	}
	if e.Curve = look.Curve; look.At < 0 {
		return ErrNothing
	}
	return nil
}

func orNothing(n int) error {
	if n == 0 {
		return ErrNothing
	}
	return nil
}
