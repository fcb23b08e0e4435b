package scenario

import (
	"errors"
	"fmt"
	"strings"
)

// A node is where a key or an array's element stands in the text of a TOML file.
// The TOML library says what a file means but not where; the nodes say where.
type node struct {
	line  int
	raw   string           // a scalar as it is spelt; "" for tables and arrays
	keys  []entry          // of a table, in the order of the file
	index map[string]*node // of a table with many keys
	items []*node          // of an array
	array bool
	depth int // how many tables and arrays it is in
	path  int // bytes of its whole path
}

type entry struct {
	key  string
	node *node
}

// many is the number of keys from which a table is worth an index.
const many = 24

// Limits that no scenario comes near; they keep a hostile file from costing more
// than a moment, since the TOML library takes a file of 20,000 dots 20 seconds.
const (
	maxDepth = 32
	maxKeys  = 1000  // in one table
	maxItems = 10000 // in one list
	maxWork  = 128 << 20
)

var (
	errDeep   = fmt.Errorf("tables or lists inside one another are more than %d deep", maxDepth)
	errMany   = fmt.Errorf("a table has more than %d keys, or a list more than %d elements", maxKeys, maxItems)
	errWork   = errors.New("the keys are too long and too many")
	errSyntax = errors.New("this is no TOML") // the TOML library says it better
)

// layout is where everything in a file stands.
type layout struct {
	root     *node
	comments bool
	cuts     []cut // empty where the file must be read in one piece
}

// cut is the start of a [[scenario]] header: the file may be read piece by piece.
type cut struct {
	offset int // in bytes
	line   int
}

// scanner goes through a file once. On text that is not valid TOML it stops with an
// error, or finds nonsense; it never panics.
type scanner struct {
	text  string
	pos   int
	line  int
	table *node
	work  int
	slab  []node
	parts []string // of the last key
	whole bool     // cuts are of no use
	layout
}

// scan finds every key of a TOML text. The line is that of the error.
func scan(text string) (l layout, line int, err error) {
	s := &scanner{text: strings.TrimPrefix(text, "\ufeff"), line: 1}
	s.root = s.node(nil, "", 0)
	s.table = s.root
	for err == nil && s.blank(true) {
		if s.peek() == '[' {
			err = s.header()
		} else {
			err = s.assign(s.table)
		}
		if err == nil {
			err = s.lineEnd()
		}
	}
	if s.whole {
		s.cuts = nil
	}
	for i := range s.cuts {
		s.cuts[i].offset += len(text) - len(s.text)
	}
	return s.layout, s.line, err
}

// HasComments says whether a TOML text has comments, which saving loses.
func HasComments(data []byte) bool {
	l, _, _ := scan(string(data))
	return l.comments
}

// child is the node of a key, or nil.
func (n *node) child(key string) *node {
	if n == nil {
		return nil
	}
	if len(n.keys) > many {
		if n.index == nil {
			n.index = make(map[string]*node, 2*len(n.keys))
			for _, e := range n.keys {
				n.index[e.key] = e.node
			}
		}
		return n.index[key]
	}
	for _, e := range n.keys {
		if e.key == key {
			return e.node
		}
	}
	return nil
}

// item is the node of an array's element, or nil.
func (n *node) item(i int) *node {
	if n == nil || i < 0 || i >= len(n.items) {
		return nil
	}
	return n.items[i]
}

func (s *scanner) node(in *node, key string, levels int) *node {
	if len(s.slab) == 0 {
		s.slab = make([]node, 256)
	}
	n := &s.slab[0]
	s.slab = s.slab[1:]
	n.line = s.line
	if in != nil {
		n.depth, n.path = in.depth+levels, in.path+len(key)+1
	}
	return n
}

// add puts a new node under a key.
func (s *scanner) add(in *node, key string, levels int) *node {
	n := s.node(in, key, levels)
	in.keys = append(in.keys, entry{key, n})
	if in.index != nil {
		in.index[key] = n
	}
	return n
}

// enter is the table under a key that a header or dotted key goes through: a new
// one, the one there, or the last of an array of tables.
func (s *scanner) enter(in *node, key string) (*node, error) {
	n := in.child(key)
	if n == nil {
		n = s.add(in, key, 1)
		return n, s.spend(n, in, 1)
	}
	if n.array && len(n.items) > 0 {
		return n.items[len(n.items)-1], nil
	}
	return n, nil
}

// spend counts what the TOML library will do for n, a key of a table or an element
// of a list.
func (s *scanner) spend(n, in *node, parts int) error {
	if n.depth > maxDepth {
		return errDeep
	}
	if len(in.keys) > maxKeys || len(in.items) > maxItems {
		return errMany
	}
	if s.work += 100 + n.path*parts; s.work > maxWork {
		return errWork
	}
	return nil
}

// header reads [a.b] or [[a.b]].
func (s *scanner) header() error {
	start := cut{s.pos, s.line}
	double := strings.HasPrefix(s.text[s.pos:], "[[")
	s.pos++
	if double {
		s.pos++
	}
	parts, err := s.key()
	if err != nil {
		return err
	}
	if !s.take(']') || double && !s.take(']') {
		return errSyntax
	}
	s.noteCut(start, parts, double)
	at := s.root
	for _, p := range parts[:len(parts)-1] {
		if at, err = s.enter(at, p); err != nil {
			return err
		}
	}
	last, in := parts[len(parts)-1], at
	if double {
		list := at.child(last)
		if list == nil {
			list = s.add(at, last, 1)
			list.array = true
		}
		at = s.node(list, "", 1)
		list.items = append(list.items, at)
		in = list
	} else {
		if at, err = s.enter(at, last); err != nil {
			return err
		}
		at.line = s.line
	}
	s.table = at
	return s.spend(at, in, len(parts))
}

// noteCut remembers where a scenario starts, unless something else than scenarios
// follows the first of them.
func (s *scanner) noteCut(start cut, parts []string, double bool) {
	switch {
	case len(parts) == 1 && double && parts[0] == "scenario":
		if len(s.cuts) == 0 && s.root.child("scenario") != nil {
			s.whole = true
		}
		s.cuts = append(s.cuts, start)
	case len(s.cuts) > 0 && parts[0] != "scenario":
		s.whole = true
	}
}

// assign reads a.b = value into a table.
func (s *scanner) assign(in *node) error {
	parts, err := s.key()
	if err != nil {
		return err
	}
	if !s.take('=') {
		return errSyntax
	}
	s.blank(false)
	for _, p := range parts[:len(parts)-1] {
		if in, err = s.enter(in, p); err != nil {
			return err
		}
	}
	n := s.add(in, parts[len(parts)-1], 1)
	if err := s.spend(n, in, len(parts)); err != nil {
		return err
	}
	return s.value(n)
}
