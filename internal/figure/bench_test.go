package figure

import (
	"fmt"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// The window draws its figures after every keystroke; 12 ms each at 1× keep it live.
func BenchmarkFigure(b *testing.B) {
	c := compare.Compare(scenario.Demo().Scenarios[0], nil, scenario.Date{})
	reel := c.Verdict.Reel
	style := Style{Theme: palette.Paper, Locale: "en"}
	_, ahead := demoAhead(demoReel)
	curve := demoCurve(&c, demoReel, "rate:USD/EUR", "0.4", "2")
	for _, fig := range []struct {
		name string
		draw func() *Drawing
	}{
		{"cost", func() *Drawing { return CostPerRoll(&c, reel, 640, 260, style) }},
		{"spend", func() *Drawing { return Spend(&c, reel, 640, 260, style) }},
		{"flip", func() *Drawing { return Flip(&c, curve, 640, 300, style) }},
		{"swings", func() *Drawing { return Swings(&c, reel, swingsAgainst(ahead), 640, 300, style) }},
		{"sizes", func() *Drawing { return Sizes(&c, reel, ahead.OrderSizes, 640, 300, style) }},
	} {
		b.Run(fig.name+" layout", func(b *testing.B) {
			for b.Loop() {
				fig.draw()
			}
		})
		for _, scale := range []float64{1, 2} {
			b.Run(fmt.Sprintf("%s at %v×", fig.name, scale), func(b *testing.B) {
				for b.Loop() {
					fig.draw().Image(scale)
				}
			})
		}
	}
}
