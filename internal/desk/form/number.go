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
