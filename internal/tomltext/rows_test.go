package tomltext

import (
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// longest is the length of a longest common subsequence, by the textbook's table.
func longest(a, b []int) int {
	table := make([][]int, len(a)+1)
	for i := range table {
		table[i] = make([]int, len(b)+1)
	}
	for i := range a {
		for j := range b {
			table[i+1][j+1] = max(table[i][j+1], table[i+1][j])
			if a[i] == b[j] {
				table[i+1][j+1] = table[i][j] + 1
			}
		}
	}
	return table[len(a)][len(b)]
}

func TestCommonIsALongestSubsequence(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.SliceOfN(rapid.IntRange(0, 5), 0, 20)
		a, b := some.Draw(t, "a"), some.Draw(t, "b")
		pairs := common(a, b)
		x, y := -1, -1
		for _, p := range pairs {
			if p[0] <= x || p[1] <= y || a[p[0]] != b[p[1]] {
				t.Fatalf("%v and %v: %v", a, b, pairs)
			}
			x, y = p[0], p[1]
		}
		if want := longest(a, b); len(pairs) != want {
			t.Fatalf("%v and %v: %v, the longest has %d", a, b, pairs, want)
		}
	})
}

// row is a table without a name.
func row(values ...int) *Table {
	t := &Table{}
	for i, v := range values {
		t.Pairs = append(t.Pairs, plain(string(rune('a'+i)), strconv.Itoa(v)))
	}
	return t
}

func TestRowsWithoutANameAreToldByWhatTheySay(t *testing.T) {
	was := Tables{row(1, 5), row(2, 6), row(3, 5)}
	for _, c := range []struct {
		name string
		now  Tables
		from []int
	}{
		{"one more in front", Tables{row(0, 5), row(1, 5), row(2, 6), row(3, 5)}, []int{-1, 0, 1, 2}},
		{"the first gone", Tables{row(2, 6), row(3, 5)}, []int{1, 2}},
		{"one changed", Tables{row(1, 5), row(2, 7), row(3, 5)}, []int{0, 1, 2}},
		{"one in front and the next one changed", Tables{row(0, 9), row(1, 8), row(2, 6), row(3, 5)}, []int{-1, 0, 1, 2}},
		{"the last one moved to the front", Tables{row(3, 5), row(1, 5), row(2, 6)}, []int{2, 0, 1}},
		{"one gone, another come in its place", Tables{row(1, 5), row(7, 8), row(3, 5)}, []int{0, -1, 2}},
		{"all gone", Tables{}, []int{}},
		{"the same twice", Tables{row(1, 5), row(1, 5), row(2, 6), row(3, 5)}, []int{0, -1, 1, 2}},
	} {
		if from := match(was, c.now); !slices.Equal(from, c.from) {
			t.Errorf("%s: %v, want %v", c.name, from, c.from)
		}
	}
}

// Of tables that share a name, as two quotes of one pair by mistake, each stays itself.
func TestTablesOfOneNameAreToldByWhatTheySay(t *testing.T) {
	named := func(values ...int) *Table {
		r := row(values...)
		r.Name = "twice"
		return r
	}
	was := Tables{named(1, 5), named(2, 6)}
	for _, c := range []struct {
		now  Tables
		from []int
	}{
		{Tables{named(2, 6)}, []int{1}},
		{Tables{named(8, 9)}, []int{0}},
		{Tables{named(2, 7), named(1, 5)}, []int{1, 0}},
		{Tables{named(2, 7), named(9, 9)}, []int{1, 0}},
	} {
		if from := match(was, c.now); !slices.Equal(from, c.from) {
			t.Errorf("%s: %v, want %v", OneLine(c.now), from, c.from)
		}
	}
}
