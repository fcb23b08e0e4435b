package tomltext

import "strings"

// add writes a key, now[i], that a table does not have: beside its sisters, in the form
// that the table has.
func (e *editor) add(n *Node, now []Pair, i int, path []string) {
	p := now[i]
	st := n.maker()
	switch own := n == e.root || st != nil && st.heading; {
	case hasHeader(p.Value) && (own || e.isImplied(n)):
		e.addHeaded(n, now, i, path)
	case own:
		e.addLine(n, now, i)
	case n.span.end > 0:
		e.planAddition(n, now, i)
	case e.isImplied(n): // it has no lines yet
		t := &Table{Pairs: []Pair{p}}
		first := firstOf(e.under(n))
		b := e.insertBefore(first, e.headed(t, "[", path, e.style(e.indent(first.at()))))
		e.added[n] = append(e.added[n], b)
	default:
		e.addDotted(n, p)
	}
}

// isImplied says whether a table is there only because others within it are.
func (e *editor) isImplied(n *Node) bool {
	_, dotted := e.dots[n]
	return !dotted && n.made == nil && n.span.end == 0 && n != e.root && len(e.under(n)) > 0
}

// at is where the header of a block stands.
func (b *block) at() int {
	if b.header == nil {
		return b.start
	}
	return b.header.start
}

// addLine writes a key in a line of its own, behind its nearest sister above.
func (e *editor) addLine(n *Node, now []Pair, i int) {
	in := e.own(n)
	at, indent := in.start, ""
	if in.header != nil {
		at, indent = in.header.whole.end, e.indent(in.header.start)
	}
	for i := range now[:i] {
		if st := n.Child(now[i].Key).maker(); st != nil && !st.heading && st.block == in && st.whole.end >= at {
			at, indent = st.whole.end, e.indent(st.start)
		}
	}
	e.line(in, at, indent+inlinePair(now[i]))
}

// line inserts a line.
func (e *editor) line(in *block, at int, text string) {
	if at > 0 && e.text[at-1] != '\n' { // the last line of the file, without an end
		text = e.nl + text
	} else {
		text += e.nl
	}
	in.edits = append(in.edits, edit{span{at, at}, text})
}

// addDotted writes a key of a table that consists of dotted keys.
func (e *editor) addDotted(n *Node, p Pair) {
	d, ok := e.dots[n]
	if !ok {
		e.err = ErrCannot
		return
	}
	text := e.text[d.by.start:d.by.ends[d.part]] + "." + inlinePair(p)
	if d.by.braced {
		e.planOf(d.by.in).add(d.by, text)
		return
	}
	e.line(d.by.block, d.by.whole.end, e.indent(d.by.start)+text)
}

func inlinePair(p Pair) string {
	w := writer{}
	w.pair(p)
	return w.String()
}

// addHeaded writes a table with its header: behind the tables that come before its kind,
// or behind the lines of the table it is in.
func (e *editor) addHeaded(n *Node, now []Pair, i int, path []string) {
	below := append(append([]string(nil), path...), now[i].Key)
	style := e.styleOf(n, below)
	var text strings.Builder
	switch x := now[i].Value.(type) {
	case *Table:
		text.WriteString(e.headed(x, "[", below, style))
	case Tables:
		for _, t := range x {
			text.WriteString(e.headed(t, "[[", below, style))
		}
	}
	if text.Len() == 0 {
		return // an empty list
	}
	e.added[n] = append(e.added[n], e.insertAfter(e.anchor(n, now, i), text.String()))
}

// anchor is the block behind which a table is to stand.
func (e *editor) anchor(n *Node, now []Pair, i int) *block {
	for k := i - 1; k >= 0; k-- {
		if child := n.Child(now[k].Key); child != nil && hasHeader(now[k].Value) {
			if last := lastOf(e.under(child)); last != nil {
				return last
			}
		}
	}
	if e.isImplied(n) {
		return firstOf(e.under(n)).prev
	}
	return e.own(n)
}

// own is the block of a table that has one: its header's, or the first.
func (e *editor) own(n *Node) *block {
	if st := n.maker(); st != nil {
		return st.block
	}
	return e.first
}

// style is how added tables are indented: the headers, and each step further in.
type style struct{ indent, step string }

func (e *editor) style(indent string) style {
	for _, st := range e.lines {
		if in := e.indent(st.start); st.heading && in != "" {
			if strings.HasPrefix(in, "\t") {
				return style{indent, "\t"}
			}
			return style{indent, "  "}
		}
	}
	return style{indent, ""}
}

// styleOf is how a table of a kind is indented: as the last of its kind, or a step
// further than the table it is in.
func (e *editor) styleOf(n *Node, path []string) style {
	if n.Array && len(n.Items) > 0 {
		if st := n.Items[len(n.Items)-1].made; st != nil {
			return e.style(e.indent(st.start))
		}
	}
	s := e.style("")
	if st := n.maker(); st != nil {
		s.indent = e.indent(st.start)
	}
	if len(path) > 1 {
		s.indent += s.step
	}
	return s
}

// headed is a table with its header and all that is in it, a blank line above.
func (e *editor) headed(t *Table, bracket string, keys []string, s style) string {
	w := writer{step: s.step}
	last := len(keys) - 1
	w.table(t, bracket, path(keys[:last]), keys[last], s.indent)
	return w.String()
}
