package scenario

import (
	"fmt"
	"reflect"
	"strings"

	"pgregory.net/rapid"

	"reelworth/internal/tomltext"
)

// stylist writes tables the way people might: in any of TOML's forms, with comments at
// every place.
type stylist struct {
	t        *rapid.T
	out      strings.Builder
	nl       string
	comments []remark
}

// remark is a comment: the table and the key that it belongs to.
type remark struct {
	text  string
	table string // the nearest numbered table
	key   string // the path from there; "" for the table's header
	loose bool   // it stands by itself
	line  string // the whole line, where it ends one that holds a whole value
}

func (w *stylist) may(what string) bool { return rapid.IntRange(0, 3).Draw(w.t, what) == 0 }

func (w *stylist) remark(table, key string, loose bool) string {
	text := fmt.Sprintf("# c%d.", len(w.comments))
	w.comments = append(w.comments, remark{text: text, table: table, key: key, loose: loose})
	return text
}

func (w *stylist) blank() string {
	return rapid.SampledFrom([]string{"", " ", "\t", "  "}).Draw(w.t, "blank")
}

func (w *stylist) key(k string) string {
	if strings.ContainsAny(k, "'\n\r\t") || tomltext.Key(k) != k || !w.may("quoted") {
		return tomltext.Key(k)
	}
	return rapid.SampledFrom([]string{"'" + k + "'", `"` + k + `"`}).Draw(w.t, "quotes")
}

// id is the number of a table, or that of the one it is in.
func id(pairs []tomltext.Pair, in string) string {
	for _, p := range pairs {
		if p.Key == numbered {
			return string(p.Value.(tomltext.Plain))
		}
	}
	return in
}

const numbered = "numbered"

func join(path, key string) string { return strings.TrimPrefix(path+"."+key, ".") }

// lines writes what a table has in its own lines; the rest is returned.
func (w *stylist) lines(pairs []tomltext.Pair, table, path, dots string) (headed []tomltext.Pair) {
	for _, p := range w.shuffled(pairs) {
		if p.Value == nil || p.Implied && !w.may("implied") {
			continue
		}
		sub, isTable := p.Value.(*tomltext.Table)
		list, isList := p.Value.(tomltext.Tables)
		switch {
		case isList && len(list) == 0:
		case isTable && w.may("dotted"):
			if rest := w.lines(sub.Pairs, table, join(path, p.Key), dots+w.key(p.Key)+w.blank()+"."); len(rest) > 0 {
				panic("dotted tables have no headers")
			}
		case (isTable || isList) && dots == "" && !w.may("in brackets"):
			headed = append(headed, p)
		default:
			w.line(p, table, join(path, p.Key), dots)
		}
	}
	return headed
}

// shuffled puts pairs into another order, sometimes.
func (w *stylist) shuffled(pairs []tomltext.Pair) []tomltext.Pair {
	if !w.may("shuffle") {
		return pairs
	}
	return rapid.Permutation(pairs).Draw(w.t, "order")
}

func (w *stylist) line(p tomltext.Pair, table, path, dots string) {
	if w.may("loose comment") {
		w.out.WriteString(w.nl + w.blank() + w.remark(table, path, true) + w.nl + w.nl)
	}
	indent := w.blank()
	for range rapid.IntRange(0, 1).Draw(w.t, "comments above") {
		w.out.WriteString(indent + w.remark(table, path, false) + w.nl)
	}
	line := indent + dots + w.key(p.Key) + w.blank() + "=" + w.blank() + w.value(p.Value, table, path) + w.blank()
	if w.may("comment behind") {
		line += w.remark(table, path, false)
		switch p.Value.(type) {
		case tomltext.Plain, tomltext.List, tomltext.Inline:
			w.comments[len(w.comments)-1].line = line
		}
	}
	w.out.WriteString(line + w.nl)
}

func (w *stylist) value(v tomltext.Value, table, path string) string {
	var items []string
	brackets := "[]"
	switch x := v.(type) {
	case tomltext.Plain:
		if numeric[path[strings.LastIndexByte(path, '.')+1:]] {
			return w.scalar(string(x))
		}
		return string(x)
	case tomltext.List:
		for _, e := range x {
			items = append(items, w.value(e, table, path))
		}
	case tomltext.Tables:
		for _, e := range x {
			items = append(items, w.value(e, table, path))
		}
	case tomltext.Inline:
		return w.braces(x, table, path)
	case *tomltext.Table:
		return w.braces(x.Pairs, id(x.Pairs, table), map[bool]string{true: path, false: ""}[id(x.Pairs, table) == table])
	}
	return w.bracket(brackets, items, table, path)
}

func (w *stylist) braces(pairs []tomltext.Pair, table, path string) string {
	var items []string
	for _, p := range pairs {
		if list, ok := p.Value.(tomltext.Tables); ok && len(list) == 0 || p.Value == nil || p.Implied && !w.may("implied") {
			continue
		}
		items = append(items, w.key(p.Key)+w.blank()+"="+w.blank()+w.value(p.Value, table, join(path, p.Key)))
	}
	return w.bracket("{}", items, table, path)
}

// bracket writes elements in one line or in many. Comments in brackets count as loose:
// they belong to elements, which only the table's own test tells apart.
func (w *stylist) bracket(brackets string, items []string, table, path string) string {
	open, end := brackets[:1], brackets[1:]
	if len(items) == 0 || !w.may("many lines") {
		return open + w.blank() + strings.Join(items, w.blank()+","+w.blank()) + w.blank() + end
	}
	text := open
	if w.may("comment at the bracket") {
		text += " " + w.remark(table, path, true)
	}
	text += w.nl
	for i, item := range items {
		if w.may("comment above") {
			text += "  " + w.remark(table, path, true) + w.nl
		}
		text += w.blank() + item
		if i < len(items)-1 || w.may("last comma") {
			text += w.blank() + ","
		}
		if w.may("comment behind") {
			text += w.blank() + w.remark(table, path, true)
		}
		text += w.nl
	}
	return text + w.blank() + end
}

// numeric are the keys that hold numbers.
var numeric = func() map[string]bool {
	m := map[string]bool{}
	for _, f := range Fields() {
		switch f.Type {
		case reflect.TypeFor[Decimal](), reflect.TypeFor[Maybe](), reflect.TypeFor[[12]Decimal]():
			m[f.Key] = true
		}
	}
	return m
}()

// scalar spells a number in another way, sometimes.
func (w *stylist) scalar(text string) string {
	inside := strings.Trim(text, `"`)
	if len(inside) == len(text)-2 && inside != "" && w.may("other spelling") {
		if d, wrong := parseNumber(inside); wrong == "" && d.Exponent() >= 0 && inside != "-0" {
			if spelt := d.String(); spelt == inside {
				return inside // a whole number needs no quotation marks
			}
		}
	}
	return text
}

// headed writes tables with headers, those of several lists mixed.
func (w *stylist) headed(pairs []tomltext.Pair, table, path, header string) {
	type one struct {
		open, close, key string
		t                *tomltext.Table
	}
	var queues [][]one
	for _, p := range w.shuffled(pairs) {
		switch x := p.Value.(type) {
		case *tomltext.Table:
			queues = append(queues, []one{{"[", "]", p.Key, x}})
		case tomltext.Tables:
			var q []one
			for _, t := range x {
				q = append(q, one{"[[", "]]", p.Key, t})
			}
			queues = append(queues, q)
		}
	}
	for len(queues) > 0 {
		k := 0
		if w.may("mix") {
			k = rapid.IntRange(0, len(queues)-1).Draw(w.t, "from")
		}
		o := queues[k][0]
		if queues[k] = queues[k][1:]; len(queues[k]) == 0 {
			queues = append(queues[:k], queues[k+1:]...)
		}
		inside, where := id(o.t.Pairs, table), ""
		if inside == table {
			where = join(path, o.key)
		}
		w.header(o.open, o.close, join(header, w.key(o.key)), inside, where)
		rest := w.lines(o.t.Pairs, inside, where, "")
		w.headed(rest, inside, where, join(header, tomltext.Key(o.key)))
	}
}

func (w *stylist) header(open, end, header, table, where string) {
	if w.may("blank line") {
		w.out.WriteString(w.nl)
	}
	if w.may("loose comment") {
		w.out.WriteString(w.nl + w.remark(table, where, true) + w.nl + w.nl)
	}
	indent := w.blank()
	if w.may("comment above") {
		w.out.WriteString(indent + w.remark(table, where, false) + w.nl)
	}
	line := indent + open + w.blank() + header + w.blank() + end + w.blank()
	if w.may("comment behind") {
		line += w.remark(table, where, false)
		w.comments[len(w.comments)-1].line = line
	}
	w.out.WriteString(line + w.nl)
}

// styled is a file written in any style.
func styled(t *rapid.T, f File) (string, []remark) {
	w := &stylist{t: t, nl: rapid.SampledFrom([]string{"\n", "\r\n"}).Draw(t, "line end")}
	tree := treeOf(&f, true)
	rest := w.lines(tree.Pairs, "", "", "")
	w.headed(rest, "", "", "")
	if w.may("comment at the end") {
		w.out.WriteString(w.nl + w.remark("", "", true) + w.nl)
	}
	text := w.out.String()
	if w.may("no line end") {
		text = strings.TrimRight(text, "\r\n")
	}
	if w.may("byte order mark") {
		text = "\ufeff" + text
	}
	return text, w.comments
}
