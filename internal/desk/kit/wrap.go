package kit

import (
	"strings"
	"unicode/utf8"
)

// widestWord is the least width that cuts no word.
func (p *Text) widestWord() float32 {
	var w float32
	for _, word := range p.words() {
		w = max(w, word.width)
	}
	return w
}

// word is what wrapping must keep together; pieces of several spans may form one.
type word struct {
	pieces []Span
	width  float32
	goesOn bool // begins a line in the middle of a longer one
}

// wrap breaks the text into lines of at most width.
func (p *Text) wrap(width float32) [][]Span {
	if l := &p.last; l.lines == nil || l.width != width || l.size != p.FontSize || l.maxLines != p.MaxLines {
		l.width, l.size, l.maxLines, l.lines = width, p.FontSize, p.MaxLines, p.breakLines(width)
	}
	return p.last.lines
}

func (p *Text) breakLines(width float32) [][]Span {
	space := Measure(" ", p.FontSize, false)
	var lines [][]Span
	var line []Span
	var used float32
	var widths []float32 // of the lines, word by word: together they measure a hair more
	for _, w := range p.wordsWithin(width) {
		if len(line) > 0 && (w.goesOn || used+space+w.width > width) {
			lines, widths, line, used = append(lines, line), append(widths, used), nil, 0
		}
		if len(line) > 0 {
			line = joinSpace(line)
			used += space
		}
		line = append(line, w.pieces...)
		used += w.width
	}
	if len(line) > 0 {
		lines, widths = append(lines, line), append(widths, used)
	}
	if p.MaxLines > 0 && len(lines) > p.MaxLines {
		rest := lines[p.MaxLines-1:]
		lines = append(lines[:p.MaxLines-1], p.ellipsis(rest, width))
	} else {
		for i, l := range lines {
			if widths[i] > width {
				lines[i] = p.shorten(l, width)
			}
		}
	}
	return lines
}

// wordsWithin splits a word that has no room at its no-break spaces: rather two lines
// than an ellipsis in an amount. One that has none even so is split where the line ends,
// but for a text of one line.
func (p *Text) wordsWithin(width float32) (list []word) {
	for _, w := range p.words() {
		if w.width <= width || len(w.pieces) != 1 || width <= 0 {
			list = append(list, w)
			continue
		}
		for _, part := range strings.Split(w.pieces[0].Text, noBreak) {
			piece := w.pieces[0]
			piece.Text = part
			list = append(list, p.broken(piece, width)...)
		}
	}
	return list
}

// broken is a word as it stands on lines of a width, those of them that are shown.
func (p *Text) broken(piece Span, width float32) (list []word) {
	rest := []rune(piece.Text)
	for len(rest) > 0 && p.MaxLines != 1 && (p.MaxLines == 0 || len(list) < p.MaxLines) {
		fits := func(n int) bool { return Measure(string(rest[:n]), p.FontSize, piece.Bold) <= width }
		n := max(1, mostOf(len(rest), fits))
		if n == len(rest)-1 && fits(n+1) {
			n++
		}
		piece.Text = string(rest[:n])
		list = append(list, word{[]Span{piece}, Measure(piece.Text, p.FontSize, piece.Bold), len(list) > 0})
		rest = rest[n:]
	}
	if len(rest) > 0 {
		piece.Text = string(rest)
		list = append(list, word{[]Span{piece}, Measure(piece.Text, p.FontSize, piece.Bold), len(list) > 0})
	}
	return list
}

const noBreak = "\u00a0"

// ellipsis puts what is left of the text on one line, shortened. Its second line cannot
// stand on the first, so that there is no need to look at those after it.
func (p *Text) ellipsis(rest [][]Span, width float32) []Span {
	var all []Span
	for i, l := range rest[:min(2, len(rest))] {
		if i > 0 {
			all = joinSpace(all)
		}
		all = append(all, l...)
	}
	return p.shorten(all, width)
}

// shorten cuts a line to width, ending with an ellipsis. It tries twice as many letters
// until they have no room, then halves what is in question: the time grows with what fits,
// not with what is cut off.
func (p *Text) shorten(line []Span, width float32) []Span {
	letters := 0
	for _, s := range line {
		letters += utf8.RuneCountInString(s.Text)
	}
	return cutAfter(line, mostOf(letters, func(n int) bool { return spanWidth(cutAfter(line, n), p.FontSize) <= width }))
}

// mostOf is how many of so many letters fit, of all but the last.
func mostOf(letters int, fits func(n int) bool) int {
	least, most := 0, 1 // least fits, or is nothing; most does not, or is all
	for most < letters && fits(most) {
		least, most = most, 2*most
	}
	most = min(most, letters)
	for most-least > 1 {
		if middle := (least + most) / 2; fits(middle) {
			least = middle
		} else {
			most = middle
		}
	}
	return least
}

// cutAfter is a line of so many letters and an ellipsis.
func cutAfter(line []Span, n int) []Span {
	var cut []Span
	for _, s := range line {
		at := 0
		for ; n > 0 && at < len(s.Text); n-- {
			_, size := utf8.DecodeRuneInString(s.Text[at:])
			at += size
		}
		s.Text = s.Text[:at]
		cut = append(cut, s)
		if n == 0 {
			break
		}
	}
	for i := len(cut) - 1; i >= 0; i-- {
		if cut[i].Text = strings.TrimRight(cut[i].Text, " ,."); cut[i].Text != "" || i == 0 {
			cut[i].Text += "…"
			return cut[:i+1]
		}
	}
	return cut
}

func joinSpace(line []Span) []Span {
	line = append([]Span(nil), line...)
	line[len(line)-1].Text += " "
	return line
}

// words splits the spans at spaces.
func (p *Text) words() []word {
	var words []word
	open := false // the last word goes on
	for _, s := range p.spans {
		for i, part := range strings.Split(s.Text, " ") {
			if i > 0 {
				open = false
			}
			if part == "" {
				continue
			}
			piece := s
			piece.Text = part
			w := Measure(part, p.FontSize, s.Bold)
			if open {
				last := &words[len(words)-1]
				last.pieces = append(last.pieces, piece)
				last.width += w
				continue
			}
			words = append(words, word{pieces: []Span{piece}, width: w})
			open = true
		}
	}
	return words
}

func spanWidth(line []Span, size float32) float32 {
	var w float32
	for _, s := range line {
		w += Measure(s.Text, size, s.Bold)
	}
	return w
}

// merge joins neighbours of one colour and weight.
func merge(line []Span) []Span {
	var out []Span
	for _, s := range line {
		if n := len(out); n > 0 && out[n-1].Color == s.Color && out[n-1].Bold == s.Bold {
			out[n-1].Text += s.Text
			continue
		}
		out = append(out, s)
	}
	return out
}
