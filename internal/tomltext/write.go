package tomltext

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"
)

// Write is a file in its canonical form: the keys of each table in their order, tables
// inside one another indented by two blanks, implied keys left out.
func Write(root *Table) []byte {
	w := writer{step: "  "}
	w.Grow(4 << 10)
	w.pairs(root.Pairs, "")
	w.headed(root.Pairs, "", "")
	return w.Bytes()
}

// Text is a text as a TOML basic string. What is no UTF-8 becomes U+FFFD.
func Text(s string) Plain {
	plain := true
	for i := range len(s) {
		plain = plain && s[i] >= ' ' && s[i] < 0x7f && s[i] != '"' && s[i] != '\\'
	}
	if plain {
		return Plain(`"` + s + `"`)
	}
	w := writer{}
	w.text(s)
	return Plain(w.String())
}

type writer struct {
	bytes.Buffer
	step string // how much further a table within a table is indented
}

// pairs writes the keys of a table that stand in its lines.
func (w *writer) pairs(pairs []Pair, indent string) {
	for _, p := range pairs {
		if p.Value != nil && !p.Implied && !hasHeader(p.Value) {
			w.WriteString(indent)
			w.pair(p)
			w.WriteByte('\n')
		}
	}
}

// headed writes the tables of a table that have headers; indent is that of the headers.
func (w *writer) headed(pairs []Pair, path, indent string) {
	for _, p := range pairs {
		if p.Implied {
			continue
		}
		switch x := p.Value.(type) {
		case *Table:
			w.table(x, "[", path, p.Key, indent)
		case Tables:
			for _, t := range x {
				w.table(t, "[[", path, p.Key, indent)
			}
		}
	}
}

// table writes a table with its header, a blank line above it.
func (w *writer) table(t *Table, bracket, path, key, indent string) {
	if path != "" {
		path += "."
	}
	path += Key(key)
	w.WriteByte('\n')
	w.WriteString(indent)
	w.WriteString(bracket)
	w.WriteString(path)
	w.WriteString("]]"[:len(bracket)])
	w.WriteByte('\n')
	w.pairs(t.Pairs, indent)
	w.headed(t.Pairs, path, indent+w.step)
}

func (w *writer) pair(p Pair) {
	w.WriteString(Key(p.Key))
	w.WriteString(" = ")
	w.value(p.Value)
}

// value writes a value in one line, tables in braces.
func (w *writer) value(v Value) {
	switch x := v.(type) {
	case Plain:
		w.WriteString(string(x))
	case List:
		w.WriteByte('[')
		for i, e := range x {
			w.comma(i)
			w.value(e)
		}
		w.WriteByte(']')
	case Tables:
		w.WriteByte('[')
		for i, e := range x {
			w.comma(i)
			w.value(e)
		}
		w.WriteByte(']')
	default:
		pairs, _ := pairsOf(v)
		w.WriteByte('{')
		n := 0
		for _, p := range pairs {
			if p.Value != nil && !p.Implied {
				w.comma(n)
				w.pair(p)
				n++
			}
		}
		w.WriteByte('}')
	}
}

func (w *writer) comma(i int) {
	if i > 0 {
		w.WriteString(", ")
	}
}

// OneLine is a value in one line.
func OneLine(v Value) string {
	w := writer{}
	w.value(v)
	return w.String()
}

// Key is a key as it is spelt in TOML, in quotation marks where it must be.
func Key(k string) string {
	for i := range len(k) {
		c := k[i]
		if !(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == '-') {
			return string(Text(k))
		}
	}
	if k == "" {
		return `""`
	}
	return k
}

func path(keys []string) string {
	spelt := make([]string, len(keys))
	for i, k := range keys {
		spelt[i] = Key(k)
	}
	return strings.Join(spelt, ".")
}

// text writes a TOML basic string.
func (w *writer) text(s string) {
	w.WriteByte('"')
	for _, r := range s {
		switch {
		case r == '"' || r == '\\':
			w.WriteByte('\\')
			w.WriteRune(r)
		case r == '\n':
			w.WriteString(`\n`)
		case r == '\t':
			w.WriteString(`\t`)
		case r == '\r':
			w.WriteString(`\r`)
		case r < ' ' || r == 0x7f:
			fmt.Fprintf(w, `\u%04X`, r)
		case r < utf8.RuneSelf:
			w.WriteByte(byte(r))
		default:
			w.WriteRune(r)
		}
	}
	w.WriteByte('"')
}
