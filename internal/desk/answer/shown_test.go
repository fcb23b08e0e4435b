package answer

import (
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// inOrder are the offers that can be computed, the cheapest roll first.
func inOrder(c *compare.Comparison) (names []string) {
	offers := slices.Clone(c.Offers)
	slices.SortStableFunc(offers, func(a, b compare.Offer) int { return a.PerRoll.Total.Cmp(b.PerRoll.Total) })
	for _, o := range offers {
		names = append(names, o.Name)
	}
	return names
}

// Whatever the rate and the prices: shown in another currency the same ones win, in the
// same order, and each figure says which currency it is in.
func TestShowingInAnotherCurrencyNeverChangesWhoWins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := scenario.Demo().Scenarios[0].Clone()
		for i := range s.Offers {
			s.Offers[i].Price = decimal.New(rapid.Int64Range(1, 3_000_000).Draw(t, "price"), -2)
		}
		rate := decimal.New(rapid.Int64Range(1, 99_999_999).Draw(t, "rate"), -rapid.Int32Range(0, 6).Draw(t, "places"))
		s.Rates = append(s.Rates, scenario.Rate{One: "EUR", Equals: rate, In: "AUD"})
		j := Job{Scenario: s, Style: figure.Style{Theme: palette.Paper, Locale: "en"}}
		for _, f := range []int{Cost, Spend} {
			j.Room[f] = Room{Width: 500, Height: 300, Scale: 0.1, Text: 1}
		}
		home, _ := Work(t.Context(), j)
		j.In = "AUD"
		shown, _ := Work(t.Context(), j)
		was, now := home.Comparison.Verdict, shown.Comparison.Verdict
		if shown.NoWay || was.Kind != now.Kind || was.Reel != now.Reel || was.Boxed != now.Boxed {
			t.Fatalf("%s of %q and %q has become %s of %q and %q", was.Kind, was.Reel, was.Boxed, now.Kind, now.Reel, now.Boxed)
		}
		if was, now := inOrder(home.Comparison), inOrder(shown.Comparison); !slices.Equal(was, now) {
			t.Fatalf("%v has become %v", was, now)
		}
		for _, f := range []int{Cost, Spend} {
			d := shown.Pictures[f].Drawing
			if !slices.ContainsFunc(d.Texts(), func(b figure.TextBox) bool { return strings.Contains(b.Text, "AUD") }) {
				t.Fatalf("figure %d does not say that it is in AUD: %q", f, d.Title())
			}
		}
	})
}

func TestWithoutAWayFiguresStayAtHome(t *testing.T) {
	s := scenario.Demo().Scenarios[0]
	a, _ := Work(t.Context(), Job{Scenario: s, In: "AUD"})
	if !a.NoWay || a.Comparison.Currency() != s.Home {
		t.Error(a.NoWay, a.Comparison.Currency())
	}
	if a, _ := Work(t.Context(), Job{Scenario: s, In: s.Home}); a.NoWay || a.Comparison.Currency() != s.Home {
		t.Error("home itself is no way", a.NoWay)
	}
}
