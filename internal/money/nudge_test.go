package money

import (
	"testing"

	"github.com/shopspring/decimal"
)

func TestNudge(t *testing.T) {
	for _, c := range []struct {
		from  string
		steps int
		to    string
	}{
		{"118.00", 1, "119.00"}, {"118.00", -1, "117.00"}, {"5", 1, "6"}, {"0", -1, "0"}, {"0", 1, "1"},
		{"1.20", 1, "1.30"}, {"0.15", -1, "0.14"}, {"0.8875", 1, "0.8885"}, {"4.2", 1, "4.3"}, {"0.5", -9, "0.0"}, {"-3", 1, "-2"},
	} {
		if got := Nudge(decimal.RequireFromString(c.from), c.steps); English.Field(got) != English.Field(decimal.RequireFromString(c.to)) {
			t.Errorf("%s by %d is %s, want %s", c.from, c.steps, English.Field(got), c.to)
		}
	}
}
