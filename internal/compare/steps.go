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

// stepKnobs are the inputs that go in steps.
func (d *duel) stepKnobs() (list []knob) {
	if t := &d.terms[offerSide]; t.reel || t.yield.spoiledPercent().Sign() > 0 {
		list = append(list, spoiledKnob(t, d.names[offerSide]))
	}
	return append(list, rollsKnob(&d.terms[offerSide]))
}

func spoiledKnob(t *terms, owner string) knob {
	return knob{input: scenario.InputSpoiledPercent, owner: owner, quote: -1, today: t.yield.spoiledPercent(), moves: only(offerSide),
		turn: func(t *terms, x exact.Fraction) { t.yield.Good = t.yield.goodAt(x) }}
}

// rollsKnob is the rolls a year, each month in proportion.
func rollsKnob(t *terms) knob {
	today := t.shooting.rollsAYear()
	return knob{input: scenario.InputRollsAYear, quote: -1, today: today, moves: [2]bool{true, true},
		turn: func(t *terms, x exact.Fraction) {
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
func (k *knob) steps() (list []exact.Fraction) {
	if k.input == scenario.InputSpoiledPercent {
		most := exact.Max(exact.Int(mostSpoiled), k.today)
		for n := int64(0); ; n++ {
			x := exact.Ratio(n, spoiledSteps)
			if most.Less(x) {
				return list
			}
			list = append(list, x)
		}
	}
	most := exact.Min(exact.Int(mostRollsAYear), k.today.Mul(exact.Int(farthestRollsAYear)))
	for n := exact.Int(1); !most.Less(n); n = n.Add(exact.Int(1)) {
		list = append(list, n)
	}
	return list
}

// stepFlip looks for the nearest step with the opposite sign on either side; a
// saving of 0 is not opposite.
func (r *rivals) stepFlip(ctx context.Context, k *knob) (Flip, error) {
	f := k.flip()
	sign := r.saving.Sign()
	if sign == 0 || k.input == scenario.InputRollsAYear && k.today.IsZero() {
		return f, nil
	}
	var err error
	turn := func(steps []exact.Fraction) *exact.Fraction {
		for i := range steps {
			if err = ctx.Err(); err != nil {
				return nil
			}
			if r.signAt(k, steps[i]) == -sign {
				return &steps[i]
			}
		}
		return nil
	}
	var below, above []exact.Fraction
	for _, x := range k.steps() {
		switch x.Cmp(k.today) {
		case -1:
			below = append(below, x)
		case 1:
			above = append(above, x)
		}
	}
	slices.Reverse(below)
	f.Below = turn(below)
	f.Above = turn(above)
	return f, err
}

// signAt is the sign of the saving with an input at x: by the rough reckoning where
// that is sure, else by the years themselves.
func (r *rivals) signAt(k *knob, x exact.Fraction) int {
	offer, other := r.roughAt(k, offerSide, x), r.roughAt(k, otherSide, x)
	saving := other.cost - offer.cost
	switch sure := offer.sure && other.sure; {
	case sure && saving > roughSlack*(offer.gross+other.gross):
		return 1
	case sure && saving < -roughSlack*(offer.gross+other.gross):
		return -1
	}
	return r.savingAt(k, x).Sign()
}

// savingAt is the saving with an input at x, with no rounding.
func (r *rivals) savingAt(k *knob, x exact.Fraction) exact.Fraction {
	return r.costAt(k, otherSide, x).Sub(r.costAt(k, offerSide, x))
}

func (r *rivals) costAt(k *knob, s side, x exact.Fraction) exact.Fraction {
	if !k.moves[s] {
		return r.out[s].cost
	}
	t := k.turned(&r.out[s].terms, s, x)
	return t.year().Cost
}
