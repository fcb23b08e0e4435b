package desk

import (
	"reelworth/internal/desk/kit"
	"strings"

	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"github.com/shopspring/decimal"
)

func decimalOf(s string) decimal.Decimal { return decimal.RequireFromString(s) }

// dialogText is all words of the dialog that is open.
func (h *Harness) dialogText() string {
	var b strings.Builder
	for _, o := range test.LaidOutObjects(h.win.Canvas().Overlays().Top()) {
		if p, ok := o.(*kit.Text); ok {
			b.WriteString(p.String() + "\n")
		}
	}
	return b.String()
}

// blank says whether a picture is all of one colour.
func blank(c *canvas.Image) bool {
	if c.Image == nil {
		return true
	}
	b := c.Image.Bounds()
	first := c.Image.At(b.Min.X, b.Min.Y)
	for y := b.Min.Y; y < b.Max.Y; y += 3 {
		for x := b.Min.X; x < b.Max.X; x += 3 {
			if c.Image.At(x, y) != first {
				return false
			}
		}
	}
	return true
}
