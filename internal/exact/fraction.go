package exact

import (
	"cmp"
	"math"
	"math/big"
	"math/bits"

	"github.com/shopspring/decimal"
)

// Fraction is an immutable exact rational number. Its zero value is 0.
// Compare with Cmp or Equal, never with ==.
type Fraction struct {
	// num/den in lowest terms with den > 0; den 0 stands for 1, so that the
	// zero value is a number. Unused while wide is set.
	num, den int64
	wide     *wide
}

// Int is the whole number n.
func Int(n int64) Fraction {
	if n == math.MinInt64 {
		return Fraction{wide: &wide{big.NewInt(n), one}}
	}
	return Fraction{num: n, den: 1}
}

// Ratio is n/d. It panics when d is 0.
func Ratio(n, d int64) Fraction { return Int(n).Quo(Int(d)) }

// FromDecimal is the exact value of d.
func FromDecimal(d decimal.Decimal) Fraction {
	exp := d.Exponent()
	c := d.Coefficient()
	if c.IsInt64() && exp > -19 && exp < 19 && c.Int64() != math.MinInt64 {
		if exp <= 0 {
			return small(c.Int64(), pow10[-exp])
		}
		if p, ok := mul(c.Int64(), pow10[exp]); ok {
			return Fraction{num: p, den: 1}
		}
	}
	return FromRat(d.Rat())
}

// FromRat is the value of r, which is not kept.
func FromRat(r *big.Rat) Fraction {
	return wide{new(big.Int).Set(r.Num()), new(big.Int).Set(r.Denom())}.fraction()
}

// Rat is f as a new big.Rat.
func (f Fraction) Rat() *big.Rat {
	if f.wide != nil {
		return f.wide.rat()
	}
	return big.NewRat(f.num, f.bottom())
}

// Add is f + g.
func (f Fraction) Add(g Fraction) Fraction {
	if f.wide == nil && g.wide == nil {
		if s, ok := f.addShort(g); ok {
			return s
		}
	}
	switch { // most bills have lines of 0, and wide sums take long
	case g.IsZero():
		return f
	case f.IsZero():
		return g
	}
	return f.parts().add(g.parts())
}

// addShort is Add within 63 bits, what the denominators share divided out before it is
// multiplied, as in wide.add; ok is false when they are too few.
func (f Fraction) addShort(g Fraction) (s Fraction, ok bool) {
	fd, gd := f.bottom(), g.bottom()
	both := fd
	if fd != gd {
		both = int64(gcd(uint64(fd), uint64(gd)))
	}
	a, aOK := mul(f.num, gd/both)
	b, bOK := mul(g.num, fd/both)
	n, nOK := add(a, b)
	if !(aOK && bOK && nOK) {
		return s, false
	}
	n, rest := reduce(n, both)
	d, ok := mul(fd/both, gd/(both/rest))
	return Fraction{num: n, den: d}, ok
}

// Sub is f − g.
func (f Fraction) Sub(g Fraction) Fraction { return f.Add(g.Neg()) }

// Neg is −f.
func (f Fraction) Neg() Fraction {
	if f.wide != nil {
		return wide{new(big.Int).Neg(f.wide.num), f.wide.den}.fraction()
	}
	return Fraction{num: -f.num, den: f.den}
}

// Abs is f without its sign.
func (f Fraction) Abs() Fraction {
	if f.Sign() < 0 {
		return f.Neg()
	}
	return f
}

// Mul is f × g.
func (f Fraction) Mul(g Fraction) Fraction {
	if f.wide == nil && g.wide == nil {
		// Cross-reduce first: it keeps most products within 63 bits.
		a, d := reduce(f.num, g.bottom())
		b, c := reduce(g.num, f.bottom())
		if n, ok := mul(a, b); ok {
			if m, ok := mul(c, d); ok {
				return Fraction{num: n, den: m}
			}
		}
	}
	if f.IsZero() || g.IsZero() {
		return Fraction{}
	}
	return f.parts().mul(g.parts())
}

// Quo is f ÷ g. It panics when g is 0.
func (f Fraction) Quo(g Fraction) Fraction {
	if g.Sign() == 0 {
		panic("exact: division by zero")
	}
	if g.wide != nil {
		return f.Mul(g.wide.inverse().fraction())
	}
	if g.num < 0 {
		return f.Mul(Fraction{num: -g.bottom(), den: -g.num})
	}
	return f.Mul(Fraction{num: g.bottom(), den: g.num})
}

// Percent is f hundredths: 4.5 becomes 0.045.
func (f Fraction) Percent() Fraction { return f.Quo(Fraction{num: 100, den: 1}) }

// Sign is −1, 0 or 1.
func (f Fraction) Sign() int {
	switch {
	case f.wide != nil:
		return f.wide.num.Sign()
	case f.num > 0:
		return 1
	case f.num < 0:
		return -1
	}
	return 0
}

// IsZero says whether f is 0.
func (f Fraction) IsZero() bool { return f.Sign() == 0 }

// Cmp is −1, 0 or 1 as f is below, equal to or above g.
func (f Fraction) Cmp(g Fraction) int {
	if f.wide == nil && g.wide == nil {
		return compareProducts(f.num, g.bottom(), g.num, f.bottom())
	}
	return f.parts().cmp(g.parts())
}

// Equal says whether f and g are the same number.
func (f Fraction) Equal(g Fraction) bool { return f.Cmp(g) == 0 }

// Less says whether f is below g.
func (f Fraction) Less(g Fraction) bool { return f.Cmp(g) < 0 }

// Min is the smaller of f and g.
func Min(f, g Fraction) Fraction {
	if g.Less(f) {
		return g
	}
	return f
}

// Max is the greater of f and g.
func Max(f, g Fraction) Fraction {
	if f.Less(g) {
		return g
	}
	return f
}

// Sum adds all of fs.
func Sum(fs ...Fraction) Fraction {
	var s Fraction
	for _, f := range fs {
		s = s.Add(f)
	}
	return s
}

// Floor is the greatest whole number not above f.
func (f Fraction) Floor() Fraction {
	if f.wide == nil {
		d := f.bottom()
		q := f.num / d
		if f.num%d < 0 {
			q--
		}
		return Fraction{num: q, den: 1}
	}
	q := new(big.Int).Div(f.wide.num, f.wide.den) // Euclidean, so floor for a positive divisor
	return wide{q, one}.fraction()
}

// Ceil is the least whole number not below f.
func (f Fraction) Ceil() Fraction { return f.Neg().Floor().Neg() }

// Int64 is f as a whole number; ok is false when f is none, or too large.
func (f Fraction) Int64() (n int64, ok bool) {
	if f.wide != nil || f.bottom() != 1 {
		return 0, false
	}
	return f.num, true
}

// Denominator is what f must be multiplied by to be whole, in lowest terms; ok is
// false when it is too large.
func (f Fraction) Denominator() (d int64, ok bool) {
	if f.wide != nil {
		return 0, false
	}
	return f.bottom(), true
}

// Round is f to a number of decimal places, half away from zero, decided on the
// exact value. places may be negative.
func (f Fraction) Round(places int) Fraction {
	if f.wide == nil && places >= 0 && places < len(pow10) {
		if r, ok := f.roundShort(places); ok {
			return r
		}
	}
	half := Fraction{num: 1, den: 2}
	scale := tenTo(places)
	r := f.Abs().Mul(scale).Add(half).Floor().Quo(scale)
	if f.Sign() < 0 {
		return r.Neg()
	}
	return r
}

// roundShort is Round in 128 bits; ok is false when they are too few.
func (f Fraction) roundShort(places int) (r Fraction, ok bool) {
	hi, lo := bits.Mul64(magnitude(f.num), uint64(pow10[places]))
	d := uint64(f.bottom())
	if hi >= d {
		return r, false
	}
	q, rest := bits.Div64(hi, lo, d)
	if rest >= d-rest {
		q++
	}
	if q > math.MaxInt64 {
		return r, false
	}
	n := int64(q)
	if f.num < 0 {
		n = -n
	}
	return small(n, pow10[places]), true
}

// Decimal is f rounded to places as a decimal number.
func (f Fraction) Decimal(places int) decimal.Decimal {
	n := f.Round(places).Mul(tenTo(places)).parts().num
	return decimal.NewFromBigInt(n, int32(-places))
}

// Text is f in plain notation with at most places decimals (half away from
// zero), trailing zeros dropped.
func (f Fraction) Text(places int) string { return f.Decimal(places).String() }

// String is f to 20 places, for messages and tests.
func (f Fraction) String() string { return f.Text(20) }

// Float is the nearest float64: for drawing, never for a decision.
func (f Fraction) Float() float64 {
	// Two numbers that are floats themselves: their quotient is rounded once.
	if d := f.bottom(); f.wide == nil && max(f.num, -f.num, d) <= 1<<53 {
		return float64(f.num) / float64(d)
	}
	v, _ := f.Rat().Float64()
	return v
}

func (f Fraction) bottom() int64 {
	if f.den == 0 {
		return 1
	}
	return f.den
}

// small is num/den in lowest terms, den > 0.
func small(num, den int64) Fraction {
	n, d := reduce(num, den)
	return Fraction{num: n, den: d}
}

// reduce divides num and den (> 0) by what they share.
func reduce(num, den int64) (int64, int64) {
	if den == 1 {
		return num, 1
	}
	if num == 0 {
		return 0, 1
	}
	g := gcd(magnitude(num), uint64(den))
	if g == 1 {
		return num, den
	}
	return num / int64(g), den / int64(g)
}

// gcd is Stein's binary algorithm; a and b are above 0.
func gcd(a, b uint64) uint64 {
	shift := bits.TrailingZeros64(a | b)
	a >>= bits.TrailingZeros64(a)
	for b != 0 {
		b >>= bits.TrailingZeros64(b)
		if a > b {
			a, b = b, a
		}
		b -= a
	}
	return a << shift
}

func magnitude(n int64) uint64 {
	if n < 0 {
		return uint64(-n)
	}
	return uint64(n)
}

// mul is a × b; ok is false when it leaves ±(2⁶³ − 1).
func mul(a, b int64) (p int64, ok bool) {
	hi, lo := bits.Mul64(magnitude(a), magnitude(b))
	if hi != 0 || lo > math.MaxInt64 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}

// add is a + b; ok is false when it leaves ±(2⁶³ − 1).
func add(a, b int64) (s int64, ok bool) {
	s = a + b
	if (s > a) != (b > 0) && b != 0 || s == math.MinInt64 {
		return 0, false
	}
	return s, true
}

// compareProducts is the order of a × b and c × d, b and d above 0.
func compareProducts(a, b, c, d int64) int {
	if b == d || (a < 0) != (c < 0) {
		return cmp.Compare(a, c)
	}
	hi, lo := bits.Mul64(magnitude(a), uint64(b))
	hi2, lo2 := bits.Mul64(magnitude(c), uint64(d))
	order := cmp.Or(cmp.Compare(hi, hi2), cmp.Compare(lo, lo2))
	if a < 0 {
		return -order
	}
	return order
}

// tenTo is 10 to the power of places.
func tenTo(places int) Fraction {
	n := max(places, -places)
	t := Fraction{}
	if n < len(pow10) {
		t = Fraction{num: pow10[n], den: 1}
	} else {
		t = wide{new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(n)), nil), one}.fraction()
	}
	if places < 0 {
		return Int(1).Quo(t)
	}
	return t
}

// pow10 holds the powers of ten within 63 bits.
var pow10 = func() [19]int64 {
	var p [19]int64
	p[0] = 1
	for i := 1; i < len(p); i++ {
		p[i] = p[i-1] * 10
	}
	return p
}()
