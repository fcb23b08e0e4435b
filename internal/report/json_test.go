package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

// The result of the demo, worked out beside this program, key by key in the same order,
// with the same types and the same numbers to 20 places.
func TestJSONIsTheWorkedExample(t *testing.T) {
	want, err := os.ReadFile("testdata/quayside.json")
	if err != nil {
		t.Fatal(err)
	}
	c := demo(nil)
	c.Warnings = nil
	var got bytes.Buffer
	if err := JSON(&got, []compare.Comparison{c}); err != nil {
		t.Fatal(err)
	}
	g, w := flat(t, got.Bytes()), flat(t, want)
	// The example was written before the program said its version.
	if last := len(g) - 1; g[last] != fmt.Sprintf("[0].version = %q", version.String()) {
		t.Errorf("the result ends with %s, not with the version", g[last])
	} else {
		g = g[:last]
	}
	// The example was written before warnings were listed.
	if last := len(g) - 1; g[last] != "[0].warnings = []" {
		t.Errorf("the result ends with %s, not with its warnings", g[last])
	} else {
		g = g[:last]
	}
	for i := range max(len(g), len(w)) {
		switch {
		case i >= len(g):
			t.Fatalf("%s is missing", w[i])
		case i >= len(w):
			t.Fatalf("%s is too much", g[i])
		case g[i] != w[i]:
			t.Fatalf("got %s\nwant %s", g[i], w[i])
		}
	}
	if len(w) < 150 {
		t.Errorf("the example has %d values only", len(w))
	}
}

// flat lists every value of a JSON text with its path, in the order of the text. Strings
// that are decimals are brought to one spelling.
func flat(t *testing.T, data []byte) (list []string) {
	t.Helper()
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.UseNumber()
	var value func(path string)
	next := func() json.Token {
		token, err := dec.Token()
		if err != nil {
			t.Fatal(err)
		}
		return token
	}
	value = func(path string) {
		switch token := next().(type) {
		case json.Delim:
			n := 0
			for ; dec.More(); n++ {
				if token == '{' {
					value(path + "." + next().(string))
				} else {
					value(fmt.Sprintf("%s[%d]", path, n))
				}
			}
			next()
			if n == 0 {
				list = append(list, fmt.Sprintf("%s = %c%c", path, token, token+2))
			}
		case string:
			if d, err := decimal.NewFromString(token); err == nil {
				token = d.String()
			}
			list = append(list, fmt.Sprintf("%s = %q", path, token))
		default:
			list = append(list, fmt.Sprintf("%s = %v", path, token))
		}
	}
	value("")
	return list
}

func TestJSONOfFaults(t *testing.T) {
	one := demo(func(s *scenario.Scenario) { s.Rates = nil })
	none := demo(func(s *scenario.Scenario) { s.Rates, s.Offers = nil, s.Offers[1:] })
	noBaseline := demo(func(s *scenario.Scenario) { s.Rates = s.Rates[:1]; s.Baseline = s.Offers[1].Name })
	var out bytes.Buffer
	if err := JSON(&out, []compare.Comparison{one, none, noBaseline}); err != nil {
		t.Fatal(err)
	}
	var got []map[string]json.RawMessage
	if err := json.Unmarshal(out.Bytes(), &got); err != nil {
		t.Fatal(err)
	}
	compact := func(raw json.RawMessage) string {
		var b bytes.Buffer
		if err := json.Compact(&b, raw); err != nil {
			t.Fatal(err)
		}
		return b.String()
	}
	const reel, pack = "Lanternlight 500, 100 ft reel", "Marigold 400, pack of 5 by post"
	for _, test := range []struct{ what, got, want string }{
		{"one-sided verdict", compact(got[0]["verdict"]),
			`{"kind":"one-sided","boxed":"Marigold 400, shop roll","left_out":["` + pack + `","` + reel + `"]}`},
		{"verdict on nothing", compact(got[1]["verdict"]), `{"kind":"one-sided","left_out":["` + pack + `","` + reel + `"]}`},
		{"offers left out", compact(got[1]["offers"]),
			`[{"name":"` + pack + `","kind":"boxed","fault":"no rate between JPY and EUR"},` +
				`{"name":"` + reel + `","kind":"reel","fault":"no rate between USD and EUR"}]`},
		{"no warnings", compact(got[1]["warnings"]), `[]`},
	} {
		if test.got != test.want {
			t.Errorf("%s\n got: %s\nwant: %s", test.what, test.got, test.want)
		}
	}
	if strings.Contains(string(got[2]["offers"]), "against_baseline") {
		t.Error("an offer is held against a baseline that has a fault")
	}
}

func TestJSONSaysWhatThereIsNoneOfAsNull(t *testing.T) {
	var out bytes.Buffer
	if err := JSON(&out, []compare.Comparison{demo(nil)}); err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"even_month", "payback_exact", "payback_rolls", "ruined_units"} {
		if !strings.Contains(out.String(), `"`+key+`": null`) {
			t.Errorf("%s of the pack is not null", key)
		}
	}
	if !strings.Contains(out.String(), `"code": "chemistry-expires"`) {
		t.Error("no warning is listed")
	}
}

func TestJSONDecimalsArePlain(t *testing.T) {
	var out bytes.Buffer
	c := demo(func(s *scenario.Scenario) {
		s.Offers[2].Price = decimal.RequireFromString("123456789012.123456789012")
		s.Offers[0].Price = decimal.RequireFromString("0.000000000001")
	})
	if err := JSON(&out, []compare.Comparison{c}); err != nil {
		t.Fatal(err)
	}
	plain := regexp.MustCompile(`^-?(0|[1-9]\d*)(\.\d{0,19}[1-9])?$`)
	n := 0
	for _, line := range flat(t, out.Bytes()) {
		_, quoted, _ := strings.Cut(line, ` = "`)
		text := strings.TrimSuffix(quoted, `"`)
		if _, err := decimal.NewFromString(text); err != nil {
			continue
		}
		n++
		if !plain.MatchString(text) {
			t.Errorf("%s is not plain", line)
		}
	}
	if n < 100 {
		t.Errorf("only %d decimals were seen", n)
	}
}

func TestJSONOfNothing(t *testing.T) {
	var out bytes.Buffer
	if err := JSON(&out, nil); err != nil {
		t.Fatal(err)
	}
	if strings.TrimSpace(out.String()) != "[]" {
		t.Errorf("got %s", out.String())
	}
}
