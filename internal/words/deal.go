package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Deal says what a deal comes to: what a roll of it costs, what that saves, up to which
// price it is worth it, and how much of it may be bad.
func Deal(c *compare.Comparison, d compare.Deal, a compare.DealAnswer, l money.Locale) []string {
	if a.Fault != nil {
		return []string{"Not computed: " + Reason(a.Fault, &d.Offer) + "."}
	}
	v := voice{s: &c.Scenario, l: l}
	developing := ""
	if process := a.Offer.Developing; process != "" {
		developing = fmt.Sprintf(", developing (%s) included", process)
	}
	list := []string{fmt.Sprintf("%s a roll%s, with %s good; landed, %s.",
		v.amount(a.CostOfRoll), developing, v.counted(a.GoodRolls.Round(1), "roll"), v.amount(a.Landed))}
	if a.Against == nil {
		return append(list, "There is nothing to compare it with.")
	}
	other := Called(v.s, a.Other)
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
	if bad := mostBad(v, d, a.MostBad, other); bad != "" {
		list = append(list, bad)
	}
	return list
}

// mostBad says how much of a deal may be bad; "" where that goes without saying.
func mostBad(v voice, d compare.Deal, most *compare.MostBad, other string) string {
	switch {
	case most == nil:
		if !spoiledOf(&d.Offer).IsZero() {
			return fmt.Sprintf("With none of it bad, a roll would still cost more than from %s.", other)
		}
		return ""
	case most.Of == 1:
		return ""
	case most.Percent.IsZero():
		return fmt.Sprintf("None of it may be bad, or a roll costs more than from %s.", other)
	}
	much := v.plain(most.Percent, 1) + " % of it"
	if most.Of > 0 {
		much = fmt.Sprintf("%d of its %d rolls", most.Rolls, most.Of)
	}
	return fmt.Sprintf("Up to %s may be bad; with more, a roll costs more than from %s.", much, other)
}

// spoiledOf is the percent of an offer's film that is expected to be bad.
func spoiledOf(o *scenario.Offer) scenario.Decimal {
	switch {
	case o.Reel != nil:
		return o.Reel.SpoiledPercent
	case o.Boxed != nil:
		return o.Boxed.SpoiledPercent
	}
	return scenario.Decimal{}
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
