package scenario

import (
	"strconv"
	"strings"

	"github.com/shopspring/decimal"
)

// maxDigits is how many digits a number may have before its point, and after it.
const maxDigits = 12

// parseNumber reads the plain grammar: an optional minus, digits, and optionally a
// point and digits. It keeps the places typed. On failure the code is NotNumber or
// TooLong.
func parseNumber(text string) (Decimal, Code) {
	whole, after, ok := plainNumber(text)
	if !ok {
		return Decimal{}, NotNumber
	}
	if len(whole) > maxDigits || len(after) > maxDigits {
		return Decimal{}, TooLong
	}
	if digits := whole + after; len(digits) <= 18 {
		n, _ := strconv.ParseInt(digits, 10, 64)
		if text[0] == '-' {
			n = -n
		}
		return decimal.New(n, -int32(len(after))), ""
	}
	d, err := decimal.NewFromString(text)
	if err != nil {
		return Decimal{}, NotNumber
	}
	return d, ""
}

// plainNumber splits a number at its point.
func plainNumber(text string) (whole, after string, ok bool) {
	whole, after, point := strings.Cut(strings.TrimPrefix(text, "-"), ".")
	return whole, after, allDigits(whole) && (!point || allDigits(after))
}

func allDigits(s string) bool {
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return false
		}
	}
	return s != ""
}

// plainGuess is the plain spelling most likely meant by a number that is not plain, ""
// where it cannot be told.
func plainGuess(text string) string {
	guess := strings.TrimPrefix(strings.TrimSpace(text), "+")
	guess = strings.ReplaceAll(guess, "_", "")
	if strings.Count(guess, ",") == 1 && !strings.Contains(guess, ".") {
		guess = strings.Replace(guess, ",", ".", 1)
	}
	if strings.HasPrefix(guess, ".") {
		guess = "0" + guess
	}
	guess = strings.TrimSuffix(guess, ".")
	if whole, after, ok := plainNumber(guess); ok && len(whole) <= maxDigits && len(after) <= maxDigits {
		return guess
	}
	return ""
}

// Spell is a number the way it was typed.
func Spell(d Decimal) string { return d.StringFixed(max(0, -d.Exponent())) }

// sameSpelling says whether two numbers are equal and typed with as many places.
func sameSpelling(a, b Decimal) bool {
	return max(0, -a.Exponent()) == max(0, -b.Exponent()) && a.Cmp(b) == 0
}

// unset says whether nobody has given d a value, not even "0".
func unset(d Decimal) bool { return d == Decimal{} }
