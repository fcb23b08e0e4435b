package words

import (
	"fmt"

	"reelworth/internal/compare"
)

// The headings of a comparison's tables. Those that take the comparison name the currency.
const (
	ReceiptsTitle = "Receipts"
	CeilingsTitle = "The highest price"
	WorthTitle    = "Worth knowing"
	ARoll         = "a roll"
)

// RollsTitle heads what a roll costs, part by part.
func RollsTitle(c *compare.Comparison) string { return "Cost of a roll, " + CostUnder(c) }

// YearTitle heads what the scenario's months come to.
func YearTitle(c *compare.Comparison) string {
	return theMonths(&c.Scenario) + ", " + c.Currency()
}

// YearHeader heads its columns.
func YearHeader() []string {
	return []string{"", "cash", "worth left", "time", "all counted", "cash saved", "saved in all", "ahead from"}
}

// MonthsTitle heads the spending month by month.
func MonthsTitle(c *compare.Comparison) string {
	return fmt.Sprintf("Month by month, %s spent so far (and film orders placed)", c.Currency())
}

// FlipsTitle heads what changes the answer of a pair.
func FlipsTitle(p *compare.PairOutlook) string { return "What changes the answer, " + Pairing(p) }

// FlipsHeader heads its columns.
func FlipsHeader() []string { return []string{"", "today", "changes below", "changes above"} }

// SwingsTitle heads how far each figure moves what is saved.
func SwingsTitle(c *compare.Comparison) string {
	return "What moves the saving, " + c.Currency() + " saved with each figure at its low and its high"
}

// SwingsHeader heads its columns.
func SwingsHeader() []string { return []string{"", "low", "high", "saved at low", "saved at high"} }

// SizesTitle heads the best sizes of order.
func SizesTitle(c *compare.Comparison) string { return "How many to order at once, " + c.Currency() }

// SizesHeader heads their columns.
func SizesHeader() []string { return []string{"", "at once", "landed each", ARoll, "why"} }

// CeilingsHeader heads the highest prices.
func CeilingsHeader() []string { return []string{"", "price", ""} }
