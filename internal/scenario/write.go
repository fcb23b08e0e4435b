package scenario

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"reelworth/internal/tomltext"
)

// Write is a file in its canonical form: every table's keys in a fixed order, tables
// inside one another indented, keys that only say their default left out. Numbers
// keep the places they were typed with.
func Write(f File) []byte { return tomltext.Write(treeOf(&f, false)) }

// treeOf is a file as tables of text: all that it says, or only what is worth writing.
func treeOf(f *File, all bool) *tomltext.Table {
	g := *f
	g.Schema = Schema
	return tableOf(reflect.TypeFor[File]()).tree(reflect.ValueOf(&g).Elem(), all)
}

// tree is a table as text: its own keys, then those of no known name, then its tables.
func (t *table) tree(v reflect.Value, all bool) *tomltext.Table {
	extra := v.Field(t.extra).Interface().(Extra)
	pairs := make([]tomltext.Pair, 0, len(t.fields)+len(extra))
	for i := range t.fields {
		f := &t.fields[i]
		if f.table != nil {
			continue
		}
		if x, there := t.unread(v, f); there {
			pairs = append(pairs, tomltext.Pair{Key: f.key, Value: anything(x)})
			continue
		}
		if worth := f.worthWriting(v); worth || all {
			pairs = append(pairs, f.pair(v, !worth))
		}
	}
	if len(extra) > 0 {
		for _, k := range slices.Sorted(maps.Keys(extra)) {
			if !t.keys[k] {
				pairs = append(pairs, tomltext.Pair{Key: k, Value: anything(extra[k])})
			}
		}
	}
	for i := range t.fields {
		f := &t.fields[i]
		if f.table == nil {
			continue
		}
		if x, there := t.unread(v, f); there {
			pairs = append(pairs, tomltext.Pair{Key: f.key, Value: anything(x)})
			continue
		}
		pairs = append(pairs, f.tables(f.of(v), all))
	}
	if !all {
		return &tomltext.Table{Pairs: pairs}
	}
	return &tomltext.Table{Name: t.title(v), Pairs: pairs}
}

// title tells a table from the others of a list: its name, or else its first texts, as
// "USD, EUR" for a rate.
func (t *table) title(v reflect.Value) string {
	var texts []string
	for i := range t.fields {
		f := &t.fields[i]
		if f.key == "name" {
			return f.of(v).String()
		}
		if f.form == formText && (f.rule.Required || f.key == "offer") {
			texts = append(texts, f.of(v).String())
		}
	}
	return strings.Join(texts, ", ")
}

// pair is a key of table v that holds no table.
func (f *field) pair(v reflect.Value, implied bool) tomltext.Pair {
	p := tomltext.Pair{Key: f.key, Implied: implied}
	if !f.saysNothing(v) {
		p.Value = spelling(f, f.of(v))
	}
	return p
}

// saysNothing says whether a field of table v has no value that could be written.
func (f *field) saysNothing(v reflect.Value) bool {
	fv := f.of(v)
	switch f.form {
	case formNumber:
		return f.rule.RequiredFor != "" && unset(*fv.Addr().Interface().(*Decimal))
	case formMaybe:
		return !fv.Addr().Interface().(*Maybe).Set
	case formMaybeWhole:
		return !fv.Addr().Interface().(*MaybeWhole).Set
	case formMonth:
		return *fv.Addr().Interface().(*Month) == Month{}
	case formDate:
		return *fv.Addr().Interface().(*Date) == Date{}
	}
	return false
}

// tables is a key that holds tables.
func (f *field) tables(v reflect.Value, all bool) tomltext.Pair {
	p := tomltext.Pair{Key: f.key}
	switch f.form {
	case formTable:
		t := f.table.tree(v, all)
		p.Value, p.Implied = t, saysNothing(t)
	case formPointer:
		if !v.IsNil() {
			p.Value = f.table.tree(v.Elem(), all)
		}
	case formTables:
		list := make(tomltext.Tables, v.Len())
		for i := range list {
			list[i] = f.table.tree(v.Index(i), all)
		}
		p.Value, p.Implied = list, len(list) == 0
	}
	return p
}

// saysNothing says whether a table says no more than if it were missing.
func saysNothing(t *tomltext.Table) bool {
	return !slices.ContainsFunc(t.Pairs, func(p tomltext.Pair) bool { return p.Value != nil && !p.Implied })
}

// worthWriting says whether a field of table v says more than its default, or must
// be there.
func (f *field) worthWriting(v reflect.Value) bool {
	if f.saysNothing(v) {
		return false
	}
	fv := f.of(v)
	other := false
	switch f.form {
	case formNumber:
		other = !sameSpelling(*fv.Addr().Interface().(*Decimal), *f.defaultValue.Addr().Interface().(*Decimal))
	case formMaybe, formMaybeWhole, formNumbers, formMonth, formDate:
		other = true
	case formText:
		other = fv.String() != f.defaultValue.String()
	case formWhole:
		other = fv.Int() != f.defaultValue.Int()
	case formTruth:
		other = fv.Bool() != f.defaultValue.Bool()
	}
	return other || f.mustBeIn(v)
}

// spelling is a value as TOML spells it.
func spelling(f *field, v reflect.Value) tomltext.Value {
	switch f.form {
	case formText:
		return tomltext.Text(v.String())
	case formWhole:
		return tomltext.Plain(strconv.FormatInt(v.Int(), 10))
	case formTruth:
		return tomltext.Plain(strconv.FormatBool(v.Bool()))
	case formNumber:
		return numeral(*v.Addr().Interface().(*Decimal))
	case formMaybe:
		return numeral(v.Addr().Interface().(*Maybe).Decimal)
	case formMaybeWhole:
		return tomltext.Plain(strconv.Itoa(v.Addr().Interface().(*MaybeWhole).Int))
	case formNumbers:
		list := make(tomltext.List, v.Len())
		for i, d := range v.Addr().Interface().(*[12]Decimal) {
			list[i] = numeral(d)
		}
		return list
	case formMonth:
		return tomltext.Text(v.Interface().(Month).String())
	case formDate:
		return tomltext.Plain(v.Interface().(Date).String())
	}
	return nil
}

func numeral(d Decimal) tomltext.Plain { return tomltext.Plain(`"` + Spell(d) + `"`) }

// anything is what Extra holds; tables in braces.
func anything(v any) tomltext.Value {
	switch x := v.(type) {
	case nil:
		return nil // missing
	case string:
		return tomltext.Text(x)
	case Verbatim:
		return tomltext.Plain(x)
	case []any:
		list := make(tomltext.List, len(x))
		for i, e := range x {
			list[i] = anything(e)
		}
		return list
	case map[string]any:
		pairs := make(tomltext.Inline, 0, len(x))
		for _, k := range slices.Sorted(maps.Keys(x)) {
			pairs = append(pairs, tomltext.Pair{Key: k, Value: anything(x[k])})
		}
		return pairs
	}
	return tomltext.Text(fmt.Sprint(v)) // Read puts nothing else there
}
