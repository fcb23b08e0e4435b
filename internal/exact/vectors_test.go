package exact

import (
	"maps"
	"math/big"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
)

// farthest is the largest exponent, either way, of the cases that are run: both kinds of
// numbers write every digit out, and no sum of a scenario comes near.
const farthest = 2000

// whyNot says why a case is left out; empty to run it.
func whyNot(v vector) string {
	for _, a := range append(slices.Clone(v.args), v.result) {
		if a == "#" {
			return "a null in place of a number"
		}
	}
	switch v.op {
	case "comparetotal":
		return "comparetotal: neither kind of number is ordered by its zeros"
	case "squareroot", "cuberoot", "log10":
		return v.op + ": neither kind of number has it"
	case "reduce":
		return "reduce: decimal keeps its places, a fraction has none"
	case "toeng":
		return "toeng: neither kind of number is written with an exponent"
	case "exp", "ln":
		return v.op + ": decimal only approximates it, and nothing here uses it"
	}
	for _, a := range v.args {
		if !finite.MatchString(a) && v.op != "tosci" {
			return "an operand that is not finite"
		}
	}
	for _, c := range v.conditions {
		switch c {
		case "overflow", "underflow", "subnormal":
			return "overflow, underflow, subnormal: neither kind of number has a least or greatest exponent"
		case "invalid_context", "invalid_operation", "division_impossible", "division_undefined":
			return "invalid here, but only for want of digits or of a NaN"
		}
	}
	for _, a := range append(slices.Clone(v.args), v.result) {
		if e, ok := exponent(a); ok && (e > farthest || e < -farthest) {
			return "exponents beyond 2000 digits"
		}
	}
	if v.op == "power" && !wholePower(v.args[1]) {
		return "power: only whole exponents from 0 to 999 are exact, and nothing here uses others"
	}
	if rounders[v.rounding] == nil {
		return "rounding " + v.rounding + ": neither kind of number has it"
	}
	return ""
}

func wholePower(s string) bool {
	r, ok := new(big.Rat).SetString(s)
	return ok && r.IsInt() && r.Sign() >= 0 && r.Num().IsInt64() && r.Num().Int64() < 1000
}

// rounders are decimal's roundings under the vectors' names.
var rounders = map[string]func(decimal.Decimal, int32) decimal.Decimal{
	"half_up": decimal.Decimal.Round, "half_even": decimal.Decimal.RoundBank,
	"up": decimal.Decimal.RoundUp, "down": decimal.Decimal.RoundDown,
	"ceiling": decimal.Decimal.RoundCeil, "floor": decimal.Decimal.RoundFloor,
}

// roundFraction is the same for fractions, with what they have: Round, Floor and Ceil.
func roundFraction(f Fraction, places int, rounding string) (Fraction, bool) {
	scaled := f.Mul(tenTo(places))
	switch {
	case rounding == "half_up":
		return f.Round(places), true
	case rounding == "floor" || rounding == "down" && f.Sign() >= 0 || rounding == "up" && f.Sign() < 0:
		return scaled.Floor().Quo(tenTo(places)), true
	case rounding == "ceiling" || rounding == "up" || rounding == "down":
		return scaled.Ceil().Quo(tenTo(places)), true
	}
	return f, false
}

// bench is one case while it is run.
type bench struct {
	t    *testing.T
	v    vector
	d    []decimal.Decimal // the operands
	f    []Fraction
	want *big.Rat
	exp  int // of the result
}

func (b *bench) fail(what string, got any) {
	b.t.Helper()
	b.t.Errorf("%s %s: %s %s, %s to %d digits: %s gives %v, want %s", b.v.file, b.v.id, b.v.op, strings.Join(b.v.args, " "),
		b.v.rounding, b.v.precision, what, got, b.v.result)
}

// finish rounds an exact result of either kind to the digits of the case and compares.
func (b *bench) finish(what string, d decimal.Decimal, f Fraction) {
	places := int(-d.Exponent())
	if over := significant(d) - b.v.precision; over > 0 {
		places -= over
		d = rounders[b.v.rounding](d, int32(places))
	}
	if d.Rat().Cmp(b.want) != 0 {
		b.fail("decimal's "+what, d)
	}
	if r, ok := roundFraction(f, places, b.v.rounding); ok && r.Rat().Cmp(b.want) != 0 {
		b.fail("fraction's "+what, r)
	}
}

// significant is how many digits d has. Not by decimal's NumDigits: it goes by float64
// logarithms and finds 15 digits in 1000000000000002 (cases addx175 and subx475).
func significant(d decimal.Decimal) int {
	return len(new(big.Int).Abs(d.Coefficient()).String())
}

// divide compares quotients at the places that the result has.
func (b *bench) divide() {
	places := int32(-b.exp)
	q, r := b.d[0].QuoRem(b.d[1], places)
	if !q.Mul(b.d[1]).Add(r).Equal(b.d[0]) {
		b.fail("quotient and remainder", q)
	}
	if r.Abs().Cmp(b.d[1].Abs().Shift(-places)) >= 0 || r.Sign()*b.d[0].Sign() < 0 {
		b.fail("remainder", r)
	}
	switch b.v.rounding {
	case "down":
		if q.Rat().Cmp(b.want) != 0 {
			b.fail("decimal's QuoRem", q)
		}
	case "half_up":
		if got := b.d[0].DivRound(b.d[1], places); got.Rat().Cmp(b.want) != 0 {
			b.fail("decimal's DivRound", got)
		}
	default: // decided by the remainder, as whoever calls QuoRem has to
		if got := byRemainder(q, r, b.d[1], places, b.v.rounding); got.Rat().Cmp(b.want) != 0 {
			b.fail("decimal's QuoRem", got)
		}
	}
	if got, ok := roundFraction(b.f[0].Quo(b.f[1]), int(places), b.v.rounding); ok && got.Rat().Cmp(b.want) != 0 {
		b.fail("fraction's Quo", got)
	}
}

// byRemainder rounds a truncated quotient q of a division by d that left r.
func byRemainder(q, r, d decimal.Decimal, places int32, rounding string) decimal.Decimal {
	if r.IsZero() {
		return q
	}
	sign := r.Sign() * d.Sign()
	half := r.Abs().Mul(decimal.NewFromInt(2)).Cmp(d.Abs().Shift(-places))
	odd := q.Shift(places).BigInt().Bit(0) == 1
	if rounding == "up" || rounding == "ceiling" && sign > 0 || rounding == "floor" && sign < 0 ||
		rounding == "half_even" && (half > 0 || half == 0 && odd) {
		return q.Add(decimal.New(int64(sign), -places))
	}
	return q
}

// wholeQuotient is the quotient without decimals, toward zero, as a fraction.
func wholeQuotient(f, g Fraction) Fraction {
	q, _ := roundFraction(f.Quo(g), 0, "down")
	return q
}

// run runs one case on both kinds of numbers.
func run(t *testing.T, v vector) {
	if v.op == "tosci" && !finite.MatchString(v.args[0]) {
		if d, err := decimal.NewFromString(v.args[0]); err == nil {
			t.Errorf("%s %s: %q is read as %s", v.file, v.id, v.args[0], d)
		}
		return
	}
	b := &bench{t: t, v: v}
	for _, a := range v.args {
		d, err := decimal.NewFromString(a)
		if err != nil || d.Rat().Cmp(rational(t, a)) != 0 {
			t.Errorf("%s %s: %s is read as %s, %v", v.file, v.id, a, d, err)
			return
		}
		b.d, b.f = append(b.d, d), append(b.f, FromDecimal(d))
	}
	if slices.Contains(v.conditions, "division_by_zero") {
		if !panics(func() { b.d[0].QuoRem(b.d[1], 2) }) || !panics(func() { b.f[0].Quo(b.f[1]) }) {
			b.fail("dividing by zero", "a number")
		}
		return
	}
	b.want = rational(t, v.result)
	b.exp, _ = exponent(v.result)
	operations[v.op](b)
}

func panics(f func()) (yes bool) {
	defer func() { yes = recover() != nil }()
	f()
	return false
}

// operations are those that decimal has, under the vectors' names.
var operations = map[string]func(*bench){
	"add":      func(b *bench) { b.finish("Add", b.d[0].Add(b.d[1]), b.f[0].Add(b.f[1])) },
	"subtract": func(b *bench) { b.finish("Sub", b.d[0].Sub(b.d[1]), b.f[0].Sub(b.f[1])) },
	"multiply": func(b *bench) { b.finish("Mul", b.d[0].Mul(b.d[1]), b.f[0].Mul(b.f[1])) },
	"abs":      func(b *bench) { b.finish("Abs", b.d[0].Abs(), b.f[0].Abs()) },
	"minus":    func(b *bench) { b.finish("Neg", b.d[0].Neg(), b.f[0].Neg()) },
	"plus":     func(b *bench) { b.finish("rounding", b.d[0], b.f[0]) },
	"apply":    func(b *bench) { b.finish("rounding", b.d[0], b.f[0]) },
	"tosci":    func(b *bench) { b.finish("rounding", b.d[0], b.f[0]) },
	"divide":   (*bench).divide,
	"divideint": func(b *bench) {
		q, _ := b.d[0].QuoRem(b.d[1], 0)
		b.finish("QuoRem", q, wholeQuotient(b.f[0], b.f[1]))
	},
	"remainder": func(b *bench) {
		_, r := b.d[0].QuoRem(b.d[1], 0)
		b.finish("QuoRem", r, b.f[0].Sub(b.f[1].Mul(wholeQuotient(b.f[0], b.f[1]))))
		b.finish("Mod", b.d[0].Mod(b.d[1]), b.f[0].Sub(b.f[1].Mul(wholeQuotient(b.f[0], b.f[1]))))
	},
	"compare": func(b *bench) {
		want := b.want.Sign()
		if d, f := b.d[0].Cmp(b.d[1]), b.f[0].Cmp(b.f[1]); d != want || f != want {
			b.fail("Cmp", []int{d, f})
		}
	},
	"quantize": func(b *bench) {
		to, _ := exponent(b.v.args[1])
		b.toPlaces(-to)
	},
	"tointegral":  func(b *bench) { b.toPlaces(0) },
	"tointegralx": func(b *bench) { b.toPlaces(0) },
	"power": func(b *bench) {
		n := int32(rational(b.t, b.v.args[1]).Num().Int64())
		d, err := b.d[0].PowInt32(n)
		if err != nil {
			b.fail("PowInt32", err)
			return
		}
		f := Int(1)
		for range n {
			f = f.Mul(b.f[0])
		}
		b.finish("PowInt32", d, f)
	},
}

// toPlaces rounds the first operand to a number of places.
func (b *bench) toPlaces(places int) {
	if got := rounders[b.v.rounding](b.d[0], int32(places)); got.Rat().Cmp(b.want) != 0 {
		b.fail("decimal's rounding", got)
	}
	if got, ok := roundFraction(b.f[0], places, b.v.rounding); ok && got.Rat().Cmp(b.want) != 0 {
		b.fail("fraction's rounding", got)
	}
	if b.v.rounding == "half_up" {
		if got := b.f[0].Decimal(places); got.Rat().Cmp(b.want) != 0 || int(got.Exponent()) != -places {
			b.fail("fraction's Decimal", got)
		}
	}
}

// casesRun is how many cases are run of each operation, so that none gets lost unseen.
var casesRun = map[string]int{
	"abs": 59, "add": 2236, "apply": 4, "compare": 734, "divide": 785, "divideint": 464, "minus": 80, "multiply": 563,
	"plus": 84, "power": 331, "quantize": 527, "remainder": 581, "subtract": 763, "tointegral": 151, "tointegralx": 163, "tosci": 695,
}

// casesLeftOut is how many are not, for each reason.
var casesLeftOut = map[string]int{
	"a null in place of a number":                                                             29,
	"an operand that is not finite":                                                           1019,
	"comparetotal: neither kind of number is ordered by its zeros":                            668,
	"cuberoot: neither kind of number has it":                                                 73,
	"exp: decimal only approximates it, and nothing here uses it":                             439,
	"exponents beyond 2000 digits":                                                            2107,
	"invalid here, but only for want of digits or of a NaN":                                   532,
	"ln: decimal only approximates it, and nothing here uses it":                              413,
	"log10: neither kind of number has it":                                                    388,
	"overflow, underflow, subnormal: neither kind of number has a least or greatest exponent": 1321,
	"power: only whole exponents from 0 to 999 are exact, and nothing here uses others":       3462,
	"reduce: decimal keeps its places, a fraction has none":                                   167,
	"rounding 05up: neither kind of number has it":                                            159,
	"rounding half_down: neither kind of number has it":                                       172,
	"squareroot: neither kind of number has it":                                               3585,
	"toeng: neither kind of number is written with an exponent":                               174,
}

func TestGeneralDecimalArithmetic(t *testing.T) {
	ran, left := map[string]int{}, map[string]int{}
	for _, v := range readVectors(t) {
		if why := whyNot(v); why != "" {
			left[why]++
			continue
		}
		if operations[v.op] == nil {
			t.Fatalf("%s %s: %s is neither run nor left out for a reason", v.file, v.id, v.op)
		}
		ran[v.op]++
		run(t, v)
	}
	if !maps.Equal(ran, casesRun) {
		t.Errorf("cases run: %#v", ran)
	}
	if !maps.Equal(left, casesLeftOut) {
		t.Errorf("cases left out: %#v", left)
	}
}
