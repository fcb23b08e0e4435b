package words

import (
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// The comparisons of these tests are put together by hand, so that a sentence is
// tested for the figures it is given and not for those of the engine.

func num(text string) exact.Fraction { return exact.FromDecimal(dec(text)) }

func dec(text string) scenario.Decimal { return decimal.RequireFromString(text) }

func ptr(text string) *exact.Fraction {
	f := num(text)
	return &f
}

// rolls is the same number of rolls in each of twelve months.
func rolls(each string) (months [12]scenario.Decimal) {
	for i := range months {
		months[i] = dec(each)
	}
	return months
}

// year is a comparison of one reel with one boxed offer: the reel saves 210.84 in cash
// and 359.63 all counted, developed at home against a lab.
func year() *compare.Comparison {
	return &compare.Comparison{
		Scenario: scenario.Scenario{
			Name: "A year", Home: "EUR", FirstMonth: scenario.Month{Year: 2027, Month: 1}, Months: 12,
			RollExposures: 36, Baseline: "Shop roll",
			Shooting: scenario.Shooting{RollsPerMonth: rolls("3")},
			Developing: []scenario.Developing{
				{Name: "Town lab", Way: scenario.Lab}, {Name: "In the kitchen", Way: scenario.Home},
				{Name: "Other lab", Way: scenario.Lab},
			},
			Offers: []scenario.Offer{
				{Name: "Shop roll", Kind: scenario.KindBoxed, Currency: "EUR", Developing: "Town lab",
					Boxed: &scenario.Boxed{RollsPerPack: 1, Exposures: 36}},
				{Name: "100 ft", Kind: scenario.KindReel, Currency: "USD", Developing: "In the kitchen",
					Reel: &scenario.Reel{Length: dec("100"), LengthUnit: scenario.Feet, Exposures: 36}},
			},
		},
		Offers: []compare.Offer{
			{Name: "Shop roll", Kind: scenario.KindBoxed, CountsDeveloping: true,
				PerRoll: compare.PerRoll{Total: num("24.70")},
				Year:    compare.Year{Total: num("1062.10"), Cost: num("1062.10")}},
			{Name: "100 ft", Kind: scenario.KindReel, CountsDeveloping: true,
				PerRoll: compare.PerRoll{Total: num("14.30")},
				Year: compare.Year{Total: num("851.26"), Cost: num("702.47"), FilmLeftRolls: num("9.38"),
					FilmLeftValue: num("93.35"), SuppliesLeftValue: num("15.44"), EquipmentLeftValue: num("40")}},
		},
		Verdict: compare.Verdict{
			Kind: compare.VerdictReel, Reel: "100 ft", Boxed: "Shop roll",
			Pair: &compare.Against{
				SavingPerRoll: num("10.40"), SavingCash: num("210.84"), Saving: num("359.63"),
				SavingFilm: num("157.25"), SavingDeveloping: num("202.38"), EvenMonth: 7,
				PaybackExact: ptr("10.458"), PaybackRolls: ptr("11"),
			},
		},
	}
}

func boxedOf(c *compare.Comparison) *compare.Offer { return &c.Offers[0] }
func reelOf(c *compare.Comparison) *compare.Offer  { return &c.Offers[1] }

// spaces are no-break spaces made plain, so that tests can be read.
func spaces(text string) string {
	return strings.NewReplacer("\u00a0", " ", "\u202f", " ").Replace(text)
}

func same(t *testing.T, what, got, want string) {
	t.Helper()
	if got = spaces(got); got != want {
		t.Errorf("%s\n got: %s\nwant: %s", what, got, want)
	}
}

// noRate is the fault of an offer in a currency without a rate.
func noRate(currency string) *compare.Fault {
	return &compare.Fault{Code: compare.FaultNoRate, Key: "currency",
		Why: scenario.Fault{Code: scenario.NoRate, Args: scenario.Args{From: currency, To: "EUR"}}}
}
