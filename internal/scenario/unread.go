package scenario

import (
	"reflect"
	"slices"
	"strconv"
	"strings"

	"reelworth/internal/tomltext"
)

// A value that could not be read stays in its table's Extra under its own key, as the
// value of an unknown key does: so it is written again as it was, goes where its table
// goes, and Check finds its fault again. Of a key that must be there and is missing it
// is nil. It stands until the field has another value.

// unread is what stands at a field of table v and could not be read.
func (t *table) unread(v reflect.Value, f *field) (any, bool) {
	extra := v.Field(t.extra).Interface().(Extra)
	if len(extra) == 0 {
		return nil, false
	}
	x, there := extra[f.key]
	return x, there && f.holdsNothing(v) && (x != nil || f.mustBeIn(v))
}

// holdsNothing says whether a field of table v has no value of its own. A list of numbers
// may have some that could be read.
func (f *field) holdsNothing(v reflect.Value) bool {
	fv := f.of(v)
	switch f.form {
	case formNumbers:
		return true
	case formPointer:
		return fv.IsNil()
	case formTables:
		return fv.Len() == 0
	case formTable:
		untouched := reflect.New(f.table.typ).Elem()
		f.table.setDefaults(untouched)
		return reflect.DeepEqual(fv.Interface(), untouched.Interface())
	}
	return reflect.DeepEqual(fv.Interface(), f.defaultValue.Interface())
}

// again finds the fault of a value that could not be read. A file's own were found when
// it was read.
func (c *checker) again(f *field, x any) {
	if c.where != nil {
		return
	}
	r := reader{reporter: c.reporter, path: slices.Clone(c.path)}
	if x == nil {
		r.path = r.path[:len(r.path)-1]
		r.missing(f)
		return
	}
	line := tomltext.Write(&tomltext.Table{Pairs: []tomltext.Pair{{Key: f.key, Value: anything(x)}}})
	doc, root, fault := decode(line)
	if fault != nil {
		return // it was TOML when it was read
	}
	r.field(f, reflect.New(f.typ).Elem(), doc[f.key], root.Child(f.key))
}

// Unread is how a value is spelt that could not be read, by its path as in a Fault: for a
// form, which has to show what stands there. It is "" where the value could be read.
func (s *Scenario) Unread(path string) string {
	t, v, f := s.fieldAt(path)
	if f == nil {
		return ""
	}
	x, there := t.unread(v, f)
	if !there || x == nil {
		return ""
	}
	if list, ok := x.([]any); ok && f.form == formNumbers {
		if _, item := splitIndex(path[strings.LastIndexByte(path, '.')+1:]); f.hasItem(list, item) {
			if isNumber(list[item]) {
				return ""
			}
			x = list[item]
		}
	}
	if text, ok := x.(string); ok {
		return text
	}
	return tomltext.OneLine(anything(x))
}

// hasItem says whether a list of numbers has a place and is as long as it should be.
func (f *field) hasItem(list []any, item int) bool {
	return item >= 0 && item < len(list) && len(list) == f.typ.Len()
}

// isNumber says whether what stands in a list of numbers could be read.
func isNumber(x any) bool {
	if v, ok := x.(Verbatim); ok {
		n, err := strconv.ParseInt(string(v), 0, 64)
		return err == nil && n < 1e12 && n > -1e12
	}
	text, _ := x.(string)
	_, wrong := parseNumber(text)
	return wrong == ""
}

// Settle says that the value at a path was given anew, were it the same as before: what
// stood there and could not be read is gone. s must be a clone.
func (s *Scenario) Settle(path string) {
	_, item := splitIndex(path[strings.LastIndexByte(path, '.')+1:])
	s.alongPath(path, func(t *table, v reflect.Value, f *field) {
		if !t.settleItem(v, f, item) {
			t.forget(v, f)
		}
	})
}

// settleItem puts a number's new value into a list of which another number could not be
// read; it says whether there is such.
func (t *table) settleItem(v reflect.Value, f *field, item int) bool {
	if f.form != formNumbers {
		return false
	}
	list, ok := v.Field(t.extra).Interface().(Extra)[f.key].([]any)
	if !ok || !f.hasItem(list, item) {
		return false
	}
	list[item] = Spell(f.of(v).Interface().([12]Decimal)[item])
	return slices.ContainsFunc(list, func(x any) bool { return !isNumber(x) })
}

// SettleAll is Settle wherever a field has another value by now. s must be a clone.
func (s *Scenario) SettleAll() {
	eachTable(tableOf(reflect.TypeFor[Scenario]()), reflect.ValueOf(s).Elem(), nil, func(t *table, v reflect.Value, _ []step) {
		if v.Field(t.extra).Len() == 0 {
			return
		}
		for i := range t.fields {
			if f := &t.fields[i]; !f.holdsNothing(v) {
				t.forget(v, f)
			}
		}
	})
}

// forget takes what could not be read at a field out of table v.
func (t *table) forget(v reflect.Value, f *field) {
	extra := v.Field(t.extra)
	delete(extra.Interface().(Extra), f.key)
	if extra.Len() == 0 {
		extra.SetZero()
	}
}

// fieldAt is the field at a path, such as "offer[2].reel.exposures", and the table it is
// in; f is nil where there is none.
func (s *Scenario) fieldAt(path string) (t *table, v reflect.Value, f *field) {
	return s.alongPath(path, func(*table, reflect.Value, *field) {})
}

// alongPath is fieldAt that visits the fields on the way too.
func (s *Scenario) alongPath(path string, visit func(t *table, v reflect.Value, f *field)) (t *table, v reflect.Value, f *field) {
	t, v = tableOf(reflect.TypeFor[Scenario]()), reflect.ValueOf(s).Elem()
	for keys := strings.Split(path, "."); ; keys = keys[1:] {
		name, item := splitIndex(keys[0])
		if f = t.field(name); f == nil {
			return t, v, nil
		}
		visit(t, v, f)
		if len(keys) == 1 {
			return t, v, f
		}
		v, t = f.of(v), f.table
		switch {
		case t == nil:
			return nil, v, nil
		case f.form == formTables && item >= 0 && item < v.Len():
			v = v.Index(item)
		case f.form == formPointer && !v.IsNil():
			v = v.Elem()
		case f.form != formTable:
			return nil, v, nil
		}
	}
}

func (t *table) field(key string) *field {
	for i := range t.fields {
		if t.fields[i].key == key {
			return &t.fields[i]
		}
	}
	return nil
}

// splitIndex takes "offer[2]" apart: the key, and the place from 0, −1 without one.
func splitIndex(part string) (key string, item int) {
	key, rest, indexed := strings.Cut(part, "[")
	n, err := strconv.Atoi(strings.TrimSuffix(rest, "]"))
	if !indexed || err != nil {
		return key, -1
	}
	return key, n - 1
}
