package library

import (
	"fmt"
	"reflect"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

func TestDifferencesAreToldInWords(t *testing.T) {
	number := decimal.RequireFromString
	const reel = "Lanternlight 500, 100 ft reel"
	for name, c := range map[string]struct {
		change func(s *scenario.Scenario)
		says   []string
	}{
		"nothing":          {func(*scenario.Scenario) {}, nil},
		"a price":          {func(s *scenario.Scenario) { s.Offers[2].Price = number("119.00") }, []string{"price of " + reel + ": 118.00 → 119.00"}},
		"only its places":  {func(s *scenario.Scenario) { s.Offers[2].Price = number("118") }, []string{"price of " + reel + ": 118.00 → 118"}},
		"two things":       {func(s *scenario.Scenario) { s.Offers[0].Units = 3; s.Border.TaxPercent = number("25") }, []string{"tax in %: 23 → 25", "units per order of Marigold 400, shop roll: 1 → 3"}},
		"inside the reel":  {func(s *scenario.Scenario) { s.Offers[2].Reel.LeaderMM = number("150") }, []string{"leader in mm of " + reel + ": 160 → 150"}},
		"a truth":          {func(s *scenario.Scenario) { s.Border.TaxOnShipping = false }, []string{"tax on shipping: yes → no"}},
		"set":              {func(s *scenario.Scenario) { s.Offers[0].KeepsMonths = scenario.Maybe{Decimal: number("12"), Set: true} }, []string{"months it keeps of Marigold 400, shop roll: nothing → 12"}},
		"a month's rolls":  {func(s *scenario.Scenario) { s.Shooting.RollsPerMonth[2] = number("9") }, []string{"rolls per month, no. 3: 3 → 9"}},
		"the whole year":   {func(s *scenario.Scenario) { s.Shooting.RollsPerMonth = [12]scenario.Decimal{} }, []string{"rolls per month: 12 of 12 numbers are others"}},
		"a rate":           {func(s *scenario.Scenario) { s.Rates[0].Equals = number("0.9") }, []string{"rate of USD, EUR: 0.8875 → 0.9"}},
		"a date":           {func(s *scenario.Scenario) { s.Rates[0].Date.Day = 21 }, []string{"date of the rate of USD, EUR: 2026-11-20 → 2026-11-21"}},
		"the first month":  {func(s *scenario.Scenario) { s.FirstMonth.Month = 2 }, []string{"first month: 2027-01 → 2027-02"}},
		"the note":         {func(s *scenario.Scenario) { s.Note = "" }, []string{"note: Evening walks in colour: shop rolls or a cinema reel from ov… → nothing"}},
		"a long note":      {func(s *scenario.Scenario) { s.Note += " And back." }, []string{"note: … overseas? → … overseas? And back."}},
		"a way to buy":     {func(s *scenario.Scenario) { s.Offers = append(s.Offers, scenario.NewOffer(s, scenario.KindBoxed)) }, []string{"a way to buy was added: New boxed film"}},
		"one less":         {func(s *scenario.Scenario) { s.Offers = s.Offers[1:] }, []string{"a way to buy was taken away: Marigold 400, shop roll"}},
		"another name":     {func(s *scenario.Scenario) { s.Offers[1].Name = "Five by post" }, []string{"name of Five by post: Marigold 400, pack of 5 by post → Five by post"}},
		"name and less":    {func(s *scenario.Scenario) { s.Offers = s.Offers[1:]; s.Offers[1].Name = "Reel" }, []string{"a way to buy was taken away: Marigold 400, shop roll", "name of Reel: " + reel + " → Reel"}},
		"order":            {func(s *scenario.Scenario) { s.Offers[0], s.Offers[1] = s.Offers[1], s.Offers[0] }, []string{"the order of the ways to buy is another"}},
		"nested equipment": {func(s *scenario.Scenario) { s.Developing[1].Equipment = nil }, []string{"a piece of equipment was taken away of At home, with a remjet bath: Tank and measures"}},
		"the reel itself":  {func(s *scenario.Scenario) { s.Offers[2].Reel = nil }, []string{"reel of " + reel + ": removed"}},
		"an unknown key":   {func(s *scenario.Scenario) { s.Offers[2].Extra = scenario.Extra{"colour": "warm"} }, []string{"unknown key colour of " + reel + ": nothing → warm"}},
		"the same name twice": {func(s *scenario.Scenario) { s.Offers = append(s.Offers, s.Offers[0]) },
			[]string{"a way to buy was added: Marigold 400, shop roll"}},
	} {
		t.Run(name, func(t *testing.T) {
			from, to := scenario.Demo(), scenario.Demo()
			c.change(&to.Scenarios[0])
			got := Differences(from, to)
			for i, says := range c.says {
				c.says[i] = "Quayside year, colour: " + says
			}
			if !reflect.DeepEqual(got, c.says) {
				t.Errorf("\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.says, "\n"))
			}
		})
	}
}

func TestDifferencesOfWholeScenarios(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	second := scenario.Demo().Scenarios[0]
	second.Name = "Harbour"
	second.Offers = second.Offers[:1]
	second.Rates, second.Developing, second.Note, second.Home = nil, nil, "another", "JPY"
	to.Scenarios = append(to.Scenarios, second)
	check := func(from, to scenario.File, want string) {
		t.Helper()
		if got := strings.Join(Differences(from, to), "\n"); got != want {
			t.Errorf("%s\nwant %s", got, want)
		}
	}
	check(from, to, "a scenario was added: Harbour")
	check(to, from, "a scenario was taken away: Harbour")
	check(from, titled("Winter"), "Winter: name: Quayside year, colour → Winter")
	check(scenario.File{}, from, "a scenario was added: Quayside year, colour")
}

func TestDifferencesAreFewAndShort(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	for i := range 45 {
		o := scenario.NewOffer(&to.Scenarios[0], scenario.KindReel)
		o.Name = fmt.Sprint(i, strings.Repeat(" very\n\x00long\xff", 5000))
		to.Scenarios[0].Offers = append(to.Scenarios[0].Offers, o)
	}
	got := Differences(from, to)
	if len(got) != MostDifferences+1 || got[MostDifferences] != "… and 25 more" {
		t.Fatal(len(got), got[len(got)-1])
	}
	for _, g := range got {
		if utf8.RuneCountInString(g) > 200 || strings.ContainsAny(g, "\n\x00") || !utf8.ValidString(g) {
			t.Errorf("%q", g)
		}
	}
}

// Every field that the file format has is compared: each is changed alone, and told.
func TestEveryFieldIsCompared(t *testing.T) {
	told := 0
	for _, f := range scenario.Fields() {
		if f.Table == "" {
			continue // the version of the file format
		}
		from, to := everyTable(), everyTable()
		table := reflect.ValueOf(&to).Elem()
		for _, key := range strings.Split(f.Table, ".") {
			table = keyed(t, table, key)
			switch table.Kind() {
			case reflect.Slice:
				table = table.Index(0)
			case reflect.Pointer:
				table = table.Elem()
			}
		}
		alter(t, keyed(t, table, f.Key))
		// What has no name is another thing when its first words are others.
		got := Differences(from, to)
		if len(got) == 0 || len(got) > 2 {
			t.Errorf("%s.%s: %q", f.Table, f.Key, got)
		}
		told++
	}
	if told < 70 {
		t.Error("only", told, "fields")
	}
}

// everyTable is a file that has something in every table.
func everyTable() scenario.File {
	var fill func(v reflect.Value)
	fill = func(v reflect.Value) {
		switch {
		case v.Type() == reflect.TypeFor[scenario.Extra]() || isScalar(v.Type()):
		case v.Kind() == reflect.Struct:
			for i := range v.NumField() {
				fill(v.Field(i))
			}
		case v.Kind() == reflect.Pointer:
			if v.IsNil() {
				v.Set(reflect.New(v.Type().Elem()))
			}
			fill(v.Elem())
		case v.Kind() == reflect.Slice:
			if v.Len() == 0 {
				v.Set(reflect.MakeSlice(v.Type(), 1, 1))
			}
			for i := range v.Len() {
				fill(v.Index(i))
			}
		}
	}
	f := scenario.Demo()
	fill(reflect.ValueOf(&f).Elem())
	return f
}

func keyed(t *testing.T, table reflect.Value, key string) reflect.Value {
	for _, f := range reflect.VisibleFields(table.Type()) {
		if f.Tag.Get("toml") == key {
			return table.FieldByIndex(f.Index)
		}
	}
	t.Fatal("no field", key)
	return reflect.Value{}
}

func alter(t *testing.T, v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *scenario.Decimal:
		*x = x.Add(decimal.New(1, 0))
	case *scenario.Maybe:
		*x = scenario.Maybe{Decimal: x.Add(decimal.New(1, 0)), Set: true}
	case *scenario.MaybeWhole:
		*x = scenario.MaybeWhole{Int: x.Int + 1, Set: true}
	case *[12]scenario.Decimal:
		x[11] = x[11].Add(decimal.New(1, 0))
	case *scenario.Month:
		x.Year++
	case *scenario.Date:
		x.Year++
	default:
		switch v.Kind() {
		case reflect.String:
			v.SetString(v.String() + "X")
		case reflect.Int:
			v.SetInt(v.Int() + 1)
		case reflect.Bool:
			v.SetBool(!v.Bool())
		default:
			t.Fatal("no way to alter", v.Type())
		}
	}
}

// Every list of the file has a noun, and every key given words is one.
func TestTheWordsFitTheFile(t *testing.T) {
	keys := map[string]bool{}
	for _, f := range scenario.Fields() {
		keys[f.Table+"."+f.Key] = true
	}
	for k := range inWords {
		if !keys[k] {
			t.Error("there is no field", k)
		}
	}
	var walk func(typ reflect.Type)
	walk = func(typ reflect.Type) {
		for i := range typ.NumField() {
			f := typ.Field(i)
			switch {
			case f.Type == reflect.TypeFor[scenario.Extra]() || isScalar(f.Type) || f.Type.Kind() == reflect.Array:
			case f.Type.Kind() == reflect.Slice:
				if nouns[f.Tag.Get("toml")].one == "" {
					t.Error("no noun for", f.Tag.Get("toml"))
				}
				walk(f.Type.Elem())
			case f.Type.Kind() == reflect.Pointer:
				walk(f.Type.Elem())
			default:
				walk(f.Type)
			}
		}
	}
	walk(reflect.TypeFor[scenario.File]())
}
