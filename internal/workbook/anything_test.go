package workbook

import (
	"fmt"
	"math/rand/v2"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

var today = scenario.Date{Year: 2026, Month: 11, Day: 25}

func compared(s scenario.Scenario) *compare.Comparison {
	c := compare.Compare(s, scenario.Check(s), today)
	return &c
}

func demo() scenario.Scenario { return scenario.Demo().Scenarios[0].Clone() }

// anything is a scenario of its own for each seed: the demo with its offers told several
// times and nearly every figure drawn anew.
func anything(seed uint64) scenario.Scenario {
	r := rand.New(rand.NewPCG(seed, 11))
	number := func(most int64, places int32) decimal.Decimal { return decimal.New(r.Int64N(most+1), -places) }
	some := func(d scenario.Decimal) scenario.Maybe {
		return scenario.Maybe{Decimal: d, Set: r.IntN(2) == 0}
	}
	s := demo()
	s.Months = 1 + r.IntN(40)
	s.RollExposures = []int{12, 24, 36, 36}[r.IntN(4)]
	s.Home = []string{"EUR", "EUR", "USD", "JPY"}[r.IntN(4)]
	for i := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = decimal.New([]int64{0, 1, 2, 5, 25, 300}[r.IntN(6)], -[]int32{0, 0, 1}[r.IntN(3)])
	}
	s.Border = scenario.Border{DutyPercent: number(90, 1), DutyFreeUpTo: number(30000, 2), DutyOnShipping: r.IntN(2) == 0,
		TaxPercent: number(250, 1), TaxFreeUpTo: number(20000, 2), TaxOnShipping: r.IntN(2) == 0, HandlingFee: number(900, 2)}
	l := &s.Loading
	l.CassettePrice, l.ConsumablesPerRoll, l.HourlyValue = number(300, 2), number(99, 2), number(3000, 2)
	l.CassetteLoads, l.CassettePack, l.CassettesOwned = 1+r.IntN(9), 1+r.IntN(20), r.IntN(12)
	l.Equipment[0].Owned = r.IntN(2) == 0
	d := &s.Developing[1]
	d.ChemistryPrice, d.ExtraPerRoll, d.ChemistryRolls = number(9000, 2), number(150, 2), 1+r.IntN(24)
	d.ChemistryKeepsMonth = some(number(8, 0).Add(decimal.New(1, 0)))
	kinds := s.Offers
	s.Offers = nil
	for i := range 2 + r.IntN(4) {
		o := kinds[r.IntN(len(kinds))]
		o.Name = fmt.Sprintf("%s, told %d", o.Name, i)
		o.Currency = []string{"EUR", "USD", "JPY", s.Home}[r.IntN(4)]
		o.Price, o.Shipping, o.ShippingEachExtra = number(30000, 2).Add(decimal.New(1, -2)), number(5000, 2), number(900, 2)
		o.Units, o.OnHand = 1+r.IntN(5), number(15, 1)
		o.DiscountPercent, o.SalesTaxPercent, o.CardFeePercent = number(99, 1), number(250, 1), number(300, 2)
		o.SalesTaxOnShipping = r.IntN(2) == 0
		o.PriceRisePercent = number(400, 1).Sub(decimal.New(200, -1))
		o.FreeShippingFrom, o.KeepsMonths = some(number(40000, 2)), some(number(30, 0).Add(decimal.New(1, 0)))
		o.Import = []scenario.Import{"", "none", "border", "prepaid"}[r.IntN(4)]
		o.Developing = []string{"", s.Developing[0].Name, d.Name}[r.IntN(3)]
		if o.Reel != nil {
			reel := *o.Reel
			reel.Exposures, reel.SpoiledPercent, reel.TestExposures = 1+r.IntN(60), number(500, 1), r.IntN(4)
			reel.Length, reel.LengthUnit = number(200, 0).Add(decimal.New(20, 0)), []scenario.LengthUnit{"ft", "m"}[r.IntN(2)]
			reel.Pitch = []scenario.Pitch{"long", "short"}[r.IntN(2)]
			o.Reel = &reel
		} else {
			boxed := *o.Boxed
			boxed.RollsPerPack, boxed.SpoiledPercent = 1+r.IntN(10), number(300, 1)
			o.Boxed = &boxed
		}
		s.Offers = append(s.Offers, o)
	}
	s.Baseline = s.Offers[0].Name
	return s
}
