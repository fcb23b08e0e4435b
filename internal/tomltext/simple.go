package tomltext

import (
	"strconv"
	"strings"
	"time"
)

// Simple reads a text in the simplest forms of TOML: headers, and keys without dots that
// hold a text without escapes, a whole number, a truth value, a day, or a list of such,
// each in one line. It makes of it what the TOML library would, in a tenth of the time:
// a long log is little else. ok is false where the text has anything more to it, or
// anything wrong; then it is for the library.
func Simple(text string) (doc map[string]any, ok bool) {
	s := simple{doc: map[string]any{}}
	s.table = s.doc
	for text != "" {
		line, rest, ended := strings.Cut(text, "\n")
		if ended {
			line = strings.TrimSuffix(line, "\r")
		}
		if !s.line(line) {
			return nil, false
		}
		text = rest
	}
	return s.doc, true
}

// simple is a text being read.
type simple struct {
	doc, table map[string]any // of all, and of the last header
}

// line reads one line; it says whether it could.
func (s *simple) line(line string) bool {
	for i := range len(line) {
		if c := line[i]; c < ' ' && c != '\t' || c == 0x7f {
			return false
		}
	}
	line = strings.TrimLeft(line, blanks)
	if isEnd(line) {
		return true
	}
	if line[0] == '[' {
		return s.head(line)
	}
	key, rest := bareKey(line)
	rest, found := strings.CutPrefix(strings.TrimLeft(rest, blanks), "=")
	if key == "" || !found {
		return false
	}
	if _, there := s.table[key]; there {
		return false
	}
	value, rest := scalar(strings.TrimLeft(rest, blanks))
	if value == nil || !isEnd(strings.TrimLeft(rest, blanks)) {
		return false
	}
	s.table[key] = value
	return true
}

const blanks = " \t"

// isEnd says whether nothing but a comment is left of a line.
func isEnd(rest string) bool { return rest == "" || rest[0] == '#' }

// bareKey is the key that a text begins with; "" where it begins with none.
func bareKey(text string) (key, rest string) {
	n := 0
	for n < len(text) && isBare(text[n]) {
		n++
	}
	return text[:n], text[n:]
}

func isBare(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == '-'
}

// head reads a header and opens its table.
func (s *simple) head(line string) bool {
	inside, double := strings.CutPrefix(line[1:], "[")
	path, rest, found := strings.Cut(inside, "]")
	if double && found {
		rest, found = strings.CutPrefix(rest, "]")
	}
	if !found || !isEnd(strings.TrimLeft(rest, blanks)) {
		return false
	}
	return s.open(path, double)
}

// open goes to the table of a header, which must not be there yet.
func (s *simple) open(path string, double bool) bool {
	at := s.doc
	for {
		key, rest := bareKey(path)
		if key == "" {
			return false
		}
		if rest == "" {
			s.table = map[string]any{}
			return put(at, key, s.table, double)
		}
		if rest[0] != '.' {
			return false
		}
		if at = within(at, key); at == nil {
			return false
		}
		path = rest[1:]
	}
}

// within is the table under a key, a new one where nothing is there, the last of a list;
// nil where something else is.
func within(at map[string]any, key string) map[string]any {
	switch x := at[key].(type) {
	case nil:
		t := map[string]any{}
		at[key] = t
		return t
	case map[string]any:
		return x
	case []map[string]any:
		return x[len(x)-1]
	}
	return nil
}

// put adds a table under a key, or to the list under it.
func put(at map[string]any, key string, t map[string]any, double bool) bool {
	list, isList := at[key].([]map[string]any)
	_, there := at[key]
	switch {
	case double && (isList || !there):
		at[key] = append(list, t)
	case !double && !there:
		at[key] = t
	default:
		return false
	}
	return true
}

// scalar is the value that a text begins with; nil where it is none of the simple ones.
func scalar(text string) (value any, rest string) {
	if text == "" {
		return nil, ""
	}
	switch text[0] {
	case '"':
		inside, rest, found := strings.Cut(text[1:], `"`)
		if !found || strings.Contains(inside, `\`) {
			return nil, ""
		}
		return inside, rest
	case '[':
		return array(text[1:])
	}
	n := strings.IndexAny(text, " \t#,]")
	if n < 0 {
		n = len(text)
	}
	return word(text[:n]), text[n:]
}

// array is the list behind its bracket.
func array(text string) (value any, rest string) {
	list := []any{}
	text = strings.TrimLeft(text, blanks)
	if rest, empty := strings.CutPrefix(text, "]"); empty {
		return list, rest
	}
	for {
		v, rest := scalar(strings.TrimLeft(text, blanks))
		rest = strings.TrimLeft(rest, blanks)
		if _, nested := v.([]any); v == nil || nested || rest == "" {
			return nil, ""
		}
		list = append(list, v)
		switch rest[0] {
		case ',':
			text = rest[1:]
		case ']':
			return list, rest[1:]
		default:
			return nil, ""
		}
	}
}

// word is a truth value, a whole number or a day; nil where it is neither.
func word(w string) any {
	switch w {
	case "true":
		return true
	case "false":
		return false
	}
	digits := strings.TrimPrefix(w, "-")
	const day = "2006-01-02"
	if len(w) == len(day) && w[4] == '-' && w[7] == '-' && w[0] != '-' {
		if t, err := time.Parse(day, w); err == nil {
			return t
		}
		return nil
	}
	if digits == "" || len(digits) > 18 || len(digits) > 1 && digits[0] == '0' {
		return nil
	}
	for i := range len(digits) {
		if digits[i] < '0' || digits[i] > '9' {
			return nil
		}
	}
	n, err := strconv.ParseInt(w, 10, 64)
	if err != nil {
		return nil
	}
	return n
}
