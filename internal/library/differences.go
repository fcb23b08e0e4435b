package library

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"reelworth/internal/scenario"
)

// MostDifferences is how many differences are told one by one.
const MostDifferences = 20

// Differences says in words what is other in one file than in another, a sentence
// each: "Quayside year: price of Lanternlight 500: 118.00 → 119.00". Where there are
// too many the last sentence says how many more. It goes by the keys of the file, so
// it needs to know no field.
func Differences(from, to scenario.File) []string {
	d := differ{}
	d.table(reflect.ValueOf(from), reflect.ValueOf(to), place{})
	if d.more > 0 {
		d.said = append(d.said, fmt.Sprintf("… and %d more", d.more))
	}
	return d.said
}

// differ collects differences.
type differ struct {
	said []string
	more int
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

func (d *differ) say(at place, format string, args ...any) {
	if len(d.said) >= MostDifferences {
		d.more++
		return
	}
	said := fmt.Sprintf(format, args...)
	if at.scenario != "" {
		said = short(at.scenario) + ": " + said
	}
	d.said = append(d.said, said)
}

// table compares two tables of one type, field by field.
func (d *differ) table(from, to reflect.Value, at place) {
	for i := range from.NumField() {
		f := from.Type().Field(i)
		key, a, b := f.Tag.Get("toml"), from.Field(i), to.Field(i)
		switch {
		case f.Type == reflect.TypeFor[scenario.Extra]():
			d.extra(from.Type(), a.Interface().(scenario.Extra), b.Interface().(scenario.Extra), at)
		case isScalar(f.Type) && at.path == "":
			// The version of the file format is the program's, not the user's.
		case isScalar(f.Type):
			d.scalar(key, a, b, at)
		case f.Type.Kind() == reflect.Array:
			d.numbers(key, a, b, at)
		case f.Type.Kind() == reflect.Slice:
			d.list(a, b, at.below(key))
		case f.Type.Kind() == reflect.Pointer:
			d.optional(key, a, b, at)
		case f.Anonymous: // its keys are the table's own
			d.table(a, b, at)
		default:
			d.table(a, b, at.below(key))
		}
	}
}

func (d *differ) scalar(key string, a, b reflect.Value, at place) {
	if was, is := spelt(a), spelt(b); was != is {
		was, is = unlike(was, is)
		d.say(at, "%s: %s → %s", at.name(key), shown(was), shown(is))
	}
}

// numbers compares a row of numbers; a few others are told one by one.
func (d *differ) numbers(key string, a, b reflect.Value, at place) {
	const few = 3
	var others []string
	for i := range a.Len() {
		if was, is := spelt(a.Index(i)), spelt(b.Index(i)); was != is {
			others = append(others, fmt.Sprintf("%s, no. %d: %s → %s", at.name(key), i+1, was, is))
		}
	}
	if len(others) > few {
		others = []string{fmt.Sprintf("%s: %d of %d numbers are others", at.name(key), len(others), a.Len())}
	}
	for _, o := range others {
		d.say(at, "%s", o)
	}
}

func (d *differ) optional(key string, a, b reflect.Value, at place) {
	switch {
	case a.IsNil() && b.IsNil():
	case a.IsNil():
		d.say(at, "%s: added", at.name(key))
	case b.IsNil():
		d.say(at, "%s: removed", at.name(key))
	default:
		d.table(a.Elem(), b.Elem(), at.below(key))
	}
}

// extra compares keys that this version does not know, and values that it could not read.
func (d *differ) extra(in reflect.Type, a, b scenario.Extra, at place) {
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
	for _, k := range keys {
		was, is := fmt.Sprint(a[k]), fmt.Sprint(b[k])
		if reflect.DeepEqual(a[k], b[k]) {
			continue
		}
		if a[k] == nil {
			was = ""
		}
		if b[k] == nil {
			is = ""
		}
		name := "unknown key " + of(short(k), at)
		if hasKey(in, k) {
			name = at.name(k)
		}
		d.say(at, "%s: %s → %s", name, shown(was), shown(is))
	}
}

// hasKey says whether tables of a type have a field of that key.
func hasKey(in reflect.Type, key string) bool {
	for _, f := range reflect.VisibleFields(in) {
		if f.Tag.Get("toml") == key {
			return true
		}
	}
	return false
}

// list compares two lists of tables, each table with the one it came from.
func (d *differ) list(a, b reflect.Value, at place) {
	noun := nouns[at.path[strings.LastIndex(at.path, ".")+1:]]
	pairs, gone := match(a, b)
	for _, i := range gone {
		d.say(at, "%s was taken away%s: %s", noun.one, of("", at), short(title(a.Index(i))))
	}
	inOrder := slices.IsSortedFunc(slices.DeleteFunc(slices.Clone(pairs), isNew), cmp.Compare[int])
	for j, i := range pairs {
		inside, name := at, short(title(b.Index(j)))
		if at.path == "scenario" {
			inside.scenario = name
		} else {
			inside.of = name
		}
		if isNew(i) {
			d.say(at, "%s was added%s: %s", noun.one, of("", at), name)
		} else {
			d.table(a.Index(i), b.Index(j), inside)
		}
	}
	if !inOrder {
		d.say(at, "the order of the %s is another%s", noun.many, of("", at))
	}
}
