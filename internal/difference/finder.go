package difference

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"reelworth/internal/scenario"
)

// finder collects differences.
type finder struct {
	found      []Difference
	most, more int
}

// place is where in the file a table stands.
type place struct {
	path     string // as in scenario.Field.Table
	scenario string // its name
	of       string // the named table this is, or is in
}

func (p place) below(key string) place {
	p.path = strings.TrimPrefix(p.path+"."+key, ".")
	return p
}

// add notes a difference at a place.
func (f *finder) add(at place, d Difference) {
	if len(f.found) >= f.most {
		f.more++
		return
	}
	d.Key, d.Scenario, d.Of = at.path, at.scenario, at.of
	f.found = append(f.found, d)
}

// table compares two tables of one type, field by field.
func (f *finder) table(from, to reflect.Value, at place) {
	for i := range from.NumField() {
		sf := from.Type().Field(i)
		a, b, inside := from.Field(i), to.Field(i), at.below(sf.Tag.Get("toml"))
		switch {
		case sf.Type == reflect.TypeFor[scenario.Extra]():
			f.extra(from.Type(), a.Interface().(scenario.Extra), b.Interface().(scenario.Extra), at)
		case isScalar(sf.Type) && at.path == "":
			// The version of the file format is the program's, not the user's.
		case isScalar(sf.Type):
			f.scalar(a, b, inside)
		case sf.Type.Kind() == reflect.Array:
			f.numbers(a, b, inside)
		case sf.Type.Kind() == reflect.Slice:
			f.list(a, b, inside)
		case sf.Type.Kind() == reflect.Pointer:
			f.optional(a, b, inside)
		case sf.Anonymous: // its keys are the table's own
			f.table(a, b, at)
		default:
			f.table(a, b, inside)
		}
	}
}

func (f *finder) scalar(a, b reflect.Value, at place) {
	was, is := spelt(a), spelt(b)
	switch {
	case was == is:
	case a.Kind() == reflect.Bool:
		f.add(at, Difference{Kind: Truth, Was: was, Is: is})
	default:
		f.add(at, Difference{Kind: Value, Was: was, Is: is})
	}
}

// numbers compares a row of numbers; a few others are told one by one.
func (f *finder) numbers(a, b reflect.Value, at place) {
	const few = 3
	var others []Difference
	for i := range a.Len() {
		if was, is := spelt(a.Index(i)), spelt(b.Index(i)); was != is {
			others = append(others, Difference{Kind: Value, Was: was, Is: is, Number: i + 1})
		}
	}
	if len(others) > few {
		others = []Difference{{Kind: Numbers, Have: len(others), Most: a.Len()}}
	}
	for _, d := range others {
		f.add(at, d)
	}
}

func (f *finder) optional(a, b reflect.Value, at place) {
	switch {
	case a.IsNil() && b.IsNil():
	case a.IsNil():
		f.add(at, Difference{Kind: Added})
	case b.IsNil():
		f.add(at, Difference{Kind: Removed})
	default:
		f.table(a.Elem(), b.Elem(), at)
	}
}

// extra compares keys that this version does not know, and values that it could not read.
func (f *finder) extra(in reflect.Type, a, b scenario.Extra, at place) {
	var keys []string
	for k := range a {
		keys = append(keys, k)
	}
	for k := range b {
		if _, both := a[k]; !both {
			keys = append(keys, k)
		}
	}
	slices.Sort(keys)
	text := func(v any) string {
		if v == nil {
			return ""
		}
		return fmt.Sprint(v)
	}
	for _, k := range keys {
		if reflect.DeepEqual(a[k], b[k]) {
			continue
		}
		kind := Unknown
		if hasKey(in, k) {
			kind = Unread
		}
		f.add(at.below(k), Difference{Kind: kind, Was: text(a[k]), Is: text(b[k])})
	}
}

// hasKey says whether tables of a type have a field of that key.
func hasKey(in reflect.Type, key string) bool {
	return slices.ContainsFunc(reflect.VisibleFields(in), func(f reflect.StructField) bool { return f.Tag.Get("toml") == key })
}

// list compares two lists of tables, each table with the one it came from.
func (f *finder) list(a, b reflect.Value, at place) {
	pairs, gone := match(a, b)
	for _, i := range gone {
		f.add(at, Difference{Kind: Left, Was: title(a.Index(i))})
	}
	inOrder := slices.IsSortedFunc(slices.DeleteFunc(slices.Clone(pairs), isNew), cmp.Compare[int])
	for j, i := range pairs {
		inside, name := at, title(b.Index(j))
		if at.path == "scenario" {
			inside.scenario = name
		} else {
			inside.of = name
		}
		if isNew(i) {
			f.add(at, Difference{Kind: Joined, Is: name})
		} else {
			f.table(a.Index(i), b.Index(j), inside)
		}
	}
	if !inOrder {
		f.add(at, Difference{Kind: Order})
	}
}
