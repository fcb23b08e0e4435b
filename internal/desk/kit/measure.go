package kit

import (
	"sync"

	"fyne.io/fyne/v2"
)

// measured remembers how wide words are: the toolkit shapes a text anew each time it
// is asked, and a keystroke asks for hundreds of the same ones.
var measured = struct {
	sync.Mutex
	sizes map[textKey]fyne.Size
}{sizes: map[textKey]fyne.Size{}}

type textKey struct {
	text string
	size float32
	bold bool
}

// mostMeasured bounds the memory: then everything is forgotten.
const mostMeasured = 20000

func textSize(text string, size float32, bold bool) fyne.Size {
	k := textKey{text, size, bold}
	measured.Lock()
	defer measured.Unlock()
	if s, ok := measured.sizes[k]; ok {
		return s
	}
	if len(measured.sizes) >= mostMeasured {
		clear(measured.sizes)
	}
	s := fyne.MeasureText(text, size, styleOf(bold))
	measured.sizes[k] = s
	return s
}

// styleOf is our typeface in a weight. The toolkit sets what our typeface lacks, the signs
// ✗ ✓ ● ▾, in its own monospaced one, but only when that is what it is asked for.
func styleOf(bold bool) fyne.TextStyle { return fyne.TextStyle{Bold: bold, Monospace: true} }

// Measure is the width of a text on one line.
func Measure(text string, size float32, bold bool) float32 {
	if w, ok := figures(text, size, bold); ok {
		return w
	}
	return textSize(text, size, bold).Width
}

// figures is the width of a number, digit by digit: numbers are new at every keystroke,
// and the typeface sets them on one width without kerning.
func figures(text string, size float32, bold bool) (width float32, ok bool) {
	for i := range len(text) {
		c := text[i]
		if c != '.' && c != ',' && (c < '0' || c > '9') {
			return 0, false
		}
		width += textSize(text[i:i+1], size, bold).Width
	}
	return width, true
}

// LineHeight is the height of a line of a size.
func LineHeight(size float32) float32 { return textSize("Mg", size, false).Height }
