package scenario

import (
	"testing"

	"github.com/shopspring/decimal"
)

func TestTooManyDigits(t *testing.T) {
	for text, wrong := range map[string]bool{
		"1000000000000.002": true, "999999999999.002": false, "1000000000000": true, "-1000000000000": true, "-999999999999": false,
		"0.000000000001": false, "0.0000000000001": true, "999999999999.999999999999": false, "0": false, "1000000000000.000000000001": true,
	} {
		if got := tooLong(decimal.RequireFromString(text)); got != wrong {
			t.Errorf("%s: %v", text, got)
		}
	}
}

// A line that ends too early is the one to name, not the next.
func TestSyntaxFaultsNameTheirLine(t *testing.T) {
	for text, line := range map[string]int{
		"schema = 1\n[[scenario\nname = \"x\"\n": 2,
		"schema = 1\nhome = \nmonths = 1\n":      2,
		"schema = 1\nmonths = 1 2\n":             2,
	} {
		_, faults := Read([]byte(text))
		if len(faults) != 1 || faults[0].Line != line {
			t.Errorf("%q: %v", text, faults)
			for _, f := range faults {
				t.Log(f.Line)
			}
		}
	}
}
