package tomltext

import (
	"strconv"
	"strings"
)

// The smallest parts of TOML as the scanner goes past them: keys, values, strings,
// blanks.

// What ends a key that stands in no quotation marks, and such a value.
var (
	endsKey   = bytesOf(" \t\r\n.=[]{}\"'#,")
	endsValue = bytesOf(",]}#\r\n")
)

func bytesOf(text string) (in [256]bool) {
	for i := range len(text) {
		in[text[i]] = true
	}
	return in
}

// key reads the parts of a dotted key and the blanks after it. The next key
// overwrites them.
func (s *scanner) key() ([]string, error) {
	parts, ends := s.parts[:0], s.ends[:0]
	for {
		s.blank(false)
		p, err := s.keyPart()
		if err != nil {
			return nil, err
		}
		parts, ends = append(parts, p), append(ends, s.pos)
		s.blank(false)
		if !s.take('.') {
			s.parts, s.ends = parts, ends
			return parts, nil
		}
		if len(parts) > maxDepth {
			return nil, errDeep
		}
	}
}

func (s *scanner) keyPart() (string, error) {
	start := s.pos
	if c := s.peek(); c == '"' || c == '\'' {
		if err := s.quoted(); err != nil {
			return "", err
		}
		inside := s.text[start+1 : s.pos-1]
		if c == '\'' || !strings.Contains(inside, `\`) {
			return inside, nil
		}
		return unescape(inside)
	}
	for s.pos < len(s.text) && !endsKey[s.text[s.pos]] {
		s.pos++
	}
	if s.pos == start {
		return "", ErrSyntax
	}
	return s.text[start:s.pos], nil
}

// value reads a value into n.
func (s *scanner) value(n *Node) error {
	n.span.start = s.pos
	err := s.valueInto(n)
	n.span.end = s.pos
	return err
}

func (s *scanner) valueInto(n *Node) error {
	start := s.pos
	switch s.peek() {
	case '"', '\'':
		if err := s.quoted(); err != nil {
			return err
		}
		n.Raw = s.text[start:s.pos]
		return nil
	case '[':
		n.Array = true
		return s.list(']', func() error {
			item := s.node(n, "", 1)
			n.Items = append(n.Items, item)
			if err := s.spend(item, n, 1); err != nil {
				return err
			}
			return s.value(item)
		})
	case '{':
		return s.list('}', func() error { return s.assign(n, true) })
	}
	for s.pos < len(s.text) && !endsValue[s.text[s.pos]] {
		s.pos++
	}
	n.Raw = strings.TrimRight(s.text[start:s.pos], " \t")
	s.pos = start + len(n.Raw)
	if n.Raw == "" {
		return ErrSyntax
	}
	return nil
}

// list reads what stands between brackets, one element after another.
func (s *scanner) list(end byte, element func() error) error {
	s.pos++
	for {
		s.blank(true)
		if s.take(end) {
			return nil
		}
		if err := element(); err != nil {
			return err
		}
		s.blank(true)
		if s.take(',') {
			continue
		}
		if !s.take(end) {
			return ErrSyntax
		}
		return nil
	}
}

// quoted goes past a string of any of the four kinds.
func (s *scanner) quoted() error {
	q := s.text[s.pos]
	run := s.run(q)
	switch {
	case run == 2:
		s.pos += 2
		return nil
	case run >= 6:
		s.pos += 6 // an empty one of three quotes
		return nil
	}
	long := run >= 3
	s.pos++
	if long {
		s.pos += 2
	}
	for s.pos < len(s.text) {
		switch c := s.text[s.pos]; {
		case c == '\\' && q == '"':
			s.pos++
			if s.peek() == '\n' {
				s.line++
			}
			s.pos++
		case c == '\n':
			if !long {
				return ErrSyntax
			}
			s.line++
			s.pos++
		case c == q && !long:
			s.pos++
			return nil
		case c == q:
			run := s.run(q)
			s.pos += min(run, 5) // the last three close; up to two before them are text
			if run >= 3 {
				return nil
			}
		default:
			s.pos++
		}
	}
	s.pos = len(s.text)
	return ErrSyntax
}

// run is how many of c stand here.
func (s *scanner) run(c byte) int {
	n := 0
	for s.pos+n < len(s.text) && s.text[s.pos+n] == c {
		n++
	}
	return n
}

// blank goes past spaces, and with lines also past line ends and comments. It says
// whether anything is left.
func (s *scanner) blank(lines bool) bool {
	for s.pos < len(s.text) {
		switch c := s.text[s.pos]; {
		case c == ' ' || c == '\t':
		case lines && c == '\r':
		case lines && c == '\n':
			s.line++
		case lines && c == '#':
			s.comment()
			continue
		default:
			return true
		}
		s.pos++
	}
	return false
}

func (s *scanner) comment() {
	n := strings.IndexByte(s.text[s.pos:], '\n')
	if n < 0 {
		n = len(s.text) - s.pos
	}
	s.pos += n
}

// lineEnd goes past what may follow a header or a value on its line.
func (s *scanner) lineEnd() error {
	s.blank(false)
	if s.peek() == '#' {
		s.comment()
	}
	s.take('\r')
	if s.pos < len(s.text) && s.peek() != '\n' {
		return ErrSyntax
	}
	return nil
}

// peek is the next byte; 0 at the end.
func (s *scanner) peek() byte {
	if s.pos < len(s.text) {
		return s.text[s.pos]
	}
	return 0
}

func (s *scanner) take(c byte) bool {
	if s.pos < len(s.text) && s.text[s.pos] == c {
		s.pos++
		return true
	}
	return false
}

// unescape is the text of a quoted key.
func unescape(in string) (string, error) {
	var b strings.Builder
	for i := 0; i < len(in); i++ {
		if in[i] != '\\' {
			b.WriteByte(in[i])
			continue
		}
		i++
		if i >= len(in) {
			return "", ErrSyntax
		}
		if at := strings.IndexByte(`btnfre"\`, in[i]); at >= 0 {
			b.WriteByte("\b\t\n\f\r\x1b\"\\"[at])
			continue
		}
		digits := map[byte]int{'x': 2, 'u': 4, 'U': 8}[in[i]]
		if digits == 0 || i+digits >= len(in) {
			return "", ErrSyntax
		}
		code, err := strconv.ParseUint(in[i+1:i+1+digits], 16, 32)
		if err != nil {
			return "", ErrSyntax
		}
		b.WriteRune(rune(code))
		i += digits
	}
	return b.String(), nil
}
