package tomltext

import (
	"cmp"
	"slices"
)

// rows are the tables of a list that no name tells apart: a log's lines, prices seen.
// They are told by what they say, so that what stands above a row stays with it when
// others come before it or go.
type rows struct {
	was, now Tables
	a, b     []int // the indices of the rows in was and in now
	from     []int // for each of now the one in was that it came from, −1 for none

	kept []int // for each of b the place in a; −1 while unknown
}

// pair finds for each row of now the one it came from: the longest run of rows that say
// the same in the same order, others that say the same, and last those most alike.
func (r *rows) pair() {
	ids := map[string]int{}
	a, b := numbered(r.was, r.a, ids), numbered(r.now, r.b, ids)
	r.kept = make([]int, len(b))
	for y := range r.kept {
		r.kept[y] = -1
	}
	for _, p := range common(a, b) {
		r.kept[p[1]] = p[0]
	}
	inOrder := slices.Clone(r.kept)
	r.moved(a, b)
	r.changed(inOrder)
	if r.was[r.a[0]].Name != "" {
		r.named()
	}
	for y, x := range r.kept {
		if x >= 0 {
			r.from[r.b[y]] = r.a[x]
		}
	}
}

// numbered gives tables that say the same the same number.
func numbered(tables Tables, which []int, ids map[string]int) []int {
	list := make([]int, len(which))
	for k, i := range which {
		text := wording(tables[i])
		id, known := ids[text]
		if !known {
			id = len(ids)
			ids[text] = id
		}
		list[k] = id
	}
	return list
}

// moved finds the rows that stand elsewhere than they did, and say the same.
func (r *rows) moved(a, b []int) {
	gone := map[int][]int{}
	for _, x := range missing(len(a), r.kept) {
		gone[a[x]] = append(gone[a[x]], x)
	}
	for y, x := range r.kept {
		if list := gone[b[y]]; x < 0 && len(list) > 0 {
			r.kept[y], gone[b[y]] = list[0], list[1:]
		}
	}
}

// couple is a row that is gone and one that is new, which may be the same.
type couple struct {
	x, y  int  // the places in a and in b
	score int  // how much alike they are
	apart int  // how much further from its neighbour the one stands than the other
	here  bool // they stand between the same rows
}

// changed finds the rows that say something else by now: those most alike first.
func (r *rows) changed(inOrder []int) {
	var couples []couple
	gone, fresh := r.gaps(inOrder)
	const most, near = 1 << 12, 8 // couples looked at; of more only those near each other
	all := len(gone)*len(fresh) <= most
	for _, f := range fresh {
		for _, g := range gone {
			if c := (couple{x: g.at, y: f.at, here: g.gap == f.gap, apart: distance(g.nth, f.nth)}); all || c.here && c.apart <= near {
				couples = r.consider(couples, c)
			}
		}
	}
	slices.SortStableFunc(couples, func(a, b couple) int {
		return cmp.Or(cmp.Compare(b.score, a.score), compareTruth(b.here, a.here), cmp.Compare(a.apart, b.apart))
	})
	taken := make([]bool, len(r.a))
	for _, c := range couples {
		if r.kept[c.y] < 0 && !taken[c.x] {
			r.kept[c.y], taken[c.x] = c.x, true
		}
	}
}

// consider adds a couple if it may be one row: if most of what it says stayed, or all
// but one thing, and it stands between the same rows. What a row begins with, as a day,
// counts twice: it says what the row is about, and much of the rest is alike in many rows.
func (r *rows) consider(list []couple, c couple) []couple {
	was, now := r.was[r.a[c.x]].Pairs, r.now[r.b[c.y]].Pairs
	alikes, others := compared(was, now)
	c.score = alikes - others
	if len(was) > 0 && len(now) > 0 {
		c.score += alike(was[0].Value, now[0].Value)
	}
	if c.score > 0 || c.here && alikes > 0 && others <= 1 {
		return append(list, c)
	}
	return list
}

// unpaired is a row without its other: its place, after how many rows that stayed it
// stands, and as which of those that did not stay.
type unpaired struct{ at, gap, nth int }

// gaps are the rows of was that are gone and those of now that are new, between those
// that stayed in order.
func (r *rows) gaps(inOrder []int) (gone, fresh []unpaired) {
	stayed, known := make([]bool, len(r.a)), make([]bool, len(r.a))
	for y, x := range inOrder {
		if x >= 0 {
			stayed[x] = true
		}
		if r.kept[y] >= 0 {
			known[r.kept[y]] = true
		}
	}
	next := unpaired{}
	for x := range r.a {
		gone = next.note(gone, x, stayed[x], known[x])
	}
	next = unpaired{}
	for y := range r.b {
		fresh = next.note(fresh, y, inOrder[y] >= 0, r.kept[y] >= 0)
	}
	return gone, fresh
}

// note counts a row, and adds it if it has no other.
func (u *unpaired) note(list []unpaired, at int, stayed, known bool) []unpaired {
	if stayed {
		u.gap, u.nth = u.gap+1, 0
		return list
	}
	if !known {
		list = append(list, unpaired{at, u.gap, u.nth})
	}
	u.nth++
	return list
}

// named gives tables of one name what is left of that name, in order.
func (r *rows) named() {
	gone := missing(len(r.a), r.kept)
	for y, x := range r.kept {
		if x < 0 && len(gone) > 0 {
			r.kept[y], gone = gone[0], gone[1:]
		}
	}
}

func distance(a, b int) int { return max(a-b, b-a) }

func compareTruth(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	}
	return 1
}
