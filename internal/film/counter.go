package film

import "reelworth/internal/exact"

// Counter is the dial of a bulk loader: it counts frames, or turns of a crank whose film
// per turn grows with the spool. After n counts n × PerCount + n² × Growth millimetres
// are wound, besides the Zero millimetres that are wound before it is set to 0.
type Counter struct {
	PerCount exact.Fraction // mm; 0 where there is no counter
	Growth   exact.Fraction // mm; not below 0
	Zero     exact.Fraction // mm
	Wraps    int            // counts after which the dial is back at its mark; 0 for none
}

// MaxCounts is how many counts a roll may take; a counter so fine is a slip of the pen.
const MaxCounts = 1_000_000_000

// IsSet says whether there is a counter.
func (c Counter) IsSet() bool { return c.PerCount.Sign() > 0 }

// Wound is what n counts put into a cassette, what comes before 0 included.
func (c Counter) Wound(n int64) exact.Fraction { return c.length(n).Add(c.Zero) }

// length is what n counts wind from 0 on.
func (c Counter) length(n int64) exact.Fraction {
	k := exact.Int(n)
	return k.Mul(c.PerCount).Add(k.Mul(k).Mul(c.Growth))
}

// Counts is the least number of counts at which at least roll millimetres are wound. It
// is false where that is more than MaxCounts, or where there is no counter.
func (c Counter) Counts(roll exact.Fraction) (n int64, ok bool) {
	if !c.IsSet() {
		return 0, false
	}
	if !c.Wound(MaxCounts).Less(roll) {
		ok = true
	}
	low, high := int64(0), int64(MaxCounts) // the answer is in low to high
	for ok && low < high {
		if middle := (low + high) / 2; c.Wound(middle).Less(roll) {
			low = middle + 1
		} else {
			high = middle
		}
	}
	return low, ok
}

// Rounds is how often the dial goes round on the way to n counts, and where it stands
// then. Without Wraps it never does.
func (c Counter) Rounds(n int64) (rounds, rest int64) {
	if c.Wraps < 2 {
		return 0, n
	}
	return n / int64(c.Wraps), n % int64(c.Wraps)
}

// Scrap is a piece of film wound over some counts, and how long it turned out.
type Scrap struct {
	Counts int64
	Length exact.Fraction // mm
}

// Mismeasured says that scraps fit no counter.
type Mismeasured int

// What is wrong with the scraps.
const (
	NoScrap        Mismeasured = iota // none, or one of no counts or no length
	SameCounts                        // two scraps of the same counts say nothing more than one
	ShrinkingTurns                    // the longer scrap has less film per count: the growth would be negative
	NoFirstCount                      // the first count would wind no film, so all is growth
)

func (m Mismeasured) Error() string {
	return [...]string{
		"a scrap needs counts and a length above 0", "both scraps are of the same counts",
		"the film per count gets less with the counts", "the first count winds no film",
	}[m]
}

// Calibrate finds the counter from one scrap, taken as without growth, or from two of
// different counts, solved exactly. It sets PerCount and Growth only. The error is a
// Mismeasured.
func Calibrate(scraps ...Scrap) (Counter, error) {
	for _, s := range scraps {
		if s.Counts < 1 || s.Length.Sign() <= 0 {
			return Counter{}, NoScrap
		}
	}
	switch len(scraps) {
	case 1:
		return Counter{PerCount: scraps[0].each()}, nil
	case 2:
		a, b := scraps[0], scraps[1]
		if a.Counts == b.Counts {
			return Counter{}, SameCounts
		}
		growth := b.each().Sub(a.each()).Quo(exact.Int(b.Counts - a.Counts))
		c := Counter{PerCount: a.each().Sub(growth.Mul(exact.Int(a.Counts))), Growth: growth}
		switch {
		case growth.Sign() < 0:
			return Counter{}, ShrinkingTurns
		case !c.IsSet():
			return Counter{}, NoFirstCount
		}
		return c, nil
	}
	return Counter{}, NoScrap
}

// each is the scrap's film per count.
func (s Scrap) each() exact.Fraction { return s.Length.Quo(exact.Int(s.Counts)) }
