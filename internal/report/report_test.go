package report

import (
	"bytes"
	"context"
	"flag"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

var regen = flag.Bool("regen", false, "write the golden files anew")

// demo is the built-in scenario, changed and computed.
func demo(change func(s *scenario.Scenario)) compare.Comparison {
	s := scenario.Demo().Scenarios[0]
	if change != nil {
		change(&s)
	}
	return compare.Compare(s, scenario.Check(s), scenario.Date{Year: 2027, Month: 1, Day: 5})
}

// hostile is the demo with names that mean something to a terminal, a spreadsheet and
// Markdown, with an offer left out, and two of a kind.
func hostile() compare.Comparison {
	return demo(func(s *scenario.Scenario) {
		s.Name = "=1+1 | a\x1b[2Jb"
		s.Offers[0].Name = "@SUM(A1) <b>*bold*</b>"
		s.Baseline = s.Offers[0].Name
		s.Offers[1].Name = "-2, \"quoted\" | pipe\nand a second line \u202egnol"
		s.Rates = s.Rates[:1] // none for the pack
	})
}

// ahead is a comparison with what would change its answer.
func ahead(c compare.Comparison) compare.Comparison {
	looked, _ := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
	return *looked
}

func TestGolden(t *testing.T) {
	type form func(w io.Writer, cs []compare.Comparison) error
	table := func(l money.Locale) form {
		return func(w io.Writer, cs []compare.Comparison) error { return Table(w, cs, l) }
	}
	markdown := func(l money.Locale) form {
		return func(w io.Writer, cs []compare.Comparison) error { return Markdown(w, cs, l) }
	}
	months := demo(func(s *scenario.Scenario) {
		s.Name, s.Home, s.Months = "Half a year in yen", "JPY", 6
		s.Loading.CassettePrice, s.Loading.HourlyValue = decimal.NewFromInt(190), decimal.NewFromInt(1200)
	})
	for _, test := range []struct {
		file string
		form form
		cs   []compare.Comparison
	}{
		{"quayside.txt", table("en"), []compare.Comparison{demo(nil)}},
		{"quayside.md", markdown("de"), []compare.Comparison{demo(nil)}},
		{"quayside.csv", CSV, []compare.Comparison{demo(nil)}},
		{"changes.txt", table("en"), []compare.Comparison{ahead(demo(nil))}},
		{"changes.md", markdown("de"), []compare.Comparison{ahead(hostile())}},
		{"changes.json", JSON, []compare.Comparison{ahead(hostile())}},
		{"hostile.txt", table("en"), []compare.Comparison{hostile(), months}},
		{"hostile.md", markdown("en"), []compare.Comparison{hostile(), months}},
		{"hostile.csv", CSV, []compare.Comparison{hostile(), months}},
		{"hostile.json", JSON, []compare.Comparison{hostile(), months}},
	} {
		t.Run(test.file, func(t *testing.T) {
			var got bytes.Buffer
			if err := test.form(&got, test.cs); err != nil {
				t.Fatal(err)
			}
			golden := filepath.Join("testdata", test.file)
			if *regen {
				if err := os.WriteFile(golden, got.Bytes(), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(got.Bytes(), want) {
				t.Errorf("%s has changed; go test -regen writes it anew. Now:\n%s", golden, got.Bytes())
			}
		})
	}
}
