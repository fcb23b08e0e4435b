package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/money"
)

// Deal says what a deal comes to: what a roll of it costs, what that saves, up to which
// price it is worth it, and how much of it may be ruined.
func Deal(c *compare.Comparison, d compare.Deal, a compare.DealAnswer, l money.Locale) []string {
	if a.Fault != nil {
		return []string{"Not computed: " + Reason(a.Fault, &d.Offer) + "."}
	}
	v := voice{s: &c.Scenario, l: l}
	list := []string{fmt.Sprintf("%s a roll, with %s good; landed, %s.",
		v.amount(a.CostOfRoll), v.counted(a.GoodRolls.Round(1), "roll"), v.amount(a.Landed))}
	if a.Against == nil {
		return append(list, "There is nothing to hold it against: choose what the others are compared with.")
	}
	other := Called(v.s, a.Baseline)
	saving := a.Against.SavingPerRoll
	percent := ""
	if p := a.Against.SavingPercent; p != nil {
		percent = fmt.Sprintf(", %s %%", v.plain(p.Abs().Round(0), 0))
	}
	switch saving.Sign() {
	case 1:
		list = append(list, fmt.Sprintf("It saves %s a roll%s, against %s.", v.amount(saving), percent, other))
	case 0:
		list = append(list, fmt.Sprintf("A roll costs the same as from %s.", other))
	default:
		list = append(list, fmt.Sprintf("A roll costs %s%s more than from %s.", v.amount(saving.Neg()), percent, other))
	}
	if a.Ceiling != nil {
		list = append(list, fmt.Sprintf("Up to %s it saves %s.", l.Amount(a.Ceiling.Price, a.Ceiling.Currency), v.percent(a.Ceiling.SavingPercent)))
	} else {
		list = append(list, fmt.Sprintf("No price makes it save %s, or every price does.", v.percent(d.SavingPercent)))
	}
	if r := a.Against.RuinedUnits; r != nil {
		list = append(list, fmt.Sprintf("What it saves in a year pays for %s of them, should they be ruined.", v.plain(r.Round(1), 1)))
	}
	return list
}

// DealVerdict is the answer to a deal in a word or two.
func DealVerdict(v compare.DealVerdict) string {
	switch v {
	case compare.DealTake:
		return "Worth it."
	case compare.DealCheaper:
		return "Cheaper, but not by as much as you want."
	case compare.DealNoSaving:
		return "Not worth it."
	}
	return ""
}
