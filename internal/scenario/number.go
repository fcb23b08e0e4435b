package scenario

import (
	"strconv"
	"strings"
	"unicode"

	"github.com/shopspring/decimal"
)

// maxDigits is how many digits a number may have before its point, and after it.
const maxDigits = 12

// parseNumber reads the plain grammar: an optional minus, digits, and optionally a
// point and digits. It keeps the places typed. On failure it says what is wrong
// and what to write.
func parseNumber(text string) (d Decimal, wrong, remedy string) {
	whole, after, ok := plainNumber(text)
	if !ok {
		return d, quote(text) + " is no plain number", numberRemedy(text)
	}
	if len(whole) > maxDigits || len(after) > maxDigits {
		return d, quote(text) + " has more than 12 digits before or after the point", "write at most 12 digits on either side of the point"
	}
	if digits := whole + after; len(digits) <= 18 {
		n, _ := strconv.ParseInt(digits, 10, 64)
		if text[0] == '-' {
			n = -n
		}
		return decimal.New(n, -int32(len(after))), "", ""
	}
	d, err := decimal.NewFromString(text)
	if err != nil {
		return d, quote(text) + " is no plain number", numberRemedy(text)
	}
	return d, "", ""
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

// numberRemedy guesses the plain spelling of a number that is not plain.
func numberRemedy(text string) string {
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
		return `write "` + guess + `"`
	}
	return `write digits with a point if need be, such as "14.80"`
}

// spell is a number the way it was typed.
func spell(d Decimal) string { return d.StringFixed(max(0, -d.Exponent())) }

// sameSpelling says whether two numbers are equal and typed with as many places.
func sameSpelling(a, b Decimal) bool {
	return max(0, -a.Exponent()) == max(0, -b.Exponent()) && a.Cmp(b) == 0
}

// unset says whether nobody has given d a value, not even "0".
func unset(d Decimal) bool { return d == Decimal{} }

// quote is a text in quotation marks, fit for one line of a message.
func quote(text string) string {
	return `"` + clip(text) + `"`
}

// clip makes a text short and printable for a message.
func clip(text string) string {
	const most = 60
	var b strings.Builder
	n := 0
	for _, r := range text {
		if n++; n > most {
			b.WriteString("…")
			break
		}
		switch {
		case unicode.IsSpace(r):
			r = ' '
		case !unicode.IsPrint(r):
			r = '\ufffd'
		}
		b.WriteRune(r)
	}
	return b.String()
}
