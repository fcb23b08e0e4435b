package tomltext

import "slices"

// statement is a header, or a key with its value.
type statement struct {
	span          // from its first letter to its last, without blanks and comment
	ends    []int // of a dotted key: where each of its parts ends
	node    *Node // what a header opens, or the value
	in      *Node // of a key: the table whose header or braces it stands in
	braced  bool  // it stands in braces
	heading bool  // it is a header

	whole span   // with the comments above it and on its line; of statements in lines
	block *block // likewise
}

// record is where the statements of a file stand, for who wants to change them. A nil
// record takes down nothing.
type record struct {
	lines  []*statement           // in the order of the file, but for those in braces
	dots   map[*Node]dotted       // tables that are only the first part of dotted keys
	braces map[*Node][]*statement // what stands in an inline table
	slab   []statement            // for those to come
}

// dotted is a table that is part of a dotted key: the first such, and which part.
type dotted struct {
	by   *statement
	part int
}

func newRecord() *record {
	return &record{dots: map[*Node]dotted{}, braces: map[*Node][]*statement{}}
}

func (r *record) header(n *Node, at span) {
	if r != nil {
		st := r.statement()
		*st = statement{span: at, node: n, heading: true}
		r.lines = append(r.lines, st)
		n.made = st
	}
}

func (r *record) key(start int, ends []int, in *Node, braced bool) *statement {
	if r == nil {
		return nil
	}
	st := r.statement()
	*st = statement{span: span{start: start}, in: in, braced: braced}
	if len(ends) > 1 {
		st.ends = slices.Clone(ends)
	}
	return st
}

// statement is a new one.
func (r *record) statement() *statement {
	if len(r.slab) == 0 {
		r.slab = make([]statement, 128)
	}
	st := &r.slab[0]
	r.slab = r.slab[1:]
	return st
}

// maker is what makes a node: a header, or a key with its value; nil where nothing was
// taken down, or the node is only part of another's key.
func (n *Node) maker() *statement {
	if n == nil {
		return nil
	}
	return n.made
}

// dotted says that a key goes through a table.
func (r *record) dotted(n *Node, st *statement, part int) {
	if r == nil {
		return
	}
	if _, known := r.dots[n]; !known && n.made == nil {
		r.dots[n] = dotted{st, part}
	}
}

func (r *record) value(st *statement, n *Node, end int) {
	if r == nil {
		return
	}
	st.node, st.end = n, end
	n.made = st
	if st.braced {
		r.braces[st.in] = append(r.braces[st.in], st)
	} else {
		r.lines = append(r.lines, st)
	}
}
