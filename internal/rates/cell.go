package rates

import (
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// cell is one rate in eight bytes, so that a quarter of a century of forty currencies
// stays small: the digits times 32 and the number of decimals, or the place in File.long
// of a number with too many digits for that.
type cell uint64

const (
	none cell = 0 // no rate; a rate is above 0
	long cell = 1 << 63

	shortDigits  = 17  // a coefficient of so many fits
	mostDecimals = 31  // and so many decimals
	mostDigits   = 100 // more are no rate, and would take their time
)

// value is the rate in a cell that has one.
func (f *File) value(c cell) exact.Fraction {
	if c&long != 0 {
		return f.long[c&^long]
	}
	rate := exact.Int(int64(c >> 5))
	if places := int(c & mostDecimals); places > 0 {
		rate = rate.Quo(tens[places])
	}
	return rate
}

// tens are the powers of ten that a cell's decimals may need.
var tens = func() (p [mostDecimals + 1]exact.Fraction) {
	p[0] = exact.Int(1)
	for i := 1; i < len(p); i++ {
		p[i] = p[i-1].Mul(exact.Int(10))
	}
	return p
}()

// noRate is how the bank writes that there is no rate.
const noRate = "N/A"

// cell reads a rate: digits, or digits, a point and digits, above 0. ok is false for
// anything else, such as an exponent, a sign, or a number without end.
func (f *File) cell(text string) (c cell, ok bool) {
	if text == noRate {
		return none, true
	}
	whole, part, point := strings.Cut(text, ".")
	if whole == "" || point && part == "" || len(text) > mostDigits {
		return none, false
	}
	var n uint64
	for _, digits := range [2]string{whole, part} {
		for i := range len(digits) {
			if digits[i] < '0' || digits[i] > '9' {
				return none, false
			}
			n = n*10 + uint64(digits[i]-'0') // of no use where it is too long
		}
	}
	if len(whole)+len(part) <= shortDigits {
		return cell(n<<5 | uint64(len(part))), n > 0
	}
	d, err := decimal.NewFromString(text)
	if err != nil || d.Sign() <= 0 {
		return none, false
	}
	f.long = append(f.long, exact.FromDecimal(d))
	return long | cell(len(f.long)-1), true
}
