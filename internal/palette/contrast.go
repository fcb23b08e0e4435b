package palette

import (
	"image/color"
	"math"
)

// The least ratios that a reader needs (WCAG 2.2, 1.4.11 and 1.4.3).
const (
	PartContrast = 3.0
	TextContrast = 4.5
)

// Contrast is the WCAG 2.2 contrast ratio of two opaque colours, from 1 to 21.
func Contrast(a, b color.Color) float64 {
	x, y := luminance(a), luminance(b)
	if x < y {
		x, y = y, x
	}
	return (x + 0.05) / (y + 0.05)
}

// Label is the colour of a label that stands on a part: white or the theme's darkest
// colour, whichever reads better. It is not ok when neither reaches 4.5:1; the label
// then belongs outside the part.
func Label(part color.Color, t Theme) (label color.NRGBA, ok bool) {
	white := color.NRGBA{R: 255, G: 255, B: 255, A: 255}
	dark := t.darkest()
	label = white
	if Contrast(dark, part) > Contrast(white, part) {
		label = dark
	}
	return label, Contrast(label, part) >= TextContrast
}

// luminance is the relative luminance of WCAG 2.2: 0 for black, 1 for white.
func luminance(c color.Color) float64 {
	r, g, b, _ := c.RGBA()
	return 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
}

// linear undoes the sRGB curve of one 16-bit channel.
func linear(channel uint32) float64 {
	v := float64(channel) / 0xffff
	if v <= 0.04045 {
		return v / 12.92
	}
	return math.Pow((v+0.055)/1.055, 2.4)
}
