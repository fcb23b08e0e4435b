package scenario

import (
	"bytes"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"unicode/utf8"
)

// Write is a file in its canonical form: every table's keys in a fixed order, tables
// inside one another indented, keys that only say their default left out. Numbers
// keep the places they were typed with.
func Write(f File) []byte {
	w := writer{}
	f.Schema = Schema
	w.table(tableOf(reflect.TypeFor[File]()), reflect.ValueOf(&f).Elem(), "", 0)
	return w.Bytes()
}

type writer struct{ bytes.Buffer }

// table writes a table's own keys, then those of no known name, then its tables.
func (w *writer) table(t *table, v reflect.Value, path string, indent int) {
	for i := range t.fields {
		f := &t.fields[i]
		if f.table == nil && f.worthWriting(v) {
			w.assign(f.key, indent)
			w.value(f, v.Field(f.index))
			w.WriteByte('\n')
		}
	}
	extra := v.Field(t.extra).Interface().(Extra)
	for _, k := range slices.Sorted(maps.Keys(extra)) {
		w.assign(k, indent)
		w.anything(extra[k])
		w.WriteByte('\n')
	}
	for i := range t.fields {
		if f := &t.fields[i]; f.table != nil {
			w.tables(f, v.Field(f.index), path, indent)
		}
	}
}

func (w *writer) tables(f *field, v reflect.Value, path string, indent int) {
	if path != "" {
		path, indent = path+".", indent+2
	}
	path += f.key
	switch f.form {
	case formTable:
		start := w.Len()
		w.header("["+path+"]", indent)
		empty := w.Len()
		w.table(f.table, v, path, indent)
		if w.Len() == empty {
			w.Truncate(start)
		}
	case formPointer:
		if !v.IsNil() {
			w.header("["+path+"]", indent)
			w.table(f.table, v.Elem(), path, indent)
		}
	case formTables:
		for i := range v.Len() {
			w.header("[["+path+"]]", indent)
			w.table(f.table, v.Index(i), path, indent)
		}
	}
}

func (w *writer) header(text string, indent int) {
	w.WriteByte('\n')
	w.indent(indent)
	w.WriteString(text)
	w.WriteByte('\n')
}

const spaces = "                "

func (w *writer) indent(n int) { w.WriteString(spaces[:n]) }

func (w *writer) assign(k string, indent int) {
	w.indent(indent)
	w.key(k)
	w.WriteString(" = ")
}

func (w *writer) key(k string) {
	bare := k != ""
	for _, c := range []byte(k) {
		bare = bare && (c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == '-')
	}
	if bare {
		w.WriteString(k)
	} else {
		w.text(k)
	}
}

// worthWriting says whether a field of table v says more than its default, or must
// be there.
func (f *field) worthWriting(v reflect.Value) bool {
	fv := v.Field(f.index)
	switch f.form {
	case formNumber:
		d := *fv.Addr().Interface().(*Decimal)
		if unset(d) && f.rule.RequiredFor != "" {
			return false
		}
		if !sameSpelling(d, *f.defaultValue.Addr().Interface().(*Decimal)) {
			return true
		}
	case formMaybe:
		return fv.Addr().Interface().(*Maybe).Set
	case formNumbers:
		return true
	case formMonth:
		if *fv.Addr().Interface().(*Month) == (Month{}) {
			return false
		}
		return true
	case formDate:
		return *fv.Addr().Interface().(*Date) != Date{}
	case formText:
		if fv.String() != f.defaultValue.String() {
			return true
		}
	case formWhole:
		if fv.Int() != f.defaultValue.Int() {
			return true
		}
	case formTruth:
		return fv.Bool() != f.defaultValue.Bool()
	}
	return f.mustBeIn(v)
}

func (w *writer) value(f *field, v reflect.Value) {
	switch f.form {
	case formText:
		w.text(v.String())
	case formWhole:
		w.Write(strconv.AppendInt(w.AvailableBuffer(), v.Int(), 10))
	case formTruth:
		w.Write(strconv.AppendBool(w.AvailableBuffer(), v.Bool()))
	case formNumber:
		w.number(*v.Addr().Interface().(*Decimal))
	case formMaybe:
		w.number(v.Addr().Interface().(*Maybe).Decimal)
	case formNumbers:
		for i, d := range v.Addr().Interface().(*[12]Decimal) {
			w.WriteString([]string{"[", ", "}[min(i, 1)])
			w.number(d)
		}
		w.WriteByte(']')
	case formMonth:
		w.text(v.Interface().(Month).String())
	case formDate:
		w.WriteString(v.Interface().(Date).String())
	}
}

func (w *writer) number(d Decimal) {
	w.WriteByte('"')
	w.WriteString(spell(d))
	w.WriteByte('"')
}

// anything writes what Extra holds; tables inline.
func (w *writer) anything(v any) {
	switch x := v.(type) {
	case string:
		w.text(x)
	case Verbatim:
		w.WriteString(string(x))
	case []any:
		w.WriteByte('[')
		for i, e := range x {
			if i > 0 {
				w.WriteString(", ")
			}
			w.anything(e)
		}
		w.WriteByte(']')
	case map[string]any:
		w.WriteByte('{')
		for i, k := range slices.Sorted(maps.Keys(x)) {
			if i > 0 {
				w.WriteString(", ")
			}
			w.key(k)
			w.WriteString(" = ")
			w.anything(x[k])
		}
		w.WriteByte('}')
	default:
		w.text(fmt.Sprint(x)) // Read puts nothing else there
	}
}

// text writes a TOML basic string. What is no UTF-8 becomes U+FFFD.
func (w *writer) text(s string) {
	w.WriteByte('"')
	for _, r := range s {
		switch {
		case r == '"' || r == '\\':
			w.WriteByte('\\')
			w.WriteRune(r)
		case r == '\n':
			w.WriteString(`\n`)
		case r == '\t':
			w.WriteString(`\t`)
		case r == '\r':
			w.WriteString(`\r`)
		case r < ' ' || r == 0x7f:
			fmt.Fprintf(w, `\u%04X`, r)
		case r < utf8.RuneSelf:
			w.WriteByte(byte(r))
		default:
			w.WriteRune(r)
		}
	}
	w.WriteByte('"')
}
