package report

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

func TestPlain(t *testing.T) {
	for _, test := range []struct {
		f    exact.Fraction
		want string
	}{
		{exact.Int(0), "0"}, {exact.Int(-7), "-7"}, {exact.Ratio(148, 10), "14.8"}, {exact.Ratio(-5, 100), "-0.05"},
		{exact.Ratio(1, 1000), "0.001"}, {exact.Ratio(1, 8), "0.125"}, {exact.Ratio(1, 16), "0.0625"},
		{exact.Ratio(2, 3), "0.66666666666666666667"}, {exact.Ratio(-2, 3), "-0.66666666666666666667"},
		{exact.Int(math.MaxInt64), "9223372036854775807"}, {exact.Int(math.MinInt64), "-9223372036854775808"},
		{exact.Int(math.MaxInt64).Quo(exact.Int(1000)), "9223372036854775.807"},
	} {
		if got := plain(test.f); got != test.want {
			t.Errorf("got %s, want %s", got, test.want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		f := exact.Ratio(rapid.Int64().Draw(t, "top"), rapid.Int64Range(1, 100000).Draw(t, "bottom"))
		if got, want := plain(f), f.Text(places); got != want {
			t.Errorf("got %s, want %s", got, want)
		}
	})
}
