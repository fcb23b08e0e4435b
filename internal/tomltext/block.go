package tomltext

import (
	"slices"
	"strings"
)

// block is a header with what stands under it, up to the next; the first block has none.
// Blocks are a list in the order in which they will be written. Blank lines and loose
// comments at the end of a block are its tail: they stay where they are when it moves,
// and outlive it.
type block struct {
	span   // from the comments above its header to its last statement
	header *statement
	tail   string
	edits  []edit
	gone   bool

	added      string // the text of a block that was not there
	prev, next *block
	ordinal    int
}

// edit puts a text in the place of a stretch.
type edit struct {
	span
	text string
}

// lay divides the text into blocks, and tells each statement its lines.
func (e *editor) lay() {
	first := &block{}
	last, end := first, 0
	for _, st := range e.lines {
		lead := e.lead(st.start, end)
		if st.heading {
			b := &block{span: span{start: lead}, header: st, prev: last, ordinal: last.ordinal + 1}
			e.endBlock(last, end, lead)
			last.next = b
			last = b
		}
		end = e.lineEnd(st.end)
		st.whole, st.block = span{lead, end}, last
	}
	e.endBlock(last, end, len(e.text))
	e.first = first
}

// endBlock ends a block: comments directly under its last statement are its own.
func (e *editor) endBlock(b *block, end, next int) {
	for end > 0 && end < next && isComment(e.text[end:e.lineEnd(end)]) {
		end = e.lineEnd(end)
	}
	b.end, b.tail = end, e.text[end:next]
}

// lead is where the comments directly above a statement begin, or its line, but not
// before from.
func (e *editor) lead(at, from int) int {
	at = e.lineStart(at)
	for at > from {
		above := e.lineStart(at - 1)
		if above < from || !isComment(e.text[above:at]) {
			break
		}
		at = above
	}
	return at
}

// blockAt is the block of the statement that a place is in.
func (e *editor) blockAt(at int) *block {
	i, found := slices.BinarySearchFunc(e.lines, at, func(st *statement, at int) int { return st.start - at })
	if !found {
		i--
	}
	return e.lines[i].block
}

func (e *editor) lineStart(at int) int { return strings.LastIndexByte(e.text[:at], '\n') + 1 }

// lineEnd is behind the line end after a place.
func (e *editor) lineEnd(at int) int {
	if n := strings.IndexByte(e.text[at:], '\n'); n >= 0 {
		return at + n + 1
	}
	return len(e.text)
}

// indent is the blanks before a place on its line; "" where something else is.
func (e *editor) indent(at int) string {
	before := e.text[e.lineStart(at):at]
	if strings.Trim(before, " \t") != "" {
		return ""
	}
	return before
}

func isComment(line string) bool { return strings.HasPrefix(strings.TrimLeft(line, " \t"), "#") }

// insertAfter puts an added block behind another.
func (e *editor) insertAfter(b *block, text string) *block {
	n := &block{added: text, prev: b, next: b.next, ordinal: b.ordinal, tail: b.tail}
	b.tail = ""
	if b.gone {
		n.added = strings.TrimPrefix(n.added, "\n") // the blank line above what is gone is there
	}
	if b.next != nil {
		b.next.prev = n
	}
	b.next = n
	return n
}

// insertBefore puts an added block in front of another that has one before it.
func (e *editor) insertBefore(b *block, text string) *block {
	n := &block{added: strings.TrimPrefix(text, "\n"), prev: b.prev, next: b, ordinal: b.ordinal, tail: e.nl}
	b.prev.next = n
	b.prev = n
	return n
}

// under are the blocks of a table and of those in it, in no order.
func (e *editor) under(n *Node) []*block {
	var list []*block
	var walk func(n *Node)
	walk = func(n *Node) {
		if n.span.end > 0 {
			return // a value
		}
		if st := n.maker(); st != nil && st.heading {
			list = append(list, st.block)
		}
		for _, k := range n.Keys {
			walk(k.Node)
		}
		for _, item := range n.Items {
			walk(item)
		}
		list = append(list, e.added[n]...)
	}
	walk(n)
	return list
}

// lastOf is the block that comes last; of those added at one place, the latest.
func lastOf(blocks []*block) *block {
	var last *block
	for _, b := range blocks {
		if last == nil || b.ordinal >= last.ordinal {
			last = b
		}
	}
	return last
}

func firstOf(blocks []*block) *block {
	var first *block
	for _, b := range blocks {
		if first == nil || b.ordinal < first.ordinal {
			first = b
		}
	}
	return first
}

// rearrange puts items, each some blocks, into another order: order[k] is the item that
// comes to the place of the k-th.
func (e *editor) rearrange(items [][]*block, order []int) {
	places := make([]*block, len(items)) // what stands before each
	tails := make([]string, len(items))
	for k, blocks := range items {
		slices.SortStableFunc(blocks, func(a, b *block) int { return a.ordinal - b.ordinal })
		marker := &block{gone: true}
		link(blocks[0].prev, marker)
		link(marker, blocks[0])
		places[k], tails[k] = marker, blocks[len(blocks)-1].tail
		for _, b := range blocks {
			link(b.prev, b.next)
		}
	}
	for k, i := range order {
		at, after := places[k], places[k].next
		for _, b := range items[i] {
			link(at, b)
			at = b
		}
		link(at, after)
		at.tail = tails[k]
	}
	for _, marker := range places {
		link(marker.prev, marker.next)
	}
	e.renumber()
}

// renumber gives every block its place in the order as its ordinal; those added since
// shared a neighbour's.
func (e *editor) renumber() {
	n := 0
	for b := e.first; b != nil; b = b.next {
		b.ordinal = n
		n++
	}
}

func link(a, b *block) {
	if a != nil {
		a.next = b
	}
	if b != nil {
		b.prev = a
	}
}
