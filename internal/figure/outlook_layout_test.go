package figure

import (
	"context"
	"fmt"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// ahead looks ahead of a comparison.
func ahead(c *compare.Comparison) *compare.Outlook {
	c, err := compare.LookAhead(context.Background(), c, exact.Int(compare.CeilingPercent))
	if err != nil {
		panic(err)
	}
	return c.Outlook
}

// swingsAgainst are an offer's swings against the baseline.
func swingsAgainst(o *compare.OfferOutlook) []compare.Swing {
	if o.Pair == nil {
		return nil
	}
	return o.Pair.Swings
}

// curves are an offer's against the baseline, over every input that moves one of them.
func curves(c *compare.Comparison, o *compare.OfferOutlook, points int) map[string]*compare.Curve {
	list := map[string]*compare.Curve{}
	if o.Pair == nil {
		return list
	}
	for i := range o.Pair.Flips {
		f := &o.Pair.Flips[i]
		from, to := f.Around()
		curve, err := compare.CurveOf(context.Background(), c, o.Name, c.Scenario.Baseline, f.Input, from, to, points)
		if err != nil {
			panic(err)
		}
		list[string(f.Input)] = curve
	}
	return list
}

// prospects calls a test with the figures of every offer's outlook at one size.
func prospects(c *compare.Comparison, all *compare.Outlook, points int, w, h float64, s Style, try func(name string, d *Drawing)) {
	for i := range all.Offers {
		o := &all.Offers[i]
		try(fmt.Sprintf("swings of offer %d", i+1), Swings(c, o.Name, swingsAgainst(o), w, h, s))
		try(fmt.Sprintf("sizes of offer %d", i+1), Sizes(c, o.Name, o.OrderSizes, w, h, s))
		for input, curve := range curves(c, o, points) {
			try(fmt.Sprintf("flip of offer %d over %s", i+1, input), Flip(c, curve, w, h, s))
		}
	}
	try("flip of nothing", Flip(c, nil, w, h, s))
}

// checkTwin fails where a drawing has no title, or a table that is no rectangle.
func checkTwin(t failing, name string, d *Drawing) {
	t.Helper()
	if d.Title() == "" {
		t.Errorf("%s has no title", name)
	}
	for _, row := range d.Table().Rows {
		if len(row) != len(d.Table().Header) {
			t.Errorf("%s: %d cells under %d headings", name, len(row), len(d.Table().Header))
		}
	}
	for _, h := range d.Hits() {
		r := h.Rect
		if r.X < -0.5 || r.Y < -0.5 || r.right() > d.W+0.5 || r.bottom() > d.H+0.5 {
			t.Errorf("%s: %q can be read out at %.1f, off the canvas %v × %v", name, h.Text, r, d.W, d.H)
		}
	}
}

func TestNoTextOfWhatChangesTheAnswerOverlapsOrLeavesTheCanvas(t *testing.T) {
	for _, home := range []string{"EUR", "JPY", "KWD"} {
		c := compared(manyOffers(3, 60, home))
		all := ahead(c)
		for _, theme := range palette.Themes {
			for _, size := range [][2]float64{{300, 420}, {400, 200}, {600, 130}, {600, 260}, {640, 300}, {960, 600}, {2400, 260}, {2400, 900}} {
				prospects(c, all, 40, size[0], size[1], english(theme), func(name string, d *Drawing) {
					name = fmt.Sprintf("%s in %s, %s, %v", name, home, theme.Name, size)
					checkLayout(t, name, d)
					checkTwin(t, name, d)
				})
			}
		}
	}
}

func TestOddOutlooksHoldTheLayoutToo(t *testing.T) {
	comparisons := odd()
	near := demo() // a saving that small moves turn
	near.Offers[2].Price = decimal.NewFromInt(242)
	comparisons["a near thing"] = compared(near)
	equal := demo()
	equal.Offers[1] = equal.Offers[0]
	equal.Offers[1].Name = "Another like it"
	equal.Offers = equal.Offers[:2]
	comparisons["a tie"] = compared(equal)
	for name, c := range comparisons {
		all := ahead(c)
		if name == "all zeros" {
			for i := range all.Offers {
				for j := range all.Offers[i].OrderSizes {
					all.Offers[i].OrderSizes[j].TotalPerRoll = exact.Fraction{}
				}
			}
		}
		for _, size := range [][2]float64{{300, 200}, {400, 260}, {640, 260}, {960, 600}, {2400, 600}} {
			for _, l := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl"}} {
				prospects(c, all, 25, size[0], size[1], l, func(fig string, d *Drawing) {
					fig = fmt.Sprintf("%s, %s, %v, %s", fig, name, size, l.Locale)
					checkLayout(t, fig, d)
					checkTwin(t, fig, d)
				})
			}
		}
	}
}

// Lists that no scenario gives: none, negative, far apart, and beyond all measure.
func TestAnyListsHoldTheLayout(t *testing.T) {
	c := compared(demo())
	n := func(text string) exact.Fraction { return exact.FromDecimal(decimal.RequireFromString(text)) }
	for name, amount := range map[string]string{
		"nothing": "0", "negative": "-14.80", "a coin": "0.01", "huge": "99999999999.99", "below all": "-99999999999.99",
	} {
		x := n(amount)
		var sizes []compare.OrderSize
		var swings []compare.Swing
		for i, input := range c.Scenario.Inputs() {
			step := exact.Int(int64(i))
			months := step.Add(exact.Int(6))
			sizes = append(sizes, compare.OrderSize{Units: i + 1, LandedPerUnit: x.Mul(step), TotalPerRoll: x.Add(step), MonthsToShoot: &months, Best: i == 3, Why: compare.SizeDearer})
			swings = append(swings, compare.Swing{Input: input, Offer: demoReel, Low: step, High: step.Add(exact.Int(1)), SavingLow: x, SavingHigh: x.Add(step), Typed: i%2 == 0})
		}
		curve := &compare.Curve{Input: scenario.InputOfferPrice, Offer: demoReel, Other: c.Scenario.Baseline, Today: exact.Int(1),
			Points: []compare.CurvePoint{{At: exact.Int(0), Offer: x, Other: exact.Int(5)}, {At: exact.Int(1), Offer: x, Other: x},
				{At: exact.Int(1), Offer: x.Add(exact.Int(9)), Other: x}, {At: exact.Int(2), Offer: x.Neg(), Other: x}}}
		curve.Flip = compare.Flip{Input: curve.Input, Offer: demoReel, Quote: -1, Today: exact.Int(1), Above: &curve.Points[2].At}
		for _, w := range []float64{300, 640, 2400} {
			for _, h := range []float64{120, 200, 420} {
				for fig, d := range map[string]*Drawing{
					"sizes":     Sizes(c, demoReel, sizes, w, h, english(palette.Paper)),
					"one size":  Sizes(c, demoReel, sizes[:1], w, h, english(palette.Paper)),
					"no sizes":  Sizes(c, demoReel, nil, w, h, english(palette.Paper)),
					"swings":    Swings(c, demoReel, swings, w, h, english(palette.Paper)),
					"one swing": Swings(c, demoReel, swings[:1], w, h, english(palette.Paper)),
					"no swings": Swings(c, demoReel, nil, w, h, english(palette.Paper)),
					"no offer":  Swings(c, "nobody's", swings, w, h, english(palette.Paper)),
					"flip":      Flip(c, curve, w, h, english(palette.Paper)),
				} {
					fig = fmt.Sprintf("%s, %s, %v × %v", fig, name, w, h)
					checkLayout(t, fig, d)
					checkTwin(t, fig, d)
				}
			}
		}
	}
}

func TestExportsOfWhatChangesTheAnswerHoldTheLayout(t *testing.T) {
	all := odd()
	for _, home := range []string{"EUR", "KWD"} {
		all["long names in "+home] = compared(manyOffers(3, 60, home))
	}
	for name, c := range all {
		outlook := ahead(c)
		for _, size := range [][2]float64{{0, 0}, {600, 450}, {2400, 1500}} {
			for i := range outlook.Offers {
				o := &outlook.Offers[i]
				e := Export{Comparison: c, Chosen: o.Name, Swings: swingsAgainst(o), Sizes: o.OrderSizes, Style: english(palette.Safelight),
					Date: scenario.Date{Year: 2026, Month: 11, Day: 24}, W: size[0], H: size[1]}
				for _, curve := range curves(c, o, 20) {
					e.Curve = curve
					break
				}
				for _, e.Figure = range OutlookFigures() {
					d, err := e.Drawing()
					if err != nil {
						t.Fatal(err)
					}
					checkLayout(t, fmt.Sprintf("%s, %s, offer %d, %v", e.Figure, name, i+1, size), d)
				}
			}
		}
	}
}

func TestWhateverChangesTheAnswerTheLayoutHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := compared(anything(t))
		style := Style{
			Theme:  rapid.SampledFrom(palette.Themes).Draw(t, "theme"),
			Locale: rapid.SampledFrom(money.Locales()).Draw(t, "locale"),
		}
		w, h := rapid.Float64Range(300, 2400).Draw(t, "width"), rapid.Float64Range(120, 900).Draw(t, "height")
		all := ahead(c)
		all.Offers = rapid.Permutation(all.Offers).Draw(t, "order")[:1]
		prospects(c, all, 12, w, h, style, func(name string, d *Drawing) {
			checkLayout(t, name, d)
			checkTwin(t, name, d)
		})
	})
}
