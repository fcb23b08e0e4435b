package rates

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// swinging is a scenario with one quote and how far it swings.
func swinging(low, high decimal.Decimal) scenario.Scenario {
	return scenario.Scenario{
		Rates: []scenario.Rate{{One: "USD", Equals: low, In: "EUR"}},
		Ranges: []scenario.Range{
			{Input: "offer.price", Low: low, High: high},
			{Input: "rate:USD/EUR", Offer: "Reel", Low: low, High: high},
		},
	}
}

// turn turns the only quote of a scenario round, with its ranges.
func turn(s scenario.Scenario) scenario.Scenario {
	s = s.Clone()
	was := s.Rates[0]
	s.Rates[0].One, s.Rates[0].In = was.In, was.One
	TurnRanges(&s, was, s.Rates[0])
	return s
}

func TestARangeTurnsRoundWithItsRate(t *testing.T) {
	d := decimal.RequireFromString
	for _, c := range []struct{ low, high, turnedLow, turnedHigh string }{
		{"0.8", "1.25", "0.8", "1.25"}, // both inverses are exact
		{"0.80", "0.95", "1.05263157894", "1.25"},
		{"0.9", "1.1", "0.909090909090", "1.11111111112"},
		{"150", "160", "0.00625", "0.006666666667"},
	} {
		s := turn(swinging(d(c.low), d(c.high)))
		g := s.Ranges[1]
		if g.Input != "rate:EUR/USD" || g.Offer != "Reel" || !g.Low.Equal(d(c.turnedLow)) || !g.High.Equal(d(c.turnedHigh)) {
			t.Errorf("%s to %s: %s, %s to %s", c.low, c.high, g.Input, g.Low, g.High)
		}
		if p := s.Ranges[0]; !p.Low.Equal(d(c.low)) || p.Input != "offer.price" {
			t.Errorf("the range of the price was turned: %+v", p)
		}
	}
	for _, beyond := range []string{"0", "-1", "0.000000000001"} {
		s := swinging(d(beyond), d("2"))
		if g := turn(s).Ranges[1]; !g.Low.Equal(d(beyond)) || g.Input != "rate:USD/EUR" {
			t.Errorf("from %s: %+v", beyond, g)
		}
	}
}

// Of two quotes between the same currencies one keeps the ranges.
func TestARangeStaysWithAnotherRateOfItsKind(t *testing.T) {
	s := swinging(decimal.New(8, -1), decimal.New(9, -1))
	s.Rates = append(s.Rates, s.Rates[0])
	if g := turn(s).Ranges[1]; g.Input != "rate:USD/EUR" {
		t.Errorf("%+v", g)
	}
}

// What a range held it holds turned round, and twice turned round it is what it was: to
// four figures, as people type how far a rate may go.
func TestARangeTurnedRoundHoldsWhatItHeld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		places := rapid.Int32Range(2, 5).Draw(t, "places")
		a, b := rapid.Int64Range(1, 9_998).Draw(t, "a"), rapid.Int64Range(1, 9_998).Draw(t, "b")
		s := swinging(decimal.New(min(a, b), -places), decimal.New(max(a, b)+1, -places))
		once := turn(s)
		was, now := s.Ranges[1], once.Ranges[1]
		one := exact.Int(1)
		if now.Input != "rate:EUR/USD" || one.Less(exact.FromDecimal(now.Low).Mul(exact.FromDecimal(was.High))) ||
			exact.FromDecimal(now.High).Mul(exact.FromDecimal(was.Low)).Less(one) {
			t.Fatalf("%s to %s is turned round %s to %s", was.Low, was.High, now.Low, now.High)
		}
		if off := exact.FromDecimal(now.High).Mul(exact.FromDecimal(was.Low)).Sub(one); exact.Ratio(1, 100_000).Less(off) {
			t.Fatalf("%s turned round is %s", was.Low, now.High)
		}
		if back := turn(once).Ranges[1]; back.Input != was.Input || !back.Low.Equal(was.Low) || !back.High.Equal(was.High) {
			t.Fatalf("%s to %s became %s to %s", was.Low, was.High, back.Low, back.High)
		}
	})
}
