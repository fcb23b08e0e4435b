package words

import (
	"context"
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// One figure stands with the same digits wherever it stands: where an answer crosses over in
// the sentence, over the chart, at its mark, at the pointer and in the table; what a roll
// costs on the receipt, at the pointer, and among order sizes and cuts.
func TestAFigureHasTheSameDigitsEverywhere(t *testing.T) {
	many, crossings, rolls := 200, 0, 0
	if testing.Short() {
		many = 15
	}
	for seed := range many {
		s := believable(uint64(seed) + 30_000)
		c := compare.Compare(s, nil, scenario.Date{})
		ahead, err := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
		if err != nil {
			t.Fatal(err)
		}
		for i := range ahead.Offers {
			if o := ahead.Outlook.Offers[i]; ahead.Offers[i].Fault == nil {
				rolls += rollDigits(t, ahead, i, &o)
				crossings += crossingDigits(t, ahead, o.Pair)
			}
		}
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
	if crossings < 2*many || rolls < 2*many {
		t.Errorf("%d crossings and %d rolls were looked at", crossings, rolls)
	}
}

// crossingDigits returns how many crossings of a pair it looked at.
func crossingDigits(t *testing.T, c *compare.Comparison, p *compare.PairOutlook) (looked int) {
	t.Helper()
	if p == nil {
		return 0
	}
	sentences := Flips(c, p, money.English)
	for n, x := range compare.Crossings(p.Flips) {
		if x.Input == scenario.InputRollsAYear || x.Input == scenario.InputSpoiledPercent || x.At.Equal(x.Today) {
			continue // ranges and steps have sentences of their own
		}
		look, err := c.LookAt(context.Background(), p.Offer, x.Input, x.Up)
		if err != nil {
			t.Fatal(err)
		}
		if look.Pair != p {
			continue // the baseline is seen by the verdict's pair
		}
		looked++
		f := FlippingOf(c, look.Curve, money.English)
		inTable, mark := CrossingValue(c, p, x.Flip, x.Up, money.English), f.Crossing(x)
		if !strings.Contains(inTable, mark) {
			t.Errorf("%s crosses at %q in the table, at %q on the chart", x.Input, inTable, mark)
		}
		for where, text := range map[string]string{"the list": sentences[n], "the title": f.Title(p.Saving.Sign()), "the pointer": f.CrossingReadout(x, p.Saving.Sign())} {
			if nothing := strings.Trim(mark, "0.") == ""; !strings.Contains(text, choice(nothing, "nothing", inTable)) {
				t.Errorf("%s crosses at %q in the table, but %s says %q", x.Input, inTable, where, text)
			}
		}
	}
	return looked
}

// rollDigits returns how often it saw what a roll of the offer at i costs.
func rollDigits(t *testing.T, c *compare.Comparison, i int, o *compare.OfferOutlook) (looked int) {
	t.Helper()
	offer := &c.Offers[i]
	digits := money.English.Amount(offer.PerRoll.Total, c.Currency())
	bare := strings.TrimPrefix(digits, c.Currency()+noBreak)
	says := func(where, text string) {
		looked++
		if !strings.Contains(text, bare) {
			t.Errorf("a roll of %s costs %s, but %s says %q", o.Name, digits, where, text)
		}
	}
	says("the pointer", RollReadout(c, offer, money.English))
	rows := Receipt(c, i, money.English)
	receipt := ""
	for _, row := range rows {
		receipt += row.Home + "\n"
	}
	says("the receipt", receipt)
	sizes := SizingOf(c, o.Name, o.OrderSizes, money.English)
	for n := range o.OrderSizes {
		if size := &o.OrderSizes[n]; sizes.Today(size) {
			says("the table of order sizes", sizes.Roll(size))
			says("the order sizes' pointer", sizes.Readout(size))
		}
	}
	cuts := CuttingOf(c, o.Name, o.CutSizes, money.English)
	for n := range o.CutSizes {
		if size := &o.CutSizes[n]; cuts.IsOwn(size) {
			says("the table of cuts", cuts.Roll(size))
			says("the cuts' pointer", cuts.Readout(size))
		}
	}
	return looked
}
