package pages

import (
	"testing"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

func TestALossIsNeverGreen(t *testing.T) {
	for _, h := range []words.Headline{
		{Text: "The reel saves EUR 40 in cash.", Strong: "EUR 40 in cash", Saves: true},
		{Text: "Buy boxed: the reel would cost EUR 40 more.", Strong: "EUR 40 more"},
		{Text: "About the same: EUR 40 either way.", Strong: "EUR 40"},
		{Text: "Nothing to compare yet."},
	} {
		text, green := "", ""
		for _, s := range strong(h) {
			text += s.Text
			if s.Color == kit.Good {
				green += s.Text
			}
		}
		if want := map[bool]string{true: h.Strong}[h.Saves]; green != want || text != h.Text {
			t.Errorf("%q: green is %q", text, green)
		}
	}
}
