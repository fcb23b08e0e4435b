package scenario

import (
	_ "embed"
	"fmt"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
)

// small is a file without a fault that uses every table.
//
//go:embed testdata/small.toml
var small string

// want is one fault: the line is the one that holds At in the edited text, or the
// line itself where At starts with ":".
type want struct {
	At, Path string
	Part     Part
	Index    int
	Code     Code
}

// edit is one change to the small file and the faults it leads to. The faults must
// be exactly these, in this order.
type edit struct {
	name, old, new string
	want           []want
}

var edits = []edit{
	{"nothing wrong", "", "", nil},
	// numbers
	{"a float for a price", `"14.80"`, `14.80`, []want{{"price = 14.80", "offer[1].price", PartOffer, 0, Unquoted}}},
	{"a float with an exponent", `"14.80"`, `1e3`, []want{{"price = 1e3", "offer[1].price", PartOffer, 0, Unquoted}}},
	{"not a number at all", `"14.80"`, `nan`, []want{{"price = nan", "offer[1].price", PartOffer, 0, Unquoted}}},
	{"infinity", `"14.80"`, `-inf`, []want{{"price = -inf", "offer[1].price", PartOffer, 0, Unquoted}}},
	{"an exponent in text", `"14.80"`, `"1e9999"`, []want{{"1e9999", "offer[1].price", PartOffer, 0, NotNumber}}},
	{"a decimal comma", `"14.80"`, `"14,80"`, []want{{"14,80", "offer[1].price", PartOffer, 0, NotNumber}}},
	{"spaces around", `"14.80"`, `" 14.80 "`, []want{{" 14.80 ", "offer[1].price", PartOffer, 0, NotNumber}}},
	{"a bare point", `"14.80"`, `".5"`, []want{{`".5"`, "offer[1].price", PartOffer, 0, NotNumber}}},
	{"a point at the end", `"14.80"`, `"5."`, []want{{`"5."`, "offer[1].price", PartOffer, 0, NotNumber}}},
	{"a plus sign", `"14.80"`, `"+5"`, []want{{`"+5"`, "offer[1].price", PartOffer, 0, NotNumber}}},
	{"grouping", `"14.80"`, `"1,234.50"`, []want{{"1,234.50", "offer[1].price", PartOffer, 0, NotNumber}}},
	{"an empty number", `"14.80"`, `""`, []want{{`price = ""`, "offer[1].price", PartOffer, 0, NotNumber}}},
	{"other digits", `"14.80"`, `"١٤"`, []want{{"١٤", "offer[1].price", PartOffer, 0, NotNumber}}},
	{"thirteen digits before the point", `"14.80"`, `"1234567890123"`, []want{{"1234567890123", "offer[1].price", PartOffer, 0, TooLong}}},
	{"thirteen digits after the point", `"14.80"`, `"1.1234567890123"`, []want{{"1.1234567890123", "offer[1].price", PartOffer, 0, TooLong}}},
	{"twelve digits on both sides", `"14.80"`, `"123456789012.123456789012"`, nil},
	{"four hundred digits", `"14.80"`, `"` + strings.Repeat("7", 400) + `"`, []want{{"777", "offer[1].price", PartOffer, 0, TooLong}}},
	{"a whole number of thirteen digits", `"14.80"`, `1234567890123`, []want{{"1234567890123", "offer[1].price", PartOffer, 0, TooLong}}},
	{"a whole number", `"14.80"`, `15`, nil},
	{"a truth value for a number", `"14.80"`, `true`, []want{{"price = true", "offer[1].price", PartOffer, 0, WrongKind}}},
	{"a list for a number", `"14.80"`, `["1"]`, []want{{`price = ["1"]`, "offer[1].price", PartOffer, 0, WrongKind}}},
	{"a date for a number", `"14.80"`, `2027-01-01`, []want{{`price = 2027`, "offer[1].price", PartOffer, 0, WrongKind}}},
	{"a price of nothing", `"14.80"`, `"0.00"`, []want{{`"0.00"`, "offer[1].price", PartOffer, 0, NotAbove}}},
	{"a negative price", `"14.80"`, `"-3"`, []want{{`"-3"`, "offer[1].price", PartOffer, 0, NotAbove}}},
	{"no price", `price = "14.80"`, ``, []want{{":39", "offer[1].price", PartOffer, 0, Missing}}},
	{"a discount above all", `kind = "boxed"`, "kind = \"boxed\"\ndiscount_percent = \"100.1\"", []want{{"100.1", "offer[1].discount_percent", PartOffer, 0, AboveMax}}},
	{"a falling price", `kind = "boxed"`, "kind = \"boxed\"\nprice_rise_percent = \"-5\"", nil},
	{"everything spoiled", `length = "100"`, "length = \"100\"\nspoiled_percent = 100", []want{{"spoiled_percent", "offer[2].reel.spoiled_percent", PartOffer, 1, NotBelow}}},
	{"keeps for no time", `kind = "boxed"`, "kind = \"boxed\"\nkeeps_months = 0", []want{{"keeps_months", "offer[1].keeps_months", PartOffer, 0, NotAbove}}},
	// whole numbers, truth values, text
	{"text for a whole number", `exposures = 36`, `exposures = "36"`, []want{{`exposures = "36"`, "offer[1].boxed.exposures", PartOffer, 0, WrongKind}}},
	{"a float for a whole number", `exposures = 36`, `exposures = 36.0`, []want{{`36.0`, "offer[1].boxed.exposures", PartOffer, 0, WrongKind}}},
	{"a whole number too low", `cassette_loads = 5`, `cassette_loads = 0`, []want{{`cassette_loads`, "loading.cassette_loads", PartLoading, 0, BelowMin}}},
	{"a whole number too long", `cassette_loads = 5`, `cassette_loads = 9000000000000`, []want{{`cassette_loads`, "loading.cassette_loads", PartLoading, 0, TooLong}}},
	{"too many months", `home = "EUR"`, "home = \"EUR\"\nmonths = 61", []want{{"months = 61", "months", PartWhole, 0, AboveMax}}},
	{"text for a truth value", `lasts_rolls = 200`, "lasts_rolls = 200\nowned = \"yes\"", []want{{"owned", "loading.equipment[1].owned", PartLoading, 0, WrongKind}}},
	{"a number for text", `name = "Lab"`, `name = 7`, []want{{"name = 7", "developing[1].name", PartDeveloping, 0, WrongKind}}},
	{"an empty name", `name = "Lab"`, `name = " "`, []want{{`name = " "`, "developing[1].name", PartDeveloping, 0, Empty}}},
	{"a word that is none", `kind = "boxed"`, `kind = "box"`, []want{{`kind = "box"`, "offer[1].kind", PartOffer, 0, NotAmong}}},
	{"an unknown import", `kind = "boxed"`, "kind = \"boxed\"\nimport = \"ship\"", []want{{"ship", "offer[1].import", PartOffer, 0, NotAmong}}},
	{"a table for a price", `price = "14.80"`, `price = {a = 1}`, []want{{"{a = 1}", "offer[1].price", PartOffer, 0, WrongKind}}},
	{"text for a table", `  [scenario.border]
  duty_percent = "4.2"`, ``, nil},
	// dates
	{"a month out of the year", `"2027-01"`, `"2027-13"`, []want{{"2027-13", "first_month", PartWhole, 0, NotMonth}}},
	{"a month without quotation marks", `"2027-01"`, `2027`, []want{{"= 2027", "first_month", PartWhole, 0, WrongKind}}},
	{"no first month", `first_month = "2027-01"`, ``, []want{{":3", "first_month", PartWhole, 0, Missing}}},
	{"a date", `equals = "0.8875"`, "equals = \"0.8875\"\ndate = 2026-11-20", nil},
	{"a date as text", `equals = "0.8875"`, "equals = \"0.8875\"\ndate = \"2026-11-20\"", []want{{"date", "rate[1].date", PartRate, 0, WrongKind}}},
	{"a date with a time", `equals = "0.8875"`, "equals = \"0.8875\"\ndate = 2026-11-20T10:00:00Z", []want{{"date", "rate[1].date", PartRate, 0, NotDate}}},
	// currencies and rates
	{"a small-letter currency", `home = "EUR"`, `home = "eur"`, []want{{`"eur"`, "home", PartWhole, 0, CurrencyCase}}},
	{"a currency of the past", `currency = "USD"`, `currency = "DEM"`, []want{{`"DEM"`, "offer[2].currency", PartOffer, 1, NoCurrency}}},
	{"no rate for an offer", `currency = "USD"`, `currency = "CAD"`, []want{{`"CAD"`, "offer[2].currency", PartOffer, 1, NoRate}}},
	{"a rate of nothing", `"0.8875"`, `"0"`, []want{{`equals = "0"`, "rate[1].equals", PartRate, 0, NotAbove}}},
	{"both sides of a rate equal", `one = "USD"`, `one = "EUR"`, []want{
		{`in = "EUR"`, "rate[1].in", PartRate, 0, SameCurrencies},
		{`currency = "USD"`, "offer[2].currency", PartOffer, 1, NoRate}}},
	{"a pair quoted twice", `  [scenario.shooting]`, "  [[scenario.rate]]\n  one = \"EUR\"\n  equals = \"1.1\"\n  in = \"USD\"\n\n  [scenario.shooting]", []want{
		{":9", "rate[1]", PartRate, 0, TwoRates},
		{":14", "rate[2]", PartRate, 1, TwoRates}}},
	{"a way through a third currency", `currency = "USD"`, "currency = \"JPY\"", []want{{`"JPY"`, "offer[2].currency", PartOffer, 1, NoRate}}},
	// shooting
	{"no shooting", `  [scenario.shooting]
  rolls_per_month = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12.5"]`, ``, []want{{":3", "shooting", PartWhole, 0, MissingTable}}},
	{"eleven months", `"1", "2", `, `"1", `, []want{{"rolls_per_month", "shooting.rolls_per_month", PartWhole, 0, WrongCount}}},
	{"one month wrong", `"2", "3"`, "\"2\",\n 3.5", []want{{" 3.5", "shooting.rolls_per_month[3]", PartWhole, 0, Unquoted}}},
	{"a month too busy", `"2", "3"`, `"2", "1000.5"`, []want{{"1000.5", "shooting.rolls_per_month[3]", PartWhole, 0, AboveMax}}},
	// equipment and developing
	{"resale above the price", `price = "48.00"`, "price = \"48.00\"\nresale = \"48.01\"", []want{{"resale", "loading.equipment[1].resale", PartLoading, 0, AbovePrice}}},
	{"resale against a price that cannot be read", `price = "48.00"`, "price = 48.00\nresale = \"1\"", []want{{"price = 48.00", "loading.equipment[1].price", PartLoading, 0, Unquoted}}},
	{"equipment without a life", `lasts_rolls = 200`, ``, []want{{":23", "loading.equipment[1].lasts_rolls", PartLoading, 0, Missing}}},
	{"a lab without a price", `price = "9.90"`, ``, []want{{":28", "developing[1].price", PartDeveloping, 0, Missing}}},
	{"a lab for nothing", `price = "9.90"`, `price = "0"`, nil},
	{"home without chemistry's price", `chemistry_price = "36"`, ``, []want{{":33", "developing[2].chemistry_price", PartDeveloping, 1, Missing}}},
	{"home without chemistry's rolls", `chemistry_rolls = 16`, ``, []want{{":33", "developing[2].chemistry_rolls", PartDeveloping, 1, Missing}}},
	{"two processes of one name", `name = "Lab"`, `name = "Kitchen"`, []want{
		{":29", "developing[1].name", PartDeveloping, 0, NameTaken},
		{":34", "developing[2].name", PartDeveloping, 1, NameTaken}}},
	// offers
	{"two offers of one name", `name = "Reel"`, `name = "Box"`, []want{{":49", "offer[2].name", PartOffer, 1, NameTaken}}},
	{"the baseline is no offer", `baseline = "Box"`, `baseline = "Bx"`, []want{{"baseline", "baseline", PartBaseline, 0, NoBaseline}}},
	{"no baseline", `baseline = "Box"`, ``, []want{{":3", "baseline", PartBaseline, 0, Missing}}},
	{"a process that is none", `developing = "Kitchen"`, `developing = "Kitchn"`, []want{{"Kitchn", "offer[2].developing", PartOffer, 1, NoProcess}}},
	{"a table of the other kind", `kind = "boxed"`, `kind = "reel"`, []want{
		{":39", "offer[1].reel", PartOffer, 0, MissingTable},
		{"[scenario.offer.boxed]", "offer[1].boxed", PartOffer, 0, WrongTable}}},
	{"a reel that gives no roll", `length = "100"`, `length = "1"`, []want{{`length = "1"`, "offer[2].reel.length", PartOffer, 1, NoRoll}}},
	{"a short reel by an unknown unit", "length = \"100\"\n    length_unit = \"ft\"", "length = \"1\"\n    length_unit = \"yd\"", []want{{`"yd"`, "offer[2].reel.length_unit", PartOffer, 1, NotAmong}}},
	{"two rates without currencies", "  one = \"USD\"\n  equals = \"0.8875\"\n  in = \"EUR\"\n", "  equals = 1\n\n  [[scenario.rate]]\n  equals = 1\n", []want{
		{":9", "rate[1].one", PartRate, 0, Missing}, {":9", "rate[1].in", PartRate, 0, Missing},
		{":12", "rate[2].one", PartRate, 1, Missing}, {":12", "rate[2].in", PartRate, 1, Missing},
		{`currency = "USD"`, "offer[2].currency", PartOffer, 1, NoRate}}},
	{"a reel by an unknown unit", `length_unit = "ft"`, `length_unit = "in"`, []want{{`"in"`, "offer[2].reel.length_unit", PartOffer, 1, NotAmong}}},
	// several at once, in the order of the file
	{"several faults", "name = \"Harbour\"\nhome = \"EUR\"", "home = 4.5", []want{
		{":3", "name", PartWhole, 0, Missing},
		{"home = 4.5", "home", PartWhole, 0, WrongKind}}},
	// the file itself
	{"no schema", `schema = 1`, ``, []want{{":1", "schema", PartFile, 0, NoSchema}}},
	{"a schema that is none", `schema = 1`, `schema = "1"`, []want{{":1", "schema", PartFile, 0, WrongSchema}}},
	{"a newer schema", `schema = 1`, `schema = 2`, []want{{":1", "schema", PartFile, 0, NewerSchema}}},
	{"a key twice", `home = "EUR"`, "home = \"EUR\"\nhome = \"USD\"", []want{{`home = "USD"`, "scenario.home", PartFile, 0, NotTOMLTwice}}},
	{"an open quotation mark", `name = "Lab"`, `name = "Lab`, []want{{`name = "Lab`, "scenario.developing.name", PartFile, 0, NotTOMLLine}}},
	{"a key without a value", `name = "Lab"`, `name =`, []want{{"name =\n", "scenario.developing.name", PartFile, 0, NotTOMLNoValue}}},
	{"a list where a table belongs", "[scenario.border]", "[[scenario.border]]", []want{{"[[scenario.border]]", "border", PartWhole, 0, NotTable}}},
	{"a table where a list belongs", "[[scenario.rate]]", "[scenario.rate]", []want{
		{":9", "rate", PartWhole, 0, NotTables},
		{`currency = "USD"`, "offer[2].currency", PartOffer, 1, NoRate}}},
}

func (e edit) text(t testing.TB) string {
	if !strings.Contains(small, e.old) {
		t.Fatalf("%s: the file has no %q", e.name, e.old)
	}
	return strings.Replace(small, e.old, e.new, 1)
}

func TestFaults(t *testing.T) {
	for _, e := range edits {
		t.Run(e.name, func(t *testing.T) {
			text := e.text(t)
			_, faults := Read([]byte(text))
			for i, f := range faults {
				if i >= len(e.want) {
					t.Errorf("not wanted: %s", f.Error())
					continue
				}
				w := e.want[i]
				if line := lineOf(text, w.At); f.Line != line {
					t.Errorf("line %d, want %d: %s", f.Line, line, f.Error())
				}
				where := Place{w.Part, 0, w.Index}
				if w.Part == PartFile {
					where.Scenario = -1
				}
				if f.Path != w.Path || f.Place != where || f.Code != w.Code {
					t.Errorf("%s (%v)\nwant %s: %s (%v)", f.Error(), f.Place, w.Path, w.Code, where)
				}
			}
			if len(faults) < len(e.want) {
				t.Errorf("%d faults, want %d: %v", len(faults), len(e.want), faults)
			}
		})
	}
}

func lineOf(text, at string) (line int) {
	if _, err := fmt.Sscanf(at, ":%d", &line); err == nil {
		return line
	}
	return 1 + strings.Count(text[:strings.Index(text, at)], "\n")
}

func TestTheDemoReadsAsTyped(t *testing.T) {
	f := Demo()
	if len(f.Scenarios) != 1 {
		t.Fatal(f)
	}
	if r := Inspect(demo); len(r.Faults)+len(r.Notices) > 0 {
		t.Error(r.Faults, r.Notices)
	}
	s := f.Scenarios[0]
	reel := s.Offers[2]
	for _, c := range []struct{ what, got, want string }{
		{"home", s.Home, "EUR"},
		{"first month", s.FirstMonth.String(), "2027-01"},
		{"months", fmt.Sprint(s.Months), "12"},
		{"date", s.Rates[1].Date.String(), "2026-11-20"},
		{"rate", Spell(s.Rates[1].Equals), "163.36"},
		{"july", Spell(s.Shooting.RollsPerMonth[6]), "6"},
		{"duty on shipping", fmt.Sprint(s.Border.DutyOnShipping), "true"},
		{"resale", Spell(s.Loading.Equipment[0].Resale), "25.00"},
		{"way", string(s.Developing[1].Way), "home"},
		{"keeps", fmt.Sprint(s.Developing[1].ChemistryKeepsMonth), "3"},
		{"price", Spell(reel.Price), "118.00"},
		{"free shipping", fmt.Sprint(reel.FreeShippingFrom.Set), "false"},
		{"import", string(reel.Import), "border"},
		{"pitch", string(reel.Reel.Pitch), "short"},
		{"short roll", fmt.Sprint(reel.Reel.ShortRollFrom), "12"},
		{"remjet", fmt.Sprint(reel.Reel.Remjet), "true"},
		{"boxed", fmt.Sprint(reel.Boxed == nil, s.Offers[1].Boxed.RollsPerPack), "true 5"},
	} {
		if c.got != c.want {
			t.Errorf("%s: %s, want %s", c.what, c.got, c.want)
		}
	}
}

// The defaults as the file format lists them.
func TestMissingFieldsTakeTheirDefaults(t *testing.T) {
	f, faults := Read([]byte(small))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	s := f.Scenarios[0]
	o, reel, boxed := s.Offers[1], s.Offers[1].Reel, s.Offers[0].Boxed
	got := fmt.Sprint(s.Months, s.RollExposures, s.Border.DutyOnShipping, s.Border.TaxOnShipping, s.Border.HandlingFee,
		s.Loading.CassettePack, s.Loading.CassettesOwned, s.Loading.Equipment[0].Resale, s.Loading.Equipment[0].Owned,
		o.Units, o.OnHand, o.SalesTaxOnShipping, o.KeepsMonths.Set, o.FreeShippingFrom.Set, o.Import == ImportUndecided,
		reel.Pitch, reel.LeaderMM, reel.TrailerMM, reel.FoggedMM, reel.StartWasteMM, reel.EndWasteMM,
		reel.TestExposures, reel.ShortRollFrom, reel.SpoiledPercent, reel.Remjet, boxed.RollsPerPack)
	if want := "12 36 true true 0 1 0 0 false 1 0 false false false truelong160 72 50 100 200 0 12 0 false 1"; got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	if d := Defaults[Reel](); !d.LeaderMM.Equal(decimal.New(160, 0)) || d.Pitch != LongPitch {
		t.Error(d)
	}
}

func TestFaultsOfSeveralScenariosNameTheirs(t *testing.T) {
	one := small[strings.Index(small, "[[scenario]]"):]
	second := strings.Replace(strings.Replace(one, "Harbour", "Market", 1), `"14.80"`, `14.80`, 1)
	third := strings.Replace(one, `name = "Harbour"`, ``, 1)
	fourth := one
	_, faults := Read([]byte(small + second + third + fourth))
	var got []string
	for _, f := range faults {
		got = append(got, fmt.Sprintf("%d %s %t %q %s", f.Place.Scenario, f.Path, f.Several, f.Scenario, f.Code))
	}
	want := []string{`1 offer[1].price true "Market" unquoted`, `2 name true "" missing`, `3 name true "Harbour" name-taken`}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
}

func TestLimits(t *testing.T) {
	offer := "\n[[scenario.offer]]\nname = \"Box %d\"\nkind = \"boxed\"\ncurrency = \"EUR\"\nprice = 1\nboxed.exposures = 36\n"
	rate := "\n[[scenario.rate]]\none = \"%s\"\nequals = 2\nin = \"EUR\"\n"
	build := func(offers, rates int) string {
		text := small
		for i := range offers - 2 {
			text += fmt.Sprintf(offer, i)
		}
		for i := range rates - 1 {
			text += fmt.Sprintf(rate, codesBut("EUR", "USD")[i])
		}
		return text
	}
	if _, faults := Read([]byte(build(50, 60))); len(faults) > 0 {
		t.Error(faults)
	}
	f, faults := Read([]byte(build(51, 61)))
	if len(faults) != 2 || faults[0].Path != "offer[51]" || faults[1].Path != "rate[61]" || faults[0].Place.Part != PartWhole || faults[1].Place.Part != PartWhole {
		t.Error(faults)
	}
	if s := f.Scenarios[0]; len(s.Offers) != 50 || len(s.Rates) != 60 {
		t.Error(len(s.Offers), len(s.Rates))
	}
	if faults := Check(Scenario{Offers: make([]Offer, 51)}); faults[0].Path != "offer[51]" {
		t.Error(faults[0])
	}
	many := "schema = 1\n" + strings.Repeat("[[scenario]]\n", 5001)
	if f, faults := Read([]byte(many)); len(f.Scenarios) != 5000 || faults[5000].Code != MoreFaults {
		t.Error(len(f.Scenarios), len(faults))
	}
	_, faults = Read(manyScenarios(5001))
	if len(faults) != 1 || !strings.Contains(string(faults[0].Code), string(FileTooLarge)) {
		t.Error(faults)
	}
}

func TestMarksOfOtherSystemsAreRead(t *testing.T) {
	want, _ := Read([]byte(small))
	for _, text := range []string{"\ufeff" + small, strings.ReplaceAll(small, "\n", "\r\n"), "\ufeff" + strings.ReplaceAll(small, "\n", "\r\n")} {
		f, faults := Read([]byte(text))
		if d := same(reflect.ValueOf(want), reflect.ValueOf(f), "file"); len(faults) > 0 || d != "" {
			t.Error(faults, d)
		}
		_, faults = Read([]byte(strings.Replace(text, `"118.00"`, `118.00`, 1)))
		if len(faults) != 1 || faults[0].Line != 52 {
			t.Error(faults)
		}
	}
}

func TestUnknownKeysAreNoFaultButNamed(t *testing.T) {
	text := strings.Replace(small, `price = "14.80"`, "price = \"14.80\"\n  discount_percnt = \"5\"\n  colour = { paper = [1, 2] }", 1)
	text = strings.Replace(text, "schema = 1", "schema = 1\nbook = 14.80", 1) + "[scenario.weather]\nrain = true\n"
	r := Inspect([]byte(text))
	if len(r.Faults) > 0 {
		t.Fatal(r.Faults)
	}
	var got []string
	for _, n := range r.Notices {
		got = append(got, fmt.Sprintf("%d %d %s %s", n.Line, n.Scenario, n.Path, n.Near))
	}
	want := []string{"2 -1 book ", "45 0 scenario[1].offer[1].discount_percnt discount_percent", "46 0 scenario[1].offer[1].colour ", "62 0 scenario[1].weather "}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
	if got := strings.Join(Unknown(r.File), " "); got != "book scenario[1].weather scenario[1].offer[1].colour scenario[1].offer[1].discount_percnt" {
		t.Error(got)
	}
	out := string(Write(r.File))
	for _, kept := range []string{"\nbook = 14.80\n", "\n  colour = {paper = [1, 2]}\n", "\n  discount_percnt = \"5\"\n", "\nweather = {rain = true}\n"} {
		if !strings.Contains(out, kept) {
			t.Errorf("%q is not in\n%s", kept, out)
		}
	}
	again := Inspect([]byte(out))
	if len(again.Faults) > 0 || fmt.Sprint(Unknown(again.File)) != fmt.Sprint(Unknown(r.File)) || again.File.Extra["book"] != Verbatim("14.80") {
		t.Error(again.Faults, again.File.Extra)
	}
}

func TestATableAfterTheScenariosIsKept(t *testing.T) {
	for _, tail := range []string{"[weather]\nrain = true\n", "[[weather]]\nrain = true\n"} {
		r := Inspect([]byte(small + tail))
		if len(r.Faults) > 0 || fmt.Sprint(Unknown(r.File)) != "[weather]" || r.Notices[0].Line != 59 {
			t.Error(tail, r.Faults, r.Notices)
		}
		if out := string(Write(r.File)); !strings.Contains(out, "rain = true") {
			t.Error(out)
		}
	}
}

func TestTheSampleOfSchema1Reads(t *testing.T) {
	data, err := os.ReadFile("testdata/schema1.toml")
	if err != nil {
		t.Fatal(err)
	}
	f, faults := Read(data)
	if len(faults) > 0 || f.Schema != Schema || len(f.Scenarios) != 1 || len(f.Scenarios[0].Offers) != 3 {
		t.Error(faults, f)
	}
}

func TestMigrationGoesStepByStep(t *testing.T) {
	doc := map[string]any{"schema": int64(1), "a": "x"}
	migrate(doc, 1, map[int]func(map[string]any){
		1: func(d map[string]any) { d["b"] = d["a"].(string) + "y"; delete(d, "a") },
		2: func(d map[string]any) { d["c"] = d["b"].(string) + "z"; delete(d, "b") },
	})
	if fmt.Sprint(doc) != "map[c:xyz schema:3]" {
		t.Error(doc)
	}
}

func codesBut(not ...string) []string {
	var list []string
	for _, c := range money.Codes() {
		if !strings.Contains(strings.Join(not, " "), c) {
			list = append(list, c)
		}
	}
	return list
}
