package compare

import (
	"testing"

	"reelworth/internal/scenario"
)

// heldAgainst is the second offer held against the first.
func heldAgainst(rolls string, offers ...scenario.Offer) *Against {
	return Compare(plain(rolls, 1, offers...), nil, scenario.Date{}).Offers[1].Against
}

// 9 boxed rolls at 10 cost what a reel at 90 does, which leaves 9 rolls worth 45.
func TestNoMonthIsNamedWithoutCashSaved(t *testing.T) {
	a := heldAgainst("9", plainBoxed("boxed", "10"), plainReel("reel", "90"))
	sameFigure(t, "saving in cash", a.SavingCash, "0")
	sameFigure(t, "saving", a.Saving, "45")
	if a.EvenMonth != 0 {
		t.Errorf("even from month %d", a.EvenMonth)
	}
	if a := heldAgainst("9", plainBoxed("boxed", "10"), plainReel("reel", "89.99")); a.EvenMonth != 1 {
		t.Errorf("with a cent saved, even from month %d", a.EvenMonth)
	}
}

// An order of 2 reels at 180 makes a reel 90: saving 36 × 10 − 180 = 180 lets two be
// ruined.
func TestRuinedUnitsAreSingleOnes(t *testing.T) {
	reel := plainReel("reel", "90")
	reel.Units = 2
	a := heldAgainst("36", plainBoxed("boxed", "10"), reel)
	sameFigure(t, "saving", a.Saving, "180")
	sameFigure(t, "ruined units", *a.RuinedUnits, "2")
}

func TestWhatThereIsNoneOf(t *testing.T) {
	boxed := plainBoxed("boxed", "10")
	if a := heldAgainst("18", boxed, plainReel("reel", "180")); a.RuinedUnits != nil || a.PaybackExact != nil || a.PaybackRolls != nil {
		t.Errorf("no saving: %+v", a)
	}
	if a := heldAgainst("18", plainBoxed("free", "0"), plainReel("reel", "180")); a.SavingPercent != nil {
		t.Errorf("a percent of nothing: %s", a.SavingPercent)
	}
	if a := heldAgainst("18", boxed, plainReel("free reel", "0")); a.RuinedUnits != nil {
		t.Errorf("units of a free reel: %s", a.RuinedUnits)
	}
	if a := heldAgainst("18", boxed, plainReel("reel", "90")); !a.PaybackExact.IsZero() || !a.PaybackRolls.IsZero() {
		t.Errorf("nothing to pay back takes %s rolls", a.PaybackExact)
	}
}
