package compare

import "reelworth/internal/exact"

// supply is a stock of film, cassette loads or chemistry: bought in lots of one size,
// used oldest first, thrown away when it is too old. Lots are only bought when what
// is there does not cover the need, so that everything older is used up by it: no
// more than one batch outlives a month.
type supply struct {
	lot     exact.Fraction // what one lot gives; above 0
	keeps   span
	batches []batch // oldest first
}

// batch is the lots bought in one month; what is there at the start is one of its own.
type batch struct {
	left  exact.Fraction
	used  exact.Fraction // of it so far
	cost  exact.Fraction // of all of it
	month int
}

// start puts an amount there at the beginning, at no cost.
func (s *supply) start(amount exact.Fraction) {
	if amount.Sign() > 0 {
		s.batches = append(s.batches, batch{left: amount})
	}
}

// discard throws away what is too old in month m and says how much that was.
func (s *supply) discard(m int) (thrown exact.Fraction) {
	for len(s.batches) > 0 && s.keeps.over(m-s.batches[0].month) {
		thrown = thrown.Add(s.batches[0].left)
		s.dropOldest()
	}
	return thrown
}

// lotsFor is how many lots must be bought to cover need.
func (s *supply) lotsFor(need exact.Fraction) exact.Fraction {
	missing := need.Sub(s.left())
	if missing.Sign() <= 0 {
		return exact.Fraction{}
	}
	return missing.Quo(s.lot).Ceil()
}

// buy adds lots in month m and says what they cost.
func (s *supply) buy(lots, price exact.Fraction, m int) (paid exact.Fraction) {
	paid = lots.Mul(price)
	s.batches = append(s.batches, batch{left: lots.Mul(s.lot), cost: paid, month: m})
	return paid
}

// use takes up to amount, oldest first, and says how much there was.
func (s *supply) use(amount exact.Fraction) (used exact.Fraction) {
	for len(s.batches) > 0 && amount.Sign() > 0 {
		b := &s.batches[0]
		taken := exact.Min(b.left, amount)
		amount = amount.Sub(taken)
		b.left = b.left.Sub(taken)
		b.used = b.used.Add(taken)
		used = used.Add(taken)
		if b.left.IsZero() {
			s.dropOldest()
		}
	}
	return used
}

// left is all there is.
func (s *supply) left() (sum exact.Fraction) {
	for i := range s.batches {
		sum = sum.Add(s.batches[i].left)
	}
	return sum
}

func (s *supply) dropOldest() {
	s.batches = s.batches[:copy(s.batches, s.batches[1:])]
}
