package tomltext

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// A Node is where a key or an array's element stands in the text of a TOML file.
// A TOML library says what a file means but not where; the nodes say where.
type Node struct {
	Line  int     // from 1
	Raw   string  // a scalar as it is spelt; "" for tables and arrays
	Keys  []Entry // of a table, in the order of the file
	Items []*Node // of an array
	Array bool

	index map[string]*Node // of a table with many keys
	made  *statement       // what makes it, where that is taken down
	depth int              // how many tables and arrays it is in
	path  int              // bytes of its whole path
	span  span             // of a value; empty for what headers and dotted keys make
}

// Entry is a key of a table.
type Entry struct {
	Key  string
	Node *Node
}

// span is a stretch of the text, in bytes.
type span struct{ start, end int }

// many is the number of keys from which a table is worth an index.
const many = 24

// Limits that no file of people comes near; they keep a hostile one from costing more
// than a moment, since the TOML library takes a file of 20,000 dots 20 seconds.
const (
	maxDepth = 32
	maxKeys  = 1000  // in one table
	maxItems = 10000 // in one list
	maxWork  = 128 << 20
)

// Limit names one of them.
type Limit string

// The limits: tables and lists inside one another, keys in a table, elements in a list,
// and what all of them cost together.
const (
	LimitDepth Limit = "depth"
	LimitKeys  Limit = "keys"
	LimitItems Limit = "items"
	LimitWork  Limit = "work"
)

// LimitError is the error of a text that goes beyond a limit.
type LimitError struct {
	Of   Limit
	Most int
}

func (e *LimitError) Error() string { return fmt.Sprintf("beyond %d of %s", e.Most, e.Of) }

var (
	errDeep  = &LimitError{LimitDepth, maxDepth}
	errKeys  = &LimitError{LimitKeys, maxKeys}
	errItems = &LimitError{LimitItems, maxItems}
	errWork  = &LimitError{LimitWork, maxWork}
)

// ErrSyntax is the error of what is no TOML; a TOML library says it better.
var ErrSyntax = errors.New("tomltext: this is no TOML")

// Layout is where everything in a file stands.
type Layout struct {
	Root *Node
	Cuts []Cut // empty where the file must be read in one piece
}

// Cut is the start of a header at which a file may be read piece by piece.
type Cut struct {
	Offset int // in bytes
	Line   int
	Key    string // of the array of tables
}

// scanner goes through a file once. On text that is not valid TOML it stops with an
// error, or finds nonsense; it never panics.
type scanner struct {
	text  string
	pos   int
	line  int
	table *Node
	work  int
	slab  []Node
	parts []string // of the last key
	ends  []int    // where each of them ends
	whole bool     // cuts are of no use
	split []string
	Layout
	record *record // nil where only the nodes are wanted
}

const byteOrderMark = "\ufeff"

// Scan finds every key of a TOML text. split names the arrays of tables at whose headers
// the text may be cut. On an error, line is where it is.
func Scan(text string, split ...string) (l Layout, line int, err error) {
	s := &scanner{text: strings.TrimPrefix(text, byteOrderMark), split: split}
	err = s.scan()
	if s.whole {
		s.Cuts = nil
	}
	for i := range s.Cuts {
		s.Cuts[i].Offset += len(text) - len(s.text)
	}
	return s.Layout, s.line, err
}

func (s *scanner) scan() (err error) {
	s.line = 1
	s.Root = s.node(nil, "", 0)
	s.table = s.Root
	for err == nil && s.blank(true) {
		if s.peek() == '[' {
			err = s.header()
		} else {
			err = s.assign(s.table, false)
		}
		if err == nil {
			err = s.lineEnd()
		}
	}
	return err
}

// Child is the node of a key, or nil.
func (n *Node) Child(key string) *Node {
	if n == nil {
		return nil
	}
	if len(n.Keys) > many {
		if n.index == nil {
			n.index = make(map[string]*Node, 2*len(n.Keys))
			for _, e := range n.Keys {
				n.index[e.Key] = e.Node
			}
		}
		return n.index[key]
	}
	for _, e := range n.Keys {
		if e.Key == key {
			return e.Node
		}
	}
	return nil
}

// Item is the node of an array's element, or nil.
func (n *Node) Item(i int) *Node {
	if n == nil || i < 0 || i >= len(n.Items) {
		return nil
	}
	return n.Items[i]
}

func (s *scanner) node(in *Node, key string, levels int) *Node {
	if len(s.slab) == 0 {
		s.slab = make([]Node, 256)
	}
	n := &s.slab[0]
	s.slab = s.slab[1:]
	n.Line = s.line
	if in != nil {
		n.depth, n.path = in.depth+levels, in.path+len(key)+1
	}
	return n
}

// add puts a new node under a key.
func (s *scanner) add(in *Node, key string, levels int) *Node {
	n := s.node(in, key, levels)
	if in.Keys == nil {
		in.Keys = make([]Entry, 0, 4)
	}
	in.Keys = append(in.Keys, Entry{key, n})
	if in.index != nil {
		in.index[key] = n
	}
	return n
}

// enter is the table under a key that a header or dotted key goes through: a new
// one, the one there, or the last of an array of tables.
func (s *scanner) enter(in *Node, key string) (*Node, error) {
	n := in.Child(key)
	if n == nil {
		n = s.add(in, key, 1)
		return n, s.spend(n, in, 1)
	}
	if n.Array && len(n.Items) > 0 {
		return n.Items[len(n.Items)-1], nil
	}
	return n, nil
}

// spend counts what a TOML library will do for n, a key of a table or an element
// of a list.
func (s *scanner) spend(n, in *Node, parts int) error {
	if n.depth > maxDepth {
		return errDeep
	}
	if len(in.Keys) > maxKeys {
		return errKeys
	}
	if len(in.Items) > maxItems {
		return errItems
	}
	if s.work += 100 + n.path*parts; s.work > maxWork {
		return errWork
	}
	return nil
}

// header reads [a.b] or [[a.b]].
func (s *scanner) header() error {
	start := Cut{Offset: s.pos, Line: s.line}
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
		return ErrSyntax
	}
	s.noteCut(start, parts, double)
	at := s.Root
	for _, p := range parts[:len(parts)-1] {
		if at, err = s.enter(at, p); err != nil {
			return err
		}
	}
	last, in := parts[len(parts)-1], at
	if double {
		list := at.Child(last)
		if list == nil {
			list = s.add(at, last, 1)
			list.Array = true
		}
		at = s.node(list, "", 1)
		list.Items = append(list.Items, at)
		in = list
	} else {
		if at, err = s.enter(at, last); err != nil {
			return err
		}
		at.Line = s.line
	}
	s.table = at
	s.record.header(at, span{start.Offset, s.pos})
	return s.spend(at, in, len(parts))
}

// noteCut remembers where a table of the split arrays starts, unless something else
// stands before or after it than a file of its own may hold.
func (s *scanner) noteCut(start Cut, parts []string, double bool) {
	first := len(s.Cuts) == 0
	switch {
	case len(parts) == 1 && double && slices.Contains(s.split, parts[0]):
		if first {
			s.whole = slices.ContainsFunc(s.split, func(k string) bool { return s.Root.Child(k) != nil })
		}
		start.Key = parts[0]
		s.Cuts = append(s.Cuts, start)
	case !first && parts[0] != s.Cuts[len(s.Cuts)-1].Key:
		s.whole = true
	}
}

// assign reads a.b = value into a table; braced says that it stands in an inline one.
func (s *scanner) assign(in *Node, braced bool) error {
	start, container := s.pos, in
	parts, err := s.key()
	if err != nil {
		return err
	}
	if !s.take('=') {
		return ErrSyntax
	}
	st := s.record.key(start, s.ends, container, braced)
	s.blank(false)
	for i, p := range parts[:len(parts)-1] {
		if in, err = s.enter(in, p); err != nil {
			return err
		}
		s.record.dotted(in, st, i)
	}
	n := s.add(in, parts[len(parts)-1], 1)
	if err := s.spend(n, in, len(parts)); err != nil {
		return err
	}
	if err = s.value(n); err == nil {
		s.record.value(st, n, s.pos)
	}
	return err
}
