package scenario

import (
	"bytes"
	"fmt"
	"os"
	"reflect"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

// same says where two values differ; numbers must agree in their places too, and
// an empty list is no list.
func same(a, b reflect.Value, path string) string {
	if a.Type() == reflect.TypeFor[Decimal]() {
		x, y := a.Interface().(Decimal), b.Interface().(Decimal)
		if !sameSpelling(x, y) {
			return fmt.Sprintf("%s: %s and %s", path, Spell(x), Spell(y))
		}
		return ""
	}
	switch a.Kind() {
	case reflect.Struct:
		for i := range a.NumField() {
			if d := same(a.Field(i), b.Field(i), path+"."+a.Type().Field(i).Name); d != "" {
				return d
			}
		}
		return ""
	case reflect.Slice, reflect.Array:
		if a.Len() != b.Len() {
			return fmt.Sprintf("%s: %d and %d", path, a.Len(), b.Len())
		}
		for i := range a.Len() {
			if d := same(a.Index(i), b.Index(i), fmt.Sprintf("%s[%d]", path, i)); d != "" {
				return d
			}
		}
		return ""
	case reflect.Pointer:
		if a.IsNil() || b.IsNil() {
			if a.IsNil() != b.IsNil() {
				return path + ": one is missing"
			}
			return ""
		}
		return same(a.Elem(), b.Elem(), path)
	}
	if !reflect.DeepEqual(a.Interface(), b.Interface()) {
		return fmt.Sprintf("%s: %#v and %#v", path, a, b)
	}
	return ""
}

// roundTrips holds a file without fault to what Write promises.
func roundTrips(t interface{ Fatalf(string, ...any) }, f File) {
	text := Write(f)
	again, faults := Read(text)
	if len(faults) > 0 {
		t.Fatalf("what was written has faults: %v\n%s", faults, text)
	}
	if d := same(reflect.ValueOf(f), reflect.ValueOf(again), "file"); d != "" {
		t.Fatalf("%s differ after writing\n%s", d, text)
	}
	if second := Write(again); !bytes.Equal(text, second) {
		t.Fatalf("written twice:\n%s\nand\n%s", text, second)
	}
}

func TestWritingIsCanonical(t *testing.T) {
	want, err := os.ReadFile("testdata/quayside-written.toml")
	if err != nil {
		t.Fatal(err)
	}
	if got := Write(Demo()); !bytes.Equal(got, want) {
		t.Errorf("%s", got)
	}
	roundTrips(t, Demo())
}

func TestEveryFaultlessEditRoundTrips(t *testing.T) {
	n := 0
	for _, e := range edits {
		if f, faults := Read([]byte(e.text(t))); len(faults) == 0 {
			roundTrips(t, f)
			n++
		}
	}
	if n < 6 {
		t.Error(n)
	}
}

func TestTypedSpellingIsKept(t *testing.T) {
	for _, spelling := range []string{"118.00", "118", "0.50", "118.000000000000", "999999999999.5", "999999999999.999999999999"} {
		text := strings.Replace(small, "118.00", spelling, 1)
		f, _ := Read([]byte(text))
		if out := string(Write(f)); !strings.Contains(out, `price = "`+spelling+`"`) {
			t.Errorf("%s is gone:\n%s", spelling, out)
		}
	}
	text := strings.Replace(small, "length_unit", "leader_mm = \"160.0\"\nlength_unit", 1)
	f, _ := Read([]byte(text))
	if out := string(Write(f)); !strings.Contains(out, `leader_mm = "160.0"`) {
		t.Errorf("a default typed with other places is gone:\n%s", out)
	}
}

// anyFile draws a file without fault, by the tags alone.
func anyFile(t *rapid.T) File {
	f := File{Schema: Schema, Extra: anyExtra(t)}
	for i := range rapid.IntRange(0, 2).Draw(t, "reels") {
		f.Reels = append(f.Reels, anyInHand(t, i))
	}
	for i := range rapid.IntRange(1, 3).Draw(t, "scenarios") {
		s := Scenario{}
		fill(t, reflect.ValueOf(&s).Elem())
		s.Name = fmt.Sprint(s.Name, i)
		s.Home, s.Rates = "EUR", nil
		for _, code := range []string{"USD", "JPY", "KWD"} {
			r := Rate{}
			fill(t, reflect.ValueOf(&r).Elem())
			r.One, r.In = code, "EUR"
			s.Rates = append(s.Rates, r)
		}
		for j := range s.Developing {
			s.Developing[j].Name = fmt.Sprint(s.Developing[j].Name, j)
			lowerResale(s.Developing[j].Equipment)
		}
		lowerResale(s.Loading.Equipment)
		if len(s.Offers) == 0 {
			s.Offers = make([]Offer, 1)
			fill(t, reflect.ValueOf(&s.Offers[0]).Elem())
		}
		for j := range s.Offers {
			mendOffer(t, &s, j)
		}
		s.Baseline = s.Offers[0].Name
		s.Ranges = anyRanges(t, &s)
		f.Scenarios = append(f.Scenarios, s)
	}
	return f
}

// anyInHand draws a reel in hand that its log does not use up.
func anyInHand(t *rapid.T, i int) InHand {
	r := InHand{}
	fill(t, reflect.ValueOf(&r).Elem())
	r.Name = fmt.Sprint(r.Name, i)
	r.Currency = rapid.SampledFrom([]string{"EUR", "JPY"}).Draw(t, "currency")
	r.Length, r.LengthUnit = decimal.New(99999999, -2), Metres
	if r.CounterMM.Set {
		r.CounterMM.Decimal = r.CounterMM.Add(decimal.New(1, 0))
	}
	for j := range r.Results {
		x := &r.Results[j]
		x.Good = min(x.Good, x.Cassettes*x.Exposures)
		r.Loads = append(r.Loads, Load{Date: x.Date, Cassettes: x.Cassettes, Exposures: x.Exposures})
	}
	return r
}

// anyRanges draws a range for some of the inputs, for all offers or one of them.
func anyRanges(t *rapid.T, s *Scenario) (list []Range) {
	for _, input := range s.Inputs() {
		if !rapid.Bool().Draw(t, string(input)+" has a range") {
			continue
		}
		g := Range{Extra: anyExtra(t), Input: input}
		if rapid.Bool().Draw(t, "of one offer") {
			g.Offer = s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, "offer")].Name
		}
		places := int32(rapid.IntRange(0, 12).Draw(t, "low places"))
		g.Low = decimal.New(rapid.Int64Range(1, 99).Draw(t, "low"), -places)
		g.High = g.Low.Add(decimal.New(1, -1))
		list = append(list, g)
	}
	return list
}

func lowerResale(list []Equipment) {
	for i := range list {
		if list[i].Resale.Cmp(list[i].Price) > 0 {
			list[i].Resale = list[i].Price
		}
	}
}

func mendOffer(t *rapid.T, s *Scenario, j int) {
	o := &s.Offers[j]
	o.Name = fmt.Sprint(o.Name, j)
	o.Currency = rapid.SampledFrom([]string{"EUR", "USD", "JPY", "KWD"}).Draw(t, "currency")
	o.Developing = ""
	if len(s.Developing) > 0 && rapid.Bool().Draw(t, "develops") {
		o.Developing = s.Developing[0].Name
	}
	o.Reel, o.Boxed = nil, nil
	if o.Kind == KindBoxed {
		o.Boxed = &Boxed{}
		fill(t, reflect.ValueOf(o.Boxed).Elem())
		return
	}
	o.Reel = &Reel{}
	fill(t, reflect.ValueOf(o.Reel).Elem())
	o.Reel.Length, o.Reel.TestExposures = decimal.New(99999999, -2), 3
	for _, d := range []*Decimal{&o.Reel.LeaderMM, &o.Reel.TrailerMM, &o.Reel.FoggedMM, &o.Reel.StartWasteMM, &o.Reel.EndWasteMM} {
		*d = decimal.New(int64(rapid.IntRange(0, 3000).Draw(t, "mm")), -1)
	}
}

// fill draws a value within its rules for every field of a struct.
func fill(t *rapid.T, v reflect.Value) {
	tab := tableOf(v.Type())
	v.Field(tab.extra).Set(reflect.ValueOf(anyExtra(t)))
	for i := range tab.fields {
		f := &tab.fields[i]
		fv := f.of(v)
		switch f.form {
		case formText:
			text := rapid.String().Draw(t, f.key)
			switch {
			case len(f.rule.OneOf) > 0:
				text = rapid.SampledFrom(f.rule.OneOf).Draw(t, f.key)
			case f.rule.Required:
				text = "x" + text
			}
			fv.SetString(text)
		case formWhole:
			fv.SetInt(int64(rapid.IntRange(1, 60).Draw(t, f.key)))
		case formTruth:
			fv.SetBool(rapid.Bool().Draw(t, f.key))
		case formNumber:
			fv.Set(reflect.ValueOf(anyNumber(t, f.key)))
		case formMaybe:
			if rapid.Bool().Draw(t, f.key) {
				fv.Set(reflect.ValueOf(Maybe{anyNumber(t, f.key), true}))
			}
		case formMaybeWhole:
			if rapid.Bool().Draw(t, f.key) {
				fv.Set(reflect.ValueOf(MaybeWhole{rapid.IntRange(2, 60).Draw(t, f.key), true}))
			}
		case formNumbers:
			for j := range 12 {
				fv.Index(j).Set(reflect.ValueOf(anyNumber(t, f.key)))
			}
		case formMonth:
			fv.Set(reflect.ValueOf(Month{rapid.IntRange(1, 9999).Draw(t, "year"), time.Month(rapid.IntRange(1, 12).Draw(t, "month"))}))
		case formDate:
			if f.rule.Required || rapid.Bool().Draw(t, "dated") {
				fv.Set(reflect.ValueOf(DateOf(time.Unix(rapid.Int64Range(-6e10, 2e11).Draw(t, "date"), 0).UTC())))
			}
		case formTable:
			fill(t, fv)
		case formTables:
			n := rapid.IntRange(0, 2).Draw(t, f.key)
			for range n {
				e := reflect.New(f.table.typ).Elem()
				fill(t, e)
				fv.Set(reflect.Append(fv, e))
			}
		}
	}
}

// anyNumber is from 0.000000000001 to 99, which every rule allows.
func anyNumber(t *rapid.T, label string) Decimal {
	places := rapid.IntRange(0, 12).Draw(t, label+" places")
	most := int64(1)
	for range places {
		most *= 10
	}
	return decimal.New(rapid.Int64Range(1, 99*most).Draw(t, label), int32(-places))
}

func anyExtra(t *rapid.T) Extra {
	if rapid.IntRange(0, 4).Draw(t, "extra") > 0 {
		return nil
	}
	e := Extra{}
	for range rapid.IntRange(1, 3).Draw(t, "extras") {
		e["x"+rapid.String().Draw(t, "key")] = anyValue(t, 2)
	}
	return e
}

func anyValue(t *rapid.T, deep int) any {
	switch rapid.IntRange(0, 2+min(deep, 1)*2).Draw(t, "value") {
	case 0, 1:
		return rapid.String().Draw(t, "text")
	case 2:
		return rapid.SampledFrom([]Verbatim{"14.80", "-inf", "true", "0x1F", "1_000", "1979-05-27T07:32:00Z", "07:32:00"}).Draw(t, "verbatim")
	case 3:
		list := []any{}
		for range rapid.IntRange(0, 3).Draw(t, "elements") {
			list = append(list, anyValue(t, deep-1))
		}
		return list
	}
	m := map[string]any{}
	for range rapid.IntRange(0, 3).Draw(t, "keys") {
		m["k"+rapid.String().Draw(t, "key")] = anyValue(t, deep-1)
	}
	return m
}

func TestAnyFileRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFile(t)
		for _, s := range f.Scenarios {
			if faults := Check(s); len(faults) > 0 {
				t.Fatalf("the drawn file has faults: %v", faults)
			}
		}
		roundTrips(t, f)
	})
}

func TestWhatIsWrittenIsValidTOMLForAnyText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes"))
		f := Demo()
		f.Scenarios[0].Note, f.Scenarios[0].Name = text, "x"+text
		var doc struct {
			Scenario []struct{ Note string }
		}
		if err := toml.Unmarshal(Write(f), &doc); err != nil {
			t.Fatal(err)
		}
		if utf8.ValidString(text) && doc.Scenario[0].Note != text {
			t.Fatalf("%q became %q", text, doc.Scenario[0].Note)
		}
	})
}

func TestCloneSharesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyFile(t).Scenarios[0]
		before := Write(File{Scenarios: []Scenario{s}})
		c := s.Clone()
		if d := same(reflect.ValueOf(s), reflect.ValueOf(c), "scenario"); d != "" {
			t.Fatalf("%s differ", d)
		}
		scribble(reflect.ValueOf(&c).Elem())
		if after := Write(File{Scenarios: []Scenario{s}}); !bytes.Equal(before, after) {
			t.Fatalf("changing the copy changed the original:\n%s\n%s", before, after)
		}
	})
}

// scribble overwrites everything that can be reached.
func scribble(v reflect.Value) {
	switch v.Kind() {
	case reflect.String:
		v.SetString("scribbled")
	case reflect.Int:
		v.SetInt(77)
	case reflect.Bool:
		v.SetBool(!v.Bool())
	case reflect.Struct:
		if d, ok := v.Addr().Interface().(*Decimal); ok {
			*d = decimal.New(777, 0)
			return
		}
		for i := range v.NumField() {
			scribble(v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			scribble(v.Index(i))
		}
	case reflect.Pointer:
		if !v.IsNil() {
			scribble(v.Elem())
		}
	case reflect.Interface:
		if list, ok := v.Interface().([]any); ok && len(list) > 0 {
			list[0] = "scribbled"
		}
		if m, ok := v.Interface().(map[string]any); ok {
			m["scribbled"] = "yes"
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			inner := v.MapIndex(k)
			if m, ok := inner.Interface().(map[string]any); ok {
				m["scribbled"] = "yes"
			}
			if list, ok := inner.Interface().([]any); ok && len(list) > 0 {
				list[0] = "scribbled"
			}
		}
		if !v.IsNil() {
			v.SetMapIndex(reflect.ValueOf("scribbled"), reflect.ValueOf("yes"))
		}
	}
}

func TestFieldsAreListedAsTheFileFormatDoes(t *testing.T) {
	seen := map[string]Field{}
	for _, f := range Fields() {
		seen[f.Table+"."+f.Key] = f
	}
	// 1 + 7 + 5 + 1 + 7 + 8 + 5 + 8 + 5 + 18 + 13 + 3 + 3 + 4 keys of the tables, and of a reel
	// in hand 15 beside the 13 of how it is cut, with a log of 5 + 6 + 3
	if len(seen) != 88+15+13+5+6+3 {
		t.Errorf("%d fields", len(seen))
	}
	price := seen["scenario.offer.price"]
	if !price.Rule.Required || price.Rule.Above == nil || price.Type != reflect.TypeFor[Decimal]() {
		t.Error(price)
	}
	if f := seen["scenario.offer.reel.leader_mm"]; f.Default != "160" || f.Rule.Min == nil {
		t.Error(f)
	}
	if f := seen["scenario.developing.chemistry_rolls"]; f.Rule.RequiredFor != Home {
		t.Error(f)
	}
}
