package exact

import (
	"math"
	"math/big"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

// anyFraction draws fractions on both sides of the 63-bit border.
func anyFraction(t *rapid.T, name string) Fraction {
	edge := rapid.SampledFrom([]int64{0, 1, -1, 3, 10, math.MaxInt64, -math.MaxInt64, math.MinInt64, 1 << 32, 999999999999})
	num := rapid.OneOf(edge, rapid.Int64(), rapid.Int64Range(-1000, 1000)).Draw(t, name+" numerator")
	den := rapid.OneOf(rapid.Int64Range(1, 1000), rapid.Int64Range(1, math.MaxInt64)).Draw(t, name+" denominator")
	return FromRat(big.NewRat(num, den))
}

func same(t *rapid.T, what string, got Fraction, want *big.Rat) {
	if r := got.Rat(); r.Num().Cmp(want.Num()) != 0 || r.Denom().Cmp(want.Denom()) != 0 { // in lowest terms, too
		t.Fatalf("%s = %s, want %s", what, r, want)
	}
	if got.wide == nil && got.bottom() < 1 {
		t.Fatalf("%s: denominator %d", what, got.den)
	}
}

// math/big is the outside opinion on every operation.
func TestAgreesWithBigRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f, g := anyFraction(t, "f"), anyFraction(t, "g")
		a, b := f.Rat(), g.Rat()
		same(t, "f+g", f.Add(g), new(big.Rat).Add(a, b))
		same(t, "f-g", f.Sub(g), new(big.Rat).Sub(a, b))
		same(t, "f*g", f.Mul(g), new(big.Rat).Mul(a, b))
		if b.Sign() != 0 {
			same(t, "f/g", f.Quo(g), new(big.Rat).Quo(a, b))
		}
		if f.Cmp(g) != a.Cmp(b) || f.Sign() != a.Sign() || f.Abs().Cmp(FromRat(new(big.Rat).Abs(a))) != 0 {
			t.Fatalf("order of %s and %s", a, b)
		}
		if want, _ := a.Float64(); f.Float() != want {
			t.Fatalf("float of %s is %v, want %v", a, f.Float(), want)
		}
		floor := new(big.Int).Div(a.Num(), a.Denom())
		same(t, "floor", f.Floor(), new(big.Rat).SetInt(floor))
		if c := f.Ceil(); c.Less(f) || !c.Sub(Int(1)).Less(f) {
			t.Fatalf("ceil of %s is %s", a, c)
		}
	})
}

// Numbers of many words, and those that came of each other and so share divisors: each is
// made of two before it, and again math/big says what comes out.
func TestLongReckoningsAgreeWithBigRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fs := []Fraction{anyFraction(t, "f"), anyFraction(t, "g"), anyFraction(t, "h")}
		rats := []*big.Rat{fs[0].Rat(), fs[1].Rat(), fs[2].Rat()}
		for range rapid.IntRange(1, 12).Draw(t, "steps") {
			i, j := rapid.IntRange(0, len(fs)-1).Draw(t, "one"), rapid.IntRange(0, len(fs)-1).Draw(t, "other")
			f, g, r := fs[i], fs[j], new(big.Rat)
			switch rapid.IntRange(0, 3).Draw(t, "what") {
			case 0:
				f, r = f.Add(g), r.Add(rats[i], rats[j])
			case 1:
				f, r = f.Sub(g), r.Sub(rats[i], rats[j])
			case 2:
				f, r = f.Mul(g), r.Mul(rats[i], rats[j])
			default:
				if g.IsZero() {
					continue
				}
				f, r = f.Quo(g), r.Quo(rats[i], rats[j])
			}
			same(t, "a step", f, r)
			if f.Cmp(g) != r.Cmp(rats[j]) || g.Cmp(f) != -f.Cmp(g) || f.Sign() != r.Sign() {
				t.Fatalf("order of %s and %s", r, rats[j])
			}
			if max(r.Num().BitLen(), r.Denom().BitLen()) < 1000 { // steps that square grow without end
				fs, rats = append(fs, f), append(rats, r)
			}
		}
		for i := range fs {
			same(t, "what stood before", fs[i], rats[i]) // was not changed by what came after
		}
	})
}

// big.Rat.FloatString rounds the exact value half away from zero.
func TestRoundAgreesWithBigRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFraction(t, "f")
		places := rapid.IntRange(0, 24).Draw(t, "places")
		want, _ := new(big.Rat).SetString(f.Rat().FloatString(places))
		same(t, "round", f.Round(places), want)
		if got := f.Decimal(places); got.Rat().Cmp(want) != 0 {
			t.Fatalf("decimal %s, want %s", got, want)
		}
	})
}

func TestRoundCases(t *testing.T) {
	for _, c := range []struct {
		in     string
		places int
		want   string
	}{
		{"57.675", 2, "57.68"}, {"24.785", 2, "24.79"}, {"24.784", 2, "24.78"}, {"-24.785", 2, "-24.79"},
		{"0.5", 0, "1"}, {"-0.5", 0, "-1"}, {"1250", -2, "1300"}, {"0.0004", 3, "0"}, {"123456789012.123456789012", 11, "123456789012.12345678901"},
	} {
		if got := FromDecimal(decimal.RequireFromString(c.in)).Round(c.places).String(); got != c.want {
			t.Errorf("%s to %d places = %s, want %s", c.in, c.places, got, c.want)
		}
	}
	if got := Ratio(1, 3).Text(20); got != "0.33333333333333333333" {
		t.Error(got)
	}
	if got := FromDecimal(decimal.New(5, 30)).Round(2).String(); got != "5"+"000000000000000000000000000000" {
		t.Error(got)
	}
}

func TestZeroValueAndWholeNumbers(t *testing.T) {
	var z Fraction
	if !z.IsZero() || z.String() != "0" || !z.Equal(Int(0)) || !z.Add(Int(3)).Equal(Int(3)) || !z.Neg().IsZero() {
		t.Error("the zero value is not 0")
	}
	if n, ok := Ratio(12, 4).Int64(); n != 3 || !ok {
		t.Error(n, ok)
	}
	if _, ok := Ratio(1, 4).Int64(); ok {
		t.Error("a quarter is no whole number")
	}
	if d, ok := Ratio(6, 8).Denominator(); d != 4 || !ok {
		t.Error(d, ok)
	}
	if d, ok := z.Denominator(); d != 1 || !ok {
		t.Error(d, ok)
	}
	if _, ok := Int(math.MaxInt64).Mul(Int(3)).Quo(Int(11)).Denominator(); ok {
		t.Error("what outgrows 63 bits has no small denominator")
	}
	defer func() {
		if recover() == nil {
			t.Error("dividing by zero must panic")
		}
	}()
	Int(1).Quo(z)
}

func BenchmarkFraction(b *testing.B) {
	f, g := FromDecimal(decimal.RequireFromString("118.00")), FromDecimal(decimal.RequireFromString("0.8875"))
	b.Run("small", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			f.Mul(g).Round(2).Add(g).Quo(f)
		}
	})
	wide := Int(math.MaxInt64).Mul(Int(3))
	b.Run("wide", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			f.Mul(wide).Round(2).Add(g).Quo(f)
		}
	})
}
