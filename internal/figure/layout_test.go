package figure

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// figures are all drawings of a comparison at one size.
func figures(c *compare.Comparison, chosen string, w, h float64, s Style) map[string]*Drawing {
	return map[string]*Drawing{
		"cost":  CostPerRoll(c, chosen, w, h, s),
		"spend": Spend(c, chosen, w, h, s),
		"strip": Strip(c.Find(chosen), w, StripHeight, s),
	}
}

// checkLayout fails where two texts overlap or one leaves the canvas.
func checkLayout(t failing, name string, d *Drawing) {
	t.Helper()
	texts := d.Texts()
	canvas := Rect{-0.5, -0.5, d.W + 1, d.H + 1}
	for i, a := range texts {
		if strings.TrimSpace(a.Text) == "" {
			t.Errorf("%s: an empty text at %v", name, a.Rect)
		}
		r := a.Rect
		if r.X < canvas.X || r.Y < canvas.Y || r.right() > canvas.right() || r.bottom() > canvas.bottom() {
			t.Errorf("%s: %q at %.1f leaves the canvas %v × %v", name, a.Text, r, d.W, d.H)
		}
		for _, b := range texts[i+1:] {
			if r.overlaps(b.Rect) {
				t.Errorf("%s: %q at %.1f overlaps %q at %.1f", name, a.Text, r, b.Text, b.Rect)
			}
		}
	}
	for _, h := range d.Hits() {
		if math.IsNaN(h.Rect.X+h.Rect.Y+h.Rect.W+h.Rect.H) || h.Text == "" {
			t.Errorf("%s: hit %+v says nothing or is nowhere", name, h)
		}
	}
}

func TestNoTextOverlapsAnotherOrLeavesTheCanvas(t *testing.T) {
	for _, n := range []int{1, 3, 8} {
		for _, home := range []string{"EUR", "JPY", "KWD"} {
			c := compared(manyOffers(n, 60, home))
			for i := range c.Offers {
				if c.Offers[i].Fault != nil {
					t.Fatalf("offer %d in %s: %s", i+1, home, c.Offers[i].Fault.Why.Code)
				}
			}
			for _, theme := range palette.Themes {
				for _, size := range [][2]float64{{300, 420}, {400, 260}, {600, 130}, {600, 260}, {640, 300}, {960, 600}, {2400, 260}, {2400, 900}} {
					for fig, d := range figures(c, c.Offers[n-1].Name, size[0], size[1], english(theme)) {
						checkLayout(t, fmt.Sprintf("%s, %d offers in %s, %s, %v", fig, n, home, theme.Name, size), d)
					}
				}
			}
		}
	}
}

// odd are comparisons at the edge of what a figure meets.
func odd() map[string]*compare.Comparison {
	long := demo()
	long.Months = 60
	single := demo()
	single.Months = 1
	autumn := demo()
	autumn.FirstMonth = scenario.Month{Year: 2027, Month: 10}
	idle := demo()
	clear(idle.Shooting.RollsPerMonth[:])
	huge := demo()
	huge.Offers[1].Price = decimal.RequireFromString("99999999999")
	fault := demo()
	fault.Rates = fault.Rates[1:]
	allFaults := demo()
	allFaults.Home, allFaults.Rates = "CHF", nil
	same := demo()
	same.Offers[1] = same.Offers[0]
	same.Offers[1].Name = "The very same"
	zero := compared(demo())
	for i := range zero.Offers {
		zero.Offers[i].PerRoll = compare.PerRoll{}
		clear(zero.Offers[i].Year.Cash)
		clear(zero.Offers[i].Year.Cumulative)
		clear(zero.Offers[i].Year.Orders)
	}
	resale := demo()
	resale.Loading.Equipment[0].Resale = decimal.NewFromInt(900)
	scripts := demo()
	scripts.Offers[0].Name = "Szkło i światło, łódź 400 – 36 klatek"
	scripts.Offers[1].Name = "Плёнка «Берег» 400, пять роликов почтой"
	scripts.Offers[2].Name = "Přístav 500, 30 m, € ex přepravy"
	scripts.Baseline = scripts.Offers[0].Name
	nothing := demo()
	nothing.Offers = nil
	return map[string]*compare.Comparison{
		"60 months": compared(long), "one month": compared(single), "from October": compared(autumn),
		"zero demand": compared(idle), "one huge value": compared(huge), "one fault": compared(fault),
		"only faults": compared(allFaults), "twins": compared(same), "all zeros": zero,
		"resale above the price": compared(resale), "several scripts": compared(scripts),
		"no offers": compared(nothing),
	}
}

func TestOddComparisonsHoldTheLayoutToo(t *testing.T) {
	for name, c := range odd() {
		for _, size := range [][2]float64{{300, 200}, {400, 260}, {640, 260}, {960, 600}, {2400, 600}} {
			for _, l := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl", Lit: words.PartTax}} {
				for fig, d := range figures(c, demoReel, size[0], size[1], l) {
					checkLayout(t, fmt.Sprintf("%s, %s, %v, %s", fig, name, size, l.Locale), d)
				}
			}
		}
	}
}

func TestExportsHoldTheLayoutToo(t *testing.T) {
	all := odd()
	for _, n := range []int{1, 3, 8} {
		all[fmt.Sprintf("%d offers", n)] = compared(manyOffers(n, 60, "KWD"))
	}
	date := scenario.Date{Year: 2026, Month: 11, Day: 24}
	for name, c := range all {
		for _, size := range [][2]float64{{0, 0}, {600, 450}, {2400, 1500}} {
			for _, fig := range Figures() {
				e := Export{Figure: fig, Comparison: c, Chosen: demoReel, Style: english(palette.Safelight), Date: date, W: size[0], H: size[1]}
				d, err := e.Drawing()
				if err != nil {
					t.Fatal(err)
				}
				checkLayout(t, fmt.Sprintf("%s, %s, %v", fig, name, size), d)
			}
		}
	}
}

func TestReelsOfEveryLengthHoldTheLayout(t *testing.T) {
	for _, feet := range []int64{6, 17, 30, 100, 400, 1000, 2000} {
		for _, width := range []float64{300, 640, 2400} {
			s := demo()
			r := s.Offers[2].Reel
			r.Length, r.TestExposures, r.ShortRollFrom = decimal.NewFromInt(feet), 5, 1
			c := compared(s)
			if c.Offers[2].Fault != nil {
				t.Fatalf("%d ft: %s", feet, c.Offers[2].Fault.Why.Code)
			}
			d := Strip(&c.Offers[2], width, StripHeight, english(palette.Paper))
			checkLayout(t, fmt.Sprintf("%d ft at %v", feet, width), d)
			end := 0.0
			for _, h := range d.Hits() {
				if h.Rect.X != end {
					t.Errorf("%d ft at %v: a gap before %q", feet, width, h.Text)
				}
				end = h.Rect.right()
			}
			if end != width {
				t.Errorf("%d ft at %v: the pieces end at %v", feet, width, end)
			}
		}
	}
}

func TestTotalsKeepOffTheDottedLine(t *testing.T) {
	c := compared(manyOffers(8, 60, "EUR"))
	c.Offers[1].PerRoll.Film = c.Offers[1].PerRoll.Film.Add(c.Offers[0].PerRoll.Total).Sub(c.Offers[1].PerRoll.Total).Sub(exact.Int(2))
	c.Offers[1].PerRoll.Total = c.Offers[0].PerRoll.Total.Sub(exact.Int(2)) // its bar ends just before the line
	d := CostPerRoll(c, "", 640, 260, english(palette.Paper))
	line := -1.0
	for _, b := range d.Texts() {
		if b.Text == words.ComparedWith {
			line = b.Rect.X + b.Rect.W/2
		}
	}
	for i := range c.Offers {
		total := money.Locale("en").Number(c.Offers[i].PerRoll.Total, 2)
		for _, b := range d.Texts() {
			if b.Bold && b.Text == total && b.Rect.X < line && line < b.Rect.right() {
				t.Errorf("the total %s of offer %d stands on the line at %.0f", total, i+1, line)
			}
		}
	}
}

// failing is a test, or a test of drawn cases.
type failing interface {
	Helper()
	Errorf(format string, args ...any)
}
