package scenario

import (
	"encoding/json"
	"io/fs"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	tomltest "github.com/toml-lang/toml-test"

	"reelworth/internal/tomltext"
)

// The files of the TOML project's own test suite (github.com/toml-lang/toml-test),
// list by list for the two versions of TOML.
func suite(t testing.TB, kind string) map[string]string {
	t.Helper()
	files := map[string]string{}
	for _, list := range []string{"files-toml-1.0.0", "files-toml-1.1.0"} {
		names, err := fs.ReadFile(tomltest.EmbeddedTests(), list)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range strings.Fields(string(names)) {
			if strings.HasPrefix(name, kind+"/") && strings.HasSuffix(name, ".toml") {
				b, err := fs.ReadFile(tomltest.EmbeddedTests(), name)
				if err != nil {
					t.Fatal(err)
				}
				files[name] = string(b)
			}
		}
	}
	if len(files) < 180 {
		t.Fatalf("only %d files", len(files))
	}
	return files
}

func TestEveryKeyOfTheTomlSuiteIsLocated(t *testing.T) {
	for name, text := range suite(t, "valid") {
		l, line, err := tomltext.Scan(text, pieces...)
		if err != nil {
			t.Errorf("%s:%d: %v", name, line, err)
			continue
		}
		var doc map[string]any
		meta, err := toml.Decode(text, &doc)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		sameShape(t, name, doc, l.Root)
		lines := strings.Split(text, "\n")
		found := map[string]bool{}
		locate(l.Root, nil, func(path []string, n *tomltext.Node) {
			found[toml.Key(path).String()] = true
			if n.Line < 1 || n.Line > len(lines) {
				t.Errorf("%s: %q is said to be at line %d of %d", name, path, n.Line, len(lines))
				return
			}
			last := path[len(path)-1]
			at := lines[n.Line-1]
			if !strings.Contains(at, last) && !strings.ContainsAny(at, `"\`) {
				t.Errorf("%s:%d: %q is not on its line: %s", name, n.Line, path, at)
			}
		})
		for _, k := range meta.Keys() {
			if !found[k.String()] {
				t.Errorf("%s: %s is not located", name, k)
			}
		}
	}
}

// locate visits every key with its path.
func locate(n *tomltext.Node, path []string, visit func([]string, *tomltext.Node)) {
	for _, e := range n.Keys {
		p := append(slices.Clip(path), e.Key)
		visit(p, e.Node)
		locate(e.Node, p, visit)
	}
	for _, item := range n.Items {
		locate(item, path, visit)
	}
}

// sameShape holds the nodes against what the TOML library read.
func sameShape(t *testing.T, name string, v any, n *tomltext.Node) {
	t.Helper()
	if n == nil {
		t.Errorf("%s: a value has no place: %v", name, v)
		return
	}
	if list, ok := v.([]map[string]any); ok {
		v = []any{}
		for _, m := range list {
			v = append(v.([]any), m)
		}
	}
	switch x := v.(type) {
	case map[string]any:
		if len(x) != len(n.Keys) || n.Array || n.Raw != "" {
			t.Errorf("%s: %d keys at line %d, want %d", name, len(n.Keys), n.Line, len(x))
		}
		for k, e := range x {
			sameShape(t, name, e, n.Child(k))
		}
	case []any:
		if len(x) != len(n.Items) || !n.Array {
			t.Errorf("%s: %d elements at line %d, want %d", name, len(n.Items), n.Line, len(x))
		}
		for i, e := range x {
			sameShape(t, name, e, n.Item(i))
		}
	default:
		if n.Raw == "" {
			t.Errorf("%s: no spelling of %v", name, v)
		}
	}
}

// What our types touch reads as the suite's JSON says: text, whole numbers, truth
// values, dates, lists and tables.
func TestValuesOfTheTomlSuiteReadAsItsJSONSays(t *testing.T) {
	compared := 0
	for name, text := range suite(t, "valid") {
		doc, root, f := decode([]byte(text))
		if f != nil {
			t.Errorf("%s: %v", name, f)
			continue
		}
		b, err := fs.ReadFile(tomltest.EmbeddedTests(), strings.TrimSuffix(name, ".toml")+".json")
		if err != nil {
			t.Fatal(err)
		}
		var want any
		if err := json.Unmarshal(b, &want); err != nil {
			t.Fatal(err)
		}
		compared += sameAsJSON(t, name, want, keep(doc, root))
	}
	if compared < 500 {
		t.Errorf("only %d values compared", compared)
	}
}

func sameAsJSON(t *testing.T, name string, want, got any) (compared int) {
	t.Helper()
	switch w := want.(type) {
	case []any:
		g, ok := got.([]any)
		if !ok || len(g) != len(w) {
			t.Errorf("%s: %v, want %v", name, got, want)
			return
		}
		for i := range w {
			compared += sameAsJSON(t, name, w[i], g[i])
		}
		return compared
	case map[string]any:
		if text, typ, ok := jsonScalar(w); ok {
			if have := readAs(typ, got); have != "" && have != text {
				t.Errorf("%s: %s, want %s %s", name, have, typ, text)
			}
			return 1
		}
		g, ok := got.(map[string]any)
		if !ok || !slices.Equal(slices.Sorted(maps.Keys(w)), slices.Sorted(maps.Keys(g))) {
			t.Errorf("%s: %v, want %v", name, got, want)
			return
		}
		for k := range w {
			compared += sameAsJSON(t, name, w[k], g[k])
		}
	}
	return compared
}

func jsonScalar(m map[string]any) (value, typ string, ok bool) {
	typ, isType := m["type"].(string)
	value, isText := m["value"].(string)
	return value, typ, isType && isText && len(m) == 2
}

// readAs is a kept value in the suite's spelling; "" for types that are not ours.
func readAs(typ string, got any) string {
	switch raw, text := got.(Verbatim); typ {
	case "string":
		s, ok := got.(string)
		if !ok {
			return "not a text"
		}
		return s
	case "integer":
		n, err := strconv.ParseInt(string(raw), 0, 64)
		if err != nil {
			return err.Error()
		}
		return strconv.FormatInt(n, 10)
	case "bool":
		return string(raw)
	case "date-local":
		d, err := ParseDate(string(raw))
		if err != nil || !text {
			return "no date"
		}
		return d.String()
	}
	return ""
}

// What is no TOML must stop with a fault and never with a panic; what the library
// would not let pass must not pass here.
func TestInvalidFilesOfTheTomlSuiteGiveOneFault(t *testing.T) {
	for name, text := range suite(t, "invalid") {
		tomltext.Scan(text, pieces...)
		var doc map[string]any
		if _, err := toml.Decode(text, &doc); err == nil {
			continue // the library reads TOML 1.1, which allows what 1.0 did not
		}
		r := Inspect([]byte(text))
		if len(r.Faults) != 1 || r.Faults[0].Line < 1 || r.Faults[0].Place.Part != PartFile {
			t.Errorf("%s: %v", name, r.Faults)
		}
	}
}

func TestLinesOfKeysTablesAndElements(t *testing.T) {
	text := strings.Join([]string{
		/* 1 */ "# a comment",
		/* 2 */ "a.b = 1",
		/* 3 */ "note = '''",
		/* 4 */ "[not.a.table]",
		/* 5 */ "'''",
		/* 6 */ `"quoted \u0041.key" = "x # no comment"`,
		/* 7 */ "list = [ # comment",
		/* 8 */ `  "1",`,
		/* 9 */ "  2.50, ]",
		/* 10 */ "[[t]]",
		/* 11 */ "inline = { x = 1_0, y = [ {z = 2} ] }",
		/* 12 */ "[[t]]",
		/* 13 */ "[t.sub]",
		/* 14 */ "k = 1979-05-27 07:32:00 # when",
	}, "\r\n")
	l, _, err := tomltext.Scan(text, pieces...)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path []step
		line int
		raw  string
	}{
		{[]step{key("a"), key("b")}, 2, "1"},
		{[]step{key("note")}, 3, "'''\r\n[not.a.table]\r\n'''"},
		{[]step{key("quoted A.key")}, 6, `"x # no comment"`},
		{[]step{element("list", 0)}, 8, `"1"`},
		{[]step{element("list", 1)}, 9, "2.50"},
		{[]step{element("t", 0)}, 10, ""},
		{[]step{element("t", 0), key("inline"), key("x")}, 11, "1_0"},
		{[]step{element("t", 0), key("inline"), element("y", 0), key("z")}, 11, "2"},
		{[]step{element("t", 1)}, 12, ""},
		{[]step{element("t", 1), key("sub")}, 13, ""},
		{[]step{element("t", 1), key("sub"), key("k")}, 14, "1979-05-27 07:32:00"},
		{[]step{element("t", 1), key("missing")}, 12, ""},
	} {
		if n := find(l.Root, c.path); n.Line != c.line || n.Raw != c.raw {
			t.Errorf("%s: line %d %q, want %d %q", pathText(c.path), n.Line, n.Raw, c.line, c.raw)
		}
	}
}

func TestAHeaderAfterItsSubtablesAndAWideTable(t *testing.T) {
	var b strings.Builder
	const wide = 24 // keys from which a table has an index
	for i := range 2 * wide {
		b.WriteString("k" + strconv.Itoa(i) + ".a = 1\n")
	}
	b.WriteString("k3.b = 1\n") // makes the index
	b.WriteString("new.a = 1\nnew.b = 1\n[z.sub]\n[z]\n")
	l, _, err := tomltext.Scan(b.String(), pieces...)
	if err != nil {
		t.Fatal(err)
	}
	if n := l.Root.Child("new"); len(n.Keys) != 2 || n.Line != 2*wide+2 || len(l.Root.Keys) != 2*wide+2 {
		t.Error(n.Keys, n.Line, len(l.Root.Keys))
	}
	if n := l.Root.Child("z"); n.Line != 2*wide+5 || n.Child("sub").Line != 2*wide+4 {
		t.Error(n.Line)
	}
}
