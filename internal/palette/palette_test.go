package palette

import (
	"image/color"
	"math"
	"testing"
)

type named struct {
	name string
	c    color.NRGBA
}

func grounds(t Theme) []named {
	return []named{{"ground", t.Ground}, {"field", t.Field}, {"chosen", t.Chosen}}
}

func texts(t Theme) []named {
	return []named{{"ink", t.Ink}, {"muted", t.Muted}, {"accent", t.Accent}, {"good", t.Good}, {"fault", t.Fault}}
}

func parts(t Theme) []named {
	return []named{
		{"film", t.Film}, {"shipping", t.Shipping}, {"tax", t.Tax}, {"fees", t.Fees}, {"loading", t.Loading},
		{"equipment", t.Equipment}, {"time", t.Time}, {"developing", t.Developing}, {"quiet", t.Quiet},
	}
}

// The ratios of two pairs worked out in WCAG 2.2's own words: black on white is 21:1,
// and #767676 is the lightest grey that reaches 4.5:1 on white (4.54).
func TestContrastOfKnownPairs(t *testing.T) {
	white, black, grey := rgb(0xFFFFFF), rgb(0), rgb(0x767676)
	for _, c := range []struct {
		a, b color.NRGBA
		want float64
	}{{white, black, 21}, {black, white, 21}, {white, white, 1}, {grey, white, 4.54}} {
		if got := Contrast(c.a, c.b); math.Abs(got-c.want) > 0.005 {
			t.Errorf("contrast of %v and %v is %.3f, want %.2f", c.a, c.b, got, c.want)
		}
	}
}

func TestPartsAndTextsStandOutOnEveryGround(t *testing.T) {
	for _, theme := range Themes {
		for _, g := range grounds(theme) {
			for _, p := range parts(theme) {
				if got := Contrast(p.c, g.c); got < PartContrast {
					t.Errorf("%s: %s on %s is %.2f:1, below %.1f", theme.Name, p.name, g.name, got, PartContrast)
				}
			}
			for _, x := range texts(theme) {
				if got := Contrast(x.c, g.c); got < TextContrast {
					t.Errorf("%s: %s on %s is %.2f:1, below %.1f", theme.Name, x.name, g.name, got, TextContrast)
				}
			}
		}
	}
}

func TestLabelsOnPartsReadOrSayThatTheyDoNot(t *testing.T) {
	for _, theme := range Themes {
		for _, p := range parts(theme) {
			label, ok := Label(p.c, theme)
			if got := Contrast(label, p.c); ok != (got >= TextContrast) {
				t.Errorf("%s: label on %s is %.2f:1, but ok is %v", theme.Name, p.name, got, ok)
			}
		}
		if _, ok := Label(theme.Film, theme); !ok {
			t.Errorf("%s: the film part must carry its label", theme.Name)
		}
	}
}
