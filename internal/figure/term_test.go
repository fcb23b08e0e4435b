package figure

import (
	"bytes"
	"fmt"
	"testing"

	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// The picture of a term marks what is meant, holds its words at any width, and says what
// it shows. The mark is the accent, and the words beside it are bold.
func TestTermsAreDrawn(t *testing.T) {
	seen := map[string]words.TermPicture{}
	for _, p := range words.TermPictures {
		for _, theme := range palette.Themes {
			for _, w := range []float64{280, 420, 540} {
				d := Term(p, w, english(theme))
				checkLayout(t, fmt.Sprint(p, " ", theme.Name, " ", w), d)
				marked, bold := 0, 0
				for _, s := range d.shapes {
					if s.colour == theme.Accent {
						marked++
					}
				}
				for _, x := range d.Texts() {
					if x.Bold {
						bold++
					}
				}
				if marked == 0 || bold == 0 || d.Title() == "" {
					t.Errorf("%s: %d marks, %d bold, %q", p, marked, bold, d.Title())
				}
			}
		}
		var b bytes.Buffer
		if err := Term(p, 540, english(palette.Paper)).WritePNG(&b, 2); err != nil {
			t.Fatal(err)
		}
		if other, twice := seen[b.String()]; twice {
			t.Errorf("%s looks like %s", p, other)
		}
		seen[b.String()] = p
	}
}
