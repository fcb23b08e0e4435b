package compare

import (
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func TestTheCrossingAskedForIsPicked(t *testing.T) {
	crossing := func(input Input, up bool) Crossing { return Crossing{Flip: Flip{Input: input}, Up: up} }
	list := []Crossing{crossing("offer.price", true), crossing("rate:USD/EUR", true), crossing("offer.shipping", false), crossing("rate:USD/EUR", false)}
	for _, c := range []struct {
		input Input
		up    bool
		want  int
	}{
		{"rate:USD/EUR", true, 1}, {"rate:USD/EUR", false, 3}, {"offer.shipping", true, 2}, {"offer.price", false, 0}, {"border.tax_percent", true, 0}, {"", false, 0},
	} {
		if got := pick(list, c.input, c.up); got != c.want {
			t.Errorf("%s, up %v: crossing %d, want %d", c.input, c.up, got, c.want)
		}
	}
	if got := pick(nil, "offer.price", true); got != -1 {
		t.Error("of no crossings:", got)
	}
}

func TestTheBaselineIsSeenByTheVerdictsPair(t *testing.T) {
	compared := Compare(quayside(), nil, scenario.Date{})
	c, err := LookAhead(t.Context(), &compared, exact.Int(CeilingPercent))
	if err != nil {
		t.Fatal(err)
	}
	reel := c.Outlook.PairOf("Lanternlight 500, 100 ft reel")
	if reel.Other != c.Scenario.Baseline || len(reel.Flips) == 0 || len(reel.Swings) == 0 {
		t.Errorf("%+v", reel)
	}
	if base := c.Outlook.PairOf(c.Scenario.Baseline); base != reel {
		t.Errorf("the baseline is told by %q against %q", base.Offer, base.Other)
	}
	look, err := c.LookAt(t.Context(), reel.Offer, scenario.InputRollsAYear, false)
	if err != nil || look.Pair != reel || look.Crossings[look.At].Input != scenario.InputRollsAYear {
		t.Fatalf("%v, looked at %+v", err, look)
	}
	// today's 43, a flip at 15, and a third of their distance on both sides
	if first, last := look.Curve.Points[0].At, look.Curve.Points[len(look.Curve.Points)-1].At; len(look.Curve.Points) != 47 {
		t.Errorf("%d points from %s to %s rolls a year", len(look.Curve.Points), first, last)
	}
}

func TestTheStretchAroundAFlipHoldsTodayAndBothCrossings(t *testing.T) {
	one, nine := exact.Int(1), exact.Int(9)
	for name, f := range map[string]Flip{
		"both": {Today: exact.Int(4), Below: &one, Above: &nine}, "none": {Today: exact.Int(4)},
		"above": {Today: exact.Int(0), Above: &nine}, "nothing at all": {}, "at today": {Today: one, Above: &one},
	} {
		from, to := f.Around()
		if from.Sign() < 0 || f.Today.Less(from) || !f.Today.Less(to) || !from.Less(to) ||
			f.Below != nil && f.Below.Less(from) || f.Above != nil && to.Less(*f.Above) {
			t.Errorf("%s: from %v to %v", name, from, to)
		}
	}
}
