package workbook

import (
	"archive/zip"
	"bytes"
	"context"
	"io"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func unpacked(t *testing.T, data []byte) map[string]string {
	t.Helper()
	archive, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for _, f := range archive.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		files[f.Name] = string(text)
	}
	return files
}

// The rules for a sheet's name, as spreadsheets apply them.
func TestSheetNamesKeepTheRules(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		names := sheetNames{}
		seen := map[string]bool{}
		for range rapid.IntRange(1, 60).Draw(t, "sheets") {
			text := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"a/b", "History", "", "Inputs", "inputs", "'q'", strings.Repeat("é🎞", 20)})).Draw(t, "text")
			name := names.name(text)
			key := strings.ToLower(name)
			if n := len(utf16.Encode([]rune(name))); n == 0 || n > 31 || strings.ContainsAny(name, `:\/?*[]`) ||
				strings.HasPrefix(name, "'") || strings.HasSuffix(name, "'") || seen[key] || key == "history" {
				t.Fatalf("%q became %q", text, name)
			}
			seen[key] = true
		}
	})
}

// What was typed is text, whatever it looks like, and comes back as it was.
func TestTypedTextIsNeverAFormula(t *testing.T) {
	s := demo()
	hostile := []string{"=1+1", "@SUM(A1)", "-2+3|' /C calc'!A0", "+1 <b>&amp;\x07\u0001"}
	s.Name = hostile[0]
	for i := range s.Offers {
		s.Offers[i].Name = hostile[i+1]
	}
	s.Baseline = s.Offers[0].Name
	b := built(t, s)
	file := opened(t, b)
	for r, line := range b.sheets[0].rows {
		for k, c := range line {
			text, isText := c.value.(string)
			if !isText || c.formula != "" {
				continue
			}
			at := place(k+1, r+1)
			formula, err := file.GetCellFormula(b.sheets[0].name, at)
			if err != nil || formula != "" {
				t.Errorf("%s holds the formula %q (%v)", at, formula, err)
			}
			want := strings.NewReplacer("\x07", "", "\x01", "").Replace(text)
			if got, err := file.GetCellValue(b.sheets[0].name, at); err != nil || got != want {
				t.Errorf("%s holds %q, want %q (%v)", at, got, want, err)
			}
		}
	}
}

// Two workbooks of one comparison are the same, byte for byte.
func TestItIsTheSameEachTime(t *testing.T) {
	var first []byte
	for n := range 3 {
		data, err := Make(context.Background(), compared(demo()), Options{On: today, Locale: "en"})
		if err != nil {
			t.Fatal(err)
		}
		if n == 0 {
			first = data
		} else if !bytes.Equal(first, data) {
			t.Fatal("another file for the same comparison")
		}
	}
}

// A book stays in the home currency, and says so where the program shows another.
func TestItStaysInTheHomeCurrency(t *testing.T) {
	home := compared(scenario.Demo().Scenarios[0])
	for shown, want := range map[*compare.Comparison]bool{home: false, home.In("USD", exact.Ratio(10_000, 8_875)): true} {
		b, err := build(context.Background(), shown, Options{On: today, Locale: "en"})
		if err != nil {
			t.Fatal(err)
		}
		said := false
		for _, row := range b.sheets[0].rows {
			for _, c := range row {
				said = said || c.value == words.SheetStaysHome("EUR", "USD")
			}
		}
		if said != want || !b.offers[0].total.value.Equal(home.Offers[0].PerRoll.Total) {
			t.Errorf("it says that it stays at home: %v, want %v; a roll is %s", said, want, b.offers[0].total.value)
		}
	}
}

func TestItStopsWhenNobodyWaits(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if _, err := Make(ctx, compared(demo()), Options{}); err == nil {
		t.Error("a workbook was made for nobody")
	}
}

// An offer that cannot be computed is named with its reason and has no sheet.
func TestWhatIsLeftOutIsNamed(t *testing.T) {
	s := demo()
	s.Rates = s.Rates[:1] // none for the pack
	b := built(t, s)
	if len(b.offers) != 2 {
		t.Fatalf("%d offers have sheets", len(b.offers))
	}
	said := words.LeftOut(b.c)[0]
	for _, line := range b.sheets[0].rows {
		for _, c := range line {
			if c.value == any(said) {
				return
			}
		}
	}
	t.Errorf("%q is not said", said)
}

// A file without any offer, and one with as many as a file may hold, are files.
func TestAnyNumberOfOffers(t *testing.T) {
	for _, offers := range []int{0, 50} {
		s := demo()
		like := s.Offers[2]
		s.Offers = nil
		for range offers {
			o := like
			o.Name = strings.Repeat("a long name of a reel ", 8) + decimal.New(int64(len(s.Offers)), 0).String()
			s.Offers = append(s.Offers, o)
		}
		s.Months = 60
		if b := built(t, s); len(opened(t, b).GetSheetList()) != offers+3 {
			t.Errorf("%d offers: the sheets are %q", offers, opened(t, b).GetSheetList())
		}
	}
}

// Every input has a name that formulas may use, and all of a scenario's figures are there.
func TestEveryFigureIsAnInput(t *testing.T) {
	b := built(t, demo())
	for _, name := range []string{"rolls_month_1", "rolls_month_12", "border_duty_percent", "loading_hourly_value", "loading_equipment_2_price",
		"developing_2_chemistry_keeps_months", "developing_2_equipment_1_resale", "offer_3_price", "offer_3_reel_leader_mm",
		"offer_2_boxed_rolls_per_pack", "rate_USD_EUR_equals", "offer_1_free_shipping_from"} {
		if _, there := b.in.values[name]; !there {
			t.Errorf("there is no input %s", name)
		}
	}
	var figures int
	for _, f := range scenario.Fields() {
		if f.Type.Name() == "Decimal" && !strings.Contains(f.Table, "range") && !strings.Contains(f.Table, "seen") {
			figures++
		}
	}
	if len(b.in.values) < figures {
		t.Errorf("%d inputs for %d keys that hold figures", len(b.in.values), figures)
	}
}
