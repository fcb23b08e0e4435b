package tomltext

// statement is a header, or a key with its value.
type statement struct {
	span          // from its first letter to its last, without blanks and comment
	ends    []int // of a key: where each of its dotted parts ends
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
	made   map[*Node]*statement   // what makes a node: a header, or a key with its value
	dots   map[*Node]dotted       // tables that are only the first part of dotted keys
	braces map[*Node][]*statement // what stands in an inline table
}

// dotted is a table that is part of a dotted key: the first such, and which part.
type dotted struct {
	by   *statement
	part int
}

func newRecord() *record {
	return &record{made: map[*Node]*statement{}, dots: map[*Node]dotted{}, braces: map[*Node][]*statement{}}
}

func (r *record) header(n *Node, at span) {
	if r != nil {
		st := &statement{span: at, node: n, heading: true}
		r.lines = append(r.lines, st)
		r.made[n] = st
	}
}

func (r *record) key(start int, ends []int, in *Node, braced bool) *statement {
	if r == nil {
		return nil
	}
	return &statement{span: span{start: start}, ends: append([]int(nil), ends...), in: in, braced: braced}
}

// dotted says that a key goes through a table.
func (r *record) dotted(n *Node, st *statement, part int) {
	if r == nil {
		return
	}
	if _, known := r.dots[n]; !known && r.made[n] == nil {
		r.dots[n] = dotted{st, part}
	}
}

func (r *record) value(st *statement, n *Node, end int) {
	if r == nil {
		return
	}
	st.node, st.end = n, end
	r.made[n] = st
	if st.braced {
		r.braces[st.in] = append(r.braces[st.in], st)
	} else {
		r.lines = append(r.lines, st)
	}
}
