package money

import (
	"maps"
	"slices"

	"github.com/bojanz/currency"

	"reelworth/internal/exact"
)

// notPaidIn are the ISO 4217 codes that bojanz/currency knows and nobody is charged
// in. ISO 4217 lists the first nine as funds codes and XAD as a unit of account.
// Its codes for metals (XAU, XAG, …), for drawing rights and other units of account
// (XDR, XSU, XUA), for tests (XTS) and for no currency (XXX) the library leaves out
// itself.
var notPaidIn = []string{"BOV", "CHE", "CHW", "CLF", "COU", "MXV", "USN", "UYI", "UYW", "XAD"}

// minorDigits holds every code in use with its minor unit's digits.
var minorDigits = func() map[string]int {
	m := map[string]int{}
	for _, code := range currency.GetCurrencyCodes() {
		digits, ok := currency.GetDigits(code)
		if ok && !slices.Contains(notPaidIn, code) {
			m[code] = int(digits)
		}
	}
	return m
}()

// codes are the keys of minorDigits, sorted.
var codes = slices.Sorted(maps.Keys(minorDigits))

// Digits is how many decimal places a currency's minor unit has: EUR 2, JPY 0, KWD 3.
// ok is false when code is not an ISO 4217 code that people pay in today: old codes
// (DEM), funds codes (CLF), metals (XAU) and XXX are not. Codes are in capitals.
//
// The digits are those of ISO 4217, as CLDR 48 hands them on, also where the smallest
// coin went out of use long ago (HUF 2, IDR 2), because card statements keep to them.
func Digits(code string) (n int, ok bool) {
	n, ok = minorDigits[code]
	return n, ok
}

// Codes are all codes that Digits knows, sorted. The slice is the caller's own.
func Codes() []string { return slices.Clone(codes) }

// Round is f to a currency's minor unit, half away from zero, decided on the exact
// value. A code that Digits does not know is rounded to two places.
func Round(f exact.Fraction, code string) exact.Fraction { return f.Round(Places(code)) }

// Places is Digits for a code that may be unknown, which is taken to have two places, as
// most currencies do.
func Places(code string) int {
	if n, ok := minorDigits[code]; ok {
		return n
	}
	return 2
}
