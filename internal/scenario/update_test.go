package scenario

import (
	"bytes"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

// updated is a text saved as saying f.
func updated(text []byte, f File) (out []byte, inPlace bool) {
	t, inPlace := TextOf(text).Saying(f)
	return t.Bytes, inPlace
}

// number gives every table of a list a number of its own, in an unknown key, by which
// it is known again however it is changed.
func number(f *File) {
	n := 0
	next := func(e *Extra) {
		n++
		if *e == nil {
			*e = Extra{}
		}
		(*e)[numbered] = Verbatim(fmt.Sprint(n))
	}
	equipment := func(list []Equipment) {
		for i := range list {
			next(&list[i].Extra)
		}
	}
	for i := range f.Scenarios {
		s := &f.Scenarios[i]
		next(&s.Extra)
		for j := range s.Rates {
			next(&s.Rates[j].Extra)
		}
		for j := range s.Offers {
			next(&s.Offers[j].Extra)
			for k := range s.Offers[j].Seen {
				next(&s.Offers[j].Seen[k].Extra)
			}
		}
		for j := range s.Ranges {
			next(&s.Ranges[j].Extra)
		}
		equipment(s.Loading.Equipment)
		for j := range s.Developing {
			next(&s.Developing[j].Extra)
			equipment(s.Developing[j].Equipment)
		}
	}
}

// said is what a file says, key by key, by the numbers of its tables.
func said(f File) map[[2]string]string {
	m := map[[2]string]string{}
	var walk func(t *table, v reflect.Value, in, path string)
	walk = func(t *table, v reflect.Value, in, path string) {
		if n, ok := v.Field(t.extra).Interface().(Extra)[numbered]; ok {
			in, path = string(n.(Verbatim)), ""
		}
		m[[2]string{in, path}] = "is there"
		for i := range t.fields {
			f := &t.fields[i]
			fv := f.of(v)
			switch f.form {
			case formTable:
				walk(f.table, fv, in, join(path, f.key))
			case formPointer:
				if !fv.IsNil() {
					walk(f.table, fv.Elem(), in, join(path, f.key))
				}
			case formTables:
				for j := range fv.Len() {
					walk(f.table, fv.Index(j), in, join(path, f.key))
				}
			default:
				if !f.saysNothing(v) {
					m[[2]string{in, join(path, f.key)}] = fmt.Sprint(spelling(f, fv))
				}
			}
		}
		for k, e := range v.Field(t.extra).Interface().(Extra) {
			m[[2]string{in, join(path, k)}] = fmt.Sprint(e)
		}
	}
	walk(tableOf(reflect.TypeFor[File]()), reflect.ValueOf(&f).Elem(), "", "")
	return m
}

// edited is a file after some changes that a window could make. It says whether
// anything was taken away.
func edited(t *rapid.T, f File) (g File, removed bool) {
	g = f
	g.Scenarios = nil
	for _, s := range f.Scenarios {
		g.Scenarios = append(g.Scenarios, s.Clone())
	}
	for range rapid.IntRange(1, 5).Draw(t, "changes") {
		i := rapid.IntRange(0, len(g.Scenarios)-1).Draw(t, "scenario")
		s := &g.Scenarios[i]
		switch rapid.IntRange(0, 10).Draw(t, "change") {
		case 0:
			s.Name = "renamed " + fmt.Sprint(len(s.Name))
		case 1:
			o := &s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, "offer")]
			o.Price, o.Shipping = anyNumber(t, "price"), anyNumber(t, "shipping")
			o.FreeShippingFrom = Maybe{}
			removed = true
		case 2:
			s.Shooting.RollsPerMonth[rapid.IntRange(0, 11).Draw(t, "month")] = anyNumber(t, "rolls")
			s.Border.TaxOnShipping, s.Loading.CassetteLoads = rapid.Bool().Draw(t, "tax"), 7
		case 3:
			o := priced(NewOffer(s, rapid.SampledFrom([]Kind{KindReel, KindBoxed}).Draw(t, "kind")))
			s.Offers = slicesInsert(t, s.Offers, o)
		case 4:
			if len(s.Offers) > 1 {
				s.Offers = slicesRemove(t, s.Offers)
				removed = true
			}
		case 5:
			s.Offers = rapid.Permutation(s.Offers).Draw(t, "offers")
		case 6:
			s.Rates = rapid.Permutation(s.Rates).Draw(t, "rates")
			if len(s.Rates) > 0 && rapid.Bool().Draw(t, "remove") {
				s.Rates = slicesRemove(t, s.Rates)
				removed = true
			}
		case 7:
			s.Rates = slicesInsert(t, s.Rates, Rate{One: "CAD", Equals: anyNumber(t, "rate"), In: "AUD"})
			s.Loading.Equipment = slicesInsert(t, s.Loading.Equipment, NewEquipment())
		case 8:
			if len(g.Scenarios) > 1 {
				g.Scenarios = slicesRemove(t, g.Scenarios)
				removed = true
			}
		case 9:
			n := New("another", "EUR", Month{2027, 1})
			g.Scenarios = slicesInsert(t, g.Scenarios, n)
			g.Scenarios = rapid.Permutation(g.Scenarios).Draw(t, "scenarios")
		case 10:
			o := &s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, "offer")]
			o.See(Seen{Date: Date{2026, 11, rapid.IntRange(1, 30).Draw(t, "day")}, Price: anyNumber(t, "price"), Note: "seen"})
		}
	}
	return g, removed
}

func slicesInsert[T any](t *rapid.T, list []T, e T) []T {
	i := rapid.IntRange(0, len(list)).Draw(t, "at")
	return append(list[:i:i], append([]T{e}, list[i:]...)...)
}

func slicesRemove[T any](t *rapid.T, list []T) []T {
	i := rapid.IntRange(0, len(list)-1).Draw(t, "removed")
	return append(list[:i:i], list[i+1:]...)
}

func TestSavingKeepsEverythingThatDidNotChange(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFile(t)
		number(&f)
		text, comments := styled(t, f)
		read := Inspect([]byte(text))
		if d := same(reflect.ValueOf(f), reflect.ValueOf(read.File), "file"); d != "" || len(read.Faults) > 0 {
			t.Fatalf("the styled text is wrong: %s %v\n%s", d, read.Faults, text)
		}
		if out, inPlace := updated([]byte(text), f); string(out) != text || !inPlace {
			t.Fatalf("saved without a change:\n%s\n%s", text, out)
		}
		g, removed := edited(t, f)
		out, inPlace := updated([]byte(text), g)
		if !inPlace {
			t.Fatalf("not in place:\n%s\n\nto be\n\n%s", text, Write(g))
		}
		again, _ := Read(out)
		if d := same(reflect.ValueOf(g), reflect.ValueOf(again), "file"); d != "" {
			t.Fatalf("%s is not what was saved:\n%s\n%s", d, text, out)
		}
		if second, inPlace := updated(out, g); !inPlace || !bytes.Equal(out, second) {
			t.Fatalf("saved again:\n%s\n%s", out, second)
		}
		was, now := said(f), said(g)
		lines := strings.Split(string(out), "\n")
		for _, c := range comments {
			n := strings.Count(string(out), c.text)
			at := [2]string{c.table, c.key}
			before, after := was[at], now[at]
			switch {
			case n > 1:
				t.Fatalf("%s is there %d times:\n%s\n%s", c.text, n, text, out)
			case n == 0 && !removed, n == 0 && after != "" && !c.loose:
				t.Fatalf("%s of %q is lost:\n%s\n\n%s", c.text, at, text, out)
			case c.line != "" && before != "" && before == after && !strings.Contains(c.line, "\n") && !hasLine(lines, c.line):
				t.Fatalf("the line %q was changed:\n%s\n\n%s", c.line, text, out)
			}
		}
	})
}

func hasLine(lines []string, line string) bool {
	for _, l := range lines {
		if strings.TrimPrefix(strings.TrimSuffix(l, "\r"), "\ufeff") == line {
			return true
		}
	}
	return false
}

// A file as people write them, and what saving makes of some changes to it, by hand.
func TestAChangeInAFileWithComments(t *testing.T) {
	const before = `# My year.
schema = 1 # the only one

# Quayside, all prices from September
[[scenario]]
name = "Quayside" # by the water
home = "EUR"
first_month = "2027-01"
baseline = "Boxed"
  months   =  12
colour = "blue" # not known

[scenario.shooting]
rolls_per_month = [
  "1", # January
  2, 2, 2, 2, 2,
  2, 2, 2, 2, 2,
  "3", # December
]

[[scenario.rate]] # dollars
one = "USD"
equals = "0.92"
in = "EUR"

# loose, about the offers

# The reel of the corner shop
[[scenario.offer]]
name = "Reel"   # long
kind = "reel"
currency = "EUR"
# paid in cash
price = "100.00" # with tax
reel = { length = "100", length_unit = 'ft', exposures = 36 } # inline

[[scenario.offer]]
name = "Boxed"
kind = "boxed"
currency = "EUR"
price = 9
boxed.exposures = 36 # dotted

# the end`
	const after = `# My year.
schema = 1 # the only one

# Quayside, all prices from September
[[scenario]]
name = "Harbour" # by the water
home = "EUR"
first_month = "2027-01"
baseline = "Boxed"
  months   =  24
colour = "blue" # not known

[scenario.shooting]
rolls_per_month = [
  "9", # January
  2, 2, 2, 2, 2,
  2, 2, 2, 2, 2,
  "3", # December
]

[scenario.border]
tax_percent = "19"

# loose, about the offers

[[scenario.offer]]
name = "Boxed"
kind = "boxed"
currency = "EUR"
price = 9
shipping = "3"
boxed.exposures = 36 # dotted
boxed.rolls_per_pack = 3

# The reel of the corner shop
[[scenario.offer]]
name = "Reel"   # long
kind = "reel"
currency = "EUR"
# paid in cash
price = "101" # with tax
units = 3
reel = { length = "100", length_unit = 'ft', exposures = 36, spoiled_percent = "5" } # inline

[[scenario.offer]]
name = "New boxed film"
kind = "boxed"
currency = "EUR"
price = "0"

[scenario.offer.boxed]
exposures = 36

# the end`
	f, faults := Read([]byte(before))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	d := func(s string) Decimal { return decimal.RequireFromString(s) }
	s := f.Scenarios[0].Clone()
	s.Months, s.Name, s.Shooting.RollsPerMonth[0], s.Border.TaxPercent, s.Rates = 24, "Harbour", d("9"), d("19"), nil
	s.Offers[0].Price, s.Offers[0].Units, s.Offers[0].Reel.SpoiledPercent = d("101"), 3, d("5")
	s.Offers[1].Boxed.RollsPerPack, s.Offers[1].Shipping = 3, d("3")
	s.Offers = []Offer{s.Offers[1], s.Offers[0], NewOffer(&s, KindBoxed)}
	f.Scenarios[0] = s
	if out, inPlace := updated([]byte(before), f); string(out) != after || !inPlace {
		t.Errorf("%s", out)
	}
	crlf := func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") }
	if out, inPlace := updated([]byte(crlf(before)), f); string(out) != crlf(after) || !inPlace {
		t.Errorf("with CRLF: %q", out)
	}
}

func TestWhatCannotBeChangedInPlaceIsWrittenAnew(t *testing.T) {
	for _, text := range []string{"schema = [", "schema = 2\n[[scenario]]\n", "\x00"} {
		if out, inPlace := updated([]byte(text), Demo()); inPlace || !bytes.Equal(out, Write(Demo())) {
			t.Errorf("%q: %t\n%s", text, inPlace, out)
		}
	}
	if out, inPlace := updated(nil, Demo()); !inPlace || !bytes.Equal(out, Write(Demo())) {
		t.Errorf("a new file: %t\n%s", inPlace, out)
	}
}
