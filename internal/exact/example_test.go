package exact_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// Rounding is decided on the exact value, half away from zero.
func ExampleFraction_Round() {
	price := exact.FromDecimal(decimal.RequireFromString("57.675"))
	fmt.Println(price.Round(2))

	third := exact.Int(1).Quo(exact.Int(3))
	fmt.Println(third.Text(6), third.Mul(exact.Int(3)))
	// Output:
	// 57.68
	// 0.333333 1
}

func ExampleFraction_Ceil() {
	equipment, savedByRoll := exact.Int(98), exact.Ratio(289, 100)
	fmt.Println(equipment.Quo(savedByRoll).Ceil(), "rolls pay for it")
	// Output: 34 rolls pay for it
}
