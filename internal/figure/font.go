package figure

import (
	"strings"
	"sync"
	"unicode"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/norm"

	"reelworth/assets"
)

// typeface is a parsed font with the outlines taken from it so far. Text is always
// drawn as outlines: a canvas's own text would need the viewer's fonts in an SVG and
// has no bold, no € and no ł in a PDF.
type typeface struct {
	font *sfnt.Font
	unit float64 // ems per font unit

	mu     sync.RWMutex
	glyphs map[rune]*glyph
}

// glyph is the outline of one character, in ems, y upwards from the baseline.
type glyph struct {
	missing     bool // from the font, which shows a box instead
	advance     float64
	top, bottom float64 // of the ink
	outline     []stroke
}

// stroke is one piece of an outline: a move, a line, or a quadratic or cubic curve.
type stroke struct {
	op sfnt.SegmentOp
	at [3][2]float64
}

var (
	regular = sync.OnceValue(func() *typeface { return parse(assets.Regular) })
	bold    = sync.OnceValue(func() *typeface { return parse(assets.Bold) })
)

// face is a typeface at a size in pixels.
type face struct {
	bold bool
	size float64
}

func (f face) typeface() *typeface {
	if f.bold {
		return bold()
	}
	return regular()
}

// width of text in pixels.
func (f face) width(text string) float64 {
	t := f.typeface()
	sum := 0.0
	for _, r := range text {
		sum += t.glyph(r).advance
	}
	return sum * f.size
}

// ink is how far the text reaches above and below its baseline, in pixels.
func (f face) ink(text string) (above, below float64) {
	t := f.typeface()
	for _, r := range text {
		g := t.glyph(r)
		above, below = max(above, g.top), max(below, -g.bottom)
	}
	return above * f.size, below * f.size
}

func parse(data []byte) *typeface {
	f, err := sfnt.Parse(data)
	if err != nil {
		panic("figure: the embedded typeface cannot be read: " + err.Error())
	}
	return &typeface{font: f, unit: 1 / float64(f.UnitsPerEm()), glyphs: map[rune]*glyph{}}
}

func (t *typeface) glyph(r rune) *glyph {
	t.mu.RLock()
	g := t.glyphs[r]
	t.mu.RUnlock()
	if g != nil {
		return g
	}
	g = t.load(r)
	t.mu.Lock()
	t.glyphs[r] = g
	t.mu.Unlock()
	return g
}

// load takes a glyph out of the font; a character it lacks becomes the font's box, but
// the minus sign an en dash at the height of a plus.
func (t *typeface) load(r rune) *glyph {
	g := t.outline(r)
	if r != minus || !g.missing {
		return g
	}
	dash, plus := t.outline('–'), t.outline('+')
	up := (plus.top + plus.bottom - dash.top - dash.bottom) / 2
	for i := range dash.outline {
		for j := range dash.outline[i].at {
			dash.outline[i].at[j][1] += up
		}
	}
	dash.top, dash.bottom = dash.top+up, dash.bottom+up
	return dash
}

const minus = '\u2212'

func (t *typeface) outline(r rune) *glyph {
	var buf sfnt.Buffer
	em := fixed.Int26_6(t.font.UnitsPerEm())
	index, err := t.font.GlyphIndex(&buf, r)
	if err != nil {
		index = 0
	}
	g := &glyph{missing: index == 0}
	if adv, err := t.font.GlyphAdvance(&buf, index, em, font.HintingNone); err == nil {
		g.advance = float64(adv) * t.unit
	}
	segments, err := t.font.LoadGlyph(&buf, index, em, nil)
	if err != nil {
		return g
	}
	for _, s := range segments {
		piece := stroke{op: s.Op}
		for i, p := range s.Args {
			piece.at[i] = [2]float64{float64(p.X) * t.unit, -float64(p.Y) * t.unit}
		}
		g.outline = append(g.outline, piece)
	}
	ink := segments.Bounds()
	g.top, g.bottom = -float64(ink.Min.Y)*t.unit, -float64(ink.Max.Y)*t.unit
	return g
}

// tidy is text as it can be set on one line, without signs that steer or that turn the
// direction of writing.
func tidy(text string) string {
	return norm.NFC.String(strings.Join(strings.FieldsFunc(text, func(r rune) bool {
		return unicode.IsSpace(r) && r != '\u00a0' && r != '\u202f' || unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)
	}), " "))
}

// fit is text cut with an ellipsis to a width in pixels, never within a character.
// It is "" when not even one character fits.
func (f face) fit(text string, width float64) string {
	if f.width(text) <= width {
		return text
	}
	const more = "…"
	room := width - f.width(more)
	runes := []rune(text)
	n, used := 0, 0.0
	for n < len(runes) {
		used += f.width(string(runes[n]))
		if used > room {
			break
		}
		n++
	}
	for n > 0 && n < len(runes) && unicode.Is(unicode.M, runes[n]) {
		n--
	}
	kept := strings.TrimRight(string(runes[:n]), " ,.;:-")
	if kept == "" {
		return ""
	}
	return kept + more
}

// wrap breaks text at spaces into at most lines lines of a width in pixels; the last
// is cut with an ellipsis when there is more.
func (f face) wrap(text string, width float64, lines int) []string {
	var out []string
	words, space := strings.Fields(text), f.width(" ")
	for len(words) > 0 {
		if len(out) == lines-1 {
			return append(out, f.fit(strings.Join(words, " "), width))
		}
		n, used := 1, f.width(words[0])
		for n < len(words) {
			used += space + f.width(words[n])
			if used > width {
				break
			}
			n++
		}
		out = append(out, f.fit(strings.Join(words[:n], " "), width))
		words = words[n:]
	}
	return out
}
