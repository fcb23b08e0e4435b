package compare

import (
	"context"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Curve is what both offers' years come to over one input, with no rounding, so that
// the lines cross where the flips are.
type Curve struct {
	Input        Input
	Offer, Other string
	Today        exact.Fraction
	// Points run upwards. Two at one place are a jump: the cost just before it and just
	// after.
	Points []CurvePoint
	// Breaks are where either cost bends or jumps, exactly; none for inputs that go in
	// steps.
	Breaks []exact.Fraction
	Flip   Flip // which may be beyond the points
	// Volumes are who is cheaper at each number of rolls, where those are the input.
	Volumes []VolumeRange
}

// CurvePoint is both years at one value of the input.
type CurvePoint struct{ At, Offer, Other exact.Fraction }

// CurveOf draws an input from one value to another for an offer compared with another,
// at so many places evenly apart (at every step, at most, of an input that goes in
// steps), at today's value, and on both sides of every break. It returns nil where the
// input does not apply, or an offer is not there. Its only error is ctx's.
func CurveOf(ctx context.Context, c *Comparison, offer, other string, input Input, from, to exact.Fraction, points int) (*Curve, error) {
	if c.home != nil {
		if InHome(input) {
			from, to = from.Quo(c.Shown.Factor), to.Quo(c.Shown.Factor)
		}
		curve, err := CurveOf(ctx, c.home, offer, other, input, from, to, points)
		return c.Shown.curve(curve), err
	}
	p, err := pairOf(ctx, c, offer, other)
	if err != nil {
		return nil, err
	}
	if p == nil || !from.Less(to) || points < 2 {
		return nil, ctx.Err()
	}
	curve := &Curve{Input: input, Offer: offer, Other: other}
	for _, in := range p.inputs() {
		if in.name == input {
			curve.Today, curve.Flip = in.today, p.flip(&in)
			curve.draw(p, &in, from, to, points)
			return curve, ctx.Err()
		}
	}
	for _, in := range p.inputsInSteps() {
		if in.name != input || input == scenario.InputRollsAYear && in.today.IsZero() {
			continue
		}
		curve.Today = in.today
		if curve.Flip, err = p.stepFlip(ctx, &in); err != nil {
			return nil, err
		}
		if input == scenario.InputRollsAYear {
			if curve.Volumes, err = p.volumeRanges(ctx); err != nil {
				return nil, err
			}
		}
		return curve, curve.drawSteps(ctx, p, &in, from, to, points)
	}
	return nil, ctx.Err()
}

// draw samples a cost that goes by pieces.
func (c *Curve) draw(p *pair, in *input, from, to exact.Fraction, points int) {
	if in.from == aboveZero && from.Sign() <= 0 {
		from = to.Quo(exact.Int(int64(points)))
	}
	from = exact.Max(from, exact.Fraction{})
	var costs [2]pieces
	for s := range costs {
		costs[s] = p.out[s].by(in, side(s))
		for _, knot := range costs[s].knots {
			if knot.u.IsZero() && in.inverse {
				continue
			}
			if x := in.x(knot.u); !x.Less(from) && x.Less(to) {
				c.Breaks = append(c.Breaks, x)
			}
		}
	}
	slices.SortFunc(c.Breaks, exact.Fraction.Cmp)
	c.Breaks = slices.CompactFunc(c.Breaks, exact.Fraction.Equal)
	places := append(evenly(from, to, points), c.Breaks...)
	if !in.today.Less(from) && !to.Less(in.today) {
		places = append(places, in.today)
	}
	slices.SortFunc(places, exact.Fraction.Cmp)
	for _, x := range slices.CompactFunc(places, exact.Fraction.Equal) {
		c.addAround(&costs, in, x, from)
	}
}

// addAround adds what both cost at a place: once where that is the same on both sides
// of it, else just before and just after.
func (c *Curve) addAround(costs *[2]pieces, in *input, x, from exact.Fraction) {
	u := in.x(x)
	before, after := CurvePoint{At: x}, CurvePoint{At: x}
	for s, cost := range []*exact.Fraction{&before.Offer, &before.Other} {
		*cost = costs[s].beside(u, in.inverse)
	}
	for s, cost := range []*exact.Fraction{&after.Offer, &after.Other} {
		*cost = costs[s].beside(u, !in.inverse)
	}
	if from.Less(x) {
		c.Points = append(c.Points, before)
		if before.Offer.Equal(after.Offer) && before.Other.Equal(after.Other) {
			return
		}
	}
	c.Points = append(c.Points, after)
}

// beside is the value right above u, or right below it.
func (p *pieces) beside(u exact.Fraction, above bool) exact.Fraction {
	i, found := p.find(u)
	if found && above {
		i++
	}
	return p.between(i).at(u)
}

// drawSteps computes the year at steps.
func (c *Curve) drawSteps(ctx context.Context, p *pair, in *input, from, to exact.Fraction, points int) error {
	var places []exact.Fraction
	for _, x := range in.steps() {
		if !x.Less(from) && !to.Less(x) {
			places = append(places, x)
		}
	}
	each := (len(places) + points - 1) / points
	for i, x := range places {
		if err := ctx.Err(); err != nil {
			return err
		}
		if i%each == 0 || i == len(places)-1 || x.Equal(in.today) {
			c.Points = append(c.Points, CurvePoint{x, p.costAt(in, offerSide, x), p.costAt(in, otherSide, x)})
		}
	}
	return nil
}

// evenly is so many places from one to another.
func evenly(from, to exact.Fraction, points int) (list []exact.Fraction) {
	step := to.Sub(from).Quo(exact.Int(int64(points - 1)))
	for i := range points {
		list = append(list, from.Add(step.Mul(exact.Int(int64(i)))))
	}
	return list
}
