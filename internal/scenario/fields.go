package scenario

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/shopspring/decimal"
)

// Field is one key of the file: what it is called, what it holds, what is allowed
// and what it means when it is missing.
type Field struct {
	// Table is the path of the table, such as "scenario.offer.reel"; "" at the top.
	Table   string
	Key     string
	Type    reflect.Type
	Rule    Rule
	Default string // "" for the type's zero value
}

// Rule is what a field's value must keep to.
type Rule struct {
	Required    bool
	RequiredFor Way // required only in a process of this way
	// Bounds, nil where there is none. Min and Max are inside, Above and Below outside.
	Min, Max, Above, Below *Decimal
	OneOf                  []string
	Currency               bool
	Longest                int // letters of a text
}

// Fields lists every field of the file, table by table in the order they are
// written. Tables themselves are not listed.
func Fields() []Field {
	var list []Field
	var walk func(t *table, path string)
	walk = func(t *table, path string) {
		for _, f := range t.fields {
			if f.table == nil {
				list = append(list, Field{path, f.key, f.typ, f.rule, f.defaultText})
			}
		}
		for _, f := range t.fields {
			if f.table != nil {
				walk(f.table, strings.TrimPrefix(path+"."+f.key, "."))
			}
		}
	}
	walk(tableOf(reflect.TypeFor[File]()), "")
	return list
}

// Defaults is a new value of one of the table types (Offer, Reel, Developing …)
// with every default filled in.
func Defaults[T any]() T {
	var v T
	tableOf(reflect.TypeFor[T]()).setDefaults(reflect.ValueOf(&v).Elem())
	return v
}

// form is the kind of value a field holds.
type form int

const (
	formText form = iota
	formWhole
	formTruth
	formNumber // Decimal
	formMaybe  // Maybe
	formMaybeWhole
	formNumbers // [12]Decimal
	formMonth
	formDate
	formTable   // a struct
	formPointer // a struct that may be missing
	formTables  // a slice of structs
)

// table is what the tags of one struct type say.
type table struct {
	typ    reflect.Type
	fields []field
	keys   map[string]bool
	extra  int // index of the Extra field
}

// field is what the tags of one struct field say.
type field struct {
	index        []int // by FieldByIndex: a struct that is taken in has its fields here
	key          string
	typ          reflect.Type
	form         form
	rule         Rule
	defaultText  string
	defaultValue reflect.Value // of typ; of no use in tables
	table        *table        // of forms that hold tables
}

var tables sync.Map // reflect.Type → *table

// tableOf reads the tags of a struct type, once. A tag that cannot be read is a
// mistake in this package, so it panics.
func tableOf(typ reflect.Type) *table {
	if t, ok := tables.Load(typ); ok {
		return t.(*table)
	}
	t := &table{typ: typ, keys: map[string]bool{}}
	for i := range typ.NumField() {
		if sf := typ.Field(i); sf.Type == reflect.TypeFor[Extra]() {
			t.extra = i
		} else {
			t.add(sf, i)
		}
	}
	tables.Store(typ, t)
	return t
}

// add adds a field, or those of a struct that is taken in without a name: its keys are
// the table's own. What such a struct does not know the table keeps.
func (t *table) add(sf reflect.StructField, index ...int) {
	if !sf.Anonymous {
		f := newField(index, sf)
		t.keys[f.key] = true
		t.fields = append(t.fields, f)
		return
	}
	for i := range sf.Type.NumField() {
		if inner := sf.Type.Field(i); inner.Type != reflect.TypeFor[Extra]() {
			t.add(inner, append(slices.Clip(index), i)...)
		}
	}
}

// of is the field in a table's value.
func (f *field) of(v reflect.Value) reflect.Value { return v.FieldByIndex(f.index) }

// LongestLine is how many letters a text has at most, where its tag says no other limit.
const LongestLine = 200

func newField(index []int, sf reflect.StructField) field {
	f := field{index: index, key: sf.Tag.Get("toml"), typ: sf.Type, defaultText: sf.Tag.Get("default")}
	f.rule = parseRule(sf.Tag.Get("rule"))
	f.form, f.table = formOf(sf.Type)
	if f.form == formText && f.rule.Longest == 0 && !f.rule.Currency && len(f.rule.OneOf) == 0 {
		f.rule.Longest = LongestLine
	}
	f.defaultValue = reflect.New(sf.Type).Elem()
	if f.defaultText != "" {
		f.defaultValue.Set(parseDefault(f.form, f.defaultText).Convert(sf.Type))
	}
	return f
}

func formOf(typ reflect.Type) (form, *table) {
	switch typ {
	case reflect.TypeFor[Decimal]():
		return formNumber, nil
	case reflect.TypeFor[Maybe]():
		return formMaybe, nil
	case reflect.TypeFor[MaybeWhole]():
		return formMaybeWhole, nil
	case reflect.TypeFor[[12]Decimal]():
		return formNumbers, nil
	case reflect.TypeFor[Month]():
		return formMonth, nil
	case reflect.TypeFor[Date]():
		return formDate, nil
	}
	switch typ.Kind() {
	case reflect.String:
		return formText, nil
	case reflect.Int:
		return formWhole, nil
	case reflect.Bool:
		return formTruth, nil
	case reflect.Struct:
		return formTable, tableOf(typ)
	case reflect.Pointer:
		return formPointer, tableOf(typ.Elem())
	case reflect.Slice:
		return formTables, tableOf(typ.Elem())
	}
	panic(fmt.Sprintf("scenario: no form for %s", typ))
}

func parseDefault(f form, text string) reflect.Value {
	switch f {
	case formWhole:
		n, err := strconv.Atoi(text)
		if err != nil {
			panic(err)
		}
		return reflect.ValueOf(n)
	case formTruth:
		return reflect.ValueOf(text == "true")
	case formNumber:
		return reflect.ValueOf(decimal.RequireFromString(text))
	}
	return reflect.ValueOf(text)
}

func parseRule(tag string) Rule {
	var r Rule
	for _, part := range strings.Split(tag, ",") {
		word, arg, _ := strings.Cut(part, "=")
		switch word {
		case "":
		case "required":
			r.Required = true
		case "required-for":
			r.RequiredFor = Way(arg)
		case "currency":
			r.Currency = true
		case "one-of":
			r.OneOf = strings.Split(arg, "|")
		case "min":
			r.Min = bound(arg)
		case "max":
			r.Max = bound(arg)
		case "longest":
			r.Longest = int(bound(arg).IntPart())
		case "above":
			r.Above = bound(arg)
		case "below":
			r.Below = bound(arg)
		default:
			panic("scenario: no rule " + word)
		}
	}
	return r
}

func bound(text string) *Decimal {
	d := decimal.RequireFromString(text)
	return &d
}

// setDefaults fills a struct whose file has none of its keys. What is a pointer or
// a slice stays nil.
func (t *table) setDefaults(v reflect.Value) {
	for i := range t.fields {
		f := &t.fields[i]
		if f.form == formTable {
			f.table.setDefaults(f.of(v))
		} else {
			f.of(v).Set(f.defaultValue)
		}
	}
}

// needed are the keys that a table must always have.
func (t *table) needed() []string {
	var keys []string
	for _, f := range t.fields {
		if f.rule.Required {
			keys = append(keys, f.key)
		}
	}
	return keys
}

// mustBeIn says whether table v must hold the field: always, or because of its way.
func (f *field) mustBeIn(v reflect.Value) bool {
	if f.rule.RequiredFor != "" {
		d, ok := v.Addr().Interface().(*Developing)
		return ok && d.Way == f.rule.RequiredFor
	}
	return f.rule.Required
}
