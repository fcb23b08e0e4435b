package compare

import (
	"context"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Limits of the inputs that move orders and so go in steps.
const (
	mostSpoiled        = 50  // percent, or today's where that is more
	spoiledSteps       = 10  // a percent
	mostRollsAYear     = 500 // rolls a year
	farthestRollsAYear = 10  // times today's
)

// inputsInSteps are the inputs that go in steps.
func (p *pair) inputsInSteps() (list []input) {
	if t := &p.terms[offerSide]; t.reel || t.yield.spoiledPercent().Sign() > 0 {
		list = append(list, spoiledInput(t, p.names[offerSide]))
	}
	return append(list, rollsInput(&p.terms[offerSide]))
}

func spoiledInput(t *terms, owner string) input {
	return input{name: scenario.InputSpoiledPercent, owner: owner, quote: -1, today: t.yield.spoiledPercent(), moves: only(offerSide),
		set: func(t *terms, x exact.Fraction) { t.yield.Good = t.yield.goodAt(x) }}
}

// rollsInput is the rolls a year, each month in proportion.
func rollsInput(t *terms) input {
	today := t.shooting.rollsAYear()
	return input{name: scenario.InputRollsAYear, quote: -1, today: today, moves: [2]bool{true, true},
		set: func(t *terms, x exact.Fraction) {
			if today.IsZero() {
				return
			}
			share := x.Quo(today)
			for i := range t.shooting.demand {
				t.shooting.demand[i] = t.shooting.demand[i].Mul(share)
			}
		}}
}

// steps are the values an input is searched at, ascending; those of today's side of
// things are left to the caller.
func (in *input) steps() (list []exact.Fraction) {
	if in.name == scenario.InputSpoiledPercent {
		most := exact.Max(exact.Int(mostSpoiled), in.today)
		for n := int64(0); ; n++ {
			x := exact.Ratio(n, spoiledSteps)
			if most.Less(x) {
				return list
			}
			list = append(list, x)
		}
	}
	most := exact.Min(exact.Int(mostRollsAYear), in.today.Mul(exact.Int(farthestRollsAYear)))
	for n := exact.Int(1); !most.Less(n); n = n.Add(exact.Int(1)) {
		list = append(list, n)
	}
	return list
}

// stepFlip looks for the nearest step with the opposite sign on either side; a
// saving of 0 is not opposite.
func (p *pair) stepFlip(ctx context.Context, in *input) (Flip, error) {
	f := in.flip()
	sign := p.saving.Sign()
	if sign == 0 || in.name == scenario.InputRollsAYear && in.today.IsZero() {
		return f, nil
	}
	var err error
	nearest := func(steps []exact.Fraction) *exact.Fraction {
		for i := range steps {
			if err = ctx.Err(); err != nil {
				return nil
			}
			if p.signAt(in, steps[i]) == -sign {
				return &steps[i]
			}
		}
		return nil
	}
	var below, above []exact.Fraction
	for _, x := range in.steps() {
		switch x.Cmp(in.today) {
		case -1:
			below = append(below, x)
		case 1:
			above = append(above, x)
		}
	}
	slices.Reverse(below)
	f.Below = nearest(below)
	f.Above = nearest(above)
	return f, err
}

// signAt is the sign of the saving with an input at x: by the rough reckoning where
// that is sure, else by the years themselves.
func (p *pair) signAt(in *input, x exact.Fraction) int {
	offer, other := p.roughAt(in, offerSide, x), p.roughAt(in, otherSide, x)
	saving := other.cost - offer.cost
	switch sure := offer.sure && other.sure; {
	case sure && saving > roughSlack*(offer.gross+other.gross):
		return 1
	case sure && saving < -roughSlack*(offer.gross+other.gross):
		return -1
	}
	return p.savingAt(in, x).Sign()
}

// savingAt is the saving with an input at x, with no rounding.
func (p *pair) savingAt(in *input, x exact.Fraction) exact.Fraction {
	return p.costAt(in, otherSide, x).Sub(p.costAt(in, offerSide, x))
}

func (p *pair) costAt(in *input, s side, x exact.Fraction) exact.Fraction {
	if !in.moves[s] {
		return p.out[s].cost
	}
	t := in.with(&p.out[s].terms, s, x)
	return t.year().Cost
}
