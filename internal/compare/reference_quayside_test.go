package compare_test

import (
	"encoding/json"
	"fmt"
	"math/big"
	"os"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

var dec = decimal.RequireFromString

func set(s string) scenario.Maybe { return scenario.Maybe{Decimal: dec(s), Set: true} }

// quaysideByHand is the worked example, typed here so that nothing that reads files
// can be wrong with it. All of it is invented.
func quaysideByHand() scenario.Scenario {
	s := scenario.Scenario{
		Name: "Quayside year, colour", Home: "EUR", FirstMonth: scenario.Month{Year: 2027, Month: 1},
		Months: 12, RollExposures: 36, Baseline: "Marigold 400, shop roll",
		Rates: []scenario.Rate{
			{One: "USD", Equals: dec("0.8875"), In: "EUR"},
			{One: "EUR", Equals: dec("163.36"), In: "JPY"},
		},
		Border: scenario.Border{DutyPercent: dec("4.2"), DutyFreeUpTo: dec("150"), DutyOnShipping: true,
			TaxPercent: dec("23"), TaxOnShipping: true, HandlingFee: dec("6.50")},
		Loading: scenario.Loading{CassettePrice: dec("1.20"), CassetteLoads: 5, CassettePack: 10, CassettesOwned: 4,
			ConsumablesPerRoll: dec("0.15"), MinutesPerReel: dec("12"), MinutesPerRoll: dec("4"),
			Equipment: []scenario.Equipment{
				{Name: "Daylight loader", Price: dec("48.00"), Resale: dec("25.00"), LastsRolls: 200},
				{Name: "Changing bag", Price: dec("22.50"), LastsRolls: 300},
			}},
		Developing: []scenario.Developing{
			{Name: "Town lab, colour", Way: scenario.Lab, Price: dec("9.90"), ChemistryRolls: 1},
			{Name: "At home, with a remjet bath", Way: scenario.Home, ChemistryPrice: dec("36.00"), ChemistryRolls: 16,
				ChemistryKeepsMonth: set("3"), ExtraPerRoll: dec("0.60"), MinutesPerRoll: dec("35"),
				Equipment: []scenario.Equipment{{Name: "Tank and measures", Price: dec("41.00"), Resale: dec("15.00"), LastsRolls: 400}}},
		},
		Offers: []scenario.Offer{
			{Name: "Marigold 400, shop roll", Kind: scenario.KindBoxed, Currency: "EUR", Price: dec("14.80"), Units: 1,
				Import: scenario.ImportNone, Developing: "Town lab, colour", Boxed: &scenario.Boxed{RollsPerPack: 1, Exposures: 36}},
			{Name: "Marigold 400, pack of 5 by post", Kind: scenario.KindBoxed, Currency: "JPY", Price: dec("8450"), Units: 2,
				Shipping: dec("2400"), ShippingEachExtra: dec("300"), Import: scenario.ImportBorder, CardFeePercent: dec("1.75"),
				KeepsMonths: set("24"), Developing: "Town lab, colour", Boxed: &scenario.Boxed{RollsPerPack: 5, Exposures: 36}},
			{Name: "Lanternlight 500, 100 ft reel", Kind: scenario.KindReel, Currency: "USD", Price: dec("118.00"), Units: 1,
				DiscountPercent: dec("5"), Shipping: dec("34.50"), ShippingEachExtra: dec("6.00"), Import: scenario.ImportBorder,
				CardFeePercent: dec("1.75"), KeepsMonths: set("18"), PriceRisePercent: dec("6"), Developing: "At home, with a remjet bath",
				Reel: &scenario.Reel{Length: dec("100"), LengthUnit: scenario.Feet, Pitch: scenario.ShortPitch, Exposures: 36,
					LeaderMM: dec("160"), TrailerMM: dec("72"), FoggedMM: dec("50"), StartWasteMM: dec("100"), EndWasteMM: dec("200"),
					ShortRollFrom: 12, SpoiledPercent: dec("3"), Remjet: true}},
		},
	}
	for i, rolls := range []int64{2, 2, 3, 4, 4, 5, 6, 6, 4, 3, 2, 2} {
		s.Shooting.RollsPerMonth[i] = decimal.NewFromInt(rolls)
	}
	return s
}

// The worked example was computed with other tools; the reference has to give it too,
// or its opinion of the engine is worth nothing.
func TestReferenceGivesTheWorkedExample(t *testing.T) {
	data, err := os.ReadFile("../../testdata/quayside.result.json")
	if err != nil {
		t.Fatal(err)
	}
	var list []map[string]any
	if err := json.Unmarshal(data, &list); err != nil {
		t.Fatal(err)
	}
	want := map[string]string{}
	spread("", list[0]["offers"], want)
	spread("verdict", list[0]["verdict"], want)

	got := map[string]string{}
	c := reference(quaysideByHand())
	for i, o := range c.Offers {
		asResult(fmt.Sprintf("[%d]", i), o, got)
	}
	v, reel := c.Verdict, refFind(c, c.Verdict.Reel)
	for key, value := range map[string]any{"kind": v.Kind, "reel": v.Reel, "boxed": v.Boxed, "saving": v.Pair.Saving,
		"saving_cash": v.Pair.SavingCash, "saving_film": v.Pair.SavingFilm, "saving_developing": v.Pair.SavingDeveloping,
		"film_left_value": reel.Year.FilmLeftValue, "even_month": v.Pair.EvenMonth} {
		put(got, "verdict."+key, value)
	}
	if len(want) < 200 {
		t.Fatalf("only %d figures in the worked example", len(want))
	}
	for key, figure := range want {
		if got[key] != figure {
			t.Errorf("%s = %q, want %q", key, got[key], figure)
		}
	}
	for key := range got {
		if _, there := want[key]; !there {
			t.Errorf("%s is not in the worked example", key)
		}
	}
}

// spread lists every figure of a JSON value under its path.
func spread(path string, value any, into map[string]string) {
	switch v := value.(type) {
	case map[string]any:
		for key, inner := range v {
			spread(path+"."+key, inner, into)
		}
	case []any:
		for i, inner := range v {
			spread(fmt.Sprintf("%s[%d]", path, i), inner, into)
		}
	case nil:
		into[path] = "none"
	default:
		into[path] = fmt.Sprint(v)
		if number, ok := new(big.Rat).SetString(into[path]); ok {
			into[path] = rat{number}.plain() // some carry a trailing zero
		}
	}
}

func put(into map[string]string, path string, value any) {
	switch v := value.(type) {
	case rat:
		into[path] = v.plain()
	case *rat:
		into[path] = "none"
		if v != nil {
			into[path] = v.plain()
		}
	case []rat:
		for i := range v {
			into[fmt.Sprintf("%s[%d]", path, i)] = v[i].plain()
		}
	case []int64:
		for i := range v {
			into[fmt.Sprintf("%s[%d]", path, i)] = fmt.Sprint(v[i])
		}
	default:
		into[path] = fmt.Sprint(v)
	}
}

// asResult lists an offer's figures under the names the result file gives them.
func asResult(at string, o refOffer, into map[string]string) {
	add := func(group string, pairs ...any) {
		for i := 0; i < len(pairs); i += 2 {
			put(into, at+group+"."+pairs[i].(string), pairs[i+1])
		}
	}
	h, s, p, y := o.Order.Home, o.Order.Seller, o.PerRoll, o.Year
	add("", "name", o.Name, "kind", o.Kind, "per_exposure", o.PerExposure)
	add(".order", "charged", o.Order.Charged, "landed", o.Order.Landed)
	add(".order.lines", "film", h.Film, "shipping", h.Shipping, "sales_tax", h.SalesTax, "card_fee", h.CardFee,
		"duty", h.Duty, "import_tax", h.ImportTax, "handling", h.Handling)
	add(".order.seller_lines", "film", s.Film, "shipping", s.Shipping, "sales_tax", s.SalesTax, "import_tax", s.ImportTax)
	add(".yield", "exposures", o.Yield.Exposures, "good", o.Yield.Good, "cassettes", o.Yield.Cassettes)
	if cut := o.Yield.Cut; cut != nil {
		add(".yield", "usable_length_mm", cut.Usable, "roll_length_mm", cut.RollLength, "full_rolls", cut.FullRolls,
			"short_roll_exposures", cut.ShortRollExposures, "left_over_mm", cut.LeftOver)
	}
	add(".per_roll", "film", p.Film, "shipping", p.Shipping, "tax", p.Tax, "fees", p.Fees, "loading", p.Loading,
		"equipment", p.Equipment, "developing", p.Developing, "time", p.Time, "total", p.Total)
	add(".year", "cash", y.Cash, "cumulative", y.Cumulative, "orders", y.Orders, "total", y.Total, "time", y.Time,
		"film_left_rolls", y.FilmLeftRolls, "film_left_value", y.FilmLeftValue, "supplies_left_value", y.SuppliesLeftValue,
		"equipment_left_value", y.EquipmentLeftValue, "year_cost", y.Cost, "film_cost", y.FilmCost,
		"developing_cost", y.DevelopingCost, "thrown_away_rolls", y.ThrownAwayRolls)
	if a := o.Against; a != nil {
		even := choose[any](a.EvenMonth == 0, "none", a.EvenMonth)
		add(".against_baseline", "saving_per_roll", a.SavingPerRoll, "saving_percent", a.SavingPercent, "saving_cash", a.SavingCash,
			"saving", a.Saving, "saving_film", a.SavingFilm, "saving_developing", a.SavingDeveloping, "even_month", even,
			"payback_exact", a.PaybackExact, "payback_rolls", a.PaybackRolls, "ruined_units", a.RuinedUnits)
	}
}
