package compare

import (
	"testing"

	"reelworth/internal/scenario"
)

// plainReel is a reel of 18 rolls of 36 with nothing lost, from 18 × 1,368 mm.
func plainReel(name, price string) scenario.Offer {
	return scenario.Offer{
		Name: name, Kind: scenario.KindReel, Currency: "EUR", Price: dec(price), Units: 1, Import: scenario.ImportNone,
		Reel: &scenario.Reel{Length: dec("24.624"), LengthUnit: scenario.Metres, Pitch: scenario.LongPitch, Exposures: 36},
	}
}

// plainBoxed is one roll of 36.
func plainBoxed(name, price string) scenario.Offer {
	return scenario.Offer{
		Name: name, Kind: scenario.KindBoxed, Currency: "EUR", Price: dec(price), Units: 1, Import: scenario.ImportNone,
		Boxed: &scenario.Boxed{RollsPerPack: 1, Exposures: 36},
	}
}

// plain is a scenario without anything but the offers, the first being the baseline.
func plain(rollsPerMonth string, months int, offers ...scenario.Offer) scenario.Scenario {
	s := scenario.Scenario{
		Name: "plain", Home: "EUR", FirstMonth: scenario.Month{Year: 2027, Month: 1}, Months: months, RollExposures: 36,
		Baseline: offers[0].Name, Offers: offers,
		Loading: scenario.Loading{CassetteLoads: 1, CassettePack: 1},
	}
	s.Shooting.RollsPerMonth = rolls(rollsPerMonth)
	return s
}

// Managerial accounting textbook (Penn State, ACCTG 211, §7.2): fixed cost 20,000,
// price 400, variable cost 250 a piece break even at 133.33, so at 134 pieces.
func TestTextbookBreakEven(t *testing.T) {
	s := plain("1", 12, plainBoxed("boxed", "400"), plainReel("reel", "4500"))
	s.Loading.Equipment = []scenario.Equipment{{Name: "machine", Price: dec("20000"), LastsRolls: 1000}}
	a := Compare(s, nil, scenario.Date{}).Offers[1].Against
	sameFigure(t, "payback to 2 places", a.PaybackExact.Round(2), "133.33")
	sameFigure(t, "payback", a.PaybackExact.Mul(frac("150")), "20000")
	sameFigure(t, "payback in whole rolls", *a.PaybackRolls, "134")
}

// Bulk-loading FAQ (ccs.neu.edu/home/genie/bulk.html, archived 2006-01-27): a reel at
// 29.50 gives 18 rolls, boxed rolls are 3.84: 1.64 a roll, 69.12 boxed, 39.62 or
// 57.3 % saved.
func TestBulkLoadingFAQFigures(t *testing.T) {
	s := plain("18", 1, plainBoxed("boxed", "3.84"), plainReel("reel", "29.50"))
	c := Compare(s, nil, scenario.Date{})
	boxed, reel := c.Offers[0], c.Offers[1]
	sameFigure(t, "a roll of the reel", reel.PerRoll.Total.Round(2), "1.64")
	sameFigure(t, "18 boxed rolls", boxed.Year.Total, "69.12")
	sameFigure(t, "saving", reel.Against.Saving, "39.62")
	sameFigure(t, "saving in percent", reel.Against.SavingPercent.Round(1), "57.3")
}
