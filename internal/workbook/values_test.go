package workbook

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/xuri/excelize/v2"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func built(t *testing.T, s scenario.Scenario) *book {
	t.Helper()
	b, err := build(context.Background(), compared(s), Options{On: today, Locale: "en"})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// Every formula comes to the engine's figure, exactly: the book is put together without
// the engine's results, cell by cell.
func TestFormulasComeToTheEnginesFigures(t *testing.T) {
	computed := 0
	check := func(t *testing.T, s scenario.Scenario) {
		b := built(t, s)
		computed += len(b.offers)
		for _, o := range b.offers {
			c, l, y := o.computed, &o.receipt, &o.year
			h, e := &c.Order.Home, &c.Year
			for name, pair := range map[string][2]exact.Fraction{
				"film": {l.film.value, h.Film}, "shipping": {l.shipping.value, h.Shipping}, "sales tax": {l.salesTax.value, h.SalesTax},
				"card fee": {l.cardFee.value, h.CardFee}, "duty": {l.duty.value, h.Duty}, "import tax": {l.tax.plus(l.prepaid).value, h.ImportTax},
				"handling": {l.handling.value, h.Handling}, "landed": {l.landedCost.value, c.Order.Landed}, "charged": {l.charged.value, c.Order.Charged},
				"good": {o.yield.good.value, c.Yield.Good}, "cassettes": {o.yield.cassettes.value, exact.Int(int64(c.Yield.Cassettes))},
				"a roll": {o.total.value, c.PerRoll.Total}, "cash": {y.cash.value, e.Total}, "film left": {y.filmLeftValue.value, e.FilmLeftValue},
				"supplies left": {y.suppliesLeft.value, e.SuppliesLeftValue}, "equipment left": {y.equipmentLeft.value, e.EquipmentLeftValue},
				"time": {y.time.value, e.Time}, "all counted": {y.cost.value, e.Cost}, "film side": {y.film.value, e.FilmCost},
				"developing side": {y.develop.value, e.DevelopingCost},
			} {
				if !pair[0].Equal(pair[1]) {
					t.Errorf("%s, %s: the formula %s, the engine %s", o.scenario.Name, name, pair[0], pair[1])
				}
			}
			for _, part := range words.CostParts() {
				if got, want := o.perRoll[part].value, part.Of(&c.PerRoll); !got.Equal(want) {
					t.Errorf("%s, %s a roll: the formula %s, the engine %s", o.scenario.Name, part, got, want)
				}
			}
			for n, want := range e.Cumulative {
				if got := b.months.rows[y.first-1+n][monthSoFar-1].value.(exact.Fraction); !got.Equal(want) {
					t.Errorf("%s, month %d: the formula %s, the engine %s", o.scenario.Name, n, got, want)
				}
			}
		}
	}
	t.Run("demo", func(t *testing.T) { check(t, demo()) })
	for seed := range uint64(120) {
		t.Run(fmt.Sprint(seed), func(t *testing.T) { check(t, anything(seed)) })
	}
	if computed < 200 {
		t.Errorf("only %d offers were computed", computed)
	}
}

// A library's own engine computes the same receipt, yield and cost of a roll from the
// formulas as they stand in the file, also at another price, beyond which duty is due.
func TestALibraryFollowsThePrice(t *testing.T) {
	s := demo()
	s.Loading.HourlyValue = decimal.New(9, 0)
	s.Offers[2].KeepsMonths = scenario.Maybe{Decimal: decimal.New(4, 0), Set: true}
	file := opened(t, built(t, s))
	for _, price := range []string{"118.00", "59.90", "231.07", "245.00"} {
		s.Offers[2].Price = decimal.RequireFromString(price)
		if err := setInput(file, built(t, s), "offer_3_price", price); err != nil {
			t.Fatal(err)
		}
		o := built(t, s).offers[2]
		formulas := 0
		for r, line := range o.sheet.rows {
			if len(line) > 0 && line[0].value == any(words.SheetYear) {
				break // its engine loses its way in the months
			}
			if len(line) < lineValue || line[lineValue-1].formula == "" {
				continue
			}
			formulas++
			at := place(lineValue, r+1)
			got, err := file.CalcCellValue(o.sheet.name, at, excelize.Options{RawCellValue: true})
			if err != nil {
				t.Fatalf("%s: %v", at, err)
			}
			same(t, price+" "+line[0].value.(string), got, line[lineValue-1].value)
		}
		if formulas < 30 {
			t.Errorf("only %d formulas", formulas)
		}
	}
}

// setInput types another figure into a file.
func setInput(file *excelize.File, b *book, name, figure string) error {
	for _, n := range b.defined {
		if n.name == name {
			value, err := strconv.ParseFloat(figure, 64)
			if err != nil {
				return err
			}
			return file.SetCellValue(n.sheet.name, strings.ReplaceAll(n.at, "$", ""), value)
		}
	}
	return fmt.Errorf("there is no input %s", name)
}

// same compares what another engine computed with what the cell carries.
func same(t *testing.T, where, got string, want any) {
	t.Helper()
	f, isNumber := want.(exact.Fraction)
	if !isNumber {
		if got != want {
			t.Errorf("%s: computed %q, carries %q", where, got, want)
		}
		return
	}
	v, err := strconv.ParseFloat(got, 64)
	if err != nil || math.Abs(v-f.Float()) > 1e-6 {
		t.Errorf("%s: computed %q, carries %s", where, got, f)
	}
}

func opened(t *testing.T, b *book) *excelize.File {
	t.Helper()
	data, err := b.write()
	if err != nil {
		t.Fatal(err)
	}
	file, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = file.Close() })
	return file
}

// What previewers show is there: each formula in the file has its value beside it.
func TestEveryFormulaCarriesItsValue(t *testing.T) {
	data, err := built(t, demo()).write()
	if err != nil {
		t.Fatal(err)
	}
	formulas := 0
	for name, text := range unpacked(t, data) {
		if !regexp.MustCompile(`^xl/worksheets/sheet`).MatchString(name) {
			continue
		}
		for _, c := range regexp.MustCompile(`<c [^>]*>.*?</c>`).FindAllString(text, -1) {
			if !regexp.MustCompile(`<f>`).MatchString(c) {
				continue
			}
			formulas++
			if !regexp.MustCompile(`</f><v>[^<]+</v></c>$`).MatchString(c) {
				t.Errorf("%s: %s carries no value", name, c)
			}
		}
	}
	if formulas < 1000 {
		t.Errorf("only %d formulas", formulas)
	}
}
