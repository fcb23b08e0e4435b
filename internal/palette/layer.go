package palette

import "image/color"

// Layer is a colour that may let what is under it through.
type Layer struct{ color.NRGBA }

// LayerOf is any colour as a layer.
func LayerOf(c color.Color) Layer { return Layer{color.NRGBAModel.Convert(c).(color.NRGBA)} }

// Over is what is seen of the layer over an opaque one.
func (l Layer) Over(under Layer) Layer {
	mix := func(top, below uint8) uint8 {
		a := int(l.A)
		return uint8((int(top)*a + int(below)*(255-a) + 127) / 255)
	}
	return Layer{color.NRGBA{R: mix(l.R, under.R), G: mix(l.G, under.G), B: mix(l.B, under.B), A: 255}}
}
