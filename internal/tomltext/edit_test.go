package tomltext

import (
	"errors"
	"strings"
	"testing"
)

func plain(key, value string) Pair      { return Pair{Key: key, Value: Plain(value)} }
func table(key string, in ...Pair) Pair { return Pair{Key: key, Value: &Table{Pairs: in}} }

func list(key string, names ...string) Pair {
	var tables Tables
	for _, n := range names {
		tables = append(tables, &Table{Name: n, Pairs: []Pair{{Key: "n", Value: Text(n)}, plain("x", "1"), plain("y", "2")}})
	}
	return Pair{Key: key, Value: tables}
}

func TestChangesInEveryForm(t *testing.T) {
	one := table("a", plain("b", "1"))
	for _, c := range []struct {
		name        string
		was, now    []Pair
		text, after string
	}{
		{"a value", []Pair{plain("a", "1")}, []Pair{plain("a", "2")}, "a\t=  1# one", "a\t=  2# one"},
		{"a key that is gone", []Pair{plain("a", "1"), plain("b", "2")}, []Pair{plain("b", "2")},
			"# loose\n\n# of a\na = 1 # too\nb = 2\n", "# loose\n\nb = 2\n"},
		{"a last line without an end", []Pair{plain("a", "1")}, []Pair{plain("a", "1"), plain("b", "2")}, "# z\na = 1", "# z\na = 1\nb = 2"},
		{"a key in a table that is only implied", []Pair{table("a", one)}, []Pair{table("a", plain("c", "3"), one)},
			"[a.a]\nb = 1\n", "[a]\nc = 3\n\n[a.a]\nb = 1\n"},
		{"a dotted key", []Pair{one}, []Pair{table("a", plain("b", "1"), plain("c", "2"))}, "  a . b = 1 # b\n", "  a . b = 1 # b\n  a.c = 2\n"},
		{"a dotted key in braces", []Pair{table("t", one)}, []Pair{table("t", table("a", plain("b", "1"), plain("c", "2")))},
			"t = { a.b = 1 }\n", "t = { a.b = 1, a.c = 2 }\n"},
		{"all in braces", []Pair{one}, []Pair{{Key: "a", Value: &Table{}}}, "a = { b = 1 }\n", "a = {}\n"},
		{"into empty braces", []Pair{{Key: "a", Value: &Table{}}}, []Pair{one}, "a = {}\n", "a = {b = 1}\n"},
		{"a quoted header", []Pair{table("a.b", plain("c", "1"))}, []Pair{table("a.b", plain("c", "1"), table("d", plain("e", "2")))},
			"['a.b']\nc = 1\n", "['a.b']\nc = 1\n\n[\"a.b\".d]\ne = 2\n"},
		{"a table with all in it", []Pair{table("a", one, plain("c", "1")), plain("z", "1")}, []Pair{plain("z", "1")},
			"z = 1\n\n# of a\n[a]\nc = 1\n\n[a.a]\nb = 1\n\n# the end\n", "z = 1\n\n# the end\n"},
		{"tables in another order", []Pair{list("t", "p", "q")}, []Pair{list("t", "q", "p")},
			"# p\n[[t]]\nn = 'p'\nx = 1\ny = 2\n\n# q\n[[t]]\nn = 'q'\nx = 1\ny = 2 # last", "# q\n[[t]]\nn = 'q'\nx = 1\ny = 2 # last\n\n# p\n[[t]]\nn = 'p'\nx = 1\ny = 2"},
		{"a renamed table among others", []Pair{list("t", "p", "q")}, []Pair{list("t", "p", "r")},
			"[[t]]\nn='p'\nx=1\ny=2\n[[t]] # q\nn='q'\nx=1\ny=2\n", "[[t]]\nn='p'\nx=1\ny=2\n[[t]] # q\nn=\"r\"\nx=1\ny=2\n"},
		{"elements in brackets, one to a line", []Pair{list("t", "p", "q", "r")}, []Pair{list("t", "r", "p")},
			"t = [ # all\n  {n='p', x=1, y=2}, # p\n  # q\n  {n='q', x=1, y=2}, # q too\n  # r\n  {n='r', x=1, y=2} # r too\n]\n",
			"t = [ # all\n  # r\n  {n='r', x=1, y=2}, # r too\n  {n='p', x=1, y=2} # p\n]\n"},
		{"elements in one line", []Pair{list("t", "p")}, []Pair{list("t", "p", "q")}, "t = [ {n='p', x=1, y=2} ] # t\n", "t = [ {n='p', x=1, y=2}, {n = \"q\", x = 1, y = 2} ] # t\n"},
	} {
		for _, nl := range []string{"\n", "\r\n"} {
			text, after := strings.ReplaceAll(c.text, "\n", nl), strings.ReplaceAll(c.after, "\n", nl)
			got, err := Edit(text, &Table{Pairs: c.was}, &Table{Pairs: c.now})
			if err != nil || got != after {
				t.Errorf("%s: %v\n%q\nwant\n%q", c.name, err, got, after)
			}
			if same, err := Edit(text, &Table{Pairs: c.now}, &Table{Pairs: c.now}); err != nil || same != text {
				t.Errorf("%s: without a change: %q, %v", c.name, same, err)
			}
		}
	}
}

func TestATextThatIsNoTOMLIsNotChanged(t *testing.T) {
	if _, err := Edit("a = [", &Table{}, &Table{Pairs: []Pair{plain("a", "1")}}); !errors.Is(err, ErrSyntax) {
		t.Error(err)
	}
}
