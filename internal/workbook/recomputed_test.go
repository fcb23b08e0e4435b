package workbook

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// recomputer is Gnumeric's converter: a spreadsheet program of another house, without a
// window. It computes every formula anew.
const recomputer = "ssconvert"

// recomputed are the cells of each sheet as Gnumeric computes them.
func recomputed(t *testing.T, xlsx []byte) [][][]string {
	t.Helper()
	dir := t.TempDir()
	book := filepath.Join(dir, "book.xlsx")
	if err := os.WriteFile(book, xlsx, 0o644); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(recomputer, "--recalc", "-S", book, filepath.Join(dir, "%n.csv"))
	cmd.Env = append(os.Environ(), "LC_ALL=C.UTF-8", "HOME="+dir)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	var sheets [][][]string
	for n := 0; ; n++ {
		data, err := os.ReadFile(filepath.Join(dir, fmt.Sprint(n, ".csv")))
		if err != nil {
			return sheets
		}
		r := csv.NewReader(bytes.NewReader(data))
		r.FieldsPerRecord = -1
		cells, err := r.ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		sheets = append(sheets, cells)
	}
}

func needsRecomputer(t *testing.T) {
	t.Helper()
	if _, err := exec.LookPath(recomputer); err != nil {
		t.Skip("Gnumeric's ssconvert is not installed, so nobody recomputes the spreadsheet")
	}
}

// agree compares every formula's value with what Gnumeric computed.
func agree(t *testing.T, b *book, got [][][]string) {
	t.Helper()
	formulas := 0
	for i, s := range b.sheets {
		if i >= len(got) {
			t.Fatalf("%d sheets were computed, of %d", len(got), len(b.sheets))
		}
		for r, line := range s.rows {
			for k, c := range line {
				if c.formula == "" {
					continue
				}
				formulas++
				at := fmt.Sprint(s.name, " ", place(k+1, r+1), " ", c.formula)
				if r >= len(got[i]) || k >= len(got[i][r]) {
					t.Fatalf("%s was not computed", at)
				}
				same(t, at, got[i][r][k], c.value)
			}
		}
	}
	if formulas < 100 {
		t.Errorf("only %d formulas", formulas)
	}
}

// Another program computes the same figures from the file, to the cent and far beyond:
// the demo and 20 scenarios unlike it.
func TestASpreadsheetProgramComputesTheSame(t *testing.T) {
	needsRecomputer(t)
	check := func(t *testing.T, s scenario.Scenario) {
		b := built(t, s)
		data, err := b.write()
		if err != nil {
			t.Fatal(err)
		}
		agree(t, b, recomputed(t, data))
	}
	t.Run("demo", func(t *testing.T) { check(t, demo()) })
	for seed := range uint64(20) {
		t.Run(fmt.Sprint(seed), func(t *testing.T) { check(t, anything(seed)) })
	}
}

// Somebody who types other figures gets what the program would have computed of them,
// and is told that they are others.
func TestAChangedFileIsFollowed(t *testing.T) {
	needsRecomputer(t)
	before := built(t, demo())
	file := opened(t, before)
	for name, figure := range map[string]string{"offer_3_price": "171.25", "rolls_month_4": "9", "offer_3_keeps_months": "5", "rate_USD_EUR_equals": "0.9312"} {
		if err := setInput(file, before, name, figure); err != nil {
			t.Fatal(err)
		}
	}
	var typed bytes.Buffer
	if err := file.Write(&typed); err != nil {
		t.Fatal(err)
	}
	got := recomputed(t, typed.Bytes())

	s := demo()
	s.Offers[2].Price = decimal.RequireFromString("171.25")
	s.Offers[2].KeepsMonths = scenario.Maybe{Decimal: decimal.New(5, 0), Set: true}
	s.Shooting.RollsPerMonth[3] = decimal.New(9, 0)
	s.Rates[0].Equals = decimal.RequireFromString("0.9312")
	after := built(t, s)
	for i, sheet := range after.sheets {
		for r, line := range sheet.rows {
			for k, c := range line {
				if _, isText := c.value.(string); c.formula != "" && !isText && !(i == 1 && r == 0) {
					same(t, fmt.Sprint(sheet.name, " ", place(k+1, r+1)), got[i][r][k], c.value)
				}
			}
		}
	}
	if said := got[0][4][compareName-1]; said != words.SheetNoLonger {
		t.Errorf("the finding is said to stand: %q", said)
	}
	if said := got[1][0][inputExported-1]; said != "4" {
		t.Errorf("%s inputs are said to be changed", said)
	}
	var said []string
	for _, line := range got[0] {
		if len(line) >= compareCheck && line[compareCheck-1] != "" {
			said = append(said, line[compareCheck-1])
		}
	}
	if strings.Count(strings.Join(said, "|"), "|"+words.SheetChanged) != 3 {
		t.Errorf("the checks say %q", said)
	}
}
