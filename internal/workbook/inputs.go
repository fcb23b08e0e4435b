package workbook

import (
	"fmt"
	"reflect"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// The columns of the sheet of inputs.
const (
	inputWhat = iota + 1
	inputValue
	inputUnit
	inputName
	inputExported
	inputChanged
)

// inputs is every figure that a scenario types, each under a name that formulas use.
type inputs struct {
	b      *book
	sheet  *sheet
	values map[string]any // by name: exact.Fraction, string, bool, or nil where nothing is typed
}

// figure is a number that is typed.
func (in *inputs) figure(name string) term {
	f, _ := in.typed(name).(exact.Fraction)
	return term{name, bindsWhole, f}
}

// isSet says whether a number is typed where none need be.
func (in *inputs) isSet(name string) truth {
	return truth{"ISNUMBER(" + name + ")", in.typed(name) != nil}
}

// is says whether a choice is made so.
func (in *inputs) is(name, word string) truth {
	return truth{name + "=" + quoted(word), in.typed(name) == any(word)}
}

// holds is a truth that is typed.
func (in *inputs) holds(name string) truth {
	yes, _ := in.typed(name).(bool)
	return truth{name, yes}
}

// typed is what stands under a name; a name that is not there is a mistake here.
func (in *inputs) typed(name string) any {
	value, there := in.values[name]
	if !there {
		panic("workbook: there is no input " + name)
	}
	return value
}

// addInputs makes the sheet of inputs.
func (b *book) addInputs() {
	s := b.addSheet(words.SheetInputs)
	b.in = &inputs{b: b, sheet: s, values: map[string]any{}}
	s.widths = map[int]float64{inputWhat: 34, inputValue: 16, inputUnit: 12, inputName: 38, inputExported: 14, inputChanged: 12}
	s.text(inputWhat, 1, words.SheetInputs, style{kind: titled})
	s.text(inputWhat, 2, words.SheetInputsSay, style{kind: noted})
	for i, head := range words.SheetInputsHead() {
		s.text(i+1, 4, head, style{kind: headed})
	}
	s.frozen = 4
	top := s.next()
	b.in.heading(b.s.Name)
	b.in.table("", reflect.ValueOf(*b.s), b.home)
	bottom := s.next() - 1
	changed := s.area(inputChanged, top, inputChanged, bottom)
	s.text(inputName, 1, words.SheetChangedCount, style{kind: labelled})
	s.formula(inputExported, 1, call("COUNTIF", exact.Fraction{}, changed, quoted(words.SheetChanged)), style{kind: counted})
	b.define(changesName, s, inputExported, 1)
	s.alarms = append(s.alarms, alarm{place(inputChanged, top) + ":" + place(inputChanged, bottom), words.SheetUnchanged})
}

// changesName names the cell that counts the inputs that were changed.
const changesName = "inputs_changed"

func (in *inputs) heading(text string) {
	in.sheet.text(inputWhat, in.sheet.next(), text, style{kind: headed})
}

// table adds the figures of a table, then those of the tables in it.
func (in *inputs) table(prefix string, v reflect.Value, currency string) {
	typ := v.Type()
	for i := range typ.NumField() {
		in.value(prefix, typ.Field(i).Tag.Get("toml"), v.Field(i).Interface(), currency)
	}
	for i := range typ.NumField() {
		in.below(prefix, typ.Field(i).Tag.Get("toml"), v.Field(i), currency)
	}
}

// value adds one key of a table, if it is a figure or a choice that figures follow from.
func (in *inputs) value(prefix, key string, value any, currency string) {
	name := prefix + key
	switch v := value.(type) {
	case scenario.Decimal:
		in.add(name, key, exact.FromDecimal(v), currency)
	case scenario.Maybe:
		if !v.Set {
			in.add(name, key, nil, currency)
			return
		}
		in.add(name, key, exact.FromDecimal(v.Decimal), currency)
	case int:
		in.add(name, key, exact.Int(int64(v)), currency)
	case bool:
		in.add(name, key, v, "", "TRUE", "FALSE")
	case [12]decimal.Decimal:
		for m, rolls := range v {
			in.add(fmt.Sprintf("rolls_month_%d", m+1), in.b.s.FirstMonth.Add(m).Month.String(), exact.FromDecimal(rolls), "")
		}
	case scenario.Import:
		in.choose(name, key, string(v), string(scenario.ImportNone), string(scenario.ImportBorder), string(scenario.ImportPrepaid))
	case scenario.Pitch:
		in.choose(name, key, string(v), string(scenario.LongPitch), string(scenario.ShortPitch))
	case scenario.LengthUnit:
		in.choose(name, key, string(v), string(scenario.Feet), string(scenario.Metres))
	}
}

// below adds the tables within a table.
func (in *inputs) below(prefix, key string, v reflect.Value, currency string) {
	switch v := v.Interface().(type) {
	case []scenario.Rate:
		for i, r := range v {
			in.heading(words.SheetRate(r))
			in.table(rateName(v, i), reflect.ValueOf(r), r.In)
		}
	case []scenario.Offer:
		for i, o := range v {
			in.heading(o.Name)
			in.table(offerPrefix(i), reflect.ValueOf(o), o.Currency)
		}
	case []scenario.Developing:
		for i, d := range v {
			in.heading(d.Name)
			in.table(developingPrefix(i), reflect.ValueOf(d), currency)
		}
	case []scenario.Equipment:
		for i, e := range v {
			in.heading(e.Name)
			in.table(equipmentPrefix(prefix, i), reflect.ValueOf(e), currency)
		}
	case scenario.Shooting, scenario.Border, scenario.Loading:
		in.heading(words.SheetLabel(key))
		in.table(key+"_", reflect.ValueOf(v), currency)
	case *scenario.Reel:
		if v != nil {
			in.table(prefix+key+"_", reflect.ValueOf(*v), currency)
		}
	case *scenario.Boxed:
		if v != nil {
			in.table(prefix+key+"_", reflect.ValueOf(*v), currency)
		}
	}
}

// Names of inputs by their table.
func offerPrefix(i int) string      { return fmt.Sprintf("offer_%d_", i+1) }
func developingPrefix(i int) string { return fmt.Sprintf("developing_%d_", i+1) }
func equipmentPrefix(of string, i int) string {
	return fmt.Sprintf("%sequipment_%d_", of, i+1)
}

// rateName is how the names of a rate's figures begin; a pair quoted twice gets a number.
func rateName(rates []scenario.Rate, i int) string {
	name := "rate_" + rates[i].One + "_" + rates[i].In + "_"
	for k := range i {
		if rates[k].One == rates[i].One && rates[k].In == rates[i].In {
			return fmt.Sprintf("%s%d_", name, i+1)
		}
	}
	return name
}

// add places one input. value is an exact.Fraction, a bool, or nil where nothing is typed.
func (in *inputs) add(name, key string, value any, currency string, options ...string) {
	in.values[name] = value
	s, row := in.sheet, in.sheet.next()
	st := style{kind: typed}
	if key == "months" {
		st.kind = labelled // the sheet of months has so many rows
	}
	s.text(inputWhat, row, words.SheetLabel(key), style{kind: labelled})
	s.put(inputValue, row, cell{style: st, value: value})
	s.text(inputUnit, row, words.SheetUnit(key, currency), style{kind: noted})
	s.text(inputName, row, name, style{kind: noted})
	s.put(inputExported, row, cell{style: style{kind: exported}, value: value})
	at, was := s.reference(inputValue, row), s.reference(inputExported, row)
	s.textFormula(inputChanged, row, fmt.Sprintf("IF(EXACT(%s,%s),%s,%s)", at, was, quoted(words.SheetUnchanged), quoted(words.SheetChanged)), words.SheetUnchanged, style{kind: noted})
	in.b.define(name, s, inputValue, row)
	if len(options) > 0 {
		s.lists = append(s.lists, choice{place(inputValue, row), options})
	}
}

// choose places an input that is one of some words.
func (in *inputs) choose(name, key, value string, options ...string) {
	var typed any = value
	if value == "" {
		typed = nil
	}
	in.add(name, key, typed, "", options...)
}
