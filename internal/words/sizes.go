package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/money"
)

// sizeReasons are the reasons that need no figure.
var sizeReasons = map[compare.SizeReason]string{
	compare.SizeFreeShipping: "the film is worth enough to be sent free",
	compare.SizeShipping:     "shipping is shared by more of them",
	compare.SizeFees:         "card and handling fees are shared by more of them",
	compare.SizeRounding:     "amounts round to a little less",
	compare.SizeNoCheaper:    "one is enough: ordering more makes a roll no cheaper",
	compare.SizeNoDemand:     "nothing is shot yet",
	compare.SizeOverLimit:    "the film is worth more than comes in free of duty or tax",
	compare.SizePaysPost:     "the film is worth too little to be sent free",
	compare.SizeSharesLess:   "shipping and fees are shared by fewer of them",
	compare.SizeSame:         "a roll costs the same, more is paid at once",
	compare.SizeDearer:       "each further one costs more than it shares",
}

// SizeReason says why a size of order is the best, or why it is not.
func SizeReason(c *compare.Comparison, size compare.OrderSize, l money.Locale) string {
	v := voiceOf(c, l)
	months := ""
	if size.MonthsToShoot != nil {
		months = v.plain(size.MonthsToShoot.Round(1), 1)
	}
	switch size.Why {
	case compare.SizeOneLasts:
		return fmt.Sprintf("one is enough: it lasts %s months", months)
	case compare.SizeTooMany:
		return fmt.Sprintf("takes %s months to shoot, more than the %d compared", months, c.Scenario.Months)
	case compare.SizeTooOld:
		return fmt.Sprintf("only %s is shot before it is too old", v.share(size.Amount))
	}
	return sizeReasons[size.Why]
}
