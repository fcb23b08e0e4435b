package compare_test

import (
	"context"
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// The built-in demo: what a roll costs by each way to buy, and who wins.
func ExampleCompare() {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, scenario.Check(s), scenario.Date{})
	for _, o := range c.Offers {
		fmt.Println(o.Name, "lands at", o.Order.Landed, "and comes to", o.PerRoll.Total.Round(2), "a roll")
	}
	fmt.Println(c.Verdict.Kind, c.Find(c.Verdict.Reel).Against.Saving)
	// Output:
	// Marigold 400, shop roll lands at 14.8 and comes to 24.7 a roll
	// Marigold 400, pack of 5 by post lands at 156.18 and comes to 25.52 a roll
	// Lanternlight 500, 100 ft reel lands at 168.82 and comes to 14.3 a roll
	// reel 374.35
}

// Where the verdict would change, the nearest first.
func ExampleLookAhead() {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, nil, scenario.Date{})
	ahead, err := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
	if err != nil {
		fmt.Println(err) // the context was done
		return
	}
	for _, x := range compare.Crossings(ahead.Outlook.Pair.Flips)[:3] {
		fmt.Println(x.Input, "from", x.Today, "to", x.At.Text(4))
	}
	// Output:
	// baseline.price from 14.8 to 6.0936
	// shooting.rolls_a_year from 43 to 15
	// rate:USD/EUR from 0.8875 to 1.6397
}

// Ten old rolls for EUR 60, three of them probably bad.
func ExampleWeigh() {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, nil, scenario.Date{})
	old := scenario.NewOffer(&s, scenario.KindBoxed)
	old.Price = dec("60")
	old.Boxed.RollsPerPack, old.Boxed.SpoiledPercent = 10, dec("30")
	a := compare.Weigh(&c, compare.Deal{Offer: old, SavingPercent: exact.Int(10)})
	fmt.Println(a.CostOfRoll.Round(2), "a roll against", a.Other)
	fmt.Println(a.Verdict, "- and", a.MostBad.Rolls, "of", a.MostBad.Of, "may be bad")
	// Output:
	// 12.87 a roll against Lanternlight 500, 100 ft reel
	// take - and 3 of 10 may be bad
}
