package compare

import (
	"context"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Swing is how far the saving goes with one input at its low and at its high, lines
// rounded as always.
type Swing struct {
	Input                 Input
	Offer                 string // as in Flip
	Quote                 int    // as in Flip
	Today                 exact.Fraction
	Low, High             exact.Fraction
	SavingLow, SavingHigh exact.Fraction
	Typed                 bool // the range is the user's
}

// Spread is how far apart the two savings are.
func (s *Swing) Spread() exact.Fraction { return s.SavingHigh.Sub(s.SavingLow).Abs() }

// How far an input swings unless the user says otherwise.
const (
	swingPercent     = 10 // of itself
	swingMostSpoiled = 10 // percent, from 0, or twice today's where that is more
	mostSwungSpoiled = 99 // percent
)

// swings are the inputs that move the saving. The pair's terms are rounded. The only
// error is ctx's.
func (p *pair) swings(ctx context.Context, ranges []scenario.Range) (list []Swing, err error) {
	var today [2]exact.Fraction
	for s := range today {
		today[s] = once(&p.out[s].swings, asked{side: side(s)}, func() exact.Fraction { return p.terms[s].year().Cost })
	}
	for _, in := range append(p.inputs(), p.inputsInSteps()...) {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		low, high, typed, ok := in.swing(p.names[offerSide], ranges)
		if !ok {
			continue
		}
		saving := func(x exact.Fraction, upper bool) exact.Fraction {
			cost := today
			for s := range p.terms {
				if !in.moves[s] {
					continue
				}
				at := func() exact.Fraction {
					t := in.with(&p.terms[s], side(s), x)
					return t.year().Cost
				}
				if typed { // for this offer alone, perhaps
					cost[s] = at()
				} else {
					cost[s] = once(&p.out[s].swings, asked{side(s), in.name, upper}, at)
				}
			}
			return cost[otherSide].Sub(cost[offerSide])
		}
		w := Swing{Input: in.name, Offer: in.owner, Quote: in.quote, Today: in.today, Low: low, High: high,
			SavingLow: saving(low, false), SavingHigh: saving(high, true), Typed: typed}
		if !w.SavingLow.Equal(w.SavingHigh) {
			list = append(list, w)
		}
	}
	sortByInput(list, func(s Swing) Input { return s.Input })
	return list, nil
}

// swing is the range of an input: the user's for this offer, the user's for all, or
// its own. ok is false where it can only be what it is, or nothing.
func (in *input) swing(offer string, ranges []scenario.Range) (low, high exact.Fraction, typed, ok bool) {
	for _, of := range []string{offer, ""} {
		for _, r := range ranges {
			if r.Input == in.name && r.Offer == of && r.Low.Cmp(r.High) < 0 && r.Input.Allows(r.Low) && r.Input.Allows(r.High) {
				low, high = exact.FromDecimal(r.Low), exact.FromDecimal(r.High)
				return low, high, true, in.name != scenario.InputRollsAYear || !in.today.IsZero()
			}
		}
	}
	part := exact.Int(swingPercent).Percent().Mul(in.today)
	low, high = in.today.Sub(part), in.today.Add(part)
	switch in.name {
	case scenario.InputSpoiledPercent:
		twice := exact.Int(2).Mul(in.today)
		low, high = exact.Int(0), exact.Min(exact.Int(mostSwungSpoiled), exact.Max(exact.Int(swingMostSpoiled), twice))
	case scenario.InputRollsAYear:
		low, high = low.Ceil(), high.Floor()
	}
	return low, high, false, low.Less(high)
}
