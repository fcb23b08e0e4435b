package figure

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/palette"
)

func demoCuts(w, h float64, s Style) (*Drawing, []compare.CutSize) {
	c, reel := demoAhead(demoReel)
	return CutSizes(c, demoReel, reel.CutSizes, w, h, s), reel.CutSizes
}

func TestCutSizesLookAsTheyDid(t *testing.T) {
	d, _ := demoCuts(640, 300, english(palette.Paper))
	compareGolden(t, "cuts", d.Image(1))
}

// 35 exposures take 35 × 38 mm and the ends of a cassette; the demo's reel gives 18 of them
// and a short one, by the worked example that the project's figures are published with.
func TestCutSizesSayWhatTheyShow(t *testing.T) {
	d, sizes := demoCuts(640, 300, english(palette.Paper))
	for _, text := range []string{"Up to 36 exposures, rolls of 35 cost least: EUR 14.27, of 36 as today 14.30",
		"35 costs least up to 36: 14.27", "36 today: 14.30", "exposures", "rolls", "left over", "12", "40", "18", "19"} {
		if !writes(d, text) {
			t.Errorf("%q is not written", text)
		}
	}
	const said = "35 exposures: 18 rolls of 35 and one of 24, 0.02 m left over, EUR 14.27 for 36 exposures; costs least up to 36"
	if at := sizes[35-12]; spaces.Replace(d.Hits()[35-12].Text) != said || at.Exposures != 35 {
		t.Errorf("%q, want %q", d.Hits()[35-12].Text, said)
	}
	marked := map[string]string{}
	for _, row := range d.Table().Rows {
		if row[5] != "" {
			marked[row[5]] = row[0]
		}
	}
	if len(d.Table().Rows) != 29 || len(marked) != 2 || marked["costs least up to 36"] != "35" || marked["today"] != "36" {
		t.Errorf("%d rows, marked %v", len(d.Table().Rows), marked)
	}
}

// A dot stands on its cost, in a column of its own.
func TestDotsOfCutSizesStandOnTheirCosts(t *testing.T) {
	c, reel := demoAhead(demoReel)
	sizes := reel.CutSizes
	sh := newSheet(640, 300, english(palette.Paper))
	ch := &cutsChart{sheet: sh, cutsFinding: cutsOf(c, demoReel, sizes, sh.style)}
	ch.lay(60, 300)
	low, high := ch.ticks[0].value, ch.ticks[len(ch.ticks)-1].value
	for i := range sizes {
		cost := sizes[i].TotalPerRoll.Float()
		if want := ch.plot.bottom() - (cost-low)/(high-low)*ch.plot.H; math.Abs(ch.py(cost)-want) > 0.5 {
			t.Errorf("%d exposures at %.1f, want %.1f", sizes[i].Exposures, ch.py(cost), want)
		}
		if i > 0 && math.Abs(ch.middle(i)-ch.middle(i-1)-ch.plot.W/29) > 1e-6 {
			t.Errorf("%d exposures stand %.2f from the next", sizes[i].Exposures, ch.middle(i)-ch.middle(i-1))
		}
	}
}

func TestOddCutSizesHoldTheLayout(t *testing.T) {
	comparisons := odd()
	for _, home := range []string{"EUR", "JPY", "KWD"} {
		comparisons["long names in "+home] = compared(manyOffers(3, 60, home))
	}
	for name, c := range comparisons {
		all := ahead(c)
		for i := range all.Offers {
			o := &all.Offers[i]
			for _, size := range [][2]float64{{240, 120}, {300, 200}, {330, 240}, {640, 300}, {2400, 600}} {
				for _, style := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl"}} {
					d := CutSizes(c, o.Name, o.CutSizes, size[0], size[1], style)
					fig := fmt.Sprintf("%s, offer %d, %v, %s", name, i+1, size, style.Locale)
					checkLayout(t, fig, d)
					checkTwin(t, fig, d)
				}
			}
		}
	}
}

// Lists that no scenario gives: one size, none, all alike, below nothing.
func TestAnyCutSizesHoldTheLayout(t *testing.T) {
	c, _ := demoAhead(demoReel)
	rapid.Check(t, func(t *rapid.T) {
		var sizes []compare.CutSize
		n := rapid.IntRange(0, 31).Draw(t, "sizes")
		best := rapid.IntRange(0, 31).Draw(t, "best")
		for i := range n {
			sizes = append(sizes, compare.CutSize{
				Exposures: 10 + i, Best: i == best,
				TotalPerRoll: exact.Ratio(rapid.Int64Range(-1e12, 1e12).Draw(t, "cents"), 100),
				Yield: compare.Yield{Cassettes: rapid.IntRange(1, 2000).Draw(t, "cassettes"), Cut: &film.Cut{
					FullRolls: rapid.Int64Range(0, 2000).Draw(t, "full"), ShortRollExposures: rapid.Int64Range(0, 9).Draw(t, "short"),
					LeftOver: exact.Int(rapid.Int64Range(0, 5000).Draw(t, "left over"))}},
			})
		}
		style := Style{Theme: palette.Paper, Locale: rapid.SampledFrom(money.Locales()).Draw(t, "locale")}
		w, h := rapid.Float64Range(240, 2400).Draw(t, "width"), rapid.Float64Range(120, 900).Draw(t, "height")
		d := CutSizes(c, demoReel, sizes, w, h, style)
		checkLayout(t, "cut sizes", d)
		checkTwin(t, "cut sizes", d)
	})
}
