package tomltext

import (
	"errors"
	"slices"
	"strings"
)

// ErrCannot is the error of a change that cannot be made in place.
var ErrCannot = errors.New("tomltext: the text cannot be changed in place")

// Edit changes a text that says was so that it says now. Only what differs between the
// two is touched; what the text says beside was, it goes on saying. Read the outcome
// again before it is trusted: was must be what a reader makes of the text. Errors are
// ErrCannot, ErrSyntax and the limits of Scan.
func Edit(text string, was, now *Table) (string, error) {
	if Same(was, now) {
		return text, nil
	}
	rest := strings.TrimPrefix(text, byteOrderMark)
	s := scanner{text: rest, record: newRecord()}
	if err := s.scan(); err != nil {
		return "", err
	}
	e := &editor{text: rest, nl: "\n", record: s.record, root: s.Root, added: map[*Node][]*block{}}
	if first := strings.IndexByte(rest, '\n'); first > 0 && rest[first-1] == '\r' {
		e.nl = "\r\n"
	}
	e.lay()
	e.table(s.Root, was.Pairs, now.Pairs, nil)
	e.rebuild()
	if e.err != nil {
		return "", e.err
	}
	out, err := e.emit()
	return text[:len(text)-len(rest)] + out, err
}

// editor changes one text.
type editor struct {
	text  string
	nl    string // the text's line end
	root  *Node
	first *block
	added map[*Node][]*block // blocks added under a table
	plans []*plan            // for what stands in brackets
	*record
	err error
}

// table makes a table say now instead of was.
func (e *editor) table(n *Node, was, now []Pair, path []string) {
	for i, p := range now {
		old, child := valueOf(was, p.Key), n.Child(p.Key)
		switch {
		case same(old, p.Value):
		case child == nil:
			if p.Value != nil && !p.Implied {
				e.add(n, now, i, path)
			}
		case p.Value == nil:
			e.remove(child)
		default:
			e.change(n, child, old, now, i, path)
		}
	}
	for _, p := range was {
		if child := n.Child(p.Key); p.Value != nil && child != nil && !has(now, p.Key) {
			e.remove(child)
		}
	}
}

func has(pairs []Pair, key string) bool {
	return slices.ContainsFunc(pairs, func(p Pair) bool { return p.Key == key })
}

// change makes a key say what now[i] does, where it stands if its form is fit for it.
func (e *editor) change(n, child *Node, old Value, now []Pair, i int, path []string) {
	value, below := now[i].Value, append(slices.Clip(path), now[i].Key)
	pairs, isTable := pairsOf(value)
	oldPairs, wasTable := pairsOf(old)
	switch list, isList := value.(Tables); {
	case isTable && wasTable && isTableNode(child):
		e.table(child, oldPairs, pairs, below)
	case isList && child.Array:
		was, _ := old.(Tables)
		e.tables(child, was, list, below)
	case !isTable && !isList && child.span.end > 0:
		e.value(child, old, value)
	default: // of another form
		e.remove(child)
		if !now[i].Implied {
			e.add(n, now, i, path)
		}
	}
}

func isTableNode(n *Node) bool { return !n.Array && n.Raw == "" }

// value puts a value in the place of another; in lists of one length, element by element.
func (e *editor) value(n *Node, old, value Value) {
	was, wasList := old.(List)
	list, isList := value.(List)
	if wasList && isList && n.Array && len(list) == len(n.Items) && len(was) == len(list) {
		for i := range list {
			if !same(was[i], list[i]) {
				e.value(n.Items[i], was[i], list[i])
			}
		}
		return
	}
	e.edit(n.span, OneLine(value))
}

func (e *editor) edit(at span, text string) {
	b := e.blockAt(at.start)
	b.edits = append(b.edits, edit{at, text})
}

// tables makes an array of tables say now instead of was.
func (e *editor) tables(list *Node, was, now Tables, path []string) {
	if len(list.Items) < len(was) {
		e.err = ErrCannot
		return
	}
	from := match(was, now)
	kept := make([]bool, len(was))
	for j, i := range from {
		if i >= 0 {
			kept[i] = true
			if was[i] == now[j] {
				continue
			}
			e.table(list.Items[i], was[i].Pairs, now[j].Pairs, path)
		}
	}
	if list.span.end > 0 {
		e.planList(list, now, from)
		return
	}
	for i, item := range list.Items[:len(was)] {
		if !kept[i] {
			e.removeBlocks(item)
		}
	}
	e.arrange(list, from)
	e.addTables(list, now, from, path)
}

// arrange puts tables with headers into the order of from.
func (e *editor) arrange(list *Node, from []int) {
	order := slices.DeleteFunc(slices.Clone(from), func(i int) bool { return i < 0 })
	if slices.IsSorted(order) {
		return
	}
	e.renumber()
	place := map[int]int{} // of an item among those kept
	items := make([][]*block, 0, len(order))
	for k, i := range slices.Sorted(slices.Values(order)) {
		place[i] = k
		items = append(items, e.under(list.Items[i]))
	}
	for k, i := range order {
		order[k] = place[i]
	}
	e.rearrange(items, order)
}

// addTables adds the tables of now that are new, each behind the one before it.
func (e *editor) addTables(list *Node, now Tables, from []int, path []string) {
	var before *block // the last of the table before
	for j, i := range from {
		if i >= 0 {
			before = lastOf(e.under(list.Items[i]))
			continue
		}
		text := e.headed(now[j], "[[", path, e.styleOf(list, path))
		switch {
		case before != nil:
			before = e.insertAfter(before, text)
		case slices.ContainsFunc(from, func(i int) bool { return i >= 0 }):
			next := from[slices.IndexFunc(from, func(i int) bool { return i >= 0 })]
			before = e.insertBefore(firstOf(e.under(list.Items[next])), text)
		default:
			before = e.insertAfter(lastOf(e.under(list)), text)
		}
		e.added[list] = append(e.added[list], before)
	}
}

// remove takes a key out, in whatever form it stands.
func (e *editor) remove(n *Node) {
	st := n.maker()
	switch {
	case st == nil || st.heading:
		e.removeBlocks(n)
	case st.braced:
		e.planRemoval(st)
	default:
		st.block.edits = append(st.block.edits, edit{st.whole, ""})
	}
}

// removeBlocks takes out a table and all that is in it: under headers, or in dotted keys.
func (e *editor) removeBlocks(n *Node) {
	if st := n.maker(); st != nil && st.heading {
		st.block.gone = true
	}
	for _, b := range e.added[n] {
		b.gone = true
	}
	for _, k := range n.Keys {
		e.remove(k.Node)
	}
	for _, item := range n.Items {
		e.removeBlocks(item)
	}
}
