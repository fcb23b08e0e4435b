package desk

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// span is a run of text in one colour and weight.
type span struct {
	text  string
	color fyne.ThemeColorName // "" for ink
	bold  bool
}

// prose is wrapped text of one size: the toolkit's labels know no colours of ours, no
// last line with an ellipsis, and no height for a width.
type prose struct {
	widget.BaseWidget
	spans    []span
	size     float32
	align    fyne.TextAlign
	maxLines int       // 0 for any number
	minLines int       // room kept even when the text is shorter
	centred  bool      // vertically
	sizes    []float32 // to try, largest first, until the text fits its lines

	last struct { // the last wrap, which is asked for many times
		width, size float32
		maxLines    int
		lines       [][]span
	}
}

func newProse(size float32, spans ...span) *prose {
	p := &prose{size: size, spans: spans}
	p.ExtendBaseWidget(p)
	return p
}

// small is a muted line of the small size.
func small(text string) *prose { return newProse(sizeSmall, span{text: text, color: colMuted}) }

// heading is a group's name in small capitals.
func heading(text string) *prose {
	return newProse(sizeSmall, span{text: strings.ToUpper(text), color: colMuted, bold: true})
}

// lines keeps room for n lines, and ends with an ellipsis what needs more.
func (p *prose) lines(n int) *prose {
	p.minLines, p.maxLines = n, n
	return p
}

// atMost ends with an ellipsis what needs more than n lines.
func (p *prose) atMost(n int) *prose {
	p.maxLines = n
	return p
}

func (p *prose) trailing() *prose {
	p.align = fyne.TextAlignTrailing
	return p
}

func (p *prose) set(spans ...span) {
	if sameSpans(p.spans, spans) {
		return
	}
	p.spans = spans
	p.last.lines = nil
	p.Refresh()
}

func sameSpans(a, b []span) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// text is all of it, for tests and for reading aloud.
func (p *prose) text() string {
	var b strings.Builder
	for _, s := range p.spans {
		b.WriteString(s.text)
	}
	return b.String()
}

func (p *prose) lineHeight() float32 {
	return lineHeight(p.size)
}

// shrinking tries smaller sizes for a text that would not fit the room of its lines.
func (p *prose) shrinking(sizes ...float32) *prose {
	p.sizes = append([]float32{p.size}, sizes...)
	return p
}

// fit chooses the size.
func (p *prose) fit(width float32) {
	if len(p.sizes) == 0 {
		return
	}
	p.size = p.sizes[0]
	room := float32(p.minLines) * p.lineHeight()
	for _, size := range p.sizes {
		p.size, p.maxLines = size, 0
		lines := max(1, int(room/p.lineHeight()))
		fits := len(p.wrap(width)) <= lines
		p.maxLines = lines
		if fits {
			return
		}
	}
}

func (p *prose) heightFor(width float32) float32 {
	if len(p.sizes) > 0 {
		return float32(p.minLines) * lineHeight(p.sizes[0])
	}
	n := max(len(p.wrap(width)), p.minLines, 1)
	return float32(n) * p.lineHeight()
}

func (p *prose) MinSize() fyne.Size {
	p.ExtendBaseWidget(p)
	w := p.Size().Width
	if w == 0 {
		w = 1 << 14
	}
	return fyne.NewSize(0, p.heightFor(w))
}

// naturalWidth is the width of the text on one line.
func (p *prose) naturalWidth() float32 {
	var w float32
	for _, s := range p.spans {
		w += measure(s.text, p.size, s.bold)
	}
	return w
}

// widestWord is the least width that cuts no word.
func (p *prose) widestWord() float32 {
	var w float32
	for _, word := range p.words() {
		w = max(w, word.width)
	}
	return w
}

// word is what wrapping must keep together; pieces of several spans may form one.
type word struct {
	pieces []span
	width  float32
}

// wrap breaks the text into lines of at most width.
func (p *prose) wrap(width float32) [][]span {
	if l := &p.last; l.lines == nil || l.width != width || l.size != p.size || l.maxLines != p.maxLines {
		l.width, l.size, l.maxLines, l.lines = width, p.size, p.maxLines, p.breakLines(width)
	}
	return p.last.lines
}

func (p *prose) breakLines(width float32) [][]span {
	space := measure(" ", p.size, false)
	var lines [][]span
	var line []span
	var used float32
	for _, w := range p.wordsWithin(width) {
		if len(line) > 0 && used+space+w.width > width {
			lines, line, used = append(lines, line), nil, 0
		}
		if len(line) > 0 {
			line = joinSpace(line)
			used += space
		}
		line = append(line, w.pieces...)
		used += w.width
	}
	if len(line) > 0 {
		lines = append(lines, line)
	}
	if p.maxLines > 0 && len(lines) > p.maxLines {
		rest := lines[p.maxLines-1:]
		lines = append(lines[:p.maxLines-1], p.ellipsis(rest, width))
	} else {
		for i, l := range lines {
			if spanWidth(l, p.size) > width {
				lines[i] = p.shorten(l, width)
			}
		}
	}
	return lines
}

// wordsWithin splits a word that has no room at its no-break spaces: rather two lines
// than an ellipsis in an amount.
func (p *prose) wordsWithin(width float32) (list []word) {
	for _, w := range p.words() {
		if w.width <= width || len(w.pieces) != 1 || !strings.Contains(w.pieces[0].text, noBreak) {
			list = append(list, w)
			continue
		}
		for _, part := range strings.Split(w.pieces[0].text, noBreak) {
			piece := w.pieces[0]
			piece.text = part
			list = append(list, word{[]span{piece}, measure(part, p.size, piece.bold)})
		}
	}
	return list
}

const noBreak = "\u00a0"

// ellipsis puts what is left of the text on one line, shortened.
func (p *prose) ellipsis(rest [][]span, width float32) []span {
	var all []span
	for i, l := range rest {
		if i > 0 {
			all = joinSpace(all)
		}
		all = append(all, l...)
	}
	return p.shorten(all, width)
}

// shorten cuts a line to width, ending with an ellipsis.
func (p *prose) shorten(line []span, width float32) []span {
	line = append([]span(nil), line...)
	for len(line) > 0 {
		last := &line[len(line)-1]
		runes := []rune(last.text)
		if len(runes) == 0 {
			line = line[:len(line)-1]
			continue
		}
		cut := *last
		cut.text = strings.TrimRight(string(runes[:len(runes)-1]), " ,.") + "…"
		if spanWidth(append(line[:len(line)-1:len(line)-1], cut), p.size) <= width || len(runes) == 1 && len(line) == 1 {
			return append(line[:len(line)-1:len(line)-1], cut)
		}
		last.text = string(runes[:len(runes)-1])
	}
	return line
}

func joinSpace(line []span) []span {
	line = append([]span(nil), line...)
	line[len(line)-1].text += " "
	return line
}

// words splits the spans at spaces.
func (p *prose) words() []word {
	var words []word
	open := false // the last word goes on
	for _, s := range p.spans {
		for i, part := range strings.Split(s.text, " ") {
			if i > 0 {
				open = false
			}
			if part == "" {
				continue
			}
			piece := s
			piece.text = part
			w := measure(part, p.size, s.bold)
			if open {
				last := &words[len(words)-1]
				last.pieces = append(last.pieces, piece)
				last.width += w
				continue
			}
			words = append(words, word{[]span{piece}, w})
			open = true
		}
	}
	return words
}

func spanWidth(line []span, size float32) float32 {
	var w float32
	for _, s := range line {
		w += measure(s.text, size, s.bold)
	}
	return w
}

func (p *prose) CreateRenderer() fyne.WidgetRenderer { return &proseRenderer{p: p} }

type proseRenderer struct {
	p     *prose
	texts []fyne.CanvasObject
}

func (r *proseRenderer) Layout(size fyne.Size) {
	p := r.p
	p.fit(size.Width)
	lines := p.wrap(size.Width)
	height := p.lineHeight()
	top := float32(0)
	if p.centred {
		top = max(0, (size.Height-height*float32(len(lines)))/2)
	}
	r.texts = r.texts[:0]
	for i, line := range lines {
		x := float32(0)
		switch p.align {
		case fyne.TextAlignTrailing:
			x = size.Width - spanWidth(line, p.size)
		case fyne.TextAlignCenter:
			x = (size.Width - spanWidth(line, p.size)) / 2
		}
		for _, s := range merge(line) {
			name := s.color
			if name == "" {
				name = colInk
			}
			t := canvas.NewText(s.text, theme.Color(name))
			t.TextSize = p.size
			t.TextStyle.Bold = s.bold
			t.Move(fyne.NewPos(x, top+float32(i)*height))
			w := measure(s.text, p.size, s.bold)
			t.Resize(fyne.NewSize(w, height))
			x += w
			r.texts = append(r.texts, t)
		}
	}
}

// merge joins neighbours of one colour and weight.
func merge(line []span) []span {
	var out []span
	for _, s := range line {
		if n := len(out); n > 0 && out[n-1].color == s.color && out[n-1].bold == s.bold {
			out[n-1].text += s.text
			continue
		}
		out = append(out, s)
	}
	return out
}

func (r *proseRenderer) MinSize() fyne.Size           { return r.p.MinSize() }
func (r *proseRenderer) Objects() []fyne.CanvasObject { return r.texts }
func (r *proseRenderer) Destroy()                     {}
func (r *proseRenderer) Refresh() {
	r.Layout(r.p.Size())
	canvas.Refresh(r.p)
}
