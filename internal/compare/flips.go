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
}

// rivals are the two sides of a duel with the outlay of each.
type rivals struct {
	duel
	out    [2]*outlay
	saving exact.Fraction // with no rounding, today
}

// rivals holds one computed offer against another.
func (c *Comparison) rivals(offer, other *Offer, outlays []*outlay) *rivals {
	a, b := outlays[c.index(offer)], outlays[c.index(other)]
	return &rivals{
		duel:   duel{names: [2]string{offer.Name, other.Name}, terms: [2]terms{a.rounded, b.rounded}, rates: c.Scenario.Rates},
		out:    [2]*outlay{a, b},
		saving: b.cost.Sub(a.cost),
	}
}

// savingBy is the saving as it goes by an input.
func (r *rivals) savingBy(k *knob) pieces {
	return sumOf([]pieces{r.out[otherSide].by(k, otherSide), r.out[offerSide].by(k, offerSide)},
		[]exact.Fraction{exact.Int(1), exact.Int(-1)})
}

// flips finds every flip, until ctx is done.
func (r *rivals) flips(ctx context.Context) (list []Flip, err error) {
	for _, k := range r.knobs() {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		list = append(list, r.flip(&k))
	}
	for _, k := range r.stepKnobs() {
		f, err := r.stepFlip(ctx, &k)
		if err != nil {
			return nil, err
		}
		list = append(list, f)
	}
	sortByInput(list, func(f Flip) Input { return f.Input })
	return list, nil
}

func (k *knob) flip() Flip {
	return Flip{Input: k.input, Offer: k.owner, Quote: k.quote, Today: k.today}
}

// flip solves one input, piece by piece.
func (r *rivals) flip(k *knob) Flip {
	f := k.flip()
	sign := r.saving.Sign()
	if sign == 0 {
		return f
	}
	saving := r.savingBy(k)
	if !k.inverse {
		f.Above = saving.turnAbove(k.today, k.farthest(), sign)
		f.Below = saving.turnBelow(k.today, exact.Fraction{}, sign)
		return f
	}
	u := k.x(k.today)
	f.Above = inverted(saving.turnBelow(u, k.x(k.farthest()), sign))
	// Down to 0 is up without end: twice the last knot and the root is beyond all.
	f.Below = inverted(saving.turnAbove(u, saving.beyondAll(u), sign))
	return f
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

func inverted(u *exact.Fraction) *exact.Fraction {
	if u == nil {
		return nil
	}
	x := exact.Int(1).Quo(*u)
	return &x
}

// flipOf is the flip of one input in a list, nil when it is not there.
func flipOf(list []Flip, input Input) *Flip {
	for i := range list {
		if list[i].Input == input {
			return &list[i]
		}
	}
	return nil
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
