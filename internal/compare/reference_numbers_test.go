package compare_test

import (
	"math/big"
	"strings"

	"reelworth/internal/scenario"
)

// rat is a big.Rat that reads like arithmetic. Its zero value is 0, and it never
// changes.
type rat struct{ v *big.Rat }

func whole(n int) rat                  { return rat{big.NewRat(int64(n), 1)} }
func typed(d scenario.Decimal) rat     { return rat{d.Rat()} }
func percentOf(d scenario.Decimal) rat { return typed(d).over(whole(100)) }
func flag(b bool, amount rat) rat      { return choose(b, amount, rat{}) }
func (a rat) plus(b rat) rat           { return rat{new(big.Rat).Add(a.get(), b.get())} }
func (a rat) minus(b rat) rat          { return rat{new(big.Rat).Sub(a.get(), b.get())} }
func (a rat) times(b rat) rat          { return rat{new(big.Rat).Mul(a.get(), b.get())} }
func (a rat) over(b rat) rat           { return rat{new(big.Rat).Quo(a.get(), b.get())} }
func (a rat) below(b rat) bool         { return a.get().Cmp(b.get()) < 0 }
func (a rat) above(b rat) bool         { return a.get().Cmp(b.get()) > 0 }
func (a rat) is(b rat) bool            { return a.get().Cmp(b.get()) == 0 }
func (a rat) positive() bool           { return a.get().Sign() > 0 }
func (a rat) zero() bool               { return a.get().Sign() == 0 }
func (a rat) magnitude() rat           { return rat{new(big.Rat).Abs(a.get())} }
func (a rat) String() string           { return a.get().RatString() }
func least(a, b rat) rat               { return choose(b.below(a), b, a) }
func greatest(a, b rat) rat            { return choose(b.above(a), b, a) }
func (a rat) maybe() *rat              { return &a }
func choose[T any](yes bool, a, b T) T {
	if yes {
		return a
	}
	return b
}

func total(parts ...rat) rat {
	var s rat
	for _, p := range parts {
		s = s.plus(p)
	}
	return s
}

func (a rat) get() *big.Rat {
	if a.v == nil {
		return new(big.Rat)
	}
	return a.v
}

// ceiling is the least whole number not below a.
func (a rat) ceiling() rat {
	up := new(big.Int).Neg(new(big.Int).Div(new(big.Int).Neg(a.get().Num()), a.get().Denom()))
	return rat{new(big.Rat).SetInt(up)}
}

// toPlaces rounds half away from zero: FloatString is documented to.
func (a rat) toPlaces(n int) rat {
	r, ok := new(big.Rat).SetString(a.get().FloatString(n))
	if !ok {
		panic("no number")
	}
	return rat{r}
}

// plain is a to 20 places without trailing zeros.
func (a rat) plain() string {
	s := strings.TrimRight(a.get().FloatString(20), "0")
	s = strings.TrimSuffix(s, ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// minorDigits are the digits of the currencies the random scenarios use (ISO 4217).
var minorDigits = map[string]int{"EUR": 2, "USD": 2, "GBP": 2, "JPY": 0, "KWD": 3}

// exactMoney ends the name of a currency whose amounts are never rounded.
const exactMoney = " to the last digit"

// billed rounds to what a bill in that currency can say.
func (a rat) billed(currency string) rat {
	if strings.HasSuffix(currency, exactMoney) {
		return a
	}
	n, known := minorDigits[currency]
	if !known {
		panic("the reference does not know " + currency)
	}
	return a.toPlaces(n)
}
