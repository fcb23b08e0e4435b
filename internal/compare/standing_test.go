package compare

import (
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func TestPickTurn(t *testing.T) {
	turn := func(input Input, up bool) Turn { return Turn{Flip: Flip{Input: input}, Up: up} }
	turns := []Turn{turn("offer.price", true), turn("rate:USD/EUR", true), turn("offer.shipping", false), turn("rate:USD/EUR", false)}
	for _, c := range []struct {
		input Input
		up    bool
		want  int
	}{
		{"rate:USD/EUR", true, 1}, {"rate:USD/EUR", false, 3}, {"offer.shipping", true, 2}, {"offer.price", false, 0}, {"border.tax_percent", true, 0}, {"", false, 0},
	} {
		if got := PickTurn(turns, c.input, c.up); got != c.want {
			t.Errorf("%s, up %v: turn %d, want %d", c.input, c.up, got, c.want)
		}
	}
	if got := PickTurn(nil, "offer.price", true); got != -1 {
		t.Error("of no turns:", got)
	}
}

func TestStandings(t *testing.T) {
	c := Compare(quayside(), nil, scenario.Date{})
	o, err := LookAhead(t.Context(), &c, exact.Int(CeilingPercent))
	if err != nil {
		t.Fatal(err)
	}
	c.Outlook = o
	reel := c.StandingOf("Lanternlight 500, 100 ft reel")
	if reel.Other != c.Scenario.Baseline || len(reel.Flips) == 0 || len(reel.Swings) == 0 {
		t.Errorf("%+v", reel)
	}
	base := c.StandingOf(c.Scenario.Baseline)
	if base.Offer != reel.Offer || base.Other != reel.Other || len(base.Flips) != len(reel.Flips) || len(base.Swings) != len(reel.Swings) {
		t.Errorf("the baseline is told by %q against %q", base.Offer, base.Other)
	}
	turns := Turns(reel.Flips)
	at := PickTurn(turns, scenario.InputRollsAYear, false)
	curve, err := c.CurveAt(t.Context(), reel, turns[at], exact.Int(5), exact.Int(60))
	if err != nil || len(curve.Points) != 56 {
		t.Errorf("%v, %d points from 5 to 60 rolls a year", err, len(curve.Points))
	}
}
