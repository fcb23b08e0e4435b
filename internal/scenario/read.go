package scenario

import (
	"reflect"
	"strings"

	"reelworth/internal/tomltext"
)

// Schema is the version of the file format that this package writes.
const Schema = 1

// schemaLine is how a file of it begins.
const schemaLine = "schema = 1"

// Limits of a file and of a scenario.
const (
	MaxScenarios = 5000
	MaxOffers    = 50
	MaxRates     = 60
	MaxRanges    = 1000
	MaxReels     = 500 // in hand
	MaxRows      = 500 // of each kind in a reel's log
	MaxSeen      = 500 // prices of an offer
)

// Reading is everything a file has to say.
type Reading struct {
	File    File
	Faults  []Fault  // in the order of the file
	Notices []Notice // in the order of the file
}

// Read reads a scenario file. It reports all faults at once, in the order of the
// file, and fills in what could be read; it never panics.
func Read(data []byte) (File, []Fault) {
	r := Inspect(data)
	return r.File, r.Faults
}

// Inspect is Read with what is odd but no fault besides.
func Inspect(data []byte) Reading {
	doc, root, f := decode(data)
	if f != nil {
		return Reading{File: File{Schema: Schema}, Faults: []Fault{*f}}
	}
	var faults tally
	top := &reporter{faults: &faults, where: root, scenario: -1}
	file := File{Schema: Schema}
	if found, ok := readSchema(doc, top); !ok {
		file.Schema = found
		return Reading{File: file, Faults: faults.inOrder()}
	}
	r := reader{reporter: top}
	file.Extra = r.extra(tableOf(reflect.TypeFor[File]()), doc, root, nil)
	file.Reels = readReels(doc[reelKey], root, top)
	file.Scenarios = readScenarios(doc[scenarioKey], root, top)
	return Reading{file, faults.inOrder(), notices(file, root)}
}

// readSchema finds the version, brings an older file up to date, and says whether
// to go on.
func readSchema(doc map[string]any, r *reporter) (found int, goOn bool) {
	at := []step{key("schema")}
	v, ok := doc["schema"]
	if !ok {
		r.fault(at, NoSchema, Args{Example: schemaLine})
		return Schema, true
	}
	n, ok := v.(int64)
	if !ok || n < 1 {
		r.fault(at, WrongSchema, Args{Example: schemaLine})
		return Schema, true
	}
	if n > Schema {
		r.fault(at, NewerSchema, Args{Have: int(n), Most: Schema})
		return int(n), false
	}
	migrate(doc, int(n), migrations)
	return Schema, true
}

// scenarioKey is the key of the scenarios in the file.
const scenarioKey = "scenario"

func readScenarios(v any, root *tomltext.Node, top *reporter) []Scenario {
	at := key(scenarioKey)
	if v == nil {
		top.fault([]step{at}, MissingTable, Args{Example: "[[scenario]]", Keys: tableOf(reflect.TypeFor[Scenario]()).needed()})
		return nil
	}
	list, ok := asTables(v)
	if !ok {
		top.fault([]step{at}, NotTables, Args{Example: "[[scenario]]"})
		return nil
	}
	if len(list) > MaxScenarios {
		top.fault([]step{{at.key, MaxScenarios}}, ScenarioMost, Args{Have: len(list), Most: MaxScenarios})
		list = list[:MaxScenarios]
	}
	nodes := root.Child(scenarioKey)
	out := make([]Scenario, len(list))
	reporters := make([]reporter, len(list))
	typ := tableOf(reflect.TypeFor[Scenario]())
	for i, m := range list {
		rep := &reporters[i]
		*rep = reporter{faults: top.faults, where: nodes.Item(i), scenario: i}
		if rep.several = len(list) > 1; rep.several {
			rep.name, _ = m["name"].(string)
		}
		r := reader{reporter: rep}
		r.table(typ, reflect.ValueOf(&out[i]).Elem(), m, rep.where)
		check(&out[i], rep)
	}
	checkScenarioNames(out, reporters)
	return out
}

// reader fills typed tables from decoded ones.
type reader struct {
	*reporter
	path []step
}

// table reads one table; what cannot be read keeps its default.
func (r *reader) table(t *table, v reflect.Value, m map[string]any, n *tomltext.Node) {
	t.setDefaults(v)
	known := 0
	var unread []string
	for i := range t.fields {
		f := &t.fields[i]
		value, ok := m[f.key]
		if !ok {
			continue
		}
		known++
		r.path = append(r.path, key(f.key))
		if !r.field(f, f.of(v), value, n.Child(f.key)) {
			unread = append(unread, f.key)
		}
		r.path = r.path[:len(r.path)-1]
	}
	for i := range t.fields {
		if f := &t.fields[i]; f.mustBeIn(v) {
			if _, ok := m[f.key]; !ok {
				r.missing(f)
				unread = append(unread, f.key)
			}
		}
	}
	if known < len(m) || len(unread) > 0 {
		v.Field(t.extra).Set(reflect.ValueOf(r.extra(t, m, n, unread)))
	}
}

func (r *reader) missing(f *field) {
	at := sub(r.path, key(f.key))
	if f.form == formTable {
		r.fault(at, MissingTable, Args{Example: header(at, "[", "]"), Keys: f.table.needed()})
		return
	}
	r.fault(at, Missing, Args{Example: example(f)})
}

// header is the line above a table of a scenario, or of a reel in hand.
func header(p []step, open, shut string) string {
	var keys []string
	if p[0].key != reelKey {
		keys = append(keys, "scenario")
	}
	for _, s := range p {
		keys = append(keys, s.key)
	}
	return open + strings.Join(keys, ".") + shut
}

// field reads one value, and says whether it could be read; what is in a table is for
// the table to say.
func (r *reader) field(f *field, v reflect.Value, value any, n *tomltext.Node) bool {
	found := r.faults.all
	switch f.form {
	case formTable:
		if m, ok := value.(map[string]any); ok {
			r.table(f.table, v, m, n)
			return true
		}
		r.wrong(NotTable, Args{Example: header(r.path, "[", "]")})
	case formPointer:
		if m, ok := value.(map[string]any); ok {
			p := reflect.New(f.table.typ)
			r.table(f.table, p.Elem(), m, n)
			v.Set(p)
			return true
		}
		r.wrong(NotTable, Args{Example: header(r.path, "[", "]")})
	case formTables:
		return r.list(f, v, value, n)
	case formNumbers:
		r.numbers(f, v, value, n)
	default:
		r.scalar(f, v, value, n)
	}
	return r.faults.all == found
}

func (r *reader) wrong(code Code, args Args) { r.fault(r.path, code, args) }

// list reads an array of tables, and says whether it is one.
func (r *reader) list(f *field, v reflect.Value, value any, n *tomltext.Node) bool {
	tables, ok := asTables(value)
	if !ok {
		r.wrong(NotTables, Args{Example: header(r.path, "[[", "]]")})
		return false
	}
	at := len(r.path) - 1
	if most := limitOf(f.table.typ); len(tables) > most {
		r.fault(sub(r.path[:at], element(f.key, most)), TooMany, Args{Have: len(tables), Most: most})
		tables = tables[:most]
	}
	if len(tables) == 0 {
		return true
	}
	out := reflect.MakeSlice(v.Type(), len(tables), len(tables))
	for i, m := range tables {
		r.path[at].item = i
		r.table(f.table, out.Index(i), m, n.Item(i))
	}
	v.Set(out)
	return true
}

// limitOf is how many tables of a type a scenario or a reel in hand may have.
func limitOf(typ reflect.Type) int {
	switch typ {
	case reflect.TypeFor[Offer]():
		return MaxOffers
	case reflect.TypeFor[Rate]():
		return MaxRates
	case reflect.TypeFor[Range]():
		return MaxRanges
	case reflect.TypeFor[Load](), reflect.TypeFor[Result](), reflect.TypeFor[Recount]():
		return MaxRows
	case reflect.TypeFor[Seen]():
		return MaxSeen
	}
	return MaxBytes
}

// asTables takes [[x]] tables and inline ones alike.
func asTables(v any) ([]map[string]any, bool) {
	switch list := v.(type) {
	case []map[string]any:
		return list, true
	case []any:
		out := make([]map[string]any, len(list))
		for i, e := range list {
			m, ok := e.(map[string]any)
			if !ok {
				return nil, false
			}
			out[i] = m
		}
		return out, true
	}
	return nil, false
}

// numbers reads the twelve months.
func (r *reader) numbers(f *field, v reflect.Value, value any, n *tomltext.Node) {
	list, ok := value.([]any)
	if !ok {
		r.wrong(WrongKind, Args{Got: spelt(n), Is: kindOf(value), Wanted: ValueList, Example: example(f)})
		return
	}
	if len(list) != v.Len() {
		r.wrong(WrongCount, Args{Have: len(list), Most: v.Len()})
		return
	}
	at := len(r.path) - 1
	for i, e := range list {
		r.path[at].item = i
		if d, ok := r.number(e, n.Item(i)); ok {
			v.Index(i).Set(reflect.ValueOf(d))
		}
	}
}
