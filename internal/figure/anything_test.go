package figure

import (
	"fmt"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// anything is the demo with its names, amounts and months drawn anew.
func anything(t *rapid.T) scenario.Scenario {
	s := manyOffers(rapid.IntRange(1, 9).Draw(t, "offers"), 20, rapid.SampledFrom([]string{"EUR", "JPY", "KWD"}).Draw(t, "home"))
	s.Months = rapid.IntRange(1, 60).Draw(t, "months")
	s.FirstMonth = scenario.Month{Year: 2027, Month: 1}.Add(rapid.IntRange(0, 11).Draw(t, "first month"))
	for i := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = decimal.NewFromInt(rapid.SampledFrom([]int64{0, 0, 1, 3, 40}).Draw(t, "rolls"))
	}
	s.Loading.HourlyValue = decimal.New(rapid.Int64Range(0, 9000).Draw(t, "hour"), -2)
	for i := range s.Offers {
		o := &s.Offers[i]
		o.Name = fmt.Sprint(rapid.StringN(0, 70, -1).Draw(t, "name"), i)
		o.Price = decimal.New(rapid.Int64Range(1, 5_000_000).Draw(t, "price"), -2)
		o.PriceRisePercent = decimal.NewFromInt(rapid.Int64Range(-150, 150).Draw(t, "rise"))
		if rapid.IntRange(0, 5).Draw(t, "fault") == 0 {
			o.Currency = "XYZ"
		}
	}
	s.Baseline = s.Offers[0].Name
	return s
}

func TestWhateverIsComparedTheLayoutHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anything(t)
		c := compared(s)
		style := Style{
			Theme:  rapid.SampledFrom(palette.Themes).Draw(t, "theme"),
			Locale: rapid.SampledFrom(money.Locales()).Draw(t, "locale"),
		}
		w, h := rapid.Float64Range(320, 2400).Draw(t, "width"), rapid.Float64Range(220, 900).Draw(t, "height")
		chosen := rapid.SampledFrom(s.Offers).Draw(t, "chosen").Name
		for name, d := range figures(c, chosen, w, h, style) {
			checkLayout(t, name, d)
			for _, row := range d.Table().Rows {
				if len(row) != len(d.Table().Header) {
					t.Errorf("%s: %d cells under %d headings", name, len(row), len(d.Table().Header))
				}
			}
		}
		for _, fig := range Figures() {
			d, err := Export{Figure: fig, Comparison: c, Chosen: chosen, Style: style}.Drawing()
			if err != nil {
				t.Fatal(err)
			}
			checkLayout(t, "export of "+fig, d)
		}
	})
}
