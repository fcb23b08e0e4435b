package compare

import (
	"slices"

	"reelworth/internal/exact"
)

// line is at0 + slope × u.
type line struct{ at0, slope exact.Fraction }

func (l line) at(u exact.Fraction) exact.Fraction { return l.at0.Add(l.slope.Mul(u)) }

func (l line) plus(m line) line { return line{l.at0.Add(m.at0), l.slope.Add(m.slope)} }

func (l line) times(w exact.Fraction) line { return line{l.at0.Mul(w), l.slope.Mul(w)} }

// lineThrough is the line through two points.
func lineThrough(u, at, v, bt exact.Fraction) line {
	slope := bt.Sub(at).Quo(v.Sub(u))
	return line{at.Sub(slope.Mul(u)), slope}
}

// pieces is an amount that goes by u > 0: on a line from one knot to the next, with
// a jump or a bend at each, and a value of its own at the knot itself.
type pieces struct {
	first line // before the first knot
	knots []pieceKnot
}

type pieceKnot struct {
	u     exact.Fraction
	value exact.Fraction // at u itself
	after line           // from here to the next knot
}

// piecesOf finds the pieces of a function whose bends and jumps are all among knots,
// which need no order.
func piecesOf(knots []exact.Fraction, f func(u exact.Fraction) exact.Fraction) pieces {
	slices.SortFunc(knots, exact.Fraction.Cmp)
	knots = slices.CompactFunc(knots, exact.Fraction.Equal)
	// between is the line that ends at knot i.
	between := func(i int) line {
		from, step := exact.Fraction{}, exact.Int(1)
		if i > 0 {
			from = knots[i-1]
		}
		if i < len(knots) {
			step = knots[i].Sub(from).Quo(exact.Int(3))
		}
		u, v := from.Add(step), from.Add(step).Add(step)
		return lineThrough(u, f(u), v, f(v))
	}
	var p pieces
	if len(knots) == 0 || knots[0].Sign() > 0 { // else nothing is before the first knot
		p.first = between(0)
	}
	for i, u := range knots {
		p.knots = append(p.knots, pieceKnot{u, f(u), between(i + 1)})
	}
	return p
}

// sumOf adds up pieces, each taken so many times.
func sumOf(parts []pieces, weights []exact.Fraction) pieces {
	type mark struct {
		part, knot int
	}
	var sum pieces
	var marks []mark
	now := make([]line, len(parts)) // each part's line where the sweep is
	for i := range parts {
		now[i] = parts[i].first
		sum.first = sum.first.plus(now[i].times(weights[i]))
		for k := range parts[i].knots {
			marks = append(marks, mark{i, k})
		}
	}
	slices.SortFunc(marks, func(a, b mark) int {
		return parts[a.part].knots[a.knot].u.Cmp(parts[b.part].knots[b.knot].u)
	})
	all := sum.first
	for len(marks) > 0 {
		u := parts[marks[0].part].knots[marks[0].knot].u
		value, after := all.at(u), all
		n := 0
		for ; n < len(marks); n++ {
			m := marks[n]
			k := &parts[m.part].knots[m.knot]
			if !k.u.Equal(u) {
				break
			}
			w := weights[m.part]
			value = value.Add(k.value.Sub(now[m.part].at(u)).Mul(w))
			after = after.plus(k.after.times(w)).plus(now[m.part].times(w.Neg()))
			now[m.part] = k.after
		}
		sum.knots = append(sum.knots, pieceKnot{u, value, after})
		all, marks = after, marks[n:]
	}
	return sum
}

// find is the first knot not below u, and whether it is at u.
func (p *pieces) find(u exact.Fraction) (i int, found bool) {
	return slices.BinarySearchFunc(p.knots, u, func(k pieceKnot, u exact.Fraction) int { return k.u.Cmp(u) })
}

// between is the line that ends at knot i.
func (p *pieces) between(i int) line {
	if i == 0 {
		return p.first
	}
	return p.knots[i-1].after
}

// crossAbove is the first place above u, at most most, where the value has the
// opposite of sign; u itself where the value has it right after u. nil for none.
func (p *pieces) crossAbove(u, most exact.Fraction, sign int) *exact.Fraction {
	i, found := p.find(u)
	if found {
		i++
	}
	for from := u; from.Less(most); i++ {
		to := most
		if i < len(p.knots) {
			to = exact.Min(most, p.knots[i].u)
		}
		if at := p.between(i).crossIn(from, to, sign); at != nil {
			return at
		}
		if i >= len(p.knots) || most.Less(p.knots[i].u) {
			return nil
		}
		if k := &p.knots[i]; k.value.Sign() == -sign {
			return &k.u
		}
		from = to
	}
	return nil
}

// crossBelow is crossAbove downwards. least itself counts only where there is a knot.
func (p *pieces) crossBelow(u, least exact.Fraction, sign int) *exact.Fraction {
	i, _ := p.find(u)
	for to := u; least.Less(to); i-- {
		from := least
		if i > 0 {
			from = exact.Max(least, p.knots[i-1].u)
		}
		mirrored := line{p.between(i).at0, p.between(i).slope.Neg()}
		if at := mirrored.crossIn(to.Neg(), from.Neg(), sign); at != nil {
			back := at.Neg()
			return &back
		}
		if i == 0 || p.knots[i-1].u.Less(least) {
			return nil
		}
		if k := &p.knots[i-1]; k.value.Sign() == -sign {
			return &k.u
		}
		to = from
	}
	return nil
}

// crossIn is the first place after from and before to where the line has the opposite
// of sign; from itself where it has that right after it.
func (l line) crossIn(from, to exact.Fraction, sign int) *exact.Fraction {
	here := l.at(from).Sign()
	switch {
	case here == -sign, here == 0 && l.slope.Sign() == -sign:
		return &from
	case here == 0, l.slope.Sign() != -sign:
		return nil
	}
	root := l.at0.Neg().Quo(l.slope)
	if root.Less(to) {
		return &root
	}
	return nil
}
