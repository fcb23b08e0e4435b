package tomltext

import (
	"slices"
	"strings"
)

// match finds for every table of now the index in was of the one it came from, −1 for
// none: of the same name; of several of one name, as of those without any, the one that
// says the same or most of it; or else the one that is most like it, since what was given
// another name is no other thing.
func match(was, now Tables) (from []int) {
	from = make([]int, len(now))
	for j := range from {
		from[j] = -1
	}
	for _, r := range byName(was, now, from) {
		if len(r.a) == 1 && len(r.b) == 1 && was[r.a[0]].Name != "" {
			from[r.b[0]] = r.a[0]
		} else {
			r.pair()
		}
	}
	renamed(was, now, from)
	return from
}

// byName are the rows of each name that is in both, in the order in which names come.
func byName(was, now Tables, from []int) (list []*rows) {
	named := make(map[string]*rows, len(was))
	for i, t := range was {
		r := named[t.Name]
		if r == nil {
			r = &rows{was: was, now: now, from: from}
			named[t.Name] = r
		}
		r.a = append(r.a, i)
	}
	for j, t := range now {
		r := named[t.Name]
		if r == nil {
			continue
		}
		if len(r.b) == 0 {
			list = append(list, r)
		}
		r.b = append(r.b, j)
	}
	return list
}

// renamed gives the tables of a new name those whose name is gone.
func renamed(was, now Tables, from []int) {
	const most = 50 // looked for; beyond, the search would take long
	var fresh []int
	for j, i := range from {
		if i < 0 {
			fresh = append(fresh, j)
		}
	}
	gone := missing(len(was), from)
	if len(fresh) > most || len(gone) > most {
		return
	}
	for _, j := range fresh {
		from[j], gone = mostAlike(now[j], was, gone)
	}
}

// missing are the numbers below n that a list does not hold.
func missing(n int, list []int) []int {
	held := make([]bool, n)
	for _, i := range list {
		if i >= 0 {
			held[i] = true
		}
	}
	var rest []int
	for i := range n {
		if !held[i] {
			rest = append(rest, i)
		}
	}
	return rest
}

// mostAlike takes of those gone the one most like a table, if more than half of it is;
// those of the same name were looked at.
func mostAlike(t *Table, was Tables, gone []int) (int, []int) {
	best, most := -1, 0
	for k, i := range gone {
		if score := likeness(was[i].Pairs, t.Pairs); score > most && was[i].Name != t.Name {
			best, most = k, score
		}
	}
	if best < 0 {
		return -1, gone
	}
	i := gone[best]
	return i, append(gone[:best:best], gone[best+1:]...)
}

// likeness is how many values that say something are the same in both, less those that
// are not. Tables in lists are compared by name, those of one name in their order.
func likeness(a, b []Pair) int {
	same, other := compared(a, b)
	return same - other
}

// compared counts the values that say something: the same in both, and not.
func compared(a, b []Pair) (same, other int) {
	count := func(p, q Value) {
		if score := alike(p, q); score >= 0 {
			same += score
		} else {
			other -= score
		}
	}
	for i, p := range a {
		q := pairAt(b, i, p.Key)
		if p.Value == nil && q.Value == nil || p.Implied && q.Implied {
			continue
		}
		count(p.Value, q.Value)
	}
	for i, q := range b {
		if q.Value != nil && !q.Implied && pairAt(a, i, q.Key).Key == "" {
			other++
		}
	}
	return same, other
}

func alike(a, b Value) int {
	if pairs, ok := pairsOf(a); ok {
		if others, ok := pairsOf(b); ok {
			return likeness(pairs, others)
		}
	}
	was, isList := a.(Tables)
	now, wasList := b.(Tables)
	switch {
	case isList && wasList:
		return alikeByName(was, now)
	case same(a, b):
		return 1
	}
	return -1
}

func alikeByName(was, now Tables) int {
	named := make(map[string]Tables, len(was))
	for _, t := range was {
		named[t.Name] = append(named[t.Name], t)
	}
	score := 0
	for _, t := range now {
		if others := named[t.Name]; len(others) > 0 {
			score += likeness(others[0].Pairs, t.Pairs)
			named[t.Name] = others[1:]
		}
	}
	return score
}

// pairAt is the pair of a key, most likely the one at i; an empty one where there is none.
func pairAt(pairs []Pair, i int, key string) Pair {
	if i < len(pairs) && pairs[i].Key == key {
		return pairs[i]
	}
	for _, p := range pairs {
		if p.Key == key {
			return p
		}
	}
	return Pair{}
}

// wording is all that a table says, for telling tables apart.
func wording(t *Table) string {
	said := slices.DeleteFunc(slices.Clone(t.Pairs), func(p Pair) bool { return p.Value == nil })
	slices.SortFunc(said, func(a, b Pair) int { return strings.Compare(a.Key, b.Key) })
	w := writer{}
	for _, p := range said {
		w.pair(p)
		w.WriteByte('\n')
	}
	return w.String()
}
