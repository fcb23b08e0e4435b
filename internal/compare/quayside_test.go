package compare

import (
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// dec is a decimal as it is typed.
func dec(text string) scenario.Decimal { return decimal.RequireFromString(text) }

// maybe is an optional decimal that is set.
func maybe(text string) scenario.Maybe { return scenario.Maybe{Decimal: dec(text), Set: true} }

// frac is a decimal as a fraction.
func frac(text string) exact.Fraction { return exact.FromDecimal(dec(text)) }

// rolls is twelve months of the same number of rolls.
func rolls(each string) (months [12]scenario.Decimal) {
	for i := range months {
		months[i] = dec(each)
	}
	return months
}

// sameFigure fails unless got is exactly the number written.
func sameFigure(t testing.TB, what string, got exact.Fraction, want string) {
	t.Helper()
	if !got.Equal(frac(want)) {
		t.Errorf("%s = %s, want %s", what, got, want)
	}
}

// quayside is quayside.toml of the shared testdata as a value, new at each call.
func quayside() scenario.Scenario {
	s := scenario.Scenario{
		Name: "Quayside year, colour", Home: "EUR",
		FirstMonth: scenario.Month{Year: 2027, Month: 1}, Months: 12, RollExposures: 36,
		Baseline: "Marigold 400, shop roll",
		Rates: []scenario.Rate{
			{One: "USD", Equals: dec("0.8875"), In: "EUR", Date: scenario.Date{Year: 2026, Month: 11, Day: 20}},
			{One: "EUR", Equals: dec("163.36"), In: "JPY", Date: scenario.Date{Year: 2026, Month: 11, Day: 20}},
		},
		Border: scenario.Border{
			DutyPercent: dec("4.2"), DutyFreeUpTo: dec("150"), DutyOnShipping: true,
			TaxPercent: dec("23"), TaxOnShipping: true, HandlingFee: dec("6.50"),
		},
		Loading: scenario.Loading{
			CassettePrice: dec("1.20"), CassetteLoads: 5, CassettePack: 10, CassettesOwned: 4,
			ConsumablesPerRoll: dec("0.15"), MinutesPerReel: dec("12"), MinutesPerRoll: dec("4"),
			Equipment: []scenario.Equipment{
				{Name: "Daylight loader", Price: dec("48.00"), Resale: dec("25.00"), LastsRolls: 200},
				{Name: "Changing bag", Price: dec("22.50"), LastsRolls: 300},
			},
		},
		Developing: []scenario.Developing{townLab(), homeBath()},
		Offers:     []scenario.Offer{shopRoll(), packByPost(), overseasReel()},
	}
	for i, r := range []string{"2", "2", "3", "4", "4", "5", "6", "6", "4", "3", "2", "2"} {
		s.Shooting.RollsPerMonth[i] = dec(r)
	}
	return s
}

func townLab() scenario.Developing {
	return scenario.Developing{Name: "Town lab, colour", Way: scenario.Lab, Price: dec("9.90"), ChemistryRolls: 1}
}

func homeBath() scenario.Developing {
	return scenario.Developing{
		Name: "At home, with a remjet bath", Way: scenario.Home,
		ChemistryPrice: dec("36.00"), ChemistryRolls: 16, ChemistryKeepsMonth: maybe("3"),
		ExtraPerRoll: dec("0.60"), MinutesPerRoll: dec("35"),
		Equipment: []scenario.Equipment{{Name: "Tank and measures", Price: dec("41.00"), Resale: dec("15.00"), LastsRolls: 400}},
	}
}

func shopRoll() scenario.Offer {
	return scenario.Offer{
		Name: "Marigold 400, shop roll", Kind: scenario.KindBoxed, Currency: "EUR", Price: dec("14.80"), Units: 1,
		Import: scenario.ImportNone, Developing: "Town lab, colour",
		Boxed: &scenario.Boxed{RollsPerPack: 1, Exposures: 36},
	}
}

func packByPost() scenario.Offer {
	return scenario.Offer{
		Name: "Marigold 400, pack of 5 by post", Kind: scenario.KindBoxed, Currency: "JPY", Price: dec("8450"), Units: 2,
		Shipping: dec("2400"), ShippingEachExtra: dec("300"), Import: scenario.ImportBorder, CardFeePercent: dec("1.75"),
		KeepsMonths: maybe("24"), Developing: "Town lab, colour",
		Boxed: &scenario.Boxed{RollsPerPack: 5, Exposures: 36},
	}
}

func overseasReel() scenario.Offer {
	return scenario.Offer{
		Name: "Lanternlight 500, 100 ft reel", Kind: scenario.KindReel, Currency: "USD", Price: dec("118.00"), Units: 1,
		DiscountPercent: dec("5"), Shipping: dec("34.50"), ShippingEachExtra: dec("6.00"), Import: scenario.ImportBorder,
		CardFeePercent: dec("1.75"), KeepsMonths: maybe("18"), PriceRisePercent: dec("6"),
		Developing: "At home, with a remjet bath",
		Reel: &scenario.Reel{
			Length: dec("100"), LengthUnit: scenario.Feet, Pitch: scenario.ShortPitch, Exposures: 36,
			LeaderMM: dec("160"), TrailerMM: dec("72"), FoggedMM: dec("50"), StartWasteMM: dec("100"), EndWasteMM: dec("200"),
			ShortRollFrom: 12, SpoiledPercent: dec("3"), Remjet: true,
		},
	}
}
