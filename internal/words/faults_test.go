package words

import (
	"os"
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// What is said of every fault that an edit of a sound file leads to: a part of what is
// wrong and of what to write instead, joined by "; ".
var faulty = []struct {
	old, new string
	says     []string
}{
	{`"14.80"`, "14.80", []string{`14.80 stands without quotation marks, which loses digits; write "14.80"`}},
	{`"14.80"`, "1e3", []string{`such as "14.80"`}},
	{`"14.80"`, "nan", []string{`such as "14.80"`}},
	{`"14.80"`, "-inf", []string{"-inf stands"}},
	{`"14.80"`, `"1e9999"`, []string{`"1e9999" is no plain number`}},
	{`"14.80"`, `"14,80"`, []string{`write "14.80"`}},
	{`"14.80"`, `" 14.80 "`, []string{`write "14.80"`}},
	{`"14.80"`, `".5"`, []string{`write "0.5"`}},
	{`"14.80"`, `"5."`, []string{`write "5"`}},
	{`"14.80"`, `"+5"`, []string{`write "5"`}},
	{`"14.80"`, `"1,234.50"`, []string{`such as "14.80"`}},
	{`"14.80"`, `""`, []string{"is no plain number"}},
	{`"14.80"`, `"١٤"`, []string{"is no plain number"}},
	{`"14.80"`, `"1234567890123"`, []string{"more than 12 digits"}},
	{`"14.80"`, `"1.1234567890123"`, []string{"more than 12 digits"}},
	{`"14.80"`, "1234567890123", []string{"more than 12 digits"}},
	{`"14.80"`, "true", []string{"true is true-or-false, not a number"}},
	{`"14.80"`, `["1"]`, []string{"it is a list, not a number"}},
	{`"14.80"`, "2027-01-01", []string{"2027-01-01 is a date or a time, not a number"}},
	{`"14.80"`, `"0.00"`, []string{"0.00 is not above 0; write a number above 0"}},
	{`"14.80"`, `"-3"`, []string{"-3 is not above 0"}},
	{`price = "14.80"`, "", []string{`is missing; write price = "14.80"`}},
	{`kind = "boxed"`, "kind = \"boxed\"\ndiscount_percent = \"100.1\"", []string{"100.1 is above 100; write a number from 0 to 100"}},
	{`length = "100"`, "length = \"100\"\nspoiled_percent = 100", []string{"100 is not below 100; write a number from 0 to below 100"}},
	{`kind = "boxed"`, "kind = \"boxed\"\nkeeps_months = 0", []string{"0 is not above 0"}},
	{"exposures = 36", `exposures = "36"`, []string{`"36" is text, not a whole number; write exposures = 36, without`}},
	{"exposures = 36", "exposures = 36.0", []string{"36.0 is no whole number"}},
	{"cassette_loads = 5", "cassette_loads = 0", []string{"0 is below 1; write a whole number of at least 1"}},
	{"cassette_loads = 5", "cassette_loads = 9000000000000", []string{"more than 12 digits"}},
	{`home = "EUR"`, "home = \"EUR\"\nmonths = 61", []string{"61 is above 60; write a whole number from 1 to 60"}},
	{"lasts_rolls = 200", "lasts_rolls = 200\nowned = \"yes\"", []string{`"yes" is text, not true or false; write owned = true or owned = false`}},
	{`name = "Lab"`, "name = 7", []string{`7 is a number, not text; write name = "7"`}},
	{`name = "Lab"`, `name = " "`, []string{"is empty; write name = "}},
	{`kind = "boxed"`, `kind = "box"`, []string{`"box" is none of the words for it; write kind = "reel" or "boxed"`}},
	{`kind = "boxed"`, "kind = \"boxed\"\nimport = \"ship\"", []string{`write import = "none", "border" or "prepaid"`}},
	{`price = "14.80"`, "price = {a = 1}", []string{"it is a table, not a number"}},
	{`"2027-01"`, `"2027-13"`, []string{`"2027-13" is no month; write first_month = "2027-01"`}},
	{`"2027-01"`, "2027", []string{"2027 is a number, not a month in quotation marks"}},
	{`first_month = "2027-01"`, "", []string{`is missing; write first_month = "2027-01"`}},
	{`equals = "0.8875"`, "equals = \"0.8875\"\ndate = \"2026-11-20\"", []string{"write date = 2026-11-20, without"}},
	{`equals = "0.8875"`, "equals = \"0.8875\"\ndate = 2026-11-20T10:00:00Z", []string{"is no date; write date = 2027-01-31"}},
	{`home = "EUR"`, `home = "eur"`, []string{`"eur" is no currency code; write "EUR"`}},
	{`currency = "USD"`, `currency = "DEM"`, []string{`"DEM" is no currency code in use today`}},
	{`currency = "USD"`, `currency = "CAD"`, []string{`no rate between CAD and EUR; add a [[scenario.rate]] with one = "CAD" and in = "EUR"`}},
	{`"0.8875"`, `"0"`, []string{"0 is not above 0"}},
	{`one = "USD"`, `one = "EUR"`, []string{`both sides are "EUR"`, "no rate between USD and EUR"}},
	{"  [scenario.shooting]", "  [[scenario.rate]]\n  one = \"EUR\"\n  equals = \"1.1\"\n  in = \"USD\"\n\n  [scenario.shooting]", []string{"USD and EUR have another rate, rate[2]; keep one of the two", "EUR and USD have another rate, rate[1]; keep one of the two"}},
	{`currency = "USD"`, `currency = "JPY"`, []string{"no rate between JPY and EUR"}},
	{"  [scenario.shooting]\n  rolls_per_month = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\", \"8\", \"9\", \"10\", \"11\", \"12.5\"]", "", []string{"is missing; write a [scenario.shooting] table with rolls_per_month"}},
	{`"1", "2", `, `"1", `, []string{"has 11 numbers, not 12; write 12 numbers"}},
	{`"2", "3"`, "\"2\",\n 3.5", []string{`write "3.5"`}},
	{`"2", "3"`, `"2", "1000.5"`, []string{"1000.5 is above 1000"}},
	{`price = "48.00"`, "price = \"48.00\"\nresale = \"48.01\"", []string{"48.01 is more than the price, 48.00; write at most the price"}},
	{`price = "48.00"`, "price = 48.00\nresale = \"1\"", []string{`write "48.00"`}},
	{"lasts_rolls = 200", "", []string{"is missing; write lasts_rolls = 200"}},
	{`price = "9.90"`, "", []string{"is missing"}},
	{`chemistry_price = "36"`, "", []string{"is missing"}},
	{"chemistry_rolls = 16", "", []string{"is missing; write chemistry_rolls = 16"}},
	{`name = "Lab"`, `name = "Kitchen"`, []string{`developing[2] is named "Kitchen" too; give each a name of its own`, `developing[1] is named "Kitchen" too`}},
	{`name = "Reel"`, `name = "Box"`, []string{`offer[1] is named "Box" too; give each a name of its own`}},
	{`baseline = "Box"`, `baseline = "Bx"`, []string{`no offer is named "Bx"; write the name of one of the offers, such as "Box"`}},
	{`baseline = "Box"`, "", []string{"is missing"}},
	{`developing = "Kitchen"`, `developing = "Kitchn"`, []string{`no way of developing is named "Kitchn"; write the name of a way of developing, such as "Lab"`}},
	{`kind = "boxed"`, `kind = "reel"`, []string{"is missing; write a [scenario.offer.reel] table", `does not belong in an offer of kind "reel"`}},
	{`length = "100"`, `length = "1"`, []string{"733.2 mm are missing"}},
	{"length = \"100\"\n    length_unit = \"ft\"", "length = \"1\"\n    length_unit = \"yd\"", []string{`"yd" is none of the words`}},
	{"  one = \"USD\"\n  equals = \"0.8875\"\n  in = \"EUR\"\n", "  equals = 1\n\n  [[scenario.rate]]\n  equals = 1\n", []string{"is missing", "is missing", "is missing", "is missing", "no rate between USD and EUR"}},
	{`length_unit = "ft"`, `length_unit = "in"`, []string{`write length_unit = "ft" or "m"`}},
	{"name = \"Harbour\"\nhome = \"EUR\"", "home = 4.5", []string{"is missing", `4.5 is a number, not text; write home = "EUR"`}},
	{"schema = 1", "", []string{"is missing; write schema = 1 as the first line"}},
	{"schema = 1", `schema = "1"`, []string{"is no version"}},
	{"schema = 1", "schema = 2", []string{"schema 2, newer than this program, which reads up to 1"}},
	{`home = "EUR"`, "home = \"EUR\"\nhome = \"USD\"", []string{"keep one of the two"}},
	{`name = "Lab"`, `name = "Lab`, []string{"strings cannot contain newlines; end the text"}},
	{`name = "Lab"`, "name =", []string{"write a value after the equals sign"}},
	{"[scenario.border]", "[[scenario.border]]", []string{"is no table; write [scenario.border]"}},
	{"[[scenario.rate]]", "[scenario.rate]", []string{"is no list of tables", "no rate between USD and EUR"}},
}

func TestFaultsAreSaidInWords(t *testing.T) {
	small, err := os.ReadFile("../scenario/testdata/small.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range faulty {
		if !strings.Contains(string(small), c.old) {
			t.Fatalf("the file has no %q", c.old)
		}
		_, faults := scenario.Read([]byte(strings.Replace(string(small), c.old, c.new, 1)))
		if len(faults) != len(c.says) {
			t.Errorf("%q: %d faults, want %d: %v", c.new, len(faults), len(c.says), faults)
			continue
		}
		for i, f := range faults {
			if line := FaultLine("file", f); !strings.Contains(line, ": "+f.Path+": ") || !strings.Contains(line, c.says[i]) {
				t.Errorf("%s\nwant %s", line, c.says[i])
			}
		}
	}
}

// Every code has its sentence, with a remedy.
func TestEveryFaultHasWords(t *testing.T) {
	for _, code := range scenario.Codes() {
		s := sayingOf(&scenario.Fault{Code: code, Args: scenario.Args{Rule: &scenario.Rule{}}})
		if s.wrong == "" || s.wrong == string(code) || s.remedy == "" {
			t.Errorf("%s: %+v", code, s)
		}
	}
	if len(sayings) != len(scenario.Codes()) {
		t.Errorf("%d sentences for %d codes", len(sayings), len(scenario.Codes()))
	}
}

// What a file says is cut short and made printable before it stands in a sentence.
func TestAFaultIsOneShortLine(t *testing.T) {
	long := strings.Repeat("x\n\x1b\u202e", 5000)
	line := FaultLine("file", scenario.Fault{Code: scenario.NotNumber, Path: long, Several: true, Scenario: long, Args: scenario.Args{Got: long}})
	if len(line) > 1000 || strings.ContainsAny(line, "\n\x1b\u202e") {
		t.Errorf("%.1200q", line)
	}
}

// A name with quotation marks in it stands in the sentence as it is.
func TestAFaultNamesItsScenario(t *testing.T) {
	for name, want := range map[string]string{
		`The "good" year`: `f:7: offer[1].price: in "The "good" year": is missing; write price = "1"`,
		"":                `f:7: offer[1].price: in scenario 3: is missing; write price = "1"`,
	} {
		f := scenario.Fault{Code: scenario.Missing, Path: "offer[1].price", Place: scenario.Place{Scenario: 2}, Line: 7,
			Several: true, Scenario: name, Args: scenario.Args{Example: `price = "1"`}}
		same(t, "line", FaultLine("f", f), want)
	}
}

// Of thousands of faults a hundred are told, and the others counted.
func TestTheFirstHundredFaultsAreTold(t *testing.T) {
	faults := func(n int) []scenario.Fault {
		list := make([]scenario.Fault, n)
		for i := range list {
			list[i] = scenario.Fault{Code: scenario.Missing, Path: "name", Line: i + 1}
		}
		return list
	}
	for n, last := range map[int]string{
		1: "f:1: name: is missing; write ", 100: "f:100: name: is missing; write ", 101: "f: and one more fault", 5000: "f: and 4900 more faults",
	} {
		lines := FaultLines("f", faults(n))
		if len(lines) != min(n, 101) || lines[len(lines)-1] != last {
			t.Errorf("%d faults make %d lines, the last %q", n, len(lines), lines[len(lines)-1])
		}
	}
	flood := append(faults(5000), scenario.Fault{Code: scenario.MoreFaults, Args: scenario.Args{Have: 70000, Most: 5000}})
	if _, more := TellFaults(flood); more != 69900 {
		t.Errorf("%d more", more)
	}
}
