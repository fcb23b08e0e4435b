package form

import (
	"errors"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// ReadNumber reads a number as the locale writes them, without a currency.
func ReadNumber(text string, l money.Locale) (scenario.Decimal, error) {
	if strings.TrimSpace(text) == "" {
		return decimal.Zero, errors.New(words.TypeNumber)
	}
	r, err := l.Read(text)
	if err != nil {
		return decimal.Zero, err
	}
	if r.Value.Exponent() > 0 {
		return decimal.Zero, errors.New(words.InFull(text))
	}
	return r.Value, nil
}

// ReadCount reads a whole number.
func ReadCount(text string, l money.Locale) (int, error) {
	v, err := ReadNumber(text, l)
	if err != nil {
		return 0, err
	}
	if !v.IsInteger() || v.Abs().GreaterThan(decimal.New(1, 9)) {
		return 0, errors.New(words.TypeWhole)
	}
	return int(v.IntPart()), nil
}
