package figure

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

const demoReel = "Lanternlight 500, 100 ft reel"

// demo is the built-in scenario, to be changed by the test that asks for it.
func demo() scenario.Scenario { return scenario.Demo().Scenarios[0].Clone() }

func compared(s scenario.Scenario) *compare.Comparison {
	c := compare.Compare(s, nil, scenario.Date{})
	return &c
}

func english(t palette.Theme) Style { return Style{Theme: t, Locale: "en"} }

// manyOffers is the demo with n offers in turn reel and boxed, named with length
// characters, all priced in home.
func manyOffers(n, length int, home string) scenario.Scenario {
	s := demo()
	s.Home = home
	s.Rates = nil
	price := map[string]string{"EUR": "14.80", "JPY": "2400", "KWD": "4.925"}[home]
	scale := decimal.RequireFromString(price).Div(decimal.RequireFromString("14.80"))
	for i := range s.Developing {
		d := &s.Developing[i]
		d.Price, d.ChemistryPrice = d.Price.Mul(scale), d.ChemistryPrice.Mul(scale)
	}
	models := s.Offers
	s.Offers = nil
	for i := range n {
		o := models[[]int{0, 2, 1}[i%3]]
		o.Name = longName(i, length)
		o.Currency = home
		o.Price = o.Price.Mul(scale).Mul(decimal.NewFromInt(int64(20 + i))).Div(decimal.NewFromInt(20)).Round(3)
		if i%3 == 2 {
			o.Price = decimal.RequireFromString(price).Mul(decimal.NewFromInt(int64(4 + i))).Round(3)
			o.Shipping, o.ShippingEachExtra = decimal.NewFromInt(3), decimal.Zero
		}
		s.Offers = append(s.Offers, o)
	}
	s.Baseline = s.Offers[0].Name
	return s
}

func longName(i, length int) string {
	text := fmt.Sprintf("Offer %d from a seller with a very long name and more ", i+1)
	return strings.TrimSpace((text + strings.Repeat("wide ", length))[:length-1]) + fmt.Sprint(i+1)
}
