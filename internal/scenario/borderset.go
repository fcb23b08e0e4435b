package scenario

import (
	"reflect"

	"reelworth/internal/tomltext"
)

// BorderSet is a set of border rules of the user's own, to be used in scenarios kept in its
// currency. It is what somebody found out on a day, and no fact.
type BorderSet struct {
	Name     string `toml:"name" rule:"required,longest=200"`
	Date     Date   `toml:"date"` // the day they were looked up
	Source   string `toml:"source" rule:"longest=2000"`
	Currency string `toml:"currency" rule:"required,currency"` // of its limits and fee
	Border   Border `toml:"border"`
	Extra    Extra
}

// BorderSets is a file of them.
type BorderSets struct {
	Schema int         `toml:"schema" rule:"required"`
	Sets   []BorderSet `toml:"set"`
	Extra  Extra
}

// MaxBorderSets is how many sets a file may have.
const MaxBorderSets = 500

// setKey is the key of the sets in their file.
const setKey = "set"

// ReadBorderSets reads a file of border rules. It reports all faults at once, in the order of
// the file, and fills in what could be read. An empty file has no sets.
func ReadBorderSets(data []byte) (BorderSets, []Fault) {
	sets := BorderSets{Schema: Schema}
	if len(data) == 0 {
		return sets, nil
	}
	doc, root, f := decode(data)
	if f != nil {
		return sets, []Fault{*f}
	}
	var faults tally
	top := &reporter{faults: &faults, where: root, scenario: -1}
	found, ok := readSchema(doc, top)
	if !ok {
		sets.Schema = found
		return sets, faults.inOrder()
	}
	sets.Extra = (&reader{reporter: top}).extra(tableOf(reflect.TypeFor[BorderSets]()), doc, root, nil)
	sets.Sets = readBorderSets(doc[setKey], root, top)
	return sets, faults.inOrder()
}

func readBorderSets(v any, root *tomltext.Node, top *reporter) []BorderSet {
	if v == nil {
		return nil
	}
	list, ok := asTables(v)
	if !ok {
		top.fault([]step{key(setKey)}, NotTables, Args{Example: "[[set]]"})
		return nil
	}
	if len(list) > MaxBorderSets {
		top.fault([]step{element(setKey, MaxBorderSets)}, TooMany, Args{Have: len(list), Most: MaxBorderSets})
		list = list[:MaxBorderSets]
	}
	nodes, typ := root.Child(setKey), tableOf(reflect.TypeFor[BorderSet]())
	out, first := make([]BorderSet, len(list)), map[string]int{}
	for i, m := range list {
		at := []step{element(setKey, i)}
		r := reader{reporter: top, path: at}
		r.table(typ, reflect.ValueOf(&out[i]).Elem(), m, nodes.Item(i))
		c := checker{reporter: top, path: at}
		c.table(typ, reflect.ValueOf(&out[i]).Elem())
		if j, taken := first[out[i].Name]; taken && out[i].Name != "" {
			top.fault(sub(at, key("name")), NameTaken, Args{Got: out[i].Name, Table: setKey, Other: j + 1})
		} else {
			first[out[i].Name] = i
		}
	}
	return out
}

// CheckBorderSets reports what is wrong with sets that did not come from a file. Lines are 0.
func CheckBorderSets(f BorderSets) []Fault {
	_, faults := ReadBorderSets(tomltext.Write(treeOfBorderSets(&f, false)))
	for i := range faults {
		faults[i].Line = 0
	}
	return faults
}

// UpdateBorderSets is a file's text, changed where f says something else than it: comments,
// order and unknown keys stay. A text that has faults must not be changed: what could not
// be read of it would be lost.
func UpdateBorderSets(text []byte, f BorderSets) []byte {
	now := treeOfBorderSets(&f, true)
	if len(text) == 0 {
		return tomltext.Write(now)
	}
	was, _ := ReadBorderSets(text)
	edited, err := tomltext.Edit(string(text), treeOfBorderSets(&was, true), now)
	if err != nil {
		return tomltext.Write(now)
	}
	if again, faults := ReadBorderSets([]byte(edited)); len(faults) > 0 || !tomltext.Same(treeOfBorderSets(&again, true), now) {
		return tomltext.Write(now)
	}
	return []byte(edited)
}

func treeOfBorderSets(f *BorderSets, all bool) *tomltext.Table {
	g := *f
	g.Schema = Schema
	return tableOf(reflect.TypeFor[BorderSets]()).tree(reflect.ValueOf(&g).Elem(), all)
}

// BorderSetOf is the border of a scenario as a set.
func BorderSetOf(s *Scenario, name string, on Date, source string) BorderSet {
	r := BorderSet{Name: name, Date: on, Source: source, Currency: s.Home, Border: s.Border}
	r.Border.Extra = nil
	return r
}

// WithBorderSet is a scenario with the border of a set, which must be in its home currency.
func WithBorderSet(s Scenario, r BorderSet) Scenario {
	s = s.Clone()
	b := r.Border
	b.Extra = s.Border.Extra
	s.Border = b
	return s
}

// HasBorderSet says whether a scenario has the border of a set already.
func HasBorderSet(s *Scenario, r *BorderSet) bool {
	next := WithBorderSet(*s, *r)
	typ := tableOf(reflect.TypeFor[Border]())
	tree := func(b Border) *tomltext.Table {
		b.Extra = nil
		return typ.tree(reflect.ValueOf(&b).Elem(), true)
	}
	return s.Home == r.Currency && tomltext.Same(tree(s.Border), tree(next.Border))
}
