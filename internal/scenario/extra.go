package scenario

import (
	"maps"
	"reflect"
	"slices"
	"strings"

	"reelworth/internal/tomltext"
)

// Verbatim is a number, a date or a truth value of an unknown key, as it is spelt in
// the file, so that 14.80 stays 14.80.
type Verbatim string

// Notice is a key that this version does not know. It is no fault: the key is kept, and
// counts for nothing.
type Notice struct {
	Path     string // as in Fault, from the top of the file: "scenario[1].offer[2].colour"
	Scenario int    // index in File.Scenarios; −1 outside of all
	Line     int
	Near     string // the key most likely meant, "" for none
}

// extra keeps what a table holds beyond its fields, and of these what could not be read;
// nil when nothing.
func (r *reader) extra(t *table, m map[string]any, n *tomltext.Node, unread []string) Extra {
	e := Extra{}
	for k, v := range m {
		if !t.keys[k] {
			e[k] = keep(v, n.Child(k))
		}
	}
	for _, k := range unread {
		e[k] = nil
		if v, there := m[k]; there {
			e[k] = keep(v, n.Child(k))
		}
	}
	if len(e) == 0 {
		return nil
	}
	return e
}

// keep is a decoded value as Extra holds it: text, Verbatim, lists and tables.
func keep(v any, n *tomltext.Node) any {
	switch x := v.(type) {
	case string:
		return x
	case map[string]any:
		out := make(map[string]any, len(x))
		for k, e := range x {
			out[k] = keep(e, n.Child(k))
		}
		return out
	case []map[string]any:
		out := make([]any, len(x))
		for i, e := range x {
			out[i] = keep(e, n.Item(i))
		}
		return out
	case []any:
		out := make([]any, len(x))
		for i, e := range x {
			out[i] = keep(e, n.Item(i))
		}
		return out
	}
	return Verbatim(spelt(n))
}

// Unknown names the keys of a file that this version does not know, such as
// "scenario[1].offer[2].colour". They are kept when the file is written.
func Unknown(f File) []string {
	var names []string
	eachUnknown(f, func(p []step, _ *table) { names = append(names, pathText(p)) })
	return names
}

// eachUnknown visits the unknown keys table by table, with the table each is in.
func eachUnknown(f File, visit func(p []step, in *table)) {
	eachTable(tableOf(reflect.TypeFor[File]()), reflect.ValueOf(f), nil, func(t *table, v reflect.Value, p []step) {
		if e := v.Field(t.extra).Interface().(Extra); len(e) > 0 {
			for _, k := range slices.Sorted(maps.Keys(e)) {
				if !t.keys[k] {
					visit(append(p, key(k)), t)
				}
			}
		}
	})
}

// eachTable visits a table and the tables in it, with their paths.
func eachTable(t *table, v reflect.Value, p []step, visit func(t *table, v reflect.Value, p []step)) {
	visit(t, v, p)
	for i := range t.fields {
		f := &t.fields[i]
		fv := f.of(v)
		switch f.form {
		case formTable:
			eachTable(f.table, fv, append(p, key(f.key)), visit)
		case formPointer:
			if !fv.IsNil() {
				eachTable(f.table, fv.Elem(), append(p, key(f.key)), visit)
			}
		case formTables:
			for i := range fv.Len() {
				eachTable(f.table, fv.Index(i), append(p, element(f.key, i)), visit)
			}
		}
	}
}

// notices names the unknown keys with their lines, in the order of the file.
func notices(f File, root *tomltext.Node) []Notice {
	var list []Notice
	eachUnknown(f, func(p []step, in *table) {
		if len(list) >= maxFaults {
			return
		}
		n := Notice{Path: pathText(p), Scenario: -1, Line: find(root, p).Line, Near: nearest(p[len(p)-1].key, in)}
		if p[0].key == "scenario" && p[0].item >= 0 {
			n.Scenario = p[0].item
		}
		list = append(list, n)
	})
	slices.SortStableFunc(list, func(a, b Notice) int { return a.Line - b.Line })
	return list
}

// nearest is the field of a table that a key is most likely a slip for, or "".
func nearest(k string, in *table) string {
	if len(k) > 40 {
		return ""
	}
	best, most := "", 3 // slips
	for _, f := range in.fields {
		if d := slips(strings.ToLower(k), f.key); d < most && d < len(f.key)/2 {
			best, most = f.key, d
		}
	}
	return best
}

// slips is how many letters must be put in, taken out or changed to make a into b
// (the Levenshtein distance).
func slips(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := diagonal
			if a[i] != b[j] {
				cost++
			}
			diagonal = row[j+1]
			row[j+1] = min(cost, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
