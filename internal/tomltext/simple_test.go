package tomltext

import (
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/BurntSushi/toml"
	"pgregory.net/rapid"
)

// agrees holds what Simple makes of a text to what the TOML library does. It says whether
// Simple read it.
func agrees(t rapid.TB, text string) bool {
	doc, ok := Simple(text)
	if !ok {
		return false
	}
	want := map[string]any{}
	if _, err := toml.Decode(text, &want); err != nil {
		t.Fatalf("%q is read, and is wrong: %v", text, err)
	}
	if days(doc); !reflect.DeepEqual(doc, days(want)) {
		t.Fatalf("%q is read as\n%v\nand is\n%v", text, doc, want)
	}
	return true
}

// days puts a text in the place of every day of a document, since the library's have a
// location of their own.
func days(v any) any {
	switch x := v.(type) {
	case map[string]any:
		for k, e := range x {
			x[k] = days(e)
		}
	case []map[string]any:
		for _, e := range x {
			days(e)
		}
	case []any:
		for i, e := range x {
			x[i] = days(e)
		}
	case time.Time:
		return "the day " + x.Format(time.DateTime)
	}
	return v
}

func TestSimpleTextsAreReadAsTheLibraryReadsThem(t *testing.T) {
	for _, text := range []string{
		"", "\n", "# nothing", "a = 1", "a=-0\r\n", "\ta\t=\t\"ü €\" # text\n", "a = true\nb = false\n", "1 = 2",
		"a = 2027-02-28 # a day\n", "a = [ 1, \"2\" ,true ]", "a = []", "[a]\n[b]\nc = 1\n[b.d]\nc = 2\n",
		"[[a]]\nb = 1\n\n  [[a.c]]\n  d = 1\n  [[a.c]]\n  [a.e] # e\n[[a]]\n[[a.c]]\n", "[a.b]\n[a.c]\n", "-_ = 999999999999999999",
	} {
		if !agrees(t, text) {
			t.Errorf("%q is not read", text)
		}
	}
	for _, text := range []string{
		"a = 1\na = 2", "[a]\n[a]", "[a.b]\n[a]", "[[a]]\n[a]", "[a]\n[[a]]", "a = 1\n[a]", "a = 1\n[a.b]", "a = []\n[[a]]", "[]", "[a", "[[a]", "[a]]", "[ a ]",
		"a", "a =", "= 1", "a = 01", "a = +1", "a = 1_0", "a = 0x1", "a = 1.5", "a = 1e3", "a = inf", "a = -", "a = 9223372036854775808", "a = 1 2", "a = true false",
		"a = 2027-02-29", "a = 2027-1-01", "a = 2027-01-01T00:00:00", "a = 2027-01-01 00:00:00", "a = \"\"\"b\"\"\"", "a = \"b", "a = 'b'", `a = "\n"`, "a = \"\x7f\"", "# \x01",
		"a = [1,]", "a = [[1]]", "a = [1", "a = [1 2]", "a = {b = 1}", "a.b = 1", "\"a\" = 1", "a = 1\r", "a = 1 \r b", "\ufeffa = 1", "ü = 1", "a = yes",
	} {
		if agrees(t, text) {
			t.Errorf("%q is read", text)
		}
	}
}

// Pieces of TOML, simple, not so simple and wrong, in any order.
func TestNoTextIsReadOtherwiseThanByTheLibrary(t *testing.T) {
	pieces := []string{
		"[", "[[", "]", "]]", "a", "b", "a.b", "a.b.a", "=", " = ", "\n", "\n", "\r\n", "\r", " ", "\t", "#", "# x", ",", ".", "{", "}",
		"1", "-1", "0", "00", "2027-01-02", "2027-02-30", "07:30:00", "true", "false", `"`, `""`, `"a"`, `"\u0041"`, "'", "\x00", "ü", "1.5", "a = 1\n", "[a]\n", "[[a]]\n", "[[a.b]]\n", "b = [1, 2]\n",
	}
	rapid.Check(t, func(t *rapid.T) {
		agrees(t, strings.Join(rapid.SliceOfN(rapid.SampledFrom(pieces), 0, 14).Draw(t, "pieces"), ""))
	})
}

func FuzzSimple(f *testing.F) {
	f.Add("schema = 1\n[[reel]]\nname = \"a\"\n[[reel.load]]\ndate = 2027-01-02 # d\ncassettes = 2\n[scenario.x]\ny = [\"1\", 2]\n")
	f.Fuzz(func(t *testing.T, text string) { agrees(t, strings.ToValidUTF8(text, "")) })
}
