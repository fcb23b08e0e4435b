package compare

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Every figure of the worked example is reproduced: testdata/quayside.result.json, at the
// project's top, was
// computed independently of this package.
func TestQuaysideFiguresAreReproduced(t *testing.T) {
	c := Compare(quayside(), nil, scenario.Date{})
	checkFigures(t, "", wantedFigures(t), figuresOf(&c))
}

// The same from the file itself, as a photographer would keep it.
func TestQuaysideFileGivesTheSameFigures(t *testing.T) {
	data, err := os.ReadFile("../../testdata/quayside.toml")
	if err != nil {
		t.Fatal(err)
	}
	f, faults := scenario.Read(data)
	if len(faults) > 0 || len(f.Scenarios) != 1 {
		t.Fatalf("faults %v", faults)
	}
	c := Compare(f.Scenarios[0], faults, scenario.Date{})
	checkFigures(t, "", wantedFigures(t), figuresOf(&c))
}

func TestQuaysideAsAValueHasNoFault(t *testing.T) {
	if faults := scenario.Check(quayside()); len(faults) > 0 {
		t.Error(faults)
	}
}

func wantedFigures(t *testing.T) map[string]any {
	data, err := os.ReadFile("../../testdata/quayside.result.json")
	if err != nil {
		t.Fatal(err)
	}
	var list []map[string]any
	if err := json.Unmarshal(data, &list); err != nil {
		t.Fatal(err)
	}
	return list[0]
}

// checkFigures walks both answers; every leaf of want must stand in got.
func checkFigures(t *testing.T, at string, want, got any) {
	switch want := want.(type) {
	case map[string]any:
		got, ok := got.(map[string]any)
		if !ok {
			t.Errorf("%s is missing", at)
			return
		}
		for k, w := range want {
			g, ok := got[k]
			if !ok {
				t.Errorf("%s.%s is missing", at, k)
			}
			checkFigures(t, at+"."+k, w, g)
		}
	case []any:
		got, _ := got.([]any)
		if len(got) != len(want) {
			t.Errorf("%s has %d entries, want %d", at, len(got), len(want))
			return
		}
		for i, w := range want {
			checkFigures(t, fmt.Sprintf("%s[%d]", at, i), w, got[i])
		}
	default:
		if !sameLeaf(fmt.Sprint(got), fmt.Sprint(want)) {
			t.Errorf("%s = %v, want %v", at, got, want)
		}
	}
}

// sameLeaf says whether two leaves are the same text or the same number.
func sameLeaf(got, want string) bool {
	g, errG := decimal.NewFromString(got)
	w, errW := decimal.NewFromString(want)
	return got == want || errG == nil && errW == nil && g.Equal(w)
}

// figuresOf is a comparison in the shape of the result, figures to 20 places.
func figuresOf(c *Comparison) map[string]any {
	var offers []any
	for i := range c.Offers {
		offers = append(offers, figuresOfOffer(&c.Offers[i]))
	}
	return map[string]any{
		"scenario": c.Scenario.Name, "home": c.Scenario.Home, "baseline": c.Scenario.Baseline,
		"offers": offers, "verdict": figuresOfVerdict(c),
	}
}

func figuresOfOffer(o *Offer) map[string]any {
	h, s, p, y := o.Order.Home, o.Order.Seller, o.PerRoll, o.Year
	m := map[string]any{"name": o.Name, "kind": string(o.Kind), "per_exposure": o.PerExposure.String()}
	m["order"] = map[string]any{
		"lines": figures("film", h.Film, "shipping", h.Shipping, "sales_tax", h.SalesTax, "card_fee", h.CardFee,
			"duty", h.Duty, "import_tax", h.ImportTax, "handling", h.Handling),
		"seller_lines": figures("film", s.Film, "shipping", s.Shipping, "sales_tax", s.SalesTax, "import_tax", s.ImportTax),
		"charged":      o.Order.Charged.String(), "landed": o.Order.Landed.String(),
	}
	m["yield"] = figuresOfYield(o.Yield)
	m["per_roll"] = figures("film", p.Film, "shipping", p.Shipping, "tax", p.Tax, "fees", p.Fees, "loading", p.Loading,
		"equipment", p.Equipment, "developing", p.Developing, "time", p.Time, "total", p.Total)
	year := figures("total", y.Total, "time", y.Time, "film_left_rolls", y.FilmLeftRolls, "film_left_value", y.FilmLeftValue,
		"supplies_left_value", y.SuppliesLeftValue, "equipment_left_value", y.EquipmentLeftValue, "year_cost", y.Cost,
		"film_cost", y.FilmCost, "developing_cost", y.DevelopingCost, "thrown_away_rolls", y.ThrownAwayRolls)
	year["cash"], year["cumulative"], year["orders"] = listOf(y.Cash), listOf(y.Cumulative), listOf(y.Orders)
	m["year"] = year
	if o.Against != nil {
		m["against_baseline"] = figuresOfAgainst(o.Against)
	}
	return m
}

func figuresOfYield(y Yield) map[string]any {
	m := map[string]any{"exposures": y.Exposures, "good": y.Good.String(), "cassettes": y.Cassettes}
	if y.Cut != nil {
		m["usable_length_mm"], m["roll_length_mm"] = y.Cut.Usable, y.Cut.RollLength
		m["full_rolls"], m["short_roll_exposures"] = y.Cut.FullRolls, y.Cut.ShortRollExposures
		m["left_over_mm"] = y.Cut.LeftOver
	}
	return m
}

func figuresOfAgainst(a *Against) map[string]any {
	m := figures("saving_per_roll", a.SavingPerRoll, "saving_cash", a.SavingCash, "saving", a.Saving,
		"saving_film", a.SavingFilm, "saving_developing", a.SavingDeveloping)
	m["saving_percent"], m["payback_exact"], m["payback_rolls"] = orNone(a.SavingPercent), orNone(a.PaybackExact), orNone(a.PaybackRolls)
	m["ruined_units"], m["even_month"] = orNone(a.RuinedUnits), monthOrNone(a.EvenMonth)
	return m
}

func figuresOfVerdict(c *Comparison) map[string]any {
	v := c.Verdict
	m := map[string]any{"kind": string(v.Kind), "reel": v.Reel, "boxed": v.Boxed, "left_out": listOf(v.LeftOut)}
	if v.Pair != nil {
		for k, figure := range figures("saving", v.Pair.Saving, "saving_cash", v.Pair.SavingCash,
			"saving_film", v.Pair.SavingFilm, "saving_developing", v.Pair.SavingDeveloping,
			"film_left_value", c.Find(v.Reel).Year.FilmLeftValue) {
			m[k] = figure
		}
		m["even_month"] = monthOrNone(v.Pair.EvenMonth)
	}
	return m
}

// figures pairs names with numbers.
func figures(pairs ...any) map[string]any {
	m := map[string]any{}
	for p := range slices.Chunk(pairs, 2) {
		m[p[0].(string)] = p[1].(exact.Fraction).String()
	}
	return m
}

func listOf[T any](list []T) []any {
	out := []any{}
	for _, v := range list {
		out = append(out, v)
	}
	return out
}

func orNone(f *exact.Fraction) any {
	if f == nil {
		return nil
	}
	return *f
}

func monthOrNone(m int) any {
	if m == 0 {
		return nil
	}
	return m
}
