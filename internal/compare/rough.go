package compare

import (
	"math"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Rough reckoning, with amounts in floating point, never gives a figure. It only says
// which way the hundreds of steps go that are nowhere near the answer's turning point,
// and says so itself when it cannot tell: then the step is computed exactly. How many
// lots are bought is decided exactly wherever it is near a whole number.

const (
	// roughSlack is the share of all amounts below which a saving is too small to
	// tell its sign; some 85 months of sums are wrong by less than 1e-12 of it.
	roughSlack = 1e-9
	// roughTie is how near to a whole number of lots is too near for floating point,
	// and roughMost how many lots at once, or in stock, leave it that many digits.
	roughTie  = 1e-7
	roughMost = 1e5
)

// roughly is a year's cost; gross is the sum of all amounts in it without their signs.
type roughly struct {
	cost, gross float64
	sure        bool
}

func (r *roughly) add(amount float64) {
	r.cost += amount
	r.gross += math.Abs(amount)
}

// rough is what an outlay's year is made of, near enough.
type rough struct {
	shot      []exact.Fraction // exposures before each month, and at the end
	demand    [12]float64
	landed    []float64 // of an order at each month's price
	equipment float64   // less its resale
}

func roughOf(o *outlay) (r rough) {
	t := &o.terms
	var shot exact.Fraction
	for m := range o.landed {
		r.shot = append(r.shot, shot)
		shot = shot.Add(t.shooting.demand[m%12])
		if m > 0 && t.asking.riseYearly.IsZero() {
			r.landed = append(r.landed, r.landed[0])
		} else {
			r.landed = append(r.landed, o.landed[m].Float())
		}
	}
	r.shot = append(r.shot, shot)
	for i, demand := range t.shooting.demand {
		r.demand[i] = demand.Float()
	}
	for _, gears := range t.equipment() {
		r.equipment += t.prices(gears).Sub(t.resales(gears)).Float()
	}
	return r
}

// roughAt is the year of a side with an input that goes in steps at x.
func (p *pair) roughAt(in *input, s side, x exact.Fraction) roughly {
	o := p.out[s]
	good, share := o.terms.yield.Good, exact.Int(1)
	if in.moves[s] {
		switch in.name {
		case scenario.InputSpoiledPercent:
			good = o.terms.yield.goodAt(x)
		case scenario.InputRollsAYear:
			if n, whole := x.Int64(); whole && n > 0 && n <= int64(len(o.volumes)) {
				return o.volumes[n-1]
			}
			share = x.Quo(in.today)
		}
	}
	return o.roughYear(good, share)
}

// roughYear is the year when a unit gives so many good exposures and a share of
// today's is shot.
func (o *outlay) roughYear(good, share exact.Fraction) roughly {
	t, r := &o.terms, &o.rough
	l, d := &t.loading, &t.developing
	y := roughly{sure: true}
	cassettes := exact.Int(int64(t.yield.Cassettes)).Mul(share).Quo(good)
	film := roughSupply{rough: r, lot: exact.Int(int64(t.units)).Mul(good), start: t.onHand.Mul(good), each: share, keeps: t.keeps.whole()}
	film.through(&y, func(m int) float64 { return r.landed[m] })
	if t.reel {
		price := l.pack.Mul(l.cassettePrice).Float()
		loads := roughSupply{rough: r, lot: l.pack.Mul(l.loads), start: l.owned.Mul(l.loads), each: cassettes, keeps: -1}
		loads.through(&y, func(int) float64 { return price })
	}
	if d.atHome() {
		price := d.chemistryPrice.Float()
		chemistry := roughSupply{rough: r, lot: d.chemistryRolls, each: cassettes, keeps: d.keeps.whole()}
		chemistry.through(&y, func(int) float64 { return price })
	}
	shot := r.shot[len(r.shot)-1]
	used := shot.Float() * cassettes.Float()
	y.add(used * l.consumables.Add(d.perCassette).Float())
	reels := shot.Float() * share.Float() / good.Float()
	y.add(t.hourly.Float() / 60 * (reels*l.minutesPerReel.Float() + used*t.minutesPerCassette().Float()))
	if shot.Sign() > 0 {
		y.add(r.equipment)
	}
	return y
}

// roughSupply is a supply on its way through the months. Whatever is older is used up
// in the month in which lots are bought, so that one batch at most outlives a month.
type roughSupply struct {
	*rough
	lot, start exact.Fraction
	each       exact.Fraction // of the supply used for one exposure of today's
	keeps      int
}

// through adds what is bought, at each month's price, less what is left and used in
// time.
func (s *roughSupply) through(y *roughly, price func(m int) float64) {
	months := len(s.landed)
	lot, each, left := s.lot.Float(), s.each.Float(), s.start.Float()
	old := func(m, of int) bool { return s.keeps >= 0 && m-of >= s.keeps }
	month, free := 0, true
	var batchCost, batchUsed float64            // of the lots bought last
	since, base, bought := 0, s.start, int64(0) // exactly: what is there is base and bought lots, less the use since
	for m := range months {
		if old(m, month) {
			left, since, base, bought = 0, m, exact.Fraction{}, 0
		}
		want := s.demand[m%12] * each
		if want == 0 {
			continue
		}
		lots := (want - left) / lot
		up := math.Ceil(lots)
		switch {
		case !(math.Abs(lots) < roughMost && left < roughMost*lot):
			y.sure = false
			return
		case up-lots < roughTie || lots-up+1 < roughTie:
			up = s.exactly(since, m, base, bought)
		}
		if up > 0 {
			bought += int64(up)
			batchCost, batchUsed = up*price(m), -left // the older is used first
			left += up * lot
			month, free = m, false
			y.add(batchCost)
		}
		batchUsed += want
		left -= want
	}
	willUse := 0.0
	for m := months; m < months+monthsValued && !free && !old(m, month); m++ {
		used := min(left, s.demand[m%12]*each)
		willUse += used
		left -= used
	}
	if willUse > 0 {
		y.add(-batchCost * willUse / (batchUsed + willUse))
	}
}

// exactly is how many lots month m needs, when base and bought lots have been used
// from since on.
func (s *roughSupply) exactly(since, m int, base exact.Fraction, bought int64) float64 {
	use := s.shot[m+1].Sub(s.shot[since]).Mul(s.each)
	return float64(toInt64(use.Sub(base).Quo(s.lot).Sub(exact.Int(bought)).Ceil()))
}
