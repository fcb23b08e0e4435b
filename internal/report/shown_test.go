package report

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math/big"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// stay are the keys of the JSON that hold no amount of the home currency, with what is
// below them: counts, percents, lengths, rates, and what is in a seller's currency.
var stay = []string{
	"scenario", "home", "shown_in", "baseline", "name", "kind", "seller_lines", "yield", "orders", "film_left_rolls", "thrown_away_rolls",
	"saving_percent", "even_month", "payback_exact", "payback_rolls", "ruined_units", "price_ceiling", "reel", "boxed", "left_out",
	"volume", "volume_ranges", "units", "months_to_shoot", "best", "why", "warnings", "input", "fault",
	"exposures", "cassettes", "full_rolls", "short_roll_exposures", "left_over_mm", "good",
}

// Every amount of the home currency is the factor times what it was, exactly; all else is
// what it was, above all who wins. It goes through the JSON key by key, so that a figure
// that is added later is held too.
func TestShownInAnotherCurrencyEveryHomeAmountIsTheFactorTimes(t *testing.T) {
	for i, price := range []int64{1, 118, 242, 900} {
		s := scenario.Demo().Scenarios[0]
		s.Offers[2].Price, s.Loading.HourlyValue = decimal.New(price, 0), decimal.New(int64(6*i), 0)
		factor := exact.Ratio(3, 1<<i)
		home := compare.Compare(s, nil, scenario.Date{})
		shown := home.In("AUD", factor)
		ahead := func(c *compare.Comparison) *compare.Comparison {
			c, err := compare.LookAhead(context.Background(), c, exact.Int(10))
			if err != nil {
				t.Fatal(err)
			}
			return c
		}
		before, after := decoded(t, ahead(&home)), decoded(t, ahead(shown))
		if after["shown_in"] != "AUD" || before["shown_in"] != nil {
			t.Fatalf("shown in %v, at home in %v", after["shown_in"], before["shown_in"])
		}
		delete(after, "shown_in")
		held(t, "", before, after, factor.Rat())
	}
}

func decoded(t *testing.T, c *compare.Comparison) map[string]any {
	var b bytes.Buffer
	var list []map[string]any
	if err := JSON(&b, []compare.Comparison{*c}); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(b.Bytes(), &list); err != nil {
		t.Fatal(err)
	}
	return list[0]
}

// held compares two values of the JSON at a path. A nil factor says that they are the same.
func held(t *testing.T, path string, before, after any, factor *big.Rat) {
	switch b := before.(type) {
	case map[string]any:
		a, ok := after.(map[string]any)
		if !ok || len(a) != len(b) {
			t.Fatalf("%s: %v has become %v", path, before, after)
		}
		for key, value := range b {
			below := factor
			if slices.Contains(stay, key) {
				below = nil
			}
			if slices.Contains([]string{"today", "below", "above", "low", "high"}, key) && !strings.Contains(fmt.Sprint(b["input"]), "hourly") &&
				!strings.Contains(fmt.Sprint(b["input"]), "developing") {
				below = nil // an input that is no amount of the home currency
			}
			held(t, path+"."+key, value, a[key], below)
		}
	case []any:
		a, ok := after.([]any)
		if !ok || len(a) != len(b) {
			t.Fatalf("%s: %v has become %v", path, before, after)
		}
		for i := range b {
			held(t, fmt.Sprintf("%s[%d]", path, i), b[i], a[i], factor)
		}
	case string:
		was, isNumber := new(big.Rat).SetString(b)
		if factor == nil || !isNumber {
			if before != after {
				t.Fatalf("%s: %v has become %v", path, before, after)
			}
			return
		}
		is, _ := new(big.Rat).SetString(after.(string))
		off := new(big.Rat).Sub(is, was.Mul(was, factor))
		if off.Abs(off).Cmp(big.NewRat(1, 1e18)) > 0 {
			t.Fatalf("%s: %v has become %v", path, before, after)
		}
	default:
		if before != after {
			t.Fatalf("%s: %v has become %v", path, before, after)
		}
	}
}
