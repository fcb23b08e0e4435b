package report

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"reelworth/internal/compare"
)

// The keys of what changes the answer, and where they stand.
func TestJSONOfWhatChangesTheAnswer(t *testing.T) {
	var out bytes.Buffer
	if err := JSON(&out, []compare.Comparison{ahead(demo(nil))}); err != nil {
		t.Fatal(err)
	}
	var list []struct {
		Offers []struct {
			Kind    string
			Cuts    []map[string]any `json:"cut_sizes"`
			Sizes   []map[string]any `json:"order_sizes"`
			Against map[string]any   `json:"against_baseline"`
		}
		Verdict map[string]any
	}
	if err := json.Unmarshal(out.Bytes(), &list); err != nil {
		t.Fatal(err)
	}
	keys := func(v any) string {
		var names []string
		for k := range v.(map[string]any) {
			names = append(names, k)
		}
		slices.Sort(names)
		return strings.Join(names, " ")
	}
	for _, o := range list[0].Offers {
		if len(o.Sizes) != 12 || keys(o.Sizes[0]) != "best landed_per_unit months_to_shoot total_per_roll units why" {
			t.Errorf("%d sizes: %v", len(o.Sizes), o.Sizes[0])
		}
		if (o.Kind == "reel") != (len(o.Cuts) == 29) {
			t.Errorf("%s: %d cut sizes", o.Kind, len(o.Cuts))
		}
		if o.Cuts != nil && keys(o.Cuts[0]) != "best cassettes exposures full_rolls good left_over_mm short_roll_exposures total_per_roll" {
			t.Error(o.Cuts[0])
		}
		if o.Against == nil {
			continue
		}
		flips, swings := o.Against["flips"].([]any), o.Against["swings"].([]any)
		if keys(flips[0]) != "above below input today" || keys(swings[0]) != "high input low saving_high saving_low" {
			t.Error(flips[0], swings[0])
		}
		if r := o.Against["volume_ranges"].([]any); keys(r[0]) != "cheaper from to" {
			t.Error(r)
		}
		if c := o.Against["price_ceiling"]; o.Kind == "boxed" && c != nil || o.Kind == "reel" && keys(c) != "price saving_percent" {
			t.Errorf("%s: %v", o.Kind, c)
		}
	}
	if v := list[0].Verdict["volume"]; keys(v) != "above below ranges today" || v.(map[string]any)["below"] != 15.0 || v.(map[string]any)["today"] != "43" {
		t.Error(v)
	}
}

// Before anybody asked what changes the answer nothing of it is written, and where the
// verdict is one-sided no volume.
func TestJSONWithoutAnOutlook(t *testing.T) {
	var out bytes.Buffer
	if err := JSON(&out, []compare.Comparison{demo(nil)}); err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"flips", "swings", "price_ceiling", "order_sizes", "volume"} {
		if strings.Contains(out.String(), `"`+key+`"`) {
			t.Errorf("%s is written", key)
		}
	}
	c := demo(nil)
	c.Scenario.Offers = c.Scenario.Offers[:2]
	c = ahead(compare.Compare(c.Scenario, nil, c.Scenario.Rates[0].Date))
	out.Reset()
	if err := JSON(&out, []compare.Comparison{c}); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(out.String(), `"volume"`) || !strings.Contains(out.String(), `"price_ceiling": null`) {
		t.Errorf("%s", out.String())
	}
}
