package compare

import (
	"context"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Flip is how far an input must move for the saving to change sign, everything else
// as it is and with no rounding anywhere.
type Flip struct {
	Input Input
	Offer string // the offer the input belongs to; "" when it is the scenario's
	Quote int    // index of the quote in the file; −1 for anything else
	Today exact.Fraction
	// Below and Above are the nearest values on either side; nil for none. Today's own
	// value counts as above where going up crosses zero at once, as below where going
	// down does.
	Below, Above *exact.Fraction
	// BelowEnd and AboveEnd are where, still further away, it changes back; nil where it
	// never does, and for inputs that go in steps.
	BelowEnd, AboveEnd *exact.Fraction
}

// savingBy is the saving as it goes by an input.
func (p *pair) savingBy(in *input) pieces {
	return sumOf([]pieces{p.out[otherSide].by(in, otherSide), p.out[offerSide].by(in, offerSide)},
		[]exact.Fraction{exact.Int(1), exact.Int(-1)})
}

// flips finds every flip, until ctx is done.
func (p *pair) flips(ctx context.Context) (list []Flip, err error) {
	for _, in := range p.inputs() {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		list = append(list, p.flip(&in))
	}
	for _, in := range p.inputsInSteps() {
		f, err := p.stepFlip(ctx, &in)
		if err != nil {
			return nil, err
		}
		list = append(list, f)
	}
	sortByInput(list, func(f Flip) Input { return f.Input })
	return list, nil
}

func (in *input) flip() Flip {
	return Flip{Input: in.name, Offer: in.owner, Quote: in.quote, Today: in.today}
}

// flip solves one input, piece by piece.
func (p *pair) flip(in *input) Flip {
	f := in.flip()
	sign := p.saving.Sign()
	if sign == 0 {
		return f
	}
	saving := p.savingBy(in)
	if !in.inverse {
		f.Above, f.AboveEnd = saving.above(in.today, in.farthest(), sign)
		f.Below, f.BelowEnd = saving.below(in.today, exact.Fraction{}, sign)
		return f
	}
	u := in.x(in.today)
	f.Above, f.AboveEnd = inverted(saving.below(u, in.x(in.farthest()), sign))
	// Down to 0 is up without end: twice the last knot and the root is beyond all.
	f.Below, f.BelowEnd = inverted(saving.above(u, saving.beyondAll(u), sign))
	return f
}

// above is where the value changes sign above u, at most at most, and where it changes
// back after that.
func (p *pieces) above(u, most exact.Fraction, sign int) (at, end *exact.Fraction) {
	if at = p.crossAbove(u, most, sign); at != nil {
		end = p.crossAbove(*at, p.beyondAll(*at), -sign)
	}
	return at, end
}

// below is above downwards.
func (p *pieces) below(u, least exact.Fraction, sign int) (at, end *exact.Fraction) {
	if at = p.crossBelow(u, least, sign); at != nil {
		end = p.crossBelow(*at, exact.Fraction{}, -sign)
	}
	return at, end
}

// beyondAll is a place above u, all knots and the last line's root.
func (p *pieces) beyondAll(u exact.Fraction) exact.Fraction {
	most := u
	if n := len(p.knots); n > 0 {
		most = exact.Max(most, p.knots[n-1].u)
	}
	if last := p.between(len(p.knots)); !last.slope.IsZero() {
		most = exact.Max(most, last.at0.Neg().Quo(last.slope))
	}
	return most.Add(most)
}

// inverted are places in 1/x as those in x.
func inverted(at, end *exact.Fraction) (x, xEnd *exact.Fraction) {
	over := func(u *exact.Fraction) *exact.Fraction {
		if u == nil {
			return nil
		}
		x := exact.Int(1).Quo(*u)
		return &x
	}
	return over(at), over(end)
}

// sortByInput puts a list in the order of the result: quotes as in the file, then the
// other inputs.
func sortByInput[T any](list []T, input func(T) Input) {
	order := map[Input]int{}
	for n, i := range (&scenario.Scenario{}).Inputs() {
		order[i] = n + 1
	}
	slices.SortStableFunc(list, func(a, b T) int { return order[input(a)] - order[input(b)] })
}
