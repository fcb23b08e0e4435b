package tomltext

// match finds for every table of now the index in was of the one it came from, −1 for
// none: one of the same name, or else the one that is most like it, since what was given
// another name is no other thing.
func match(was, now Tables) (from []int) {
	from = make([]int, len(now))
	byName := make(map[string][]int, len(was))
	for i, t := range was {
		byName[t.Name] = append(byName[t.Name], i)
	}
	left := 0
	for j, t := range now {
		from[j] = take(byName, t, was)
		if from[j] < 0 {
			left++
		}
	}
	const most = 50 // renamed tables looked for; beyond, the search would take long
	if left > most {
		return from
	}
	var gone []int
	for i, t := range was {
		for _, k := range byName[t.Name] {
			if k == i {
				gone = append(gone, i)
			}
		}
	}
	for j := range from {
		if from[j] < 0 && len(gone) <= most {
			from[j], gone = mostAlike(now[j], was, gone)
		}
	}
	return from
}

// take takes the index of a table of that name; of several, of one that says the same.
func take(byName map[string][]int, t *Table, was Tables) int {
	list := byName[t.Name]
	if len(list) == 0 {
		return -1
	}
	at := 0
	for k, i := range list {
		if len(list) > 1 && Same(was[i], t) {
			at = k
			break
		}
	}
	i := list[at]
	byName[t.Name] = append(list[:at:at], list[at+1:]...)
	return i
}

// mostAlike takes of those gone the one most like a table, if more than half of it is.
func mostAlike(t *Table, was Tables, gone []int) (int, []int) {
	best, most := -1, 0
	for k, i := range gone {
		if score := likeness(was[i].Pairs, t.Pairs); score > most {
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
// are not. Tables in lists are compared by name.
func likeness(a, b []Pair) int {
	score := 0
	for i, p := range a {
		q := pairAt(b, i, p.Key)
		if p.Value == nil && q.Value == nil || p.Implied && q.Implied {
			continue
		}
		score += alike(p.Value, q.Value)
	}
	return score
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
	named := make(map[string]*Table, len(was))
	for _, t := range was {
		named[t.Name] = t
	}
	score := 0
	for _, t := range now {
		if other := named[t.Name]; other != nil {
			score += likeness(other.Pairs, t.Pairs)
		}
	}
	return score
}

// pairAt is the pair of a key, most likely the one at i.
func pairAt(pairs []Pair, i int, key string) Pair {
	if i < len(pairs) && pairs[i].Key == key {
		return pairs[i]
	}
	return Pair{Value: valueOf(pairs, key)}
}
