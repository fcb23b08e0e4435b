package desk

import (
	"fyne.io/fyne/v2/canvas"
	"github.com/shopspring/decimal"
)

func decimalOf(s string) decimal.Decimal { return decimal.RequireFromString(s) }

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
