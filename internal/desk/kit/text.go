package kit

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Span is a run of text in one colour and weight.
type Span struct {
	Text  string
	Color fyne.ThemeColorName // "" for ink
	Bold  bool
}

// Text is wrapped text of one size: the toolkit's labels know no colours of ours, no
// last line with an ellipsis, and no height for a width.
type Text struct {
	widget.BaseWidget
	spans    []Span
	FontSize float32
	align    fyne.TextAlign
	MaxLines int       // 0 for any number
	minLines int       // room kept even when the text is shorter
	Centred  bool      // vertically
	sizes    []float32 // to try, largest first, until the text fits its lines

	last struct { // the last wrap, which is asked for many times
		width, size float32
		maxLines    int
		lines       [][]Span
	}
}

// NewText is text of a size.
func NewText(size float32, spans ...Span) *Text {
	p := &Text{FontSize: size, spans: spans}
	p.ExtendBaseWidget(p)
	return p
}

// Small is a muted line of the small size.
func Small(text string) *Text { return NewText(SizeSmall, Span{Text: text, Color: Muted}) }

// Heading is a group's name in small capitals.
func Heading(text string) *Text {
	return NewText(SizeSmall, Span{Text: strings.ToUpper(text), Color: Muted, Bold: true})
}

// Lines keeps room for n lines, and ends with an ellipsis what needs more.
func (p *Text) Lines(n int) *Text {
	p.minLines, p.MaxLines = n, n
	return p
}

// AtLeast keeps room for n lines, and takes more where it needs them.
func (p *Text) AtLeast(n int) *Text {
	p.minLines = n
	return p
}

// AtMost ends with an ellipsis what needs more than n lines.
func (p *Text) AtMost(n int) *Text {
	p.MaxLines = n
	return p
}

func (p *Text) Trailing() *Text {
	p.align = fyne.TextAlignTrailing
	return p
}

func (p *Text) Set(spans ...Span) {
	if sameSpans(p.spans, spans) {
		return
	}
	p.spans = spans
	p.last.lines = nil
	p.Refresh()
}

func sameSpans(a, b []Span) bool {
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

// String is all of it, for tests and for reading aloud.
func (p *Text) String() string {
	var b strings.Builder
	for _, s := range p.spans {
		b.WriteString(s.Text)
	}
	return b.String()
}

func (p *Text) LineHeight() float32 {
	return LineHeight(p.FontSize)
}

// Shrinking tries smaller sizes for a text that would not fit the room of its lines.
func (p *Text) Shrinking(sizes ...float32) *Text {
	p.sizes = append([]float32{p.FontSize}, sizes...)
	return p
}

// fit chooses the size.
func (p *Text) fit(width float32) {
	if len(p.sizes) == 0 {
		return
	}
	p.FontSize = p.sizes[0]
	room := float32(p.minLines) * p.LineHeight()
	for _, size := range p.sizes {
		p.FontSize, p.MaxLines = size, 0
		lines := max(1, int(room/p.LineHeight()))
		fits := len(p.wrap(width)) <= lines
		p.MaxLines = lines
		if fits {
			return
		}
	}
}

func (p *Text) HeightFor(width float32) float32 {
	if len(p.sizes) > 0 {
		return float32(p.minLines) * LineHeight(p.sizes[0])
	}
	n := max(len(p.wrap(width)), p.minLines, 1)
	return float32(n) * p.LineHeight()
}

func (p *Text) MinSize() fyne.Size {
	p.ExtendBaseWidget(p)
	w := p.Size().Width
	if w == 0 {
		w = 1 << 14
	}
	return fyne.NewSize(0, p.HeightFor(w))
}

// NaturalWidth is the width of the text on one line.
func (p *Text) NaturalWidth() float32 {
	var w float32
	for _, s := range p.spans {
		w += Measure(s.Text, p.FontSize, s.Bold)
	}
	return w
}

func (p *Text) CreateRenderer() fyne.WidgetRenderer { return &textRenderer{p: p} }

type textRenderer struct {
	p     *Text
	texts []fyne.CanvasObject // in sight
	made  []*canvas.Text      // those, and more for when the text is longer again
}

// text is the text in sight at i. It is written over from one layout to the next: the
// toolkit would keep each new one for a minute.
func (r *textRenderer) text(i int) *canvas.Text {
	if i == len(r.made) {
		r.made = append(r.made, canvas.NewText("", nil))
	}
	return r.made[i]
}

func (r *textRenderer) Layout(size fyne.Size) {
	p := r.p
	p.fit(size.Width)
	lines := p.wrap(size.Width)
	height := p.LineHeight()
	top := float32(0)
	if p.Centred {
		top = max(0, (size.Height-height*float32(len(lines)))/2)
	}
	r.texts = r.texts[:0]
	for i, line := range lines {
		x := float32(0)
		switch p.align {
		case fyne.TextAlignTrailing:
			x = size.Width - spanWidth(line, p.FontSize)
		case fyne.TextAlignCenter:
			x = (size.Width - spanWidth(line, p.FontSize)) / 2
		}
		for _, s := range merge(line) {
			name := s.Color
			if name == "" {
				name = Ink
			}
			t := r.text(len(r.texts))
			t.Text, t.Color = s.Text, theme.Color(name)
			t.TextSize = p.FontSize
			t.TextStyle = styleOf(s.Bold)
			t.Move(fyne.NewPos(x, top+float32(i)*height))
			w := Measure(s.Text, p.FontSize, s.Bold)
			t.Resize(fyne.NewSize(w, height))
			x += w
			r.texts = append(r.texts, t)
		}
	}
}

func (r *textRenderer) MinSize() fyne.Size           { return r.p.MinSize() }
func (r *textRenderer) Objects() []fyne.CanvasObject { return r.texts }
func (r *textRenderer) Destroy()                     {}
func (r *textRenderer) Refresh() {
	r.Layout(r.p.Size())
	canvas.Refresh(r.p)
}
