package tomltext

import (
	"cmp"
	"errors"
	"slices"
	"strings"
)

var errOverlap = errors.New("tomltext: two changes of one place")

// emit is the text with everything changed.
func (e *editor) emit() (string, error) {
	var out strings.Builder
	out.Grow(len(e.text) + len(e.text)/8)
	write := func(text string) {
		if n := out.Len(); text != "" && n > 0 && out.String()[n-1] != '\n' {
			out.WriteString(e.nl) // the file's last line, without an end, was moved up
		}
		out.WriteString(text)
	}
	removed := false
	for b := e.first; b != nil; b = b.next {
		removed = b.gone
		if b.gone {
			write(e.outlives(b, out.String()))
			continue
		}
		text, err := b.text(e)
		if err != nil {
			return "", err
		}
		write(text)
		write(b.tail)
	}
	return e.ending(out.String(), removed), nil
}

// outlives is what stays of a block that is gone: the loose comments at its end, unless
// what follows them is gone too.
func (e *editor) outlives(b *block, before string) string {
	if !strings.Contains(b.tail, "#") || b.next != nil && b.next.gone {
		return ""
	}
	if before == "" || strings.HasSuffix(before, e.nl+e.nl) {
		return strings.TrimLeft(b.tail, "\r\n")
	}
	return b.tail
}

// ending makes the end of the text what it was: with a line end or without one.
func (e *editor) ending(text string, removed bool) string {
	if removed && !strings.HasSuffix(e.text, e.nl+e.nl) {
		for strings.HasSuffix(text, e.nl+e.nl) {
			text = strings.TrimSuffix(text, e.nl)
		}
	}
	had, has := strings.HasSuffix(e.text, "\n"), strings.HasSuffix(text, "\n")
	switch {
	case had == has || text == "":
		return text
	case had:
		return text + e.nl
	}
	return strings.TrimSuffix(text, e.nl)
}

// text is a block with its edits.
func (b *block) text(e *editor) (string, error) {
	if b.added != "" {
		return e.lineEnds(b.added), nil
	}
	return e.edited(b.span, b.edits)
}

// edited is a stretch of the text with the edits in it.
func (e *editor) edited(at span, edits []edit) (string, error) {
	if len(edits) == 0 {
		return e.text[at.start:at.end], nil
	}
	slices.SortStableFunc(edits, func(a, b edit) int {
		return cmp.Or(cmp.Compare(a.start, b.start), cmp.Compare(a.end, b.end))
	})
	var out strings.Builder
	pos := at.start
	for _, ed := range edits {
		if ed.start < pos || ed.end > at.end {
			return "", errOverlap
		}
		out.WriteString(e.text[pos:ed.start])
		out.WriteString(ed.text)
		pos = ed.end
	}
	out.WriteString(e.text[pos:at.end])
	return out.String(), nil
}

// lineEnds gives what the writer wrote the line ends of the file.
func (e *editor) lineEnds(text string) string { return strings.ReplaceAll(text, "\n", e.nl) }
