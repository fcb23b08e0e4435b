package form

import (
	"errors"
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// ReadNumber reads a number as the locale writes them, without a currency.
func ReadNumber(text string, l money.Locale) (scenario.Decimal, error) {
	if strings.TrimSpace(text) == "" {
		return decimal.Zero, errors.New("a number is missing; 0 for none")
	}
	r, err := l.Read(text)
	if err != nil {
		return decimal.Zero, err
	}
	if r.Value.Exponent() > 0 {
		return decimal.Zero, fmt.Errorf("write %s in full", text)
	}
	return r.Value, nil
}
