package tomltext

// Table is what a table is to say: its keys in the order in which they are written.
type Table struct {
	Name  string // tells it from the others of a list; "" where nothing does
	Pairs []Pair
}

// Pair is a key and its value.
type Pair struct {
	Key   string
	Value Value // nil says nothing: the key is not there
	// Implied is what a missing key means too: it is written only where the key stands
	// already.
	Implied bool
}

// Value is one of Plain, List, Inline, *Table and Tables.
type Value any

// The values besides *Table, which is written with a header of its own.
type (
	Plain  string   // a scalar, as TOML spells it
	List   []Value  // an array
	Inline []Pair   // a table in braces
	Tables []*Table // an array of tables, each with a header
)

// Same says whether two tables say the same.
func Same(a, b *Table) bool { return samePairs(a.Pairs, b.Pairs) }

func samePairs(a, b []Pair) bool {
	for len(a) > 0 && len(b) > 0 && a[0].Key == b[0].Key { // as good as always
		if !same(a[0].Value, b[0].Value) {
			return false
		}
		a, b = a[1:], b[1:]
	}
	for _, p := range a {
		if !same(p.Value, valueOf(b, p.Key)) {
			return false
		}
	}
	for _, p := range b {
		if p.Value != nil && valueOf(a, p.Key) == nil {
			return false
		}
	}
	return true
}

func same(a, b Value) bool {
	if t, ok := a.(*Table); ok && t != nil && b == Value(t) {
		return true // one table, as of what nobody touched
	}
	if pairs, ok := pairsOf(a); ok {
		others, ok := pairsOf(b)
		return ok && samePairs(pairs, others)
	}
	switch x := a.(type) {
	case nil:
		return b == nil
	case Plain:
		return a == b
	case List:
		y, ok := b.(List)
		return ok && sameAll(x, y)
	case Tables:
		y, ok := b.(Tables)
		return ok && sameAll(x, y)
	}
	return false
}

func sameAll[T any](a, b []T) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !same(a[i], b[i]) {
			return false
		}
	}
	return true
}

// pairsOf are the pairs of a table of either form; a *Table that is nil is none.
func pairsOf(v Value) ([]Pair, bool) {
	switch x := v.(type) {
	case *Table:
		return x.Pairs, true
	case Inline:
		return x, true
	}
	return nil, false
}

func valueOf(pairs []Pair, key string) Value {
	for _, p := range pairs {
		if p.Key == key {
			return p.Value
		}
	}
	return nil
}

// hasHeader says whether a value is written with a header.
func hasHeader(v Value) bool {
	switch v.(type) {
	case *Table, Tables:
		return true
	}
	return false
}
