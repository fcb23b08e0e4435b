package report

import (
	"strconv"
	"strings"

	"reelworth/internal/exact"
)

// places is how many decimals a number is given to.
const places = 20

// plain is a number in plain notation with at most 20 decimals, half away from zero,
// trailing zeros dropped.
func plain(f exact.Fraction) string {
	// Most numbers are amounts or counts: those need no division to a long decimal.
	if n, ok := f.Mul(exact.Int(1000)).Int64(); ok {
		return thousandths(n)
	}
	return f.Text(places)
}

// thousandths is n/1000.
func thousandths(n int64) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	text := sign + strconv.FormatInt(n/1000, 10)
	if part := n % 1000; part > 0 {
		text += "." + strings.TrimRight(strconv.FormatInt(1000+part, 10)[1:], "0")
	}
	return text
}

// number is an exact number as a JSON string.
type number exact.Fraction

// MarshalText is the number in plain notation.
func (n number) MarshalText() ([]byte, error) { return []byte(plain(exact.Fraction(n))), nil }
