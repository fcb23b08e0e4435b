package words

import (
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// number reads what a row of the receipt prints.
func number(t *testing.T, text string) decimal.Decimal {
	t.Helper()
	d, err := decimal.NewFromString(strings.ReplaceAll(strings.TrimSuffix(text, " a roll"), ",", ""))
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// printedOff adds up what stands on the paper, as somebody with a pocket calculator would:
// the lines down to each sum, then what a roll is made of.
func printedOff(t *testing.T, rows []ReceiptRow) (most decimal.Decimal) {
	t.Helper()
	var lines decimal.Decimal
	for _, r := range rows {
		if n := number(t, r.Home); r.Strong {
			most = decimal.Max(most, lines.Sub(n).Abs())
			lines = n
		} else if strings.HasSuffix(r.Home, " a roll") {
			lines = n
		} else {
			lines = lines.Add(n)
		}
	}
	return most
}

// That printed lines come out beside the sums is said exactly when they do, and by how much
// at most, at 400 rates and in currencies with and without cents.
func TestItIsSaidWhenPrintedLinesDoNotAddUp(t *testing.T) {
	home := demo(nil)
	said, silent := 0, 0
	for n := int64(3); n < 403; n++ {
		for _, currency := range []string{"USD", "JPY"} {
			c := home.In(currency, exact.Ratio(n*n, 1_009))
			for i := range c.Offers {
				off := printedOff(t, Receipt(c, i, money.English))
				got := ReceiptRounding(c, i, money.English)
				if off.IsZero() {
					silent++
					if got != "" {
						t.Fatalf("%s × %d²/1009, offer %d adds up, yet %q", currency, n, i, got)
					}
					continue
				}
				said++
				if want := currency + "\u00a0" + off.StringFixed(int32(money.Places(currency))) + " off"; !strings.Contains(got, want) {
					t.Fatalf("%s × %d²/1009, offer %d: %q does not say %q", currency, n, i, got, want)
				}
			}
		}
	}
	if said == 0 || silent == 0 {
		t.Error("said", said, "times, silent", silent)
	}
	for i := range home.Offers {
		if got := ReceiptRounding(home, i, money.English); got != "" {
			t.Errorf("offer %d at home: %q", i, got)
		}
	}
}
