package paper

import (
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/norm"

	"reelworth/assets"
)

// Face is the project's typeface at a size in points.
type Face struct {
	Bold bool
	Size float64
}

// PointsPerMillimetre: a point is 1/72 in.
const PointsPerMillimetre = 72 / 25.4

// em is the face's size in millimetres.
func (f Face) em() float64 { return f.Size / PointsPerMillimetre }

// Width of text in millimetres.
func (f Face) Width(text string) float64 {
	t, sum := f.typeface(), 0.0
	for _, r := range settable(text) {
		sum += t.glyph(r).advance
	}
	return sum * f.em()
}

// Shrunk is the face, made smaller as far as text needs to fit a width in millimetres,
// but not below least points.
func (f Face) Shrunk(text string, width, least float64) Face {
	if w := f.Width(text); w > width && w > 0 {
		f.Size = max(f.Size*width/w, min(least, f.Size))
	}
	return f
}

// Fit is text cut with an ellipsis to a width in millimetres; "" when nothing fits.
func (f Face) Fit(text string, width float64) string {
	text = settable(text)
	if f.Width(text) <= width {
		return text
	}
	const more = "…"
	runes := []rune(text)
	for n := len(runes) - 1; n > 0; n-- {
		if unicode.Is(unicode.M, runes[n]) {
			continue // never between a letter and its accent
		}
		kept := strings.TrimRight(string(runes[:n]), " ,.;:-")
		if kept != "" && f.Width(kept+more) <= width {
			return kept + more
		}
	}
	return ""
}

// Wrap breaks text at spaces into at most lines lines of a width in millimetres; the last
// is cut with an ellipsis when there is more. A word that is too long is cut.
func (f Face) Wrap(text string, width float64, lines int) []string {
	var out []string
	words := strings.Fields(settable(text))
	for len(words) > 0 && lines > 0 {
		if len(out) == lines-1 {
			return append(out, f.Fit(strings.Join(words, " "), width))
		}
		n := 1
		for n < len(words) && f.Width(strings.Join(words[:n+1], " ")) <= width {
			n++
		}
		out = append(out, f.Fit(strings.Join(words[:n], " "), width))
		words = words[n:]
	}
	return out
}

// Lacking are the letters of text, each once, that the typeface lacks and that are
// therefore drawn as a box.
func Lacking(text string) []rune {
	var out []rune
	for _, r := range norm.NFC.String(text) {
		if unicode.IsControl(r) || unicode.IsSpace(r) || r == minus || strings.ContainsRune(string(out), r) {
			continue
		}
		if r > widest || regular().glyph(r).missing {
			out = append(out, r)
		}
	}
	return out
}

// widest is the last character a font of a PDF can address by two bytes.
const widest = 0xFFFF

// boxed stands for what cannot be addressed: the typeface lacks it too, so it is a box.
const boxed = '\u25a1'

// minus is not in the typeface; an en dash is as wide.
const minus = '\u2212'

// settable is text as it can be set on one line: composed letters, plain spaces, no
// characters that steer.
func settable(text string) string {
	if !utf8.ValidString(text) {
		text = strings.ToValidUTF8(text, "\ufffd")
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r == minus:
			return '–'
		case r > widest:
			return boxed
		case r == '\u00a0' || r == '\u202f':
			return r
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r) || unicode.Is(unicode.Cf, r):
			return -1
		}
		return r
	}, norm.NFC.String(text))
}

// typeface is a parsed font with the glyphs taken from it so far.
type typeface struct {
	font   *sfnt.Font
	mu     sync.RWMutex
	glyphs map[rune]*glyph
}

// glyph is one character, in ems, y downwards from the baseline.
type glyph struct {
	missing bool // from the font, which shows a box instead
	advance float64
	outline Path
}

var (
	regular = sync.OnceValue(func() *typeface { return parse(assets.Regular) })
	bold    = sync.OnceValue(func() *typeface { return parse(assets.Bold) })
)

func (f Face) typeface() *typeface {
	if f.Bold {
		return bold()
	}
	return regular()
}

func parse(data []byte) *typeface {
	f, err := sfnt.Parse(data)
	if err != nil {
		panic("paper: the embedded typeface cannot be read: " + err.Error())
	}
	return &typeface{font: f, glyphs: map[rune]*glyph{}}
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

func (t *typeface) load(r rune) *glyph {
	var buf sfnt.Buffer
	em := fixed.Int26_6(t.font.UnitsPerEm())
	unit := 1 / float64(em)
	index, err := t.font.GlyphIndex(&buf, r)
	if err != nil {
		index = 0
	}
	g := &glyph{missing: index == 0}
	if adv, err := t.font.GlyphAdvance(&buf, index, em, font.HintingNone); err == nil {
		g.advance = float64(adv) * unit
	}
	segments, err := t.font.LoadGlyph(&buf, index, em, nil)
	if err != nil {
		return g
	}
	for i, s := range segments {
		at := func(n int) (x, y float64) { return float64(s.Args[n].X) * unit, float64(s.Args[n].Y) * unit }
		x, y := at(0)
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			if i > 0 {
				g.outline.Close()
			}
			g.outline.Move(x, y)
		case sfnt.SegmentOpLineTo:
			g.outline.Line(x, y)
		case sfnt.SegmentOpQuadTo:
			x1, y1 := at(1)
			g.outline.Quad(x, y, x1, y1)
		case sfnt.SegmentOpCubeTo:
			x1, y1 := at(1)
			x2, y2 := at(2)
			g.outline.Cube(x, y, x1, y1, x2, y2)
		}
	}
	if len(g.outline) > 0 {
		g.outline.Close()
	}
	return g
}
