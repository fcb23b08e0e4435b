package tomltext

import (
	"slices"
	"strings"
)

// plan is what is to become of an array of tables in brackets, or of a table in braces,
// whose elements are others than before, or in another order.
type plan struct {
	n     *Node
	units []*unit // as they are
	order []*unit // as they are to be
}

// unit is an element of an array, or a key with its value in braces.
type unit struct {
	span
	st    *statement
	text  string // of one that is added; then the rest is empty
	lead  string // the lines above it, and what is before it on its own
	trail string // what is behind it, and its comma, on its line
}

// planOf is the plan for what stands in the braces of n, begun if there is none.
func (e *editor) planOf(n *Node) *plan {
	for _, p := range e.plans {
		if p.n == n {
			return p
		}
	}
	p := &plan{n: n}
	for _, st := range e.braces[n] {
		p.units = append(p.units, &unit{span: st.span, st: st})
	}
	p.order = slices.Clone(p.units)
	e.plans = append(e.plans, p)
	return p
}

// planList plans what an array of tables is to hold.
func (e *editor) planList(list *Node, now Tables, from []int) {
	p := &plan{n: list}
	for _, item := range list.Items {
		p.units = append(p.units, &unit{span: item.span})
	}
	for j, i := range from {
		if i >= 0 {
			p.order = append(p.order, p.units[i])
		} else {
			p.order = append(p.order, &unit{text: OneLine(now[j])})
		}
	}
	if slices.Equal(p.order, p.units) {
		return
	}
	e.plans = append(e.plans, p)
}

// planRemoval plans to take a key out of its braces.
func (e *editor) planRemoval(st *statement) {
	p := e.planOf(st.in)
	p.order = slices.DeleteFunc(p.order, func(u *unit) bool { return u.st == st })
}

// planAddition plans to write now[i] in braces, behind its nearest sister before it.
func (e *editor) planAddition(n *Node, now []Pair, i int) {
	var after *statement
	for k := range i {
		if st := n.Child(now[k].Key).maker(); st != nil && st.braced && st.in == n {
			after = st
		}
	}
	e.planOf(n).add(after, inlinePair(now[i]))
}

// add puts a text behind a statement and what was put there before, or first.
func (p *plan) add(after *statement, text string) {
	at := 0
	if after != nil {
		at = slices.IndexFunc(p.order, func(u *unit) bool { return u.st == after }) + 1
	}
	for at < len(p.order) && p.order[at].st == nil {
		at++
	}
	p.order = slices.Insert(p.order, at, &unit{text: text})
}

// rebuild carries the plans out, the innermost first.
func (e *editor) rebuild() {
	slices.SortStableFunc(e.plans, func(a, b *plan) int { return b.n.depth - a.n.depth })
	for _, p := range e.plans {
		b := e.blockAt(p.n.span.start)
		var inside []edit
		b.edits = slices.DeleteFunc(b.edits, func(ed edit) bool {
			within := ed.start >= p.n.span.start && ed.end <= p.n.span.end
			if within {
				inside = append(inside, ed)
			}
			return within
		})
		if text, err := e.bracketed(p, inside); err != nil {
			e.err = err
		} else {
			b.edits = append(b.edits, edit{p.n.span, text})
		}
	}
}

// bracketed is what stands in brackets, with its own brackets, as planned.
func (e *editor) bracketed(p *plan, edits []edit) (string, error) {
	for _, u := range p.units {
		within := []edit{}
		for _, ed := range edits {
			if ed.start >= u.start && ed.end <= u.end {
				within = append(within, ed)
			}
		}
		text, err := e.edited(u.span, within)
		if err != nil {
			return "", err
		}
		u.text = text
	}
	gaps := e.gaps(p)
	if slices.ContainsFunc(gaps, func(gap string) bool { return strings.Contains(gap, "\n") }) {
		return e.inLines(p, gaps), nil
	}
	return e.inOneLine(p, gaps), nil
}

// gaps are what stands between the brackets before, between and behind the units.
func (e *editor) gaps(p *plan) (gaps []string) {
	at := p.n.span.start + 1
	for _, u := range p.units {
		gaps = append(gaps, e.text[at:u.start])
		at = u.end
	}
	return append(gaps, e.text[at:p.n.span.end-1])
}

func (e *editor) inOneLine(p *plan, gaps []string) string {
	texts := make([]string, len(p.order))
	for i, u := range p.order {
		texts[i] = u.text
	}
	first, last := gaps[0], withoutComma(gaps[len(gaps)-1])
	if len(texts) == 0 {
		first, last = "", ""
	}
	open, end := e.text[p.n.span.start:p.n.span.start+1], e.text[p.n.span.end-1:p.n.span.end]
	return open + first + strings.Join(texts, ", ") + last + end
}

// inLines writes one unit a line, each with its comments.
func (e *editor) inLines(p *plan, gaps []string) string {
	opening, indent := "", "  "
	last := len(gaps) - 1
	comma := len(p.units) > 0 && hasComma(gaps[last])
	footer := ""
	for i, gap := range gaps {
		gap = withoutComma(gap)
		line, rest, broken := strings.Cut(gap, "\n")
		line = strings.TrimRight(line, " \t\r")
		if i == 0 {
			opening = line
		} else {
			p.units[i-1].trail = line
		}
		switch {
		case i == last:
			footer = rest
		case broken:
			p.units[i].lead = rest
			indent = rest[strings.LastIndexByte(rest, '\n')+1:]
		}
	}
	footer = p.passOn(footer)
	var out strings.Builder
	out.WriteString(e.text[p.n.span.start : p.n.span.start+1])
	out.WriteString(opening + e.nl)
	for i, u := range p.order {
		if u.lead == "" {
			u.lead = indent
		}
		out.WriteString(u.lead + u.text)
		if comma || i < len(p.order)-1 {
			out.WriteByte(',')
		}
		out.WriteString(u.trail + e.nl)
	}
	out.WriteString(footer)
	out.WriteString(e.text[p.n.span.end-1 : p.n.span.end])
	return out.String()
}

// passOn gives the loose comments above what is gone to what follows it, or to the
// footer, which it returns.
func (p *plan) passOn(footer string) string {
	loose := ""
	for _, u := range p.units {
		if slices.Contains(p.order, u) {
			u.lead = loose + u.lead
			loose = ""
			continue
		}
		loose = ""
		if lines := strings.SplitAfter(u.lead, "\n"); strings.Contains(u.lead, "#") {
			for i := len(lines) - 1; i >= 0; i-- {
				if i < len(lines)-1 && strings.TrimSpace(lines[i]) == "" {
					loose = strings.Join(lines[:i+1], "")
					break
				}
			}
		}
	}
	return loose + footer
}

// withoutComma is a gap without the comma in it; one in a comment is none.
func withoutComma(gap string) string {
	if i := commaIn(gap); i >= 0 {
		return gap[:i] + gap[i+1:]
	}
	return gap
}

func hasComma(gap string) bool { return commaIn(gap) >= 0 }

func commaIn(gap string) int {
	comment := false
	for i := range len(gap) {
		switch c := gap[i]; {
		case c == '\n':
			comment = false
		case c == '#':
			comment = true
		case c == ',' && !comment:
			return i
		}
	}
	return -1
}
