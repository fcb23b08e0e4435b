package exact

import (
	"cmp"
	"math"
	"math/big"
	"math/bits"
)

// wide is num/den in lowest terms with den > 0. Neither is ever changed, so that several
// may share one.
//
// Sums and products are made as Knuth makes them (The Art of Computer Programming, volume
// 2, section 4.5.1): what the operands share is divided out before they are multiplied. The
// numbers whose common divisors are sought are then half as long as those of the outcome,
// and mostly one of them is a single word.
type wide struct{ num, den *big.Int }

// parts is f as a wide, also where it is none.
func (f Fraction) parts() wide {
	if f.wide != nil {
		return *f.wide
	}
	return wide{big.NewInt(f.num), big.NewInt(f.bottom())}
}

// fraction is w, narrowed where it fits.
func (w wide) fraction() Fraction {
	if w.num.IsInt64() && w.den.IsInt64() && w.num.Int64() != math.MinInt64 {
		return Fraction{num: w.num.Int64(), den: w.den.Int64()}
	}
	return Fraction{wide: &w}
}

func (w wide) add(v wide) Fraction {
	both := shared(w.den, v.den)
	wd, vd := over(w.den, both), over(v.den, both)
	n := new(big.Int).Mul(w.num, vd)
	n.Add(n, new(big.Int).Mul(v.num, wd))
	if n.Sign() == 0 {
		return Fraction{}
	}
	rest := shared(n, both)
	return wide{over(n, rest), new(big.Int).Mul(wd, over(v.den, rest))}.fraction()
}

// mul is w × v, neither of them 0.
func (w wide) mul(v wide) Fraction {
	g, h := shared(w.num, v.den), shared(v.num, w.den)
	return wide{
		new(big.Int).Mul(over(w.num, g), over(v.num, h)),
		new(big.Int).Mul(over(w.den, h), over(v.den, g)),
	}.fraction()
}

// inverse is 1/w, which is not 0.
func (w wide) inverse() wide {
	if w.num.Sign() < 0 {
		return wide{new(big.Int).Neg(w.den), new(big.Int).Neg(w.num)}
	}
	return wide{w.den, w.num}
}

func (w wide) cmp(v wide) int {
	if a, b := w.num.Sign(), v.num.Sign(); a != b {
		return cmp.Compare(a, b)
	}
	return new(big.Int).Mul(w.num, v.den).Cmp(new(big.Int).Mul(v.num, w.den))
}

// rat is w as a new big.Rat, without seeking a common divisor again.
func (w wide) rat() *big.Rat {
	r := new(big.Rat).SetInt64(1) // only then do Num and Denom give what can be set
	r.Num().Set(w.num)
	r.Denom().Set(w.den)
	return r
}

var one = big.NewInt(1)

// shared is the greatest common divisor of a and b, neither of them 0 and b above it. It
// must not be changed.
func shared(a, b *big.Int) *big.Int {
	if b.IsUint64() {
		return sharedWord(a, b.Uint64())
	}
	if a.IsUint64() {
		return sharedWord(b, a.Uint64())
	}
	long, short := a, b
	if a.CmpAbs(b) < 0 {
		long, short = b, a
	}
	rest := new(big.Int).Rem(long, short)
	switch { // mostly one divides the other
	case rest.Sign() == 0:
		return rest.Abs(short)
	case rest.IsUint64():
		return sharedWord(short, rest.Uint64())
	}
	return rest.GCD(nil, nil, rest.Abs(rest), new(big.Int).Abs(short))
}

// sharedWord is the greatest common divisor of a, not 0, and a word above 0.
func sharedWord(a *big.Int, b uint64) *big.Int {
	if b == 1 {
		return one
	}
	if rest := modulo(a, b); rest != 0 {
		b = gcd(rest, b)
	}
	if b == 1 {
		return one
	}
	return new(big.Int).SetUint64(b)
}

// modulo is what is left when a, without its sign, is divided by b.
func modulo(a *big.Int, b uint64) (rest uint64) {
	words := a.Bits()
	for i := len(words) - 1; i >= 0; i-- {
		low := rest << (bits.UintSize - 1) << 1 // by a word, which may be all there is
		rest = bits.Rem64(rest>>(64-bits.UintSize), low|uint64(words[i]), b)
	}
	return rest
}

// over is a without its divisor g. It must not be changed.
func over(a, g *big.Int) *big.Int {
	if g == one {
		return a
	}
	return new(big.Int).Quo(a, g)
}
